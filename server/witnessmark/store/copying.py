"""Copies of a workshop as a ZIP: an export anybody can read, or a backup to come back from.

An export is ``log.jsonl`` (one ``{"seq", "order"?, "entry"}`` a line) and ``photos/SHA``. A backup
is the same plus devices, settings and the computer's trust. Both are of one snapshot of the log,
taken while the server goes on, and have their name only once they are whole on disk.
"""

import json
import os
import secrets
import zipfile
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path

from sqlalchemy import Connection, select

from witnessmark.store import tables
from witnessmark.store.engine import named_faults
from witnessmark.store.errors import FileNotWritten
from witnessmark.store.photos import every_photo, photo_file, sync_folder
from witnessmark.store.settings import COMPUTER

LOG, DEVICES, SETTINGS, WORKSHOP = "log.jsonl", "devices.jsonl", "settings.json", "workshop.json"
PHOTOS, TRUST = "photos/", "trust/"
_READ_AT_ONCE = 500


@dataclass(frozen=True, slots=True)
class Copied:
    """What a copy holds."""

    entries: int
    photos: int


def export(connection: Connection, workshop: str, data: Path, file: Path) -> Copied:
    """Write log and photos.

    raises: FileNotWritten, NoRoom
    """
    with _whole(file) as into:
        entries = _log(connection, workshop, into, carriers=False)
        return Copied(entries, _photos(connection, workshop, data, into))


def back_up(connection: Connection, workshop: str, data: Path, file: Path) -> Copied:
    """Write all that a new computer needs to go on as this one.

    raises: FileNotWritten, NoRoom
    """
    with _whole(file) as into:
        entries = _log(connection, workshop, into, carriers=True)
        _tables(connection, workshop, into)
        for found in sorted((data / TRUST).rglob("*")):
            if found.is_file():
                into.write(found, TRUST + found.relative_to(data / TRUST).as_posix())
        return Copied(entries, _photos(connection, workshop, data, into))


@contextmanager
def _whole(file: Path) -> Iterator[zipfile.ZipFile]:
    aside = file.with_name(f".{file.name}.{secrets.token_hex(4)}")
    try:
        with named_faults(), aside.open("xb") as writing:
            os.chmod(aside, 0o600)
            with zipfile.ZipFile(writing, "w", zipfile.ZIP_DEFLATED, compresslevel=6) as into:
                yield into
            writing.flush()
            os.fsync(writing.fileno())
        aside.replace(file)
        sync_folder(file.resolve().parent)
    except OSError as fault:
        raise FileNotWritten(file=file) from fault
    finally:
        aside.unlink(missing_ok=True)


def _log(connection: Connection, workshop: str, into: zipfile.ZipFile, *, carriers: bool) -> int:
    count = 0
    with into.open(LOG, "w", force_zip64=True) as lines:
        for seq, order, carrier, text in _entries(connection, workshop):
            given = f'"order":"{order}",' if order is not None else ""
            if carriers and carrier is not None:
                given += f'"carrier":{json.dumps(carrier)},'
            lines.write(f'{{"seq":{seq},{given}"entry":{text}}}\n'.encode())
            count += 1
    return count


def _entries(
    connection: Connection, workshop: str
) -> Iterator[tuple[int, str | None, str | None, str]]:
    table = tables.entry.c
    query = select(table.seq, table.order, table.carrier, table.text).order_by(table.seq)
    last = 0
    while True:
        where = (table.workshop == workshop, table.seq > last)
        some = connection.execute(query.where(*where).limit(_READ_AT_ONCE)).all()
        for row in some:
            yield row[0], row[1], row[2], row[3]
        if len(some) < _READ_AT_ONCE:
            return
        last = some[-1][0]


def _photos(connection: Connection, workshop: str, data: Path, into: zipfile.ZipFile) -> int:
    count = 0
    for sha in every_photo(connection, workshop):
        file = photo_file(data, sha)
        if file.is_file():  # one that is lost here may still be on a phone, which is asked
            into.write(file, PHOTOS + sha, zipfile.ZIP_STORED)
            count += 1
    return count


def _tables(connection: Connection, workshop: str, into: zipfile.ZipFile) -> None:
    named = (tables.workshop.c.id, tables.workshop.c.name, tables.workshop.c.made)
    query = select(*named).where(tables.workshop.c.id == workshop)
    into.writestr(WORKSHOP, json.dumps(dict(connection.execute(query).mappings().one())))
    devices = select(tables.device).where(tables.device.c.workshop == workshop)
    rows = connection.execute(devices.order_by(tables.device.c.paired)).mappings()
    into.writestr(DEVICES, "".join(json.dumps(dict(row)) + "\n" for row in rows))
    table = tables.setting.c
    settings = select(table.workshop, table.name, table.value)
    settings = settings.where(table.workshop.in_([workshop, COMPUTER]))
    kept = [list(row) for row in connection.execute(settings.order_by(table.name))]
    into.writestr(SETTINGS, json.dumps(kept))
