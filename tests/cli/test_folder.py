"""The data folder: the usual place of each system, and a sentence where it cannot be used."""

import errno
import os
import stat
from pathlib import Path

import pytest
from witnessmark.cli.errors import DiskFull, FileTroubled, FolderNotWritable
from witnessmark.cli.folder import data_folder, told, usual_folder

HOME = Path("/home/owner")


@pytest.mark.parametrize(
    ("system", "settings", "place"),
    [
        ("linux", {}, "/home/owner/.local/share/witnessmark"),
        ("linux", {"XDG_DATA_HOME": "/data"}, "/data/witnessmark"),
        ("linux", {"XDG_DATA_HOME": ""}, "/home/owner/.local/share/witnessmark"),
        ("darwin", {}, "/home/owner/Library/Application Support/Witnessmark"),
        ("win32", {"LOCALAPPDATA": "/c/Local"}, "/c/Local/Witnessmark"),
        ("win32", {}, "/home/owner/AppData/Local/Witnessmark"),
    ],
)
def test_each_system_has_its_usual_place(system: str, settings: dict[str, str], place: str) -> None:
    assert usual_folder(system, HOME, settings) == Path(place)


def test_a_folder_that_is_not_there_is_made_for_the_owner_only(tmp_path: Path) -> None:
    made = data_folder(tmp_path / "deep" / "data")
    assert stat.S_IMODE(os.stat(made).st_mode) == 0o700
    assert not list(made.iterdir())


def test_a_place_that_is_a_file_is_named(tmp_path: Path) -> None:
    (tmp_path / "file").write_text("x", encoding="utf-8")
    with pytest.raises(FolderNotWritable) as refused:
        data_folder(tmp_path / "file")
    assert str(tmp_path / "file") in refused.value.sentence


@pytest.mark.parametrize(
    ("number", "error"),
    [
        (errno.ENOSPC, DiskFull),
        (errno.EACCES, FolderNotWritable),
        (errno.EROFS, FolderNotWritable),
        (errno.EIO, FileTroubled),
    ],
)
def test_the_systems_refusals_become_sentences(number: int, error: type[Exception]) -> None:
    assert isinstance(told(OSError(number, os.strerror(number)), HOME), error)


def test_a_full_disk_met_anywhere_is_called_so() -> None:
    met = told(OSError(errno.ENOSPC, "No space left on device", "/data/photos/x"))
    assert met.sentence == "The disk is full; nothing more can be written to /data/photos/x."
