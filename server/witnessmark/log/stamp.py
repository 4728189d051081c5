"""Stamps of a hybrid clock: 12 hex digits of milliseconds, a dash, 4 of a counter.

As text they sort as in time. The device's own clock is never trusted further than ten minutes:
its stamps run on a clock corrected by the server's last answer, and the server gives an order
of its own to a stamp that is further ahead.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, replace

from witnessmark.errors import TimeBeyond
from witnessmark.log.ids import MOST_MS

AHEAD_MS = 10 * 60 * 1000
STAMP = re.compile(r"[0-9a-f]{12}-[0-9a-f]{4}")
FIRST = "000000000000-0000"
_COUNTER = 0x10000


@dataclass(frozen=True, slots=True)
class Clock:
    """What a device remembers: the greatest stamp made or order seen, and its clock's error."""

    last: str = FIRST
    correction_ms: int = 0


@dataclass(frozen=True, slots=True)
class Reckoned:
    """A new stamp and the clock after it."""

    stamp: str
    clock: Clock


def write_stamp(unix_ms: int, counter: int = 0) -> str:
    """The stamp of a moment.

    raises: TimeBeyond when the moment does not fit 48 bits.
    source: definition
    """
    if not 0 <= unix_ms <= MOST_MS:
        raise TimeBeyond(ms=unix_ms)
    return f"{unix_ms:012x}-{counter:04x}"


def stamp_ms(stamp: str) -> int:
    """Milliseconds of a stamp since 1970.

    source: definition
    """
    return int(stamp[:12], 16)


def is_stamp(text: str) -> bool:
    """Whether this is a stamp as written here.

    source: definition
    """
    return STAMP.fullmatch(text) is not None


def next_stamp(last: str, unix_ms: int) -> str:
    """The least stamp above `last` that is not before the clock.

    raises: TimeBeyond when no stamp is left.
    source: hybrid logical clock, common practice
    """
    now = write_stamp(max(0, unix_ms))
    if now > last:
        return now
    both = stamp_ms(last) * _COUNTER + int(last[13:], 16) + 1
    return write_stamp(both // _COUNTER, both % _COUNTER)


def tick(clock: Clock, device_ms: int) -> Reckoned:
    """A stamp for a new entry, above all this clock has made or seen.

    source: hybrid logical clock, common practice
    """
    stamp = next_stamp(clock.last, device_ms + clock.correction_ms)
    return Reckoned(stamp, replace(clock, last=stamp))


def seen(clock: Clock, order: str) -> Clock:
    """The clock after an entry of this order arrived.

    source: hybrid logical clock, common practice
    """
    return replace(clock, last=max(clock.last, order))


def answered(clock: Clock, server_ms: int, device_ms: int) -> Clock:
    """The clock after the server told its time: corrected, and set back if it ran far ahead.

    source: definition
    """
    last = clock.last
    if stamp_ms(last) > server_ms + AHEAD_MS:
        last = write_stamp(server_ms)
    return Clock(last, server_ms - device_ms)


def order_given(
    stamp: str, server_ms: int, last: str | None = None, held: str | None = None
) -> str | None:
    """The order the server keeps beside an entry, or None when its stamp serves.

    held: the order the sender says the entry had before a restore; kept if it is neither above
    the stamp nor far ahead, else one is made. last: the order given before in this batch, so
    that orders rise.
    source: definition
    """
    limit = server_ms + AHEAD_MS
    if held is not None and held <= stamp and stamp_ms(held) <= limit:
        return held
    if held is None and stamp_ms(stamp) <= limit:
        return None
    return next_stamp(last or FIRST, server_ms)
