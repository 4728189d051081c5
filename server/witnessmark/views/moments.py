"""Whether two entries of one device lie too close, by its stamps and by its own clock."""

from __future__ import annotations

import re

from witnessmark.log.values import Fact

_STAMP = re.compile(r"([0-9a-f]{12})-[0-9a-f]{4}")
_MADE = re.compile(
    r"([0-9]{4})-([0-9]{2})-([0-9]{2})T([0-9]{2}):([0-9]{2}):([0-9]{2})"
    r"(?:\.([0-9]{1,9}))?(?:Z|([+-])([0-9]{2}):([0-9]{2}))?"
)
_MINUTE, _SECOND = 60_000, 1_000


def closer(earlier: Fact, later: Fact, least: int) -> bool:
    """Whether an entry came less than so many milliseconds after another one of the same device.

    Both clocks must say so: a stamp stands still while it is ahead of the clock, and a clock may
    be written in whole seconds only. Where neither can be read, nothing is said.
    """
    gaps = [_stamp_gap(earlier, later), _clock_gap(earlier, later)]
    known = [gap for gap in gaps if gap is not None and gap >= 0]
    return bool(known) and max(known) < least


def _stamp_gap(earlier: Fact, later: Fact) -> int | None:
    since, until = _STAMP.fullmatch(earlier["stamp"]), _STAMP.fullmatch(later["stamp"])
    if since is None or until is None:
        return None
    return int(until.group(1), 16) - int(since.group(1), 16)


def _clock_gap(earlier: Fact, later: Fact) -> int | None:
    since, until = _clock(earlier["made"]), _clock(later["made"])
    if since is None or until is None:
        return None
    return until[0] - since[0] - max(since[1], until[1]) + 1


def _clock(made: str) -> tuple[int, int] | None:
    found = _MADE.fullmatch(made)
    if not found:
        return None
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
