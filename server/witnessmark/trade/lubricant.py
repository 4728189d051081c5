"""Lubricant states and the nut factors that go with them: good for plausibility, never a value."""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import Literal

from witnessmark.errors import TradeError

Mark = Literal["table value", "rule of thumb"]


class LubricantUnknown(TradeError):
    """A surface or lubricant that no nut factor is known for."""

    code = "lubricant-unknown"
    says = "No nut factor is known for {typed}."
    next_step = "Choose one of the states listed, or type the nut factor itself."


@dataclass(frozen=True, slots=True)
class NutFactors:
    """The band of nut factors of a state, and how much it may be trusted."""

    state: str
    low: float
    high: float
    mark: Mark = "rule of thumb"

    @property
    def mid(self) -> float:
        """The middle of the band."""
        return (self.low + self.high) / 2


STATES = ("dry", "zinc plated", "oiled", "moly", "anti-seize", "sealant", "locking compound")
"""What may be on a thread, as the record names it; the last two have no band of nut factors."""

BANDS = {
    each.state: each
    for each in (
        NutFactors("dry", 0.25, 0.35),
        NutFactors("zinc plated", 0.18, 0.24),
        NutFactors("oiled", 0.15, 0.20),
        NutFactors("moly", 0.10, 0.15),
        NutFactors("anti-seize", 0.10, 0.15),
    )
}
"""State → band. Rule of thumb (common practice, no source); lots scatter ±10 % to ±30 % about it.
Sealant and locking compound have none that everybody would sign."""

ANY = NutFactors("unknown", 0.10, 0.35)
"""From the slipperiest of the states to the roughest: all that can be said of an unknown one."""

SURFACES = {
    "not plated, black finish": 0.30,
    "zinc plated": 0.20,
    "lubricated": 0.18,
    "cadmium plated": 0.16,
    "anti-seize": 0.12,
}
"""Surface → nut factor, table value: Shigley's Mechanical Engineering Design, table 8–15
(anti-seize from memory)."""

_SURFACES = {
    "nonplated, black finish": "not plated, black finish",
    "nonplated": "not plated, black finish",
    "not plated": "not plated, black finish",
    "black finish": "not plated, black finish",
    "black": "not plated, black finish",
    "with anti-seize": "anti-seize",
    "antiseize": "anti-seize",
    "zinc-plated": "zinc plated",
    "cadmium-plated": "cadmium plated",
}


_NAMED = tuple(
    (state, re.compile(words, re.ASCII))
    for state, words in (
        ("zinc plated", r"\bzinc\b"),
        ("oiled", r"\boil(?:ed|y)?\b"),
        ("moly", r"\bmoly|\bmos2\b"),
        ("anti-seize", r"\banti[ -]?seize\b"),
        ("sealant", r"\bseal(?:ant|er|ing)\b"),
        ("locking compound", r"\blocking\b|\bthread[ -]?lock"),
    )
)
_DRY = re.compile(r"\bdry\b|\bblack\b", re.ASCII)
_DENIED = re.compile(r"\b(?:no|not|non|without|never|free|or)\b", re.ASCII)


def _key(typed: str) -> str:
    return " ".join(typed.lower().split()) if isinstance(typed, str) else ""


def state_of(words: str) -> str | None:
    """The one state that somebody's words name; None where they name none, several, or deny one.

    Dry beside another one adds nothing to it: "zinc plated, dry" is zinc plated.
    source: common practice, no source
    >>> state_of("oiled thread and face"), state_of("zinc-plated"), state_of("dry, no oil")
    ('oiled', 'zinc plated', None)
    """
    key = _key(words)
    if _DENIED.search(key):
        return None
    named = [state for state, word in _NAMED if word.search(key)]
    if not named and _DRY.search(key):
        return "dry"
    return named[0] if len(named) == 1 else None


def find(state: str) -> NutFactors | None:
    """The band of nut factors of a lubricant state, or None where nobody has one.

    source: common practice, no source (rule of thumb)
    >>> find("engine oil").state, find("sealant")
    ('oiled', None)
    """
    known = state if isinstance(state, str) and state in BANDS else state_of(state)
    return None if known is None else BANDS.get(known)


def nut_factors(state: str) -> NutFactors:
    """The band of nut factors of a lubricant state, as people and the record name it.

    raises: LubricantUnknown (sealant and locking compound too).
    source: common practice, no source (rule of thumb)
    >>> nut_factors("engine oil").low, nut_factors("engine oil").high
    (0.15, 0.2)
    """
    found = find(state)
    if found is None:
        raise LubricantUnknown(typed=str(state)[:40] or "nothing")
    return found


def surface_nut_factor(surface: str) -> float:
    """The published single nut factor of a surface.

    raises: LubricantUnknown.
    source: Shigley's Mechanical Engineering Design, 9th ed., table 8–15
    >>> surface_nut_factor("zinc plated")
    0.2
    """
    key = _key(surface)
    found = SURFACES.get(_SURFACES.get(key, key))
    if found is None:
        raise LubricantUnknown(typed=str(surface)[:40] or "nothing")
    return found
