"""Push is append: number what is new, answer for each, keep head, count and digest."""

from collections import defaultdict
from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import NamedTuple

from sqlalchemy import Connection, delete, select, update

from witnessmark.errors import IdTaken, Refusal
from witnessmark.log.digest import added, as_hex, digest
from witnessmark.log.stamp import AHEAD_MS, order_given, write_stamp
from witnessmark.store import tables
from witnessmark.store.among import among
from witnessmark.store.numbers import note_numbers
from witnessmark.store.offering import Offered

_COLUMNS = ("workshop", "seq", "id", "order", "carrier", "text")
EntryRow = tuple[str, int, str, str | None, str | None, str]
Known = dict[str, tuple[int, str | None, str]]  # id -> number, order, text


class Taken(NamedTuple):
    """The number an entry has, and its order where the server set one."""

    seq: int
    order: str | None


@dataclass(frozen=True, slots=True)
class Head:
    """Where a workshop's log stands, inside one transaction."""

    head: int
    count: int
    digest: str
    latest: str | None
    projected: int


def read_head(connection: Connection, workshop: str, *, locked: bool = False) -> Head:
    """The workshop's figures; ``locked`` makes other writers of this workshop wait."""
    table = tables.workshop.c
    query = select(table.head, table.count, table.digest, table.latest, table.projected)
    query = query.where(table.id == workshop)
    row = connection.execute(query.with_for_update() if locked else query).one()
    return Head(*row)


def append(
    connection: Connection,
    workshop: str,
    carrier: str | None,
    offers: Sequence[Offered | Refusal],
    now_ms: int,
) -> tuple[Head, list[Taken | Refusal]]:
    """Take what is new of ``offers`` in one go; the answers stand in the order of the offers.

    The head row is locked first, so writers of one workshop queue and no number commits late.
    """
    before = read_head(connection, workshop, locked=True)
    # Nearly every push is all news: asking for each id first would cost as much as the insert.
    batch = _Batch((workshop, carrier), before, {}, now_ms)
    answers = batch.answers(offers)
    if insert_entries(connection, batch.rows) < len(batch.rows):
        _take_back(connection, workshop, before.head)
        known = _known(connection, workshop, offers)
        batch = _Batch((workshop, carrier), before, known, now_ms)
        answers = batch.answers(offers)
        insert_entries(connection, batch.rows)
    if not batch.rows:
        return before, answers
    note_numbers(connection, workshop, batch.numbers)
    after = batch.head()
    _keep_head(connection, workshop, after)
    return after, answers


def _take_back(connection: Connection, workshop: str, head: int) -> None:
    """Undo an insert that met known ids; a savepoint would not outlive SQLite's full disk."""
    table = tables.entry.c
    connection.execute(delete(tables.entry).where(table.workshop == workshop, table.seq > head))


class _Batch:
    """One request's entries on their way into the log."""

    def __init__(
        self, whose: tuple[str, str | None], before: Head, known: Known, now_ms: int
    ) -> None:
        self.workshop, self.carrier = whose
        self.before = before
        self.known = known
        self.now_ms = now_ms
        self.too_far = write_stamp(now_ms + AHEAD_MS + 1)
        self.latest = before.latest or ""
        self.rows: list[EntryRow] = []
        self.numbers: dict[str, list[int]] = defaultdict(list)
        self.digests: list[int] = []
        self.last_order: str | None = None

    def answers(self, offers: Sequence[Offered | Refusal]) -> list[Taken | Refusal]:
        """The first answer for a repeat, a refusal for a taken id, else the next number."""
        answers: list[Taken | Refusal] = []
        for offer in offers:
            if isinstance(offer, Refusal):
                answers.append(offer)
            elif known := self.known.get(offer.facts["id"]):
                seq, order, text = known
                same = text == offer.text
                answers.append(Taken(seq, order) if same else IdTaken(id=offer.facts["id"]))
            else:
                answers.append(self._take(offer))
        return answers

    def head(self) -> Head:
        """Where the log stands with these entries."""
        before, more = self.before, len(self.rows)
        return replace(
            before,
            head=before.head + more,
            count=before.count + more,
            digest=as_hex(added(int(before.digest, 16), self.digests)),
            latest=self.latest or None,
        )

    def _take(self, offer: Offered) -> Taken:
        facts, text, held = offer
        id_, device, stamp = facts["id"], facts["device"], facts["stamp"]
        order = None if held is None and stamp < self.too_far else self._order(stamp, held)
        effective = order or stamp
        self.latest = effective if effective > self.latest else self.latest
        rows = self.rows
        seq = self.before.head + len(rows) + 1
        # Who carried it is only worth a word where that is not who made it.
        carrier = None if device == self.carrier else self.carrier
        rows.append((self.workshop, seq, id_, order, carrier, text))
        self.numbers[device].append(facts["n"])
        self.digests.append(digest(text, order))
        self.known[id_] = (seq, order, text)
        return Taken(seq, order)

    def _order(self, stamp: str, held: str | None) -> str | None:
        """A phone a year fast would otherwise win every field for a year."""
        order = order_given(stamp, self.now_ms, self.last_order, held)
        if order is not None and order != held:
            self.last_order = order
        return order


def _known(connection: Connection, workshop: str, offers: Sequence[Offered | Refusal]) -> Known:
    """Those of the offers the log already has, with number, order and text."""
    table = tables.entry.c
    ids = among(connection, table.id, (o.facts["id"] for o in offers if isinstance(o, Offered)))
    query = select(table.id, table.seq, table.order, table.text)
    rows = connection.execute(query.where(table.workshop == workshop, ids))
    return {row[0]: (row[1], row[2], row[3]) for row in rows}


def insert_entries(connection: Connection, rows: list[EntryRow]) -> int:
    """One multi-row insert, past the compiler: here a push spends its time.

    How many rows went in: less than all when the log has one of the ids.
    """
    if not rows:
        return 0
    columns = ", ".join(f'"{name}"' for name in _COLUMNS)
    mark = "?" if connection.dialect.paramstyle == "qmark" else "%s"
    marks = ", ".join([mark] * len(_COLUMNS))
    known = "ON CONFLICT (workshop, id) DO NOTHING"
    into = f"INSERT INTO entry ({columns}) VALUES ({marks}) {known}"  # noqa: S608 - fixed names
    return connection.exec_driver_sql(into, list(rows)).rowcount


def _keep_head(connection: Connection, workshop: str, head: Head) -> None:
    connection.execute(
        update(tables.workshop)
        .where(tables.workshop.c.id == workshop)
        .values(head=head.head, count=head.count, digest=head.digest, latest=head.latest)
    )
