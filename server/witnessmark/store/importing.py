"""Import: entries of a file go through the same door as those of a phone."""

import zipfile
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from pathlib import Path
from typing import IO, Any

from witnessmark.errors import NotJson, Refusal, TooMuch, WitnessmarkError
from witnessmark.log.clean import parse
from witnessmark.log.entry import take, unwrapped
from witnessmark.store.copying import LOG, PHOTOS
from witnessmark.store.errors import FileUnreadable
from witnessmark.store.offering import Offered, offered
from witnessmark.store.photos import SHA

ENTRIES_AT_ONCE = 2_000
LONGEST_LINE = 256 * 1024
MOST_PHOTO = 2 * 1024 * 1024


@dataclass(frozen=True, slots=True)
class Line:
    """One line of a file: the entry it offers, or why it offers none."""

    number: int
    offer: Offered | WitnessmarkError
    of_log: bool = True
    """Whether it looks like a line of a log at all."""

    @property
    def facts(self) -> dict[str, Any]:
        """The entry itself; empty for a line that offers none."""
        return self.offer.facts if isinstance(self.offer, Offered) else {}


@dataclass(frozen=True, slots=True)
class RefusedLine:
    """A line that was not taken, and why."""

    line: int
    code: str
    says: str
    next_step: str


@dataclass(slots=True)
class Imported:
    """What came of a file."""

    taken: int = 0
    had: int = 0
    invented: int = 0
    photos: int = 0
    refused: list[RefusedLine] = field(default_factory=list)


def read_lines(file: Path) -> Iterator[Line]:
    """The entries of an export, or of a bare file of JSON lines.

    raises: FileUnreadable
    """
    with opened_log(file) as lines:
        number = 0
        while raw := lines.readline(LONGEST_LINE):
            number += 1
            if raw.strip():
                yield line_of(number, raw)


def confirm_log(file: Path) -> None:
    """Stop at a file of which no line looks like one of a log; an empty log is one.

    raises: FileUnreadable
    """
    is_empty = True
    for line in read_lines(file):
        if line.of_log:
            return
        is_empty = False
    if not is_empty:
        raise FileUnreadable(file=file)


@contextmanager
def opened_log(file: Path) -> Iterator[IO[bytes]]:
    """The JSON lines of a file.

    raises: FileUnreadable
    """
    try:
        if zipfile.is_zipfile(file):
            with zipfile.ZipFile(file) as found, found.open(LOG) as lines:
                yield lines
        else:
            with file.open("rb") as lines:
                yield lines
    except (OSError, zipfile.BadZipFile, KeyError, EOFError) as fault:
        raise FileUnreadable(file=file) from fault


def read_photos(file: Path) -> Iterator[tuple[str, bytes]]:
    """The photos of an export, or of the folder beside a bare file, with the name each claims."""
    if zipfile.is_zipfile(file):
        with zipfile.ZipFile(file) as found:
            for member in found.infolist():
                sha = member.filename.removeprefix(PHOTOS)
                photo = member.filename.startswith(PHOTOS) and SHA.fullmatch(sha)
                if photo and member.file_size <= MOST_PHOTO:
                    yield sha, found.read(member)
        return
    for picture in sorted(file.with_name(PHOTOS.rstrip("/")).glob("*")):
        if SHA.fullmatch(picture.name) and picture.stat().st_size <= MOST_PHOTO:
            yield picture.name, picture.read_bytes()


def line_of(number: int, raw: bytes) -> Line:
    """What one line offers: an entry as on the wire, with or without its old number."""
    of_log = False
    try:
        found = parse(raw)
        if type(found) is dict and "entry" in found and "heading" not in found:
            found = {key: found[key] for key in ("order", "entry") if key in found}
        of_log = type(found) is dict and not found.keys().isdisjoint(("entry", "heading"))
        sent = unwrapped(found)
        taken = take(sent.facts)
    except (Refusal, NotJson, TooMuch) as refused:
        return Line(number, refused, of_log)
    return Line(number, offered(taken, sent.order))


def refused_line(number: int, why: WitnessmarkError) -> RefusedLine:
    """The line of the answer for an entry that was not taken."""
    return RefusedLine(number, why.code, why.sentence, why.next)
