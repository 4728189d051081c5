"""The computer's name: sayable, short enough for a label, chosen once."""

from itertools import islice
from pathlib import Path

import pytest
from witnessmark.trust.errors import NameNotFit
from witnessmark.trust.folder import TrustFolder, trust_folder
from witnessmark.trust.names import checked, kept_name, names


@pytest.fixture
def folder(tmp_path: Path) -> TrustFolder:
    return trust_folder(tmp_path)


def test_every_offered_name_keeps_the_labels_address_at_35_signs() -> None:
    for name in islice(names(), 500):
        assert len(f"HTTPS://{name}.LOCAL:8443/L/7K3MQ2RJ") == 35
        assert name == checked(name)


def test_the_name_is_chosen_once_and_kept(folder: TrustFolder) -> None:
    first = kept_name(folder)
    assert kept_name(folder) == first
    assert kept_name(folder, is_taken=lambda _: True) == first


def test_a_name_that_somebody_answers_to_is_left_to_him(folder: TrustFolder) -> None:
    offered = iter(["bokal", "nadir", "lenog"])
    assert kept_name(folder, is_taken=lambda name: name == "bokal", offered=offered) == "nadir"


def test_where_every_name_is_answered_one_is_taken_all_the_same(folder: TrustFolder) -> None:
    assert len(kept_name(folder, is_taken=lambda _: True)) == 5


def test_a_wished_name_replaces_the_kept_one(folder: TrustFolder) -> None:
    kept_name(folder)
    assert kept_name(folder, "Bench.local") == "bench"
    assert kept_name(folder) == "bench"


@pytest.mark.parametrize("name", ["", "garage", "a b", "pc-1", "ünit", "b.c"])
def test_a_name_that_does_not_fit_is_refused_with_what_would(
    folder: TrustFolder, name: str
) -> None:
    with pytest.raises(NameNotFit) as refused:
        kept_name(folder, name)
    assert refused.value.next == "Choose 1 to 5 letters from a to z."
    assert not folder.name.exists()
