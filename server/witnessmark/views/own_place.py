"""A part that goes back where it came from: which place is its own, and is another one meant?"""

from __future__ import annotations

import re
from typing import Any

from witnessmark.log.workshop import Workshop, value
from witnessmark.views import plain, things

_WORDS = re.compile(r"[0-9]+|[^0-9\s.,;:_/-]+")
_ZEROS = re.compile(r"^0+(?=[0-9])")


def place_of(workshop: Workshop, id_: str) -> str | None:
    """The place a part goes back to: where it came from, if its kind goes to its own place."""
    part = workshop.subject(id_)
    kind = workshop.subject(plain.as_id(value(part, "kind")))
    return plain.text(value(part, "from")) if value(kind, "own_place") is True else None


def own_place(workshop: Workshop, id_: str, wanted: str | None = None) -> dict[str, Any]:
    """Whether a wanted place is a part's own: same, elsewhere, or none.

    None where it has no own place or no place is wanted.
    """
    place = place_of(workshop, id_)
    return {"place": place, "says": compared(place, plain.text(wanted))}


def compared(own: str | None, wanted: str | None) -> str:
    """Two places as a person reads them: case, blanks, stops and leading zeros say nothing."""
    if own is None or wanted is None:
        return "none"
    return "same" if _bare(own) == _bare(wanted) else "elsewhere"


def _bare(place: str) -> str:
    words = _WORDS.findall(place.lower())
    return " ".join(_ZEROS.sub("", word) for word in words)


def held_back(workshop: Workshop, id_: str, wanted: str | None = None) -> list[str]:
    """What holds fitting a part at a place back until a reason is given.

    Another place than its own, a verdict against it, or none at all.
    """
    word = things.mark(workshop.subject(id_))
    found: list[str] = [each for each in ("scrap", "machine") if each == word]
    if word in ("look", "ask"):
        found.append("not-inspected")
    if own_place(workshop, id_, wanted)["says"] == "elsewhere":
        found.append("elsewhere")
    return found
