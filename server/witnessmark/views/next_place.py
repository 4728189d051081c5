"""Taking an engine apart, place after place: which ones come next?"""

from __future__ import annotations

import re

from witnessmark.views import plain
from witnessmark.views.own_place import compared

PAIRS = (("intake", "exhaust"), ("left", "right"), ("upper", "lower"), ("front", "rear"))
FURTHEST = 400
_NUMBERED = re.compile(r"^(.*?)([0-9]{1,9})([^0-9]*)$")


def next_places(last: str | None, used: list[str] | None = None) -> list[str]:
    """The places that follow the last one: the next number, then the other side of the same.

    Places that were used already are passed over.
    """
    own = plain.text(last)
    if own is None:
        return []
    taken = used or []
    other = _other_side(own)
    second = other if other is None or _free(other, taken) else _counted(other, taken)
    return plain.once(each for each in (_counted(own, taken), second) if each is not None)


def _free(place: str, used: list[str]) -> bool:
    return all(compared(each, place) != "same" for each in used)


def _counted(place: str, used: list[str]) -> str | None:
    """The same words with the next number that is free; None where there is no number."""
    found = _NUMBERED.match(place)
    if not found:
        return None
    before, digits, after = found.groups()
    first = int(digits) + 1
    following = (f"{before}{number}{after}" for number in range(first, first + FURTHEST))
    return next((each for each in following if _free(each, used)), None)


def _other_side(place: str) -> str | None:
    """Intake for exhaust, left for right."""
    for one, other in (*PAIRS, *((b, a) for a, b in PAIRS)):
        found = re.match(rf"^(.*\b)?{one}(\b.*)?$", place, re.IGNORECASE)
        if found:
            return f"{found[1] or ''}{other}{found[2] or ''}"
    return None
