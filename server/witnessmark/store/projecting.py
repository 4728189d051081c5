"""The tables catch up with the log before they are read, some hundred entries at a time."""

from collections import defaultdict
from collections.abc import Iterable
from itertools import islice
from typing import NamedTuple

from sqlalchemy import Connection, Engine, Table, delete, insert, update

from witnessmark.log.workshop import subject
from witnessmark.store import tables
from witnessmark.store.among import among
from witnessmark.store.engine import reading, writing
from witnessmark.store.gathering import News, gathered, new_lines, touched
from witnessmark.store.log_append import read_head
from witnessmark.store.typed_rows import Row, rows_of

_ENTRIES_AT_ONCE = 20_000
_SUBJECTS_AT_ONCE = 200
# Where the subject's id stands in each table that follows from it.
_OWNED = (
    (tables.subject, "id"),
    (tables.link, "origin"),
    (tables.part, "id"),
    (tables.holder, "id"),
    (tables.joint, "id"),
    (tables.label, "code"),
    (tables.pull, "joint"),
    (tables.inspection, "part"),
    (tables.printed, "sheet"),
)


class Plan(NamedTuple):
    """Rows to write for the next entries, made without holding anybody up."""

    since: int
    until: int
    abouts: set[str]
    rows: dict[Table, list[Row]]


def catch_up(engine: Engine, workshop: str) -> None:
    """Project every entry the tables do not show yet; a write only when there is news.

    The fold runs on a snapshot, outside the write; so a long one does not hold up a push.
    """
    while True:
        with reading(engine) as connection:
            plan = planned(connection, workshop)
        if plan is None:
            return
        with writing(engine) as connection:
            # Somebody else may have caught up meanwhile; then the plan is stale and made anew.
            if read_head(connection, workshop, locked=True).projected == plan.since:
                carry_out(connection, workshop, plan)


def project_all(connection: Connection, workshop: str) -> None:
    """Catch up inside the caller's own transaction."""
    while plan := planned(connection, workshop):
        carry_out(connection, workshop, plan)


def planned(connection: Connection, workshop: str) -> Plan | None:
    """What the next entries change; None when there are none. No entry can stop this."""
    head = read_head(connection, workshop)
    if head.projected >= head.head:
        return None
    news = new_lines(connection, workshop, head.projected, _ENTRIES_AT_ONCE)
    abouts = touched(connection, workshop, news)
    rows = _rows(connection, workshop, abouts, News(news))
    for line in news:
        filed = {"about": line.about, "seq": line.seq, "heading": line.heading, "entry": line.id}
        rows[tables.about].append({"workshop": workshop, **filed})
    return Plan(head.projected, news[-1].seq, abouts, rows)


def carry_out(connection: Connection, workshop: str, plan: Plan) -> None:
    """Write the rows of a plan in place of what these subjects had before."""
    for table, column in _OWNED:
        where = (table.c.workshop == workshop, among(connection, table.c[column], plan.abouts))
        connection.execute(delete(table).where(*where))
    for table, some in plan.rows.items():
        connection.execute(insert(table), some)
    here = tables.workshop.c.id == workshop
    connection.execute(update(tables.workshop).where(here).values(projected=plan.until))


def _rows(
    connection: Connection, workshop: str, abouts: Iterable[str], news: News
) -> dict[Table, list[Row]]:
    rows: dict[Table, list[Row]] = defaultdict(list)
    ids = iter(sorted(abouts))
    while some := list(islice(ids, _SUBJECTS_AT_ONCE)):
        for about, entries in gathered(connection, workshop, some, news).items():
            for table, row in rows_of(subject(about, entries)):
                rows[table].append({"workshop": workshop, **row})
    return rows
