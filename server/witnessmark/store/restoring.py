"""Restore: a backup becomes a data folder again, number for number and byte for byte."""

import json
import os
import shutil
import zipfile
from collections import defaultdict
from dataclasses import dataclass
from pathlib import Path, PurePosixPath
from typing import Any

from sqlalchemy import Connection, insert, select, update

from witnessmark.errors import WitnessmarkError
from witnessmark.log.clean import canonical, parse
from witnessmark.log.digest import added, as_hex, digest
from witnessmark.store import tables
from witnessmark.store.copying import DEVICES, LOG, SETTINGS, TRUST, WORKSHOP
from witnessmark.store.engine import named_faults, writing
from witnessmark.store.errors import FileUnreadable, FolderNotEmpty
from witnessmark.store.importing import read_photos
from witnessmark.store.log_append import EntryRow, insert_entries
from witnessmark.store.numbers import note_numbers
from witnessmark.store.opened import Store
from witnessmark.store.opening import open_store
from witnessmark.store.photos import keep_file, note_photo

_ROWS_AT_ONCE = 1_000


@dataclass(frozen=True, slots=True)
class Restored:
    """What came back."""

    entries: int
    photos: int
    devices: int


def restore(file: Path, data: Path, database: str | None = None) -> Restored:
    """Bring a backup back into an empty folder (and an empty database).

    raises: FolderNotEmpty, FileUnreadable, FolderNotFit, NoRoom
    """
    if data.is_dir() and any(data.iterdir()):
        raise FolderNotEmpty(folder=data)
    try:
        with zipfile.ZipFile(file) as found:
            if not {LOG, DEVICES, SETTINGS, WORKSHOP} <= set(found.namelist()):
                raise FileUnreadable(file=file)
            return _restored(found, file, open_store(data, database))
    except (OSError, zipfile.BadZipFile, ValueError, KeyError, TypeError) as fault:
        _emptied(data)
        raise FileUnreadable(file=file) from fault
    except WitnessmarkError:
        _emptied(data)
        raise


def _emptied(data: Path) -> None:
    # The folder was empty when we came, so what lies in it now is ours.
    for found in data.iterdir() if data.is_dir() else ():
        shutil.rmtree(found) if found.is_dir() else found.unlink()


def _restored(found: zipfile.ZipFile, file: Path, store: Store) -> Restored:
    try:
        with writing(store.engine) as connection:
            if connection.execute(select(tables.workshop.c.id)).first():
                raise FolderNotEmpty(folder=store.engine.url.render_as_string())
            workshop = json.loads(found.read(WORKSHOP))
            connection.execute(insert(tables.workshop).values({**workshop, "digest": "0" * 64}))
            entries = _entries(connection, workshop["id"], found)
            devices = [json.loads(line) for line in found.read(DEVICES).splitlines() if line]
            _insert(connection, "device", devices)
            settings = json.loads(found.read(SETTINGS))
            named = ("workshop", "name", "value")
            _insert(connection, "setting", [dict(zip(named, row, strict=True)) for row in settings])
            photos = _photos(connection, workshop["id"], file, store)
        _trust(found, store.data)
    finally:
        store.close()
    return Restored(entries, photos, len(devices))


def _insert(connection: Connection, name: str, rows: list[dict[str, Any]]) -> None:
    if rows:
        connection.execute(insert(tables.db.metadata.tables[name]), rows)


class _Copy:
    """The log of a backup on its way back, and the figures that follow from it."""

    def __init__(self, connection: Connection, workshop: str) -> None:
        self.connection = connection
        self.workshop = workshop
        self.count = 0
        self.total = 0
        self.latest = ""
        self.rows: list[EntryRow] = []
        self.numbers: dict[str, list[int]] = defaultdict(list)

    def add(self, line: Any) -> bool:
        """Take one line; False when its number is not the next one."""
        facts, order = line["entry"], line.get("order")
        text = canonical(facts)
        self.count += 1
        self.total = added(self.total, [digest(text, order)])
        self.latest = max(self.latest, order or facts["stamp"])
        self.rows.append((self.workshop, self.count, facts["id"], order, line.get("carrier"), text))
        self.numbers[facts["device"]].append(facts["n"])
        if len(self.rows) >= _ROWS_AT_ONCE:
            self.write()
        return bool(line["seq"] == self.count)

    def write(self) -> None:
        """Write what has come so far."""
        if self.rows:
            insert_entries(self.connection, self.rows)
            note_numbers(self.connection, self.workshop, self.numbers)
        self.rows, self.numbers = [], defaultdict(list)
        figures = {"head": self.count, "count": self.count, "digest": as_hex(self.total)}
        here = tables.workshop.c.id == self.workshop
        change = update(tables.workshop).where(here)
        self.connection.execute(change.values(**figures, latest=self.latest or None))


def _entries(connection: Connection, workshop: str, found: zipfile.ZipFile) -> int:
    copy = _Copy(connection, workshop)
    with found.open(LOG) as lines:
        for raw in lines:
            if not copy.add(parse(raw)):
                raise FileUnreadable(file=f"{found.filename}, {LOG} line {copy.count}")
    copy.write()
    return copy.count


def _photos(connection: Connection, workshop: str, file: Path, store: Store) -> int:
    count = 0
    for sha, raw in read_photos(file):
        mime = keep_file(store.data, sha, raw)
        now = store.now_ms()
        count += note_photo(connection, workshop, sha, mime, size=len(raw), now_ms=now)
    return count


def _trust(found: zipfile.ZipFile, data: Path) -> None:
    for member in found.infolist():
        steps = PurePosixPath(member.filename).parts
        if not member.filename.startswith(TRUST) or member.is_dir() or ".." in steps:
            continue
        file = data.joinpath(*steps)
        file.parent.mkdir(mode=0o700, parents=True, exist_ok=True)
        with named_faults(), open(file, "wb", opener=_owner_only) as into:
            into.write(found.read(member))


def _owner_only(path: str, flags: int) -> int:
    return os.open(path, flags, 0o600)
