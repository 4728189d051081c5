"""The tables catch up with the log before they are read, some hundred entries at a time."""

from collections import defaultdict
from collections.abc import Iterable

from sqlalchemy import Connection, Engine, Table, delete, insert, select, update

from witnessmark.log.workshop import subject
from witnessmark.store import tables
from witnessmark.store.engine import reading, writing
from witnessmark.store.gathering import gathered, touched
from witnessmark.store.log_append import read_head
from witnessmark.store.typed_rows import Row, rows_of

_ENTRIES_AT_ONCE = 1_000
_ASKED_AT_ONCE = 500
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


def catch_up(engine: Engine, workshop: str) -> None:
    """Project every entry the tables do not show yet; a write only when there is news."""
    while True:
        with reading(engine) as connection:
            head = read_head(connection, workshop)
        if head.projected >= head.head:
            return
        with writing(engine) as connection:
            project_some(connection, workshop)


def project_some(connection: Connection, workshop: str) -> int:
    """Project the next entries; how many there were. Nothing an entry holds can stop this."""
    done = read_head(connection, workshop, locked=True).projected
    table = tables.entry.c
    query = select(table.seq, table.id, table.heading, table.about).order_by(table.seq)
    query = query.where(table.workshop == workshop, table.seq > done).limit(_ENTRIES_AT_ONCE)
    news = connection.execute(query).all()
    if news:
        changed = touched(connection, workshop, [(row[1], row[2], row[3]) for row in news])
        _forget(connection, workshop, changed)
        _write(connection, workshop, changed)
        where = tables.workshop.c.id == workshop
        change = update(tables.workshop).where(where).values(projected=news[-1][0])
        connection.execute(change)
    return len(news)


def _forget(connection: Connection, workshop: str, abouts: Iterable[str]) -> None:
    ids = sorted(abouts)
    for start in range(0, len(ids), _ASKED_AT_ONCE):
        some = ids[start : start + _ASKED_AT_ONCE]
        for table, column in _OWNED:
            where = (table.c.workshop == workshop, table.c[column].in_(some))
            connection.execute(delete(table).where(*where))


def _write(connection: Connection, workshop: str, abouts: Iterable[str]) -> None:
    rows: dict[Table, list[Row]] = defaultdict(list)
    for about, entries in gathered(connection, workshop, abouts).items():
        for table, row in rows_of(subject(about, entries)):
            rows[table].append({"workshop": workshop, **row})
    for table, some in rows.items():
        connection.execute(insert(table), some)
