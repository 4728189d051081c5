"""Which subjects an entry touches, and which entries a subject is made of.

A strike-out is about an entry, not about a thing; so it belongs to the subject of what it strikes,
through as many strike-outs as lie between. It may arrive first, and then waits for its target.
"""

import json
from collections import defaultdict
from collections.abc import Iterable, Iterator, Sequence
from typing import Any

from sqlalchemy import Column, ColumnElement, Connection, select

from witnessmark.log.values import Ordered
from witnessmark.store import tables

STRIKE = "strike-out"
_ASKED_AT_ONCE = 500
Line = tuple[str, str, str, str | None, str]  # id, heading, about, order, text


def touched(
    connection: Connection, workshop: str, news: Sequence[tuple[str, str, str]]
) -> set[str]:
    """The abouts whose subjects change by new entries, given as (id, heading, about)."""
    found = {about for _, _, about in news}
    seen: set[str] = set()
    targets = {about for _, heading, about in news if heading == STRIKE}
    while targets := targets - seen:
        seen |= targets
        table = tables.entry.c
        columns = (table.heading, table.about)
        rows = list(_among(connection, workshop, columns, table.id, targets))
        found |= {about for _, about in rows}
        targets = {about for heading, about in rows if heading == STRIKE}
    return found


def gathered(
    connection: Connection, workshop: str, abouts: Iterable[str]
) -> dict[str, list[Ordered]]:
    """For each about all its entries with their order; none for an about of strike-outs only."""
    groups: dict[str, dict[str, Line]] = defaultdict(dict)
    home: dict[str, set[str]] = defaultdict(set)  # entry id -> abouts it belongs to
    fresh: set[str] = set()
    for line in _lines(connection, workshop, tables.entry.c.about, set(abouts)):
        groups[line[2]][line[0]] = line
        home[line[0]].add(line[2])
        fresh.add(line[0])
    while fresh:
        strikes = list(_strikes_of(connection, workshop, fresh))
        fresh = set()
        for line in strikes:
            missing = {about for about in home[line[2]] if line[0] not in groups[about]}
            for about in missing:
                groups[about][line[0]] = line
            if missing:
                home[line[0]] |= missing
                fresh.add(line[0])
    return {
        about: [_ordered(line) for line in lines.values()]
        for about, lines in groups.items()
        if any(line[1] != STRIKE for line in lines.values())
    }


def _ordered(line: Line) -> Ordered:
    entry = json.loads(line[4])
    return Ordered(entry=entry, order=line[3] or entry["stamp"])


def _strikes_of(connection: Connection, workshop: str, ids: set[str]) -> Iterator[Line]:
    table = tables.entry.c
    yield from _lines(connection, workshop, table.about, ids, table.heading == STRIKE)


def _lines(
    connection: Connection,
    workshop: str,
    column: Column[Any],
    among: set[str],
    *where: ColumnElement[bool],
) -> Iterator[Line]:
    table = tables.entry.c
    columns = (table.id, table.heading, table.about, table.order, table.text)
    for row in _among(connection, workshop, columns, column, among, *where):
        yield row[0], row[1], row[2], row[3], row[4]


def _among(
    connection: Connection,
    workshop: str,
    columns: Sequence[Column[Any]],
    column: Column[Any],
    among: set[str],
    *where: ColumnElement[bool],
) -> Iterator[tuple[Any, ...]]:
    """Rows of the log whose column is one of many values, asked in slices."""
    values = sorted(among)
    for start in range(0, len(values), _ASKED_AT_ONCE):
        some = values[start : start + _ASKED_AT_ONCE]
        query = select(*columns).where(tables.entry.c.workshop == workshop, column.in_(some))
        for row in connection.execute(query.where(*where)):
            yield tuple(row)
