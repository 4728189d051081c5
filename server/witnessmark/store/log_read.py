"""Pull is reading on after a cursor: stored text, never decoded and never made anew."""

from collections.abc import Iterator, Set
from dataclasses import dataclass

from sqlalchemy import Connection, select

from witnessmark.errors import LogForked
from witnessmark.store import tables

PAGE_BYTES = 4 * 1024 * 1024
PAGE_ENTRIES = 5_000
_READ_AT_ONCE = 500
_GREATEST_NUMBER = (1 << 53) - 1

Row = tuple[int, str, str | None, str]


@dataclass(frozen=True, slots=True)
class Cursor:
    """A place in the log: a number, and the end of the id of the entry there."""

    number: int
    tail: str

    def __str__(self) -> str:
        return f"{self.number}.{self.tail}"


@dataclass(frozen=True, slots=True)
class Page:
    """What comes after a cursor: rows of (number, order, text), and the cursor behind them."""

    rows: list[tuple[int, str | None, str]]
    cursor: Cursor | None


@dataclass(frozen=True, slots=True)
class LogPage:
    """A page of the log and the log's last number."""

    page: Page
    head: int


def confirm_cursor(connection: Connection, workshop: str, cursor: Cursor | None) -> None:
    """Stop when the log has another entry at the cursor's number, or none.

    raises: LogForked
    """
    if cursor is not None and cursor_at(connection, workshop, cursor.number) != cursor:
        raise LogForked


def cursor_at(connection: Connection, workshop: str, number: int) -> Cursor | None:
    """The cursor that names the entry with this number; None where there is none."""
    if not 0 < number <= _GREATEST_NUMBER:
        return None
    table = tables.entry.c
    query = select(table.id).where(table.workshop == workshop, table.seq == number)
    found = connection.execute(query).scalar()
    return None if found is None else Cursor(number, found[-8:])


def page_after(
    connection: Connection, workshop: str, cursor: Cursor | None, room: int, sent: Set[int]
) -> Page:
    """At most ``room`` entries and 4 MiB after the cursor, without the numbers just ``sent``.

    The new cursor names the greatest number up to which every entry is in this page or was sent.
    """
    reached = cursor.number if cursor else 0
    while reached + 1 in sent:
        reached += 1
    rows: list[tuple[int, str | None, str]] = []
    size = 0
    # The log has no hole: without room the next entry, whichever it is, ends the page.
    following = _rows_after(connection, workshop, reached) if room else ()
    for seq, order, text in following:
        if seq not in sent:
            size += _bytes_of(text)
            if len(rows) >= room or (rows and size > PAGE_BYTES):
                break
            rows.append((seq, order, text))
        reached = seq
    if cursor is not None and reached == cursor.number:
        return Page(rows, cursor)
    return Page(rows, cursor_at(connection, workshop, reached))


def log_page(connection: Connection, workshop: str, after: int, limit: int) -> LogPage:
    """What comes after a number, with the same bounds as a page of a sync."""
    rows: list[tuple[int, str | None, str]] = []
    size = 0
    for row in _rows_after(connection, workshop, min(after, _GREATEST_NUMBER)):
        size += _bytes_of(row[2])
        if len(rows) >= limit or (rows and size > PAGE_BYTES):
            break
        rows.append(row)
    last = rows[-1][0] if rows else after
    head = connection.execute(
        select(tables.workshop.c.head).where(tables.workshop.c.id == workshop)
    ).scalar_one()
    return LogPage(Page(rows, cursor_at(connection, workshop, last)), head)


def _bytes_of(text: str) -> int:
    wrapping = 64  # seq, order and braces around it
    return (len(text) if text.isascii() else len(text.encode())) + wrapping


def _rows_after(
    connection: Connection, workshop: str, number: int
) -> Iterator[tuple[int, str | None, str]]:
    table = tables.entry.c
    query = select(table.seq, table.order, table.text).order_by(table.seq).limit(_READ_AT_ONCE)
    while True:
        some = connection.execute(query.where(table.workshop == workshop, table.seq > number)).all()
        for row in some:
            yield row[0], row[1], row[2]
        if len(some) < _READ_AT_ONCE:
            return
        number = some[-1][0]
