"""What a torque wrench can be trusted with: its range, its permitted deviation, its age."""

from __future__ import annotations

import math
import re
from typing import Literal

from witnessmark.errors import TradeError
from witnessmark.trade import units
from witnessmark.trade.units import Measured

SMALL_TOOL = Measured("10", "N·m")
SMALL_TOOL_DEVIATION, DEVIATION = 0.06, 0.04
MOST_DEVIATION = 50
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
    """
    return fit(wanted, least, most) == "takes"


def permitted(most: Measured | None, own: str | None = None) -> float | None:
    """Permitted deviation of a setting wrench as a share: 0.04, or 0.06 for a small tool.

    most: the tool's largest torque, which decides, not the value set; 10 N·m itself is small.
    own: the owner's value in per cent, from the wrench's certificate; it goes before the rest.
    None when neither is known.
    raises: DeviationUnclear; UnitsDiffer; what parse_number raises.
    source: ISO 6789 (2003), setting torque tools, type II class A (a maker's review of it)
    """
    if own is not None:
        share = float(units.parse_number(own, one_decimal_key=True)) / 100
        if not 0 < share <= MOST_DEVIATION / 100:
            raise DeviationUnclear(typed=own)
        return share
    if most is None:
        return None
    return DEVIATION if units.compare(most, SMALL_TOOL) > 0 else SMALL_TOOL_DEVIATION


def deviation(indicated: float, reference: float) -> float:
    """How far a wrench is off, as a share of the reference torque; both in one unit.

    raises: ReferenceMissing.
    source: ISO 6789-1:2017, calculation of deviation (from memory)
    """
    if not reference > 0:
        raise ReferenceMissing()
    return (indicated - reference) / reference


def applied(setting: float, share: float) -> tuple[float, float]:
    """Least and most that a wrench may really apply at a setting, in the setting's unit.

    The reference divides, so 50 at a share of 0.04 applies 48.08 to 52.08.
    raises: DeviationUnclear for a share of 1 or more, or below 0.
    source: ISO 6789-1:2017, calculation of deviation (from memory)
    """
    if not 0 <= share < 1:
        raise DeviationUnclear(typed=share * 100)
    return setting / (1 + share), setting / (1 - share)


def settable(wanted: float, graduation: float) -> float:
    """The mark nearest to a wanted torque; half way goes up. Both in the scale's unit.

    raises: GraduationUnclear.
    source: definition
    """
    if not graduation > 0:
        raise GraduationUnclear()
    return math.floor(wanted / graduation + 0.5) * graduation


def days_since(calibrated: str, today: str) -> int:
    """Whole days from the day of calibration to today; below zero for a day to come.

    raises: DateUnclear.
    source: definition (Gregorian calendar)
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
