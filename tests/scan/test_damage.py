"""A small, always equal lot of spoilt labels; the large one is tests/bench/scan_damage.py."""

from argparse import Namespace
from collections.abc import Iterator

import pytest
from bench.scan_damage import Reader, run_cell

LOT = Namespace(cases=4, seed=20, plain=0, address=None)


@pytest.fixture(scope="module")
def reader() -> Iterator[Reader]:
    """The page's own scanning code, in a process that serves all tests here."""
    reader = Reader()
    yield reader
    reader.close()


@pytest.mark.parametrize("damage", ["rotated", "lowcontrast", "small", "two"])
def test_an_undamaged_label_is_read_however_it_lies(reader: Reader, damage: str) -> None:
    tally = run_cell(reader, damage, 1, LOT)
    assert (tally.ours, tally.wrong) == (4, 0)


@pytest.mark.parametrize("damage", ["smear10", "glare", "torn"])
def test_a_spoilt_single_label_is_mostly_read_and_never_wrong(reader: Reader, damage: str) -> None:
    tally = run_cell(reader, damage, 1, LOT)
    assert tally.ours >= 3
    assert tally.wrong == 0


@pytest.mark.parametrize("damage", ["smear5", "smear10", "glare"])
def test_a_spoilt_twin_label_is_read_and_never_wrong(reader: Reader, damage: str) -> None:
    tally = run_cell(reader, damage, 2, LOT)
    assert (tally.ours, tally.wrong) == (4, 0)


def test_a_label_of_another_computer_is_read_too(reader: Reader) -> None:
    others = Namespace(cases=4, seed=21, plain=0, address="HTTPS://GARAGE-PC.LOCAL:8443/L/")
    tally = run_cell(reader, "smear5d", 1, others)
    assert (tally.ours, tally.wrong) == (4, 0)
