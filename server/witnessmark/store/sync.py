"""One round trip: take what a device sends, hand out what came after its cursor."""

from collections.abc import Sequence
from dataclasses import dataclass

from sqlalchemy import Connection, Engine

from witnessmark.errors import Refusal
from witnessmark.store.devices import Bearer, note_contact, own_device
from witnessmark.store.engine import reading, writing
from witnessmark.store.log_append import Head, Taken, append, read_head
from witnessmark.store.log_read import Cursor, Page, confirm_cursor, page_after
from witnessmark.store.offering import Offered
from witnessmark.store.own import append_own


@dataclass(frozen=True, slots=True)
class Synced:
    """Answers, page and figures, all of one snapshot."""

    answers: list[Taken | Refusal]
    page: Page
    head: Head


def sync(
    engine: Engine,
    one: Bearer,
    cursor: Cursor | None,
    offers: Sequence[Offered | Refusal],
    room: int,
    *,
    now_ms: int,
) -> Synced:
    """Append and read in one transaction; only a device that brings something queues to write.

    raises: LogForked, and then nothing of the request was taken.
    """
    if not any(isinstance(offer, Offered) for offer in offers):
        with reading(engine) as connection:
            refused = [offer for offer in offers if isinstance(offer, Refusal)]
            confirm_cursor(connection, one.workshop, cursor)
            head = read_head(connection, one.workshop)
            return Synced([*refused], _page(connection, one, cursor, room, []), head)
    with writing(engine) as connection:
        confirm_cursor(connection, one.workshop, cursor)
        head, answers = append(connection, one.workshop, one.device, offers, now_ms)
        note_contact(connection, one, now_ms)
        return Synced(answers, _page(connection, one, cursor, room, answers), head)


def rehearse(engine: Engine, workshop: str, now_ms: int) -> None:
    """Go through a push that is not kept, so that the first real one finds all prepared.

    Writing down the statements of a push for the database takes longer than to carry them out.
    """
    with writing(engine) as connection:
        device = own_device(connection, workshop, now_ms)
        one = Bearer(device, workshop, None)
        for _ in range(2):  # a device's second push differs from its first
            append_own(connection, workshop, "note", device, {"text": "rehearsed"}, now_ms=now_ms)
        note_contact(connection, one, now_ms)
        page_after(connection, workshop, None, 1, set())
        connection.rollback()


def _page(
    connection: Connection,
    one: Bearer,
    cursor: Cursor | None,
    room: int,
    answers: Sequence[Taken | Refusal],
) -> Page:
    sent = {answer.seq for answer in answers if isinstance(answer, Taken)}
    return page_after(connection, one.workshop, cursor, room, sent)
