"""The proof that the tables are only a view: drop them, replay the log, compare row by row."""

import json
from collections import defaultdict
from collections.abc import Iterator
from dataclasses import dataclass
from typing import Any

from sqlalchemy import Connection, Table, delete, select, update

from witnessmark.log.digest import added, as_hex, digest
from witnessmark.store import tables
from witnessmark.store.log_append import read_head
from witnessmark.store.numbers import note_numbers
from witnessmark.store.projecting import project_all

_READ_AT_ONCE = 1_000
_TOLD = 100
Rows = dict[tuple[Any, ...], dict[str, Any]]


@dataclass(frozen=True, slots=True)
class Rebuilt:
    """How much was replayed, and what was not as the log says."""

    entries: int
    rows: int
    differences: list[str]


def rebuild(connection: Connection, workshop: str) -> Rebuilt:
    """Make every table of the projection anew, and tell where it was not what the log says."""
    project_all(connection, workshop)
    before = {table: _rows(connection, workshop, table) for table in tables.PROJECTION}
    for table in tables.PROJECTION:
        connection.execute(delete(table).where(table.c.workshop == workshop))
    here = tables.workshop.c.id == workshop
    connection.execute(update(tables.workshop).where(here).values(projected=0))
    differences = _recount(connection, workshop)
    project_all(connection, workshop)
    after = {table: _rows(connection, workshop, table) for table in tables.PROJECTION}
    for table in tables.PROJECTION:
        differences += _compared(table.name, before[table], after[table])
    head = read_head(connection, workshop)
    return Rebuilt(head.count, sum(map(len, after.values())), differences[:_TOLD])


def _recount(connection: Connection, workshop: str) -> list[str]:
    """Head, count, digest and the devices' own numbers, from the entries themselves."""
    total, count, last = 0, 0, 0
    latest: str | None = None
    made: dict[str, list[int]] = defaultdict(list)
    for row in _entries(connection, workshop):
        total = added(total, [digest(row.text, row.order)])
        count, last = count + 1, row.seq
        facts = json.loads(row.text)
        made[facts["device"]].append(facts["n"])
        latest = max(latest or "", row.order or facts["stamp"])
    note_numbers(connection, workshop, made)
    kept = read_head(connection, workshop)
    true = {"head": last, "count": count, "digest": as_hex(total), "latest": latest}
    wrong = {name: told for name, told in true.items() if getattr(kept, name) != told}
    if wrong:
        here = tables.workshop.c.id == workshop
        connection.execute(update(tables.workshop).where(here).values(**wrong))
    if last != count:
        return [*map(_figure, wrong), f"the log has {count} entries and ends with {last}"]
    return [*map(_figure, wrong)]


def _figure(name: str) -> str:
    return f"workshop: {name} was not what the log says"


def _entries(connection: Connection, workshop: str) -> Iterator[Any]:
    table = tables.entry.c
    query = select(table.seq, table.order, table.text).order_by(table.seq)
    last = 0
    while True:
        where = (table.workshop == workshop, table.seq > last)
        some = connection.execute(query.where(*where).limit(_READ_AT_ONCE)).all()
        yield from some
        if len(some) < _READ_AT_ONCE:
            return
        last = some[-1].seq


def _rows(connection: Connection, workshop: str, table: Table) -> Rows:
    query = select(table).where(table.c.workshop == workshop)
    keys = [column.name for column in table.primary_key.columns]
    rows = (dict(row) for row in connection.execute(query).mappings())
    return {tuple(row[key] for key in keys): row for row in rows}


def _compared(name: str, before: Rows, after: Rows) -> list[str]:
    return [
        f"{name} {' '.join(map(str, key[1:]))}: {_change(before.get(key), after.get(key))}"
        for key in sorted({*before, *after})
        if before.get(key) != after.get(key)
    ]


def _change(before: dict[str, Any] | None, after: dict[str, Any] | None) -> str:
    if before is None:
        return "was missing"
    if after is None:
        return "was too many"
    changed = [column for column in after if before[column] != after[column]]
    return f"{', '.join(changed)} differed"
