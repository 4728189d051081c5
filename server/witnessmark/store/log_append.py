"""Push is append: number what is new, answer for each, keep head, count and digest."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import Any

from sqlalchemy import Connection, insert, select, update

from witnessmark.errors import IdTaken, Refusal
from witnessmark.log.digest import added, as_hex, digest
from witnessmark.log.stamp import order_given
from witnessmark.store import tables
from witnessmark.store.numbers import note_numbers
from witnessmark.store.offering import Offered

_LOOKED_UP_AT_ONCE = 500


@dataclass(frozen=True, slots=True)
class Taken:
    """The number an entry has, and its order where the server set one."""

    seq: int
    order: str | None


@dataclass(slots=True)
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
    head = read_head(connection, workshop, locked=True)
    known = _known(connection, workshop, [o.id for o in offers if isinstance(o, Offered)])
    batch = _Batch(workshop, carrier, known, head, now_ms)
    answers = [o if isinstance(o, Refusal) else batch.answer(o) for o in offers]
    if batch.rows:
        connection.execute(insert(tables.entry), batch.rows)
        note_numbers(connection, workshop, ((row["device"], row["n"]) for row in batch.rows))
        _keep_head(connection, workshop, head, batch.digests)
    return head, answers


class _Batch:
    """One request's entries on their way into the log."""

    def __init__(
        self,
        workshop: str,
        carrier: str | None,
        known: dict[str, tuple[int, str | None, str]],
        head: Head,
        now_ms: int,
    ) -> None:
        self.workshop = workshop
        self.carrier = carrier
        self.known = known
        self.head = head
        self.now_ms = now_ms
        self.rows: list[dict[str, Any]] = []
        self.digests: list[int] = []
        self.last_order: str | None = None

    def answer(self, offer: Offered) -> Taken | Refusal:
        """The first answer for a repeat, a refusal for a taken id, else the next number."""
        known = self.known.get(offer.id)
        if known is None:
            return self._take(offer)
        seq, order, text = known
        return Taken(seq, order) if text == offer.text else IdTaken(id=offer.id)

    def _take(self, offer: Offered) -> Taken:
        # A phone a year fast would otherwise win every field for a year.
        order = order_given(offer.stamp, self.now_ms, self.last_order, offer.order)
        if order is not None and order != offer.order:
            self.last_order = order
        self.head.head += 1
        self.head.count += 1
        seq = self.head.head
        self.rows.append(
            {
                "workshop": self.workshop,
                "seq": seq,
                "id": offer.id,
                "heading": offer.heading,
                "about": offer.about,
                "device": offer.device,
                "n": offer.n,
                "order": order,
                "carrier": self.carrier,
                "text": offer.text,
            }
        )
        self.known[offer.id] = (seq, order, offer.text)
        self.digests.append(digest(offer.text, order))
        self.head.latest = max(self.head.latest or "", order or offer.stamp)
        return Taken(seq, order)


def _known(
    connection: Connection, workshop: str, ids: list[str]
) -> dict[str, tuple[int, str | None, str]]:
    """Those ids the log already has, with number, order and text."""
    found: dict[str, tuple[int, str | None, str]] = {}
    table = tables.entry.c
    for some in _slices(ids):
        query = select(table.id, table.seq, table.order, table.text)
        rows = connection.execute(query.where(table.workshop == workshop, table.id.in_(some)))
        found.update({row[0]: (row[1], row[2], row[3]) for row in rows})
    return found


def _slices(ids: list[str]) -> Iterator[list[str]]:
    for start in range(0, len(ids), _LOOKED_UP_AT_ONCE):
        yield ids[start : start + _LOOKED_UP_AT_ONCE]


def _keep_head(connection: Connection, workshop: str, head: Head, digests: list[int]) -> None:
    head.digest = as_hex(added(int(head.digest, 16), digests))
    connection.execute(
        update(tables.workshop)
        .where(tables.workshop.c.id == workshop)
        .values(head=head.head, count=head.count, digest=head.digest, latest=head.latest)
    )
