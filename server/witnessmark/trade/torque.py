"""A torque reading held against its target: how far off, and whether it was read right."""

from __future__ import annotations

from typing import Literal

from witnessmark.errors import TradeError
from witnessmark.trade import amounts, units
from witnessmark.trade.units import Measured

UNKNOWN_DEVIATION = 0.06
ASKS_WITHIN = 0.03
OVER, UNDER = 2.0, 0.5
_ROUNDING = 1e-9
"""Units convert through floats, so a reading on a limit may stand a hair beyond it."""


class TargetMissing(TradeError):
    """Nothing to hold the reading against."""

    code = "torque-target"
    says = "The target is not above zero."
    next_step = "Take the value from the manual."


def _of_target(reading: Measured, target: Measured) -> float:
    for each in (reading, target):
        amounts.kind(each, Measured, "torque")
    read = units.convert(reading.number, reading.unit, target.unit)
    if not target.number > 0:
        raise TargetMissing()
    return read / target.number


def deviation(reading: Measured, target: Measured) -> float:
    """How far a reading is off its target, in per cent of the target; below it is negative.

    raises: UnitsDiffer; TargetMissing.
    source: definition
    >>> round(deviation(Measured("52", "N·m"), Measured("50", "N·m")), 6)
    4.0
    """
    return (_of_target(reading, target) - 1) * 100


def against(
    reading: Measured, target: Measured, permitted: float | None = None
) -> Literal["short", "within", "too-far"]:
    """Whether a reading is short of its target or beyond it by more than is permitted.

    permitted: the wrench's permitted deviation as a share of the target; 0.06 where unknown.
    A reading on the limit is within.
    raises: UnitsDiffer; TargetMissing; NotAShare.
    source: ours; the permitted deviations are those of ISO 6789 (see wrench.permitted)
    >>> against(Measured("47", "N·m"), Measured("50", "N·m"), 0.04)
    'short'
    """
    share = UNKNOWN_DEVIATION if permitted is None else amounts.share(permitted, "deviation")
    ratio = _of_target(reading, target)
    if ratio < 1 - share - _ROUNDING:
        return "short"
    return "too-far" if ratio > 1 + share + _ROUNDING else "within"


def asks_unit(reading: Measured, target: Measured) -> str | None:
    """The unit the reading may really have been read in, or None.

    45 N·m where 45 lbf·ft are wanted: the number fits the target in lbf·ft within 3 per cent,
    so the person is asked which scale it was. A reading that fits in its own unit is not asked.
    raises: UnitsDiffer; TargetMissing.
    source: ours
    >>> asks_unit(Measured("45", "N·m"), Measured("45", "lbf·ft"))
    'lbf·ft'
    """
    fits = abs(_of_target(reading, target) - 1) <= ASKS_WITHIN + _ROUNDING
    if fits or units.quantity_of(target.unit) != "torque":
        return None
    for unit in units.TORQUE_WORDS:
        wanted = units.convert(target.number, target.unit, unit)
        if abs(reading.number - wanted) <= (ASKS_WITHIN + _ROUNDING) * wanted:
            return unit
    return None


def out_of_reason(
    reading: Measured, target: Measured
) -> Literal["over-twice", "under-half"] | None:
    """Whether a reading is over twice or under half its target, as a slip of the keypad is.

    Twice and half themselves are not.
    raises: UnitsDiffer; TargetMissing.
    source: ours
    >>> out_of_reason(Measured("500", "N·m"), Measured("50", "N·m"))
    'over-twice'
    """
    ratio = _of_target(reading, target)
    if ratio > OVER + _ROUNDING:
        return "over-twice"
    return "under-half" if ratio < UNDER - _ROUNDING else None
