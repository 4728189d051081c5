"""What the computer itself records: it is a device of the workshop like any other."""

import secrets
from datetime import UTC, datetime, timedelta
from typing import Any

from sqlalchemy import Connection, select

from witnessmark.errors import Refusal
from witnessmark.log.entry import seal
from witnessmark.log.stamp import FIRST, next_stamp
from witnessmark.store import tables
from witnessmark.store.devices import own_device
from witnessmark.store.ids import fresh_id
from witnessmark.store.log_append import Taken, append, read_head
from witnessmark.store.offering import offered
from witnessmark.trade.label import ALPHABET, LENGTH, check

MOST_CODES = 5_000


def append_own(
    connection: Connection,
    workshop: str,
    heading: str,
    about: str,
    body: dict[str, Any],
    *,
    now_ms: int,
) -> Taken:
    """Take one entry made by the computer.

    raises: the Refusal that says what is wrong with it.
    """
    device = own_device(connection, workshop, now_ms)
    head = read_head(connection, workshop, locked=True)
    facts = {
        "id": fresh_id(now_ms),
        "heading": heading,
        "about": about,
        "device": device,
        "n": _highest(connection, workshop, device) + 1,
        "stamp": next_stamp(head.latest or FIRST, now_ms),
        "made": _made(now_ms),
        "v": 1,
        "body": body,
    }
    _, answers = append(connection, workshop, device, [offered(seal(facts), None)], now_ms)
    if isinstance(answers[0], Refusal):
        raise answers[0]
    return answers[0]


def _highest(connection: Connection, workshop: str, device: str) -> int:
    table = tables.numbered.c
    query = select(table.highest).where(table.workshop == workshop, table.device == device)
    return connection.execute(query).scalar() or 0


def _made(now_ms: int) -> str:
    """The computer's own time of day, with its distance from UTC."""
    moment = datetime.fromtimestamp(0, UTC) + timedelta(milliseconds=now_ms)
    return moment.astimezone().isoformat(timespec="seconds")


def fresh_codes(connection: Connection, workshop: str, count: int) -> list[str]:
    """Label codes that were never printed and mark nothing; the projection must be up to date."""
    found: list[str] = []
    while len(found) < count:
        seven = "".join(secrets.choice(ALPHABET) for _ in range(LENGTH - 1))
        code = seven + check(seven)
        if code not in found[-MOST_CODES:] and not _known(connection, workshop, code):
            found.append(code)
    return found


def _known(connection: Connection, workshop: str, code: str) -> bool:
    printed, subject = tables.printed.c, tables.subject.c
    queries = (
        select(printed.code).where(printed.workshop == workshop, printed.code == code),
        select(subject.id).where(subject.workshop == workshop, subject.id == code),
    )
    return any(connection.execute(query).first() for query in queries)
