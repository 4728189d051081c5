"""How far two entries of one device lie apart, by its stamps and by its own clock."""

from __future__ import annotations

import re
from dataclasses import dataclass

from witnessmark.log.values import Fact

_STAMP = re.compile(r"([0-9a-f]{12})-[0-9a-f]{4}")
_MADE = re.compile(
    r"([0-9]{4})-([0-9]{2})-([0-9]{2})T([0-9]{2}):([0-9]{2}):([0-9]{2})"
    r"(?:\.([0-9]{1,9}))?(?:Z|([+-])([0-9]{2}):([0-9]{2}))?"
)
_MINUTE, _SECOND = 60_000, 1_000


@dataclass(frozen=True, slots=True)
class Moment:
    """When an entry was made, in milliseconds; None where a clock cannot be read."""

    stamp: int | None
    made: int | None
    step: int
    """What one step of the device's clock is worth as it was written: a second, or less."""


def moment(fact: Fact) -> Moment:
    """The moment of a fact, by its stamp, which one device only lets rise, and by its clock."""
    stamp = fact.get("stamp")
    found = _STAMP.fullmatch(stamp if isinstance(stamp, str) else fact["order"])
    made, step = _clock(fact["made"])
    return Moment(int(found.group(1), 16) if found else None, made, step)


def apart(earlier: Moment, later: Moment) -> int | None:
    """Milliseconds from one entry to the next of the same device, or None.

    The larger of both clocks counts: a stamp stands still while it is ahead of the clock, and
    a clock may be written in whole seconds only.
    """
    gaps = []
    if earlier.stamp is not None and later.stamp is not None:
        gaps.append(later.stamp - earlier.stamp)
    if earlier.made is not None and later.made is not None:
        gaps.append(later.made - earlier.made - max(earlier.step, later.step) + 1)
    known = [gap for gap in gaps if gap >= 0]
    return max(known) if known else None


def _clock(made: object) -> tuple[int | None, int]:
    found = _MADE.fullmatch(made) if isinstance(made, str) else None
    if not found:
        return None, _SECOND
    year, month, day, hour, minute, second = (int(part) for part in found.groups()[:6])
    fraction, sign, off_hours, off_minutes = found.groups()[6:]
    minutes = _days(year, month, day) * 1440 + hour * 60 + minute
    ahead = int(off_hours or 0) * 60 + int(off_minutes or 0)
    minutes -= -ahead if sign == "-" else ahead
    thousandths = int(((fraction or "") + "000")[:3])
    step = max(1, _SECOND // 10 ** len(fraction or ""))
    return minutes * _MINUTE + second * _SECOND + thousandths, step


def _days(year: int, month: int, day: int) -> int:
    """Days since some far day; March begins the year, so that the leap day ends it."""
    years = year - (1 if month <= 2 else 0)  # noqa: PLR2004
    months = (month + 9) % 12
    return 365 * years + years // 4 - years // 100 + years // 400 + (153 * months + 2) // 5 + day
