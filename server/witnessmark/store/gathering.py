"""Which subjects an entry touches, and which entries a subject is made of.

A strike-out is about an entry, not about a thing; so it belongs to the subject of what it strikes,
through as many strike-outs as lie between. It may arrive first, and then waits for its target.
"""

import json
from collections import defaultdict
from collections.abc import Iterable, Iterator, Sequence
from typing import Any, NamedTuple

from sqlalchemy import ColumnElement, Connection, select

from witnessmark.log.values import Ordered
from witnessmark.store import tables
from witnessmark.store.among import among

STRIKE = "strike-out"


class Line(NamedTuple):
    """What of an entry says where it belongs, and the entry itself."""

    seq: int
    id: str
    heading: str
    about: str
    given: Ordered


def new_lines(connection: Connection, workshop: str, after: int, most: int) -> list[Line]:
    """The entries after a number."""
    table = tables.entry.c
    query = select(table.seq, table.order, table.text).order_by(table.seq).limit(most)
    rows = connection.execute(query.where(table.workshop == workshop, table.seq > after))
    return [_line(*row) for row in rows]


def touched(connection: Connection, workshop: str, news: Sequence[Line]) -> set[str]:
    """The abouts whose subjects change by new entries."""
    found = {line.about for line in news}
    seen: set[str] = set()
    targets = {line.about for line in news if line.heading == STRIKE}
    while targets := targets - seen:
        seen |= targets
        table = tables.entry.c
        lines = list(_entries(connection, workshop, among(connection, table.id, targets)))
        found |= {line.about for line in lines}
        targets = {line.about for line in lines if line.heading == STRIKE}
    return found


class News:
    """Entries the table of abouts does not show yet, by what they are about."""

    def __init__(self, lines: Iterable[Line]) -> None:
        self._by_about: dict[str, list[Line]] = defaultdict(list)
        for line in lines:
            self._by_about[line.about].append(line)

    def about(self, abouts: Iterable[str]) -> Iterator[Line]:
        """Those about some ids."""
        for about in abouts:
            yield from self._by_about.get(about, ())


def gathered(
    connection: Connection, workshop: str, abouts: Iterable[str], news: News
) -> dict[str, list[Ordered]]:
    """For each about all its entries with their order; none for an about of strike-outs only."""
    groups: dict[str, dict[str, Line]] = defaultdict(dict)
    home: dict[str, set[str]] = defaultdict(set)  # entry id -> abouts it belongs to
    wanted = set(abouts)
    fresh: set[str] = set()
    for line in (*_about(connection, workshop, wanted), *news.about(wanted)):
        groups[line.about][line.id] = line
        home[line.id].add(line.about)
        fresh.add(line.id)
    while fresh:
        strikes = (*_about(connection, workshop, fresh, strikes=True), *news.about(fresh))
        fresh = set()
        for line in strikes:
            missing = {about for about in home[line.about] if line.id not in groups[about]}
            if line.heading == STRIKE and missing:
                fresh.add(line.id)
                home[line.id] |= missing
                for about in missing:
                    groups[about][line.id] = line
    return {
        about: [line.given for line in lines.values()]
        for about, lines in groups.items()
        if any(line.heading != STRIKE for line in lines.values())
    }


def _line(seq: int, order: str | None, text: str) -> Line:
    facts: dict[str, Any] = json.loads(text)
    given = Ordered(entry=facts, order=order or facts["stamp"])
    return Line(seq, facts["id"], facts["heading"], facts["about"], given)


def _about(
    connection: Connection, workshop: str, abouts: set[str], *, strikes: bool = False
) -> Iterator[Line]:
    """Entries about some ids, by the table that says which they are."""
    about, entry = tables.about.c, tables.entry.c
    query = select(entry.seq, entry.order, entry.text).where(
        about.workshop == workshop,
        among(connection, about.about, abouts),
        entry.workshop == workshop,
        entry.seq == about.seq,
    )
    if strikes:
        query = query.where(about.heading == STRIKE)
    yield from (_line(*row) for row in connection.execute(query))


def _entries(connection: Connection, workshop: str, where: ColumnElement[bool]) -> Iterator[Line]:
    table = tables.entry.c
    query = select(table.seq, table.order, table.text).where(table.workshop == workshop, where)
    yield from (_line(*row) for row in connection.execute(query))
