"""How long ago a tool was calibrated, and whether it wants it again."""

from __future__ import annotations

from typing import Any

from witnessmark.trade.wrench import YEAR
from witnessmark.views import plain
from witnessmark.views.away import days

MONTHS = 12


def calibration(calibrated: object, due: object, today: str) -> dict[str, Any]:
    """overdue past its due date, old after a year, else current; unknown, unclear or to-come.

    A year is common practice, no source, where the owner gives no earlier day.
    """
    return {
        "state": _state(plain.text(calibrated), days(calibrated, today), days(due, today)),
        "calibrated": plain.text(calibrated),
        "due": plain.text(due),
        "age": age(calibrated, today),
        "late": age(due, today),
    }


def _state(calibrated: str | None, since: int | None, late: int | None) -> str:
    if late is not None and late > 0:
        return "overdue"
    if calibrated is None:
        return "unknown"
    if since is None:
        return "unclear"
    if since < 0:
        return "to-come"
    return "old" if since > YEAR else "current"


def age(then: object, today: str) -> dict[str, int] | None:
    """Whole years and the whole months over them, and all days; None for no day or one to come."""
    since = days(then, today)
    if since is None or since < 0:
        return None
    first, last = (_parts(plain.text(each) or "") for each in (then, today))
    months = (last[0] - first[0]) * MONTHS + last[1] - first[1] - (last[2] < first[2])
    return {"years": months // MONTHS, "months": months % MONTHS, "days": since}


def _parts(day: str) -> tuple[int, int, int]:
    year, month, date = (int(part) for part in day.split("-"))
    return year, month, date
