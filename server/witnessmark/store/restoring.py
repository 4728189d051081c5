"""Restore: a backup becomes a data folder again, number for number and byte for byte."""

import json
import os
import shutil
import zipfile
from collections.abc import Iterator
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
from witnessmark.store.numbers import note_numbers
from witnessmark.store.offering import filed
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
    except (OSError, zipfile.BadZipFile, ValueError, KeyError) as fault:
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


def _entries(connection: Connection, workshop: str, found: zipfile.ZipFile) -> int:
    total, count, latest = 0, 0, ""
    rows: list[dict[str, Any]] = []
    for row in _rows(found):
        count += 1
        if row["seq"] != count:
            raise FileUnreadable(file=f"{found.filename}, {LOG} line {count}")
        total = added(total, [digest(row["text"], row["order"])])
        latest = max(latest, row["order"] or row.pop("stamp"))
        row.pop("stamp", None)
        rows.append({"workshop": workshop, **row})
        if len(rows) == _ROWS_AT_ONCE:
            _keep(connection, workshop, rows)
            rows = []
    _keep(connection, workshop, rows)
    figures = {"head": count, "count": count, "digest": as_hex(total), "latest": latest or None}
    here = tables.workshop.c.id == workshop
    connection.execute(update(tables.workshop).where(here).values(figures))
    return count


def _keep(connection: Connection, workshop: str, rows: list[dict[str, Any]]) -> None:
    _insert(connection, "entry", rows)
    note_numbers(connection, workshop, ((row["device"], row["n"]) for row in rows))


def _rows(found: zipfile.ZipFile) -> Iterator[dict[str, Any]]:
    with found.open(LOG) as lines:
        for raw in lines:
            line: Any = parse(raw)
            facts = line["entry"]
            yield {
                "seq": line["seq"],
                "id": facts["id"],
                "heading": filed(facts["heading"]),
                "about": filed(facts["about"]),
                "device": filed(facts["device"]),
                "n": facts["n"],
                "order": line.get("order"),
                "carrier": line.get("carrier"),
                "text": canonical(facts),
                "stamp": facts["stamp"],
            }


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
