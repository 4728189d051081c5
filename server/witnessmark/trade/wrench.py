"""What a torque wrench can be trusted with: its range, its permitted deviation, its age."""

from __future__ import annotations

import math
import re
from dataclasses import dataclass
from typing import Literal

from witnessmark.errors import TradeError
from witnessmark.trade import alike, amounts, units
from witnessmark.trade.units import Measured, Quantity

SMALL_TOOL = Measured("10", "N·m")
SMALL_TOOL_DEVIATION, DEVIATION = 0.06, 0.04
MOST_DEVIATION = 50
YEAR = 365
_ROUNDING = 1e-9
"""Half a step and a limit are met by floats that miss them by a hair."""
_DAY = re.compile(r"([0-9]{4})-([0-9]{2})-([0-9]{2})")


class DateUnclear(TradeError):
    """A day that is not written year, month, day, or is in no calendar."""

    code = "date-unclear"
    says = "{typed} is no day."
    next_step = "Write year, month and day, like 2031-03-07."


class DeviationUnclear(TradeError):
    """A permitted deviation outside what any wrench has."""

    code = "wrench-deviation"
    says = "A permitted deviation of {typed} % is none a wrench has."
    next_step = "Type the per cent from its certificate, above 0 and up to 50."


class ReferenceMissing(TradeError):
    """A deviation from nothing."""

    code = "wrench-reference"
    says = "The reference torque is not above zero."
    next_step = "Type what the tester showed."


class GraduationUnclear(TradeError):
    """Marks that have no distance."""

    code = "wrench-graduation"
    says = "The marks of the scale have no distance."
    next_step = "Type the step from one mark to the next."


def fit(
    wanted: Measured, least: Measured | None, most: Measured | None
) -> Literal["takes", "starts-at", "ends-at"]:
    """Whether a wrench takes a torque; its lowest and highest mark belong to its range.

    least, most: the wrench's range in its own unit; None where it is not known.
    raises: UnitUnknown; UnitsDiffer.
    source: ISO 6789, range from the lowest marked value (from memory); common practice
    >>> ends = Measured("40", "N·m"), Measured("200", "N·m")
    >>> fit(Measured("37", "N·m"), *ends), fit(Measured("200", "N·m"), *ends)
    ('starts-at', 'takes')
    """
    if least is not None and units.compare(least, wanted) > 0:
        return "starts-at"
    if most is not None and units.compare(wanted, most) > 0:
        return "ends-at"
    return "takes"


def in_range(wanted: Measured, least: Measured | None, most: Measured | None) -> bool:
    """True when the wrench takes the torque.

    raises: UnitUnknown; UnitsDiffer.
    source: as fit
    >>> in_range(Measured("45", "lbf·ft"), Measured("40", "N·m"), Measured("200", "N·m"))
    True
    """
    return fit(wanted, least, most) == "takes"


def permitted(most: Measured | None, own: str | None = None) -> float | None:
    """Permitted deviation of a setting wrench as a share: 0.04, or 0.06 for a small tool.

    most: the tool's largest torque, which decides, not the value set; 10 N·m itself is small.
    own: the owner's value in per cent, from the wrench's certificate; it goes before the rest.
    None when neither is known.
    raises: DeviationUnclear; UnitsDiffer; what parse_number raises.
    source: ISO 6789 (2003), setting torque tools, type II class A (a maker's review of it)
    >>> permitted(Measured("200", "N·m")), permitted(Measured("10", "N·m")), permitted(None, "3")
    (0.04, 0.06, 0.03)
    """
    if own is not None:
        share = float(units.parse_number(own, one_decimal_key=True)) / 100
        if not 0 < share <= MOST_DEVIATION / 100:
            raise DeviationUnclear(typed=own)
        return share
    if most is None:
        return None
    return DEVIATION if units.compare(most, SMALL_TOOL) > 0 else SMALL_TOOL_DEVIATION


@dataclass(frozen=True, slots=True)
class Band:
    """The least and the most that may have been applied."""

    low: Quantity
    high: Quantity


@dataclass(frozen=True, slots=True)
class Mark:
    """The mark to set, and how far it is off the wanted torque as a share of it."""

    settable: Quantity
    error: float


@dataclass(frozen=True, slots=True)
class Calibration:
    """Days since a wrench was calibrated, and what that means."""

    state: Literal["current", "old", "to-come", "unknown"]
    days: int | None


@units.check("torque", "torque")
def deviation(indicated: Quantity, reference: Quantity) -> float:
    """How far a wrench is off, as a share of the reference torque.

    indicated: what was set or read; reference: what the tester showed.
    raises: ReferenceMissing; NoQuantity, WrongQuantity; NotANumber.
    source: ISO 6789-1:2017, calculation of deviation (from memory)
    >>> round(deviation(units.quantity(50, "N·m"), units.quantity(48.5, "N·m")), 6)
    0.030928
    """
    tester = alike.size(reference, reference, "reference")
    if tester < amounts.LEAST:
        raise ReferenceMissing()
    return (alike.size(indicated, reference, "indicated") - tester) / tester


def within(off: float, share: float) -> bool:
    """Whether a deviation, to either side, is no more than the permitted share; the limit is.

    raises: DeviationUnclear; NotANumber.
    source: ISO 6789-1:2017 (from memory)
    >>> within(0.030928, 0.04), within(-0.041, 0.04)
    (True, False)
    """
    return abs(amounts.finite(off, "deviation")) <= _share(share) + _ROUNDING


@units.check("torque", None)
def applied(setting: Quantity, share: float) -> Band:
    """Least and most that a wrench may really apply at a setting.

    share: its permitted deviation, 0.04 for 4 per cent. The reference divides, so 50 at a share
    of 0.04 applies 48.08 to 52.08, not 48 to 52.
    raises: DeviationUnclear for a share of 1 or more, or below 0; NotAboveZero; NoQuantity.
    source: ISO 6789-1:2017, calculation of deviation (from memory)
    >>> band = applied(units.quantity(50, "N·m"), 0.04)
    >>> units.rounded(units.magnitude(band.low, "N·m"), 2)
    '48.08'
    """
    part = _share(share)
    amount = amounts.above_zero(alike.size(setting, setting, "setting"), "setting")
    return Band(alike.like(amount / (1 + part), setting), alike.like(amount / (1 - part), setting))


@units.check("torque", "torque", "torque", "torque")
def settable(
    wanted: Quantity,
    graduation: Quantity,
    least: Quantity | None = None,
    most: Quantity | None = None,
) -> Mark:
    """The mark nearest to a wanted torque, in the unit of the scale; half way goes up.

    graduation: the step from mark to mark. least: the lowest mark, from which the marks are
    counted; without it from nothing. most: the highest mark. Beyond either end the end is given:
    ask fit whether the wrench takes the torque at all.
    raises: GraduationUnclear; NotAboveZero; NoQuantity, WrongQuantity.
    source: definition
    >>> mark = settable(units.quantity(53.33, "N·m"), units.quantity(0.5, "N·m"))
    >>> units.magnitude(mark.settable, "N·m"), round(mark.error, 6)
    (53.5, 0.003188)
    """
    step = alike.size(graduation, graduation, "graduation")
    if step < amounts.LEAST:
        raise GraduationUnclear()
    aim = amounts.above_zero(alike.size(wanted, graduation, "wanted"), "wanted")
    first = 0.0 if least is None else alike.size(least, graduation, "least")
    steps = max(0, math.floor((aim - first) / step + 0.5 + _ROUNDING))
    if most is not None:
        top = math.floor((alike.size(most, graduation, "most") - first) / step + _ROUNDING)
        steps = min(steps, top)
    mark = first + steps * step
    return Mark(alike.like(mark, graduation), (mark - aim) / aim)


@units.check("torque", "torque")
def range_low(most: Quantity, lowest_mark: Quantity | None = None) -> Quantity:
    """The least torque a setting wrench is good for: its lowest mark, else a fifth of its largest.

    raises: NotAboveZero; NoQuantity, WrongQuantity.
    source: ISO 6789: lowest marked value (2017), 20 % of the largest (2003), from memory
    >>> units.magnitude(range_low(units.quantity(200, "N·m")), "N·m")
    40.0
    """
    top = amounts.above_zero(alike.size(most, most, "most"), "most")
    if lowest_mark is None:
        return alike.like(top / 5, most)
    amounts.above_zero(alike.size(lowest_mark, lowest_mark, "lowest mark"), "lowest mark")
    return lowest_mark


def _share(share: float) -> float:
    if not 0 <= amounts.finite(share, "share") < 1:
        raise DeviationUnclear(typed=share * 100)
    return share


def calibration(calibrated: str | None, today: str, good_for: int = YEAR) -> Calibration:
    """Whether the last calibration is recent enough.

    good_for: days; the owner's own, a year without. A day to come is told as such.
    raises: DateUnclear; NotACount.
    source: ISO 6789, twelve months in use where nothing else is agreed (from memory)
    >>> calibration("2030-03-07", "2031-03-08").state
    'old'
    """
    amounts.count(good_for, "days", 1)
    if calibrated is None:
        return Calibration("unknown", None)
    days = days_since(calibrated, today)
    if days < 0:
        return Calibration("to-come", days)
    return Calibration("current" if days <= good_for else "old", days)


def days_since(calibrated: str, today: str) -> int:
    """Whole days from the day of calibration to today; below zero for a day to come.

    raises: DateUnclear.
    source: definition (Gregorian calendar)
    >>> days_since("2032-02-28", "2032-03-01")
    2
    """
    return _day_number(today) - _day_number(calibrated)


def _day_number(typed: str) -> int:
    found = _DAY.match(typed) if isinstance(typed, str) else None
    if not found:
        raise DateUnclear(typed=typed)
    year, month, day = (int(part) for part in found.groups())
    lengths = _month_days(year)
    if not 1 <= month <= len(lengths) or not 1 <= day <= lengths[month - 1]:
        raise DateUnclear(typed=typed)
    years = year - 1
    leaps = years // 4 - years // 100 + years // 400
    return 365 * years + leaps + sum(lengths[: month - 1]) + day


def _month_days(year: int) -> tuple[int, ...]:
    leap = year % 4 == 0 and (year % 100 != 0 or year % 400 == 0)
    return (31, 29 if leap else 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31)
