"""Rules of thumb for fits: whether a reading looks like a slip, never whether it may be used."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

import pint

from witnessmark.errors import TradeError
from witnessmark.trade import alike, amounts, units
from witnessmark.trade.unit_errors import NoQuantity
from witnessmark.trade.units import Quantity

MARK = "rule of thumb"


class FitUnknown(TradeError):
    """No rule of thumb by this name."""

    code = "thumb-unknown"
    says = "There is no rule of thumb for {fit}."
    next_step = "Take the window from the manual."


class SizeMissing(TradeError):
    """A band that goes by the size, without one."""

    code = "thumb-size"
    says = "The rule of thumb for {fit} goes by the diameter."
    next_step = "Give the {per} too."


@dataclass(frozen=True, slots=True)
class Rule:
    """From where to where, in a unit, or as a share of a diameter."""

    low: float | None
    high: float | None
    word: str = "mm"
    per: Literal["journal", "bore"] | None = None


@dataclass(frozen=True, slots=True)
class Band:
    """A band in the reading's unit, and whether the reading lies in it."""

    low: Quantity | None
    high: Quantity | None
    plausible: bool
    mark: str = MARK


BANDS = {
    "oil-clearance": Rule(0.0007, 0.0015, per="journal"),
    "crankshaft-end-play": Rule(0.05, 0.30),
    "rod-side-clearance": Rule(0.1, 0.5),
    "piston-to-wall-cast": Rule(0.02, 0.06),
    "piston-to-wall-forged": Rule(0.05, 0.15),
    "ring-gap": Rule(0.003, 0.006, per="bore"),
    "ring-side-clearance": Rule(0.03, 0.10),
    "pin": Rule(0.005, 0.025),
    "camshaft-end-play": Rule(0.03, 0.25),
    "lifter-in-bore": Rule(0.02, 0.07),
    "stem-in-guide": Rule(0.02, 0.08),
    "coil-room": Rule(1.0, 2.5),
    "valve-lash": Rule(0.1, 0.5),
    "lifter-preload": Rule(0.25, 1.0, "turn"),
    "valve-to-piston-intake": Rule(2.0, None),
    "valve-to-piston-exhaust": Rule(2.5, None),
    "quench": Rule(0.8, 1.3),
    "flatness-in-150": Rule(None, 0.05),
    "flatness-overall": Rule(None, 0.10),
}
"""Common practice, no source. The service manual of the engine in hand decides."""
_HAIR = 1e-9


def plausible(fit: str, reading: Quantity, size: Quantity | None = None) -> Band:
    """Whether a reading lies where such a fit usually does; both ends belong to the band.

    size: journal or bore diameter, for the bands that go by it.
    raises: FitUnknown, SizeMissing; NotAboveZero; NoQuantity, UnitsDiffer; NotANumber.
    source: common practice, no source (rule of thumb)
    >>> room, journal = units.quantity(0.046, "mm"), units.quantity(57, "mm")
    >>> found = plausible("oil-clearance", room, journal)
    >>> found.plausible, round(units.magnitude(found.high, "mm"), 6), found.mark
    (True, 0.0855, 'rule of thumb')
    """
    if not isinstance(fit, str) or fit not in BANDS:
        raise FitUnknown(fit=fit)
    rule = BANDS[fit]
    times = 1.0
    if rule.per is not None:
        if size is None:
            raise SizeMissing(fit=fit, per=rule.per)
        times = amounts.above_zero(alike.mm(size, rule.per), rule.per)
    if not isinstance(reading, pint.Quantity):
        raise NoQuantity(argument="reading")
    value = units.magnitude(reading, rule.word)
    low, high = (None if end is None else end * times for end in (rule.low, rule.high))
    inside = (low is None or value >= low * (1 - _HAIR)) and (
        high is None or value <= high * (1 + _HAIR)
    )
    made = [None if end is None else units.quantity(end, rule.word) for end in (low, high)]
    return Band(made[0], made[1], inside)
