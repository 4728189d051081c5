"""One reading as a number: in the unit asked for, where it was taken, and how sure it is."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from witnessmark.errors import TradeError
from witnessmark.log.values import Subject
from witnessmark.log.workshop import value
from witnessmark.trade import amounts, dimension, units
from witnessmark.views import plain

MOST_DECIMALS = 8
"""More decimals no gauge of a workshop shows."""
_NOTHING = 1e-12
_HAIR = 1e-9

Spot = tuple[str | None, str | None]
"""Position and direction."""


@dataclass(frozen=True, slots=True)
class Line:
    """A reading in one unit; step is what its last digit is worth."""

    spot: Spot
    size: float
    step: float
    decimals: int
    instrument: str


def same_sort(one: str, other: str) -> bool:
    """Whether both units measure the same."""
    try:
        return units.quantity_of(one) == units.quantity_of(other)
    except TradeError:
        return False


def spot_of(reading: dict[str, Any]) -> Spot:
    """Where a reading was taken."""
    return plain.text(reading.get("position")), plain.text(reading.get("direction"))


def in_unit(read: units.Measured | None, unit: str) -> float | None:
    """An amount in a unit, or None where it is of another quantity, or beyond everything."""
    if read is None or not same_sort(read.unit, unit):
        return None
    try:
        number = amounts.finite(float(read.value), "reading")
        return number if read.unit == unit else units.convert(number, read.unit, unit)
    except TradeError:
        return None


def read_in(reading: dict[str, Any], unit: str) -> Line | None:
    """A reading in a unit, or None where it tells nothing of that quantity."""
    read = plain.quantity(reading.get("value"))
    size = in_unit(read, unit)
    if read is None or size is None:
        return None
    digit = 10.0 ** -min(MOST_DECIMALS, len(read.value.partition(".")[2]))
    same = read.unit == unit
    step = digit if same else abs(units.convert_difference(digit, read.unit, unit))
    instrument = plain.as_id(reading.get("instrument"))
    return Line(spot_of(reading), size, step, _decimals(step), instrument)


def _decimals(step: float) -> int:
    fine = (n for n in range(MOST_DECIMALS) if step * 10.0**n >= 1 - _HAIR)
    return next(fine, MOST_DECIMALS)


def sureness(instrument: Subject | None, unit: str, step: float) -> tuple[float, str]:
    """The standard uncertainty of one reading, and what it is taken from.

    The instrument's certificate, else its permitted deviation together with its resolution, else
    the last digit typed, which is worth a step.
    """
    certified = _width(instrument, "uncertainty", unit)
    if certified is not None:
        half = dimension.from_limit(units.quantity(certified, unit), "normal")
        return units.magnitude(half, unit), "uncertainty"
    resolution = _width(instrument, "resolution", unit)
    shown = dimension.from_resolution(units.quantity(resolution or step, unit))
    deviation = _width(instrument, "deviation", unit)
    if deviation is None:
        return units.magnitude(shown, unit), "resolution" if resolution else "last-digit"
    both = [shown, dimension.from_limit(units.quantity(deviation, unit))]
    return units.magnitude(dimension.combined(both), unit), "deviation"


def _width(instrument: Subject | None, name: str, unit: str) -> float | None:
    told = {"value": value(instrument, name), "unit": value(instrument, "unit")}
    kept = plain.quantity(told)
    if kept is None or not same_sort(kept.unit, unit):
        return None
    try:
        number = amounts.finite(float(kept.value), name)
        found = abs(units.convert_difference(number, kept.unit, unit))
        return amounts.finite(found, name) if found > _NOTHING else None
    except TradeError:
        return None
