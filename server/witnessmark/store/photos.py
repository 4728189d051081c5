"""Photos by their digest: written aside, synced to disk, then given their name.

Files are shared by all workshops of a computer; a row says which workshop may read one.
"""

import hashlib
import os
import re
import secrets
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from pathlib import Path

from sqlalchemy import Connection, insert, select

from witnessmark.errors import PhotoDiffers, PhotoUnknown, WrongType
from witnessmark.store import tables
from witnessmark.store.among import among
from witnessmark.store.engine import named_faults
from witnessmark.store.ids import moment

SHA = re.compile(r"[0-9a-f]{64}")


@dataclass(frozen=True, slots=True)
class Photo:
    """A kept photo: where its file is and what it is."""

    file: Path
    mime: str


def mime_of(raw: bytes) -> str:
    """What a picture is, by its first bytes.

    raises: WrongType when it is no JPEG, PNG or WebP.
    source: the signatures of JFIF/Exif, PNG (ISO/IEC 15948) and RIFF/WebP
    """
    if raw.startswith(b"\xff\xd8\xff"):
        return "image/jpeg"
    if raw.startswith(b"\x89PNG\r\n\x1a\n"):
        return "image/png"
    if raw.startswith(b"RIFF") and raw[8:12] == b"WEBP":
        return "image/webp"
    raise WrongType(type="This file", wanted="a JPEG, PNG or WebP picture")


def photo_file(data: Path, sha: str) -> Path:
    """Where the file of a photo lies."""
    return data / "photos" / sha[:2] / sha


def keep_file(data: Path, sha: str, raw: bytes) -> str:
    """Put a photo on disk, whole or not at all; its type.

    raises: WrongType, PhotoDiffers, NoRoom
    """
    mime = mime_of(raw)
    if hashlib.sha256(raw).hexdigest() != sha:
        raise PhotoDiffers
    file = photo_file(data, sha)
    if not file.is_file() or file.stat().st_size != len(raw):
        with named_faults():
            _write(file, raw)
    return mime


def _write(file: Path, raw: bytes) -> None:
    file.parent.mkdir(mode=0o700, parents=True, exist_ok=True)
    aside = file.with_name(f".{file.name}.{secrets.token_hex(4)}")
    try:
        with aside.open("wb") as writing:
            writing.write(raw)
            writing.flush()
            os.fsync(writing.fileno())
        aside.replace(file)
        sync_folder(file.parent)
    finally:
        aside.unlink(missing_ok=True)


def sync_folder(folder: Path) -> None:
    """Make a rename outlive a power cut, where the system knows how (Windows does it itself)."""
    if os.name == "posix":
        handle = os.open(folder, os.O_RDONLY)
        try:
            os.fsync(handle)
        finally:
            os.close(handle)


def note_photo(
    connection: Connection, workshop: str, sha: str, mime: str, *, size: int, now_ms: int
) -> bool:
    """Remember that the workshop has this photo; whether that is news."""
    if had(connection, workshop, [sha]):
        return False
    row = {"workshop": workshop, "sha": sha, "mime": mime, "size": size}
    connection.execute(insert(tables.photo).values({**row, "arrived": moment(now_ms)}))
    return True


def had(connection: Connection, workshop: str, shas: Iterable[str]) -> set[str]:
    """Those of the photos that the workshop has."""
    table = tables.photo.c
    query = select(table.sha).where(table.workshop == workshop, among(connection, table.sha, shas))
    return set(connection.execute(query).scalars())


def find_photo(connection: Connection, workshop: str, data: Path, sha: str) -> Photo:
    """A photo of this workshop.

    raises: PhotoUnknown
    """
    table = tables.photo.c
    query = select(table.mime).where(table.workshop == workshop, table.sha == sha)
    mime = connection.execute(query).scalar()
    file = photo_file(data, sha)
    if mime is None or not file.is_file():
        raise PhotoUnknown
    return Photo(file, mime)


def every_photo(connection: Connection, workshop: str) -> Iterator[str]:
    """The digests of all photos of a workshop."""
    table = tables.photo.c
    query = select(table.sha).where(table.workshop == workshop).order_by(table.sha)
    yield from connection.execute(query).scalars()
