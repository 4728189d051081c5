"""Histories of several phones and one computer, from seeds, all in this process and one of Node."""

import os
import random
from collections.abc import Iterator
from pathlib import Path

import pytest
from sync.history import History
from sync.phones import Phones

HISTORIES = int(os.environ.get("WITNESSMARK_HISTORIES", "30"))
FIRST = int(os.environ.get("WITNESSMARK_FIRST_HISTORY", "1"))


@pytest.fixture(scope="module")
def phones() -> Iterator[Phones]:
    process = Phones()
    yield process
    process.close()


@pytest.mark.parametrize("seed", range(FIRST, FIRST + HISTORIES))
def test_every_history_ends_with_one_workshop(seed: int, tmp_path: Path, phones: Phones) -> None:
    dice = random.Random(seed)  # noqa: S311
    history = History(seed, tmp_path, phones)
    history.run(phones=dice.randint(2, 5), steps=dice.randint(20, 80))
    history.check()
    history.computer.store.close()
