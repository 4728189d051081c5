"""Pairing by a code of eight digits: ten minutes, one use, and a pause after wrong tries.

Wrong tries are counted for all codes together and survive a restart, so that guessing is
hopeless: five tries, then a pause of one minute that doubles to an hour.
"""

import hashlib
import hmac
import secrets
from dataclasses import asdict, dataclass

from sqlalchemy import Connection, delete, insert, select

from witnessmark.errors import PairingCodeUnknown, PairingPaused, RequestProblem
from witnessmark.store import tables
from witnessmark.store.devices import NewDevice, add_device
from witnessmark.store.ids import fresh_id, moment
from witnessmark.store.settings import COMPUTER, read_setting, write_setting

DIGITS = 8
LIFE_MS = 600_000
TRIES = 5
SHORTEST_PAUSE_MS = 60_000
LONGEST_PAUSE_MS = 3_600_000
FORGIVEN_AFTER_MS = 24 * 3_600_000
_TRIES_NAME = "pairing-tries"


@dataclass(frozen=True, slots=True)
class PairingCode:
    """A fresh code, as a person reads it, and when it ends."""

    code: str
    expires: str


@dataclass(slots=True)
class Tries:
    """How the wrong tries stand."""

    wrong: int = 0
    pause_ms: int = 0
    until_ms: int = 0
    last_ms: int = 0


def make_code(connection: Connection, workshop: str, now_ms: int) -> PairingCode:
    """A code that pairs one device with this workshop."""
    table = tables.pairing.c
    connection.execute(delete(tables.pairing).where(table.expires <= moment(now_ms)))
    digits = f"{secrets.randbelow(10**DIGITS):08d}"
    salt = secrets.token_hex(16)
    expires = moment(now_ms + LIFE_MS)
    row = {
        "workshop": workshop,
        "id": fresh_id(now_ms),
        "salt": salt,
        "hash": _hash(salt, digits),
        "expires": expires,
    }
    connection.execute(insert(tables.pairing).values(row))
    return PairingCode(f"{digits[:4]}-{digits[4:]}", expires)


def pair(connection: Connection, code: str, name: str, now_ms: int) -> NewDevice | RequestProblem:
    """The new device, or why there is none; a wrong try is counted, so the caller commits both."""
    tries = _tries(connection, now_ms)
    if now_ms < tries.until_ms:
        return PairingPaused(seconds=-(-(tries.until_ms - now_ms) // 1000))
    workshop = _spend(connection, code, now_ms)
    if workshop is None:
        _count_wrong(connection, tries, now_ms)
        return PairingCodeUnknown()
    write_setting(connection, COMPUTER, _TRIES_NAME, None)
    return add_device(connection, workshop, name, now_ms)


def _spend(connection: Connection, code: str, now_ms: int) -> str | None:
    """The workshop a code pairs with; the code is gone after that, for whoever comes second."""
    digits = "".join(sign for sign in code if sign not in "-\u2013\u2011 \u00a0\t")
    table = tables.pairing.c
    query = select(tables.pairing).where(table.expires > moment(now_ms)).order_by(table.id)
    for row in connection.execute(query).all():
        if hmac.compare_digest(_hash(row.salt, digits), row.hash):
            mine = (table.workshop == row.workshop, table.id == row.id)
            if connection.execute(delete(tables.pairing).where(*mine)).rowcount:
                return str(row.workshop)
    return None


def _hash(salt: str, digits: str) -> str:
    return hashlib.sha256(f"{salt}:{digits}".encode("utf-8", "surrogatepass")).hexdigest()


def _tries(connection: Connection, now_ms: int) -> Tries:
    kept = read_setting(connection, COMPUTER, _TRIES_NAME)
    tries = Tries(**kept) if kept else Tries()
    return tries if now_ms - tries.last_ms < FORGIVEN_AFTER_MS else Tries()


def _count_wrong(connection: Connection, tries: Tries, now_ms: int) -> None:
    tries.wrong += 1
    tries.last_ms = now_ms
    if tries.wrong >= TRIES:
        longer = max(SHORTEST_PAUSE_MS, tries.pause_ms * 2)
        tries.wrong, tries.pause_ms = 0, min(longer, LONGEST_PAUSE_MS)
        tries.until_ms = now_ms + tries.pause_ms
    write_setting(connection, COMPUTER, _TRIES_NAME, asdict(tries))
