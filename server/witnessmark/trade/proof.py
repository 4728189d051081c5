"""Proofs of an assembled engine: leak-down, compression, oil pressure, prime.

Shares and means only. What is enough says the owner's limit; what others publish is offered
with its source and never as authority.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise
from typing import Literal

from witnessmark.trade import alike, amounts, units
from witnessmark.trade.proof_errors import (
    GaugesCrossed,
    LimitsCrossed,
    NoReadings,
    PlaceUnknown,
    TimeRunsBack,
)
from witnessmark.trade.units import Quantity, magnitude, quantity

DIFFERENTIAL_LIMIT = 0.25
"""FAA AC 43.13-1B, chapter 8: loss above 25 % calls for repair (aircraft engines)."""
EVEN_SHARE = 0.75
"""Common practice, no source: the lowest not under three quarters of the highest."""
LARGER_ORIFICE_FROM_INCHES = 5.0
SMALL_ORIFICE_INCHES, LARGE_ORIFICE_INCHES = 0.040, 0.060
_ROUNDING = 1e-9
"""A share on its limit may stand a hair beyond it, since units convert through floats."""


@dataclass(frozen=True, slots=True)
class Evenness:
    """How even the cylinders are; places count from 1, the first of several equal ones is named."""

    lowest_over_highest: float
    mean: Quantity
    lowest_place: int
    highest_place: int


@dataclass(frozen=True, slots=True)
class Point:
    """One reading of a pressure trace."""

    time: Quantity
    pressure: Quantity


@dataclass(frozen=True, slots=True)
class Plateau:
    """The mean, least and most pressure over the last part of a trace, and of how many readings."""

    mean: Quantity
    least: Quantity
    most: Quantity
    readings: int


@dataclass(frozen=True, slots=True)
class PressureLimit:
    """What the owner's manual asks of the oil pressure in a range of speed and temperature.

    A range end that is left out is open; the ends themselves belong to the range.
    """

    least: Quantity | None = None
    most: Quantity | None = None
    speed_from: Quantity | None = None
    speed_to: Quantity | None = None
    temperature_from: Quantity | None = None
    temperature_to: Quantity | None = None


def _pressure(reading: Quantity, what: str) -> float:
    return amounts.not_below_zero(magnitude(reading, "kPa"), what)


@units.check("pressure", "pressure")
def leakage(supplied: Quantity, held: Quantity) -> float:
    """Share of the supplied pressure that a cylinder does not hold, 0 to 1; both gauge pressures.

    raises: GaugesCrossed; as amounts.
    source: definition; FAA AC 43.13-1B, chapter 8, differential compression test
    >>> round(leakage(quantity(80, "psi"), quantity(72, "psi")), 6)
    0.1
    """
    supply = amounts.above_zero(magnitude(supplied, "kPa"), "supply")
    held_back = _pressure(held, "cylinder pressure")
    if held_back > supply * (1 + _ROUNDING):
        raise GaugesCrossed()
    return max(0.0, (supply - held_back) / supply)


def leaks_no_more_than(share: float, limit: float = DIFFERENTIAL_LIMIT) -> bool:
    """Whether a leakage is within a limit; the limit itself still is.

    raises: NotAShare; as amounts.
    source: FAA AC 43.13-1B, chapter 8, for the 25 % (wording from memory)
    >>> leaks_no_more_than(0.25), leaks_no_more_than(0.2625)
    (True, False)
    """
    return amounts.share(share, "leakage") <= amounts.share(limit, "limit") + _ROUNDING


@units.check("length")
def orifice(bore: Quantity) -> Quantity:
    """The orifice of the differential tester for a bore: 0.040 in below 5.00 in, else 0.060 in.

    raises: as amounts.
    source: FAA AC 43.13-1B change 1, paragraph 8-14 (aircraft engines)
    >>> magnitude(orifice(quantity(5, "in")), "in")
    0.06
    """
    across = amounts.above_zero(magnitude(bore, "in"), "bore")
    large = across >= LARGER_ORIFICE_FROM_INCHES * (1 - _ROUNDING)
    return quantity(LARGE_ORIFICE_INCHES if large else SMALL_ORIFICE_INCHES, "in")


@units.check("pressure")
def evenness(readings: Sequence[Quantity]) -> Evenness:
    """The lowest compression as a share of the highest, their mean and their places.

    raises: NoReadings; as amounts; NotAboveZero where every cylinder reads nothing.
    source: common practice, no source
    >>> found = evenness([quantity(each, "psi") for each in (160, 158, 120, 161)])
    >>> round(found.lowest_over_highest, 4), found.lowest_place
    (0.7453, 3)
    """
    if not alike.many(readings, "readings"):
        raise NoReadings(what="compression")
    pressures = [_pressure(each, "compression") for each in readings]
    low, high = min(pressures), amounts.above_zero(max(pressures), "highest compression")
    return Evenness(
        low / high,
        quantity(sum(pressures) / len(pressures), "kPa"),
        pressures.index(low) + 1,
        pressures.index(high) + 1,
    )


def is_even(lowest_over_highest: float, limit: float = EVEN_SHARE) -> bool:
    """Whether cylinders are even by a limit; the limit itself still is.

    raises: NotAShare; as amounts.
    source: common practice, no source: three quarters
    >>> is_even(0.75), is_even(0.7453)
    (True, False)
    """
    lowest = amounts.share(lowest_over_highest, "lowest over highest")
    return lowest >= amounts.share(limit, "limit") - _ROUNDING


def _trace(points: Sequence[Point]) -> list[tuple[float, float]]:
    if not alike.many(points, "points"):
        raise NoReadings(what="pressure")
    read = [
        (
            amounts.not_below_zero(magnitude(amounts.kind(each, Point, "point").time, "s"), "time"),
            _pressure(each.pressure, "pressure"),
        )
        for each in points
    ]
    if any(later <= earlier for (earlier, _), (later, _) in pairwise(read)):
        raise TimeRunsBack()
    return read


@units.check(None, "pressure")
def time_to(points: Sequence[Point], threshold: Quantity) -> Quantity | None:
    """When a pressure trace first reaches a threshold, by straight lines; None if it never does.

    raises: NoReadings; TimeRunsBack; as amounts.
    source: common practice, no source: 20 to 25 psi at starter speed count as primed
    >>> rise = [Point(quantity(t, "s"), quantity(p, "psi")) for t, p in ((0, 0), (4, 9), (5, 16))]
    >>> round(magnitude(time_to(rise, quantity(10, "psi")), "s"), 4)
    4.1429
    """
    wanted = amounts.above_zero(magnitude(threshold, "kPa"), "threshold")
    before = None
    for time, pressure in _trace(points):
        if pressure >= wanted * (1 - _ROUNDING):
            if before is None:
                return quantity(time, "s")
            part = min(1.0, (wanted - before[1]) / (pressure - before[1]))
            return quantity(before[0] + part * (time - before[0]), "s")
        before = (time, pressure)
    return None


@units.check(None, "time")
def plateau(points: Sequence[Point], last: Quantity) -> Plateau:
    """The pressure over the last so many seconds: the readings later than the end less that time.

    raises: NoReadings; TimeRunsBack; as amounts.
    source: common practice, no source
    >>> steady = [Point(quantity(t, "s"), quantity(p, "bar")) for t, p in ((1, 2), (2, 3), (3, 5))]
    >>> round(magnitude(plateau(steady, quantity(2, "s")).mean, "bar"), 6)
    4.0
    """
    span = amounts.above_zero(magnitude(last, "s"), "time of the plateau")
    read = _trace(points)
    begin = read[-1][0] - span
    late = [pressure for time, pressure in read if time > begin + _ROUNDING]
    return Plateau(
        quantity(sum(late) / len(late), "kPa"),
        quantity(min(late), "kPa"),
        quantity(max(late), "kPa"),
        len(late),
    )


def missing_places(places: int, seen: Sequence[int]) -> tuple[int, ...]:
    """The places where no oil was seen yet; none missing is a complete prime.

    raises: NotACount; PlaceUnknown.
    source: common practice, no source: oil at every rocker
    >>> missing_places(8, [1, 2, 3, 4, 5, 6, 7])
    (8,)
    """
    every = range(1, amounts.count(places, "number of places", 1) + 1)
    for place in alike.many(seen, "places seen"):
        if amounts.count(place, "place", 1) not in every:
            raise PlaceUnknown(place=place, places=places)
    return tuple(place for place in every if place not in set(seen))


def _holds(value: Quantity, low: Quantity | None, high: Quantity | None, word: str) -> bool:
    number = magnitude(value, word)
    hair = _ROUNDING * max(1.0, abs(number))
    above = low is None or number >= magnitude(low, word) - hair
    return above and (high is None or number <= magnitude(high, word) + hair)


@units.check("pressure", "speed", "temperature", None)
def oil_pressure(
    reading: Quantity, speed: Quantity, temperature: Quantity, limits: Sequence[PressureLimit]
) -> Literal["no limit", "too low", "too high", "within"]:
    """An oil pressure against the owner's limits for its speed and temperature, and no others.

    All limits whose range holds the reading count; too low is said before too high.
    raises: LimitsCrossed; as amounts.
    source: the owner's manual, as typed; nothing is assumed
    >>> idle = PressureLimit(least=quantity(8, "psi"), speed_to=quantity(900, "1/min"))
    >>> speed, warm = quantity(700, "1/min"), quantity(90, "°C")
    >>> oil_pressure(quantity(6, "psi"), speed, warm, [idle])
    'too low'
    """
    _pressure(reading, "oil pressure")
    amounts.not_below_zero(magnitude(speed, "1/min"), "speed")
    for limit in alike.many(limits, "limits"):
        amounts.kind(limit, PressureLimit, "limit")
        if limit.least is not None and not _holds(limit.least, None, limit.most, "kPa"):
            raise LimitsCrossed(what="oil pressure")
    ours = [
        each
        for each in limits
        if _holds(speed, each.speed_from, each.speed_to, "1/min")
        and _holds(temperature, each.temperature_from, each.temperature_to, "°C")
    ]
    if not all(_holds(reading, each.least, None, "kPa") for each in ours):
        return "too low"
    if not all(_holds(reading, None, each.most, "kPa") for each in ours):
        return "too high"
    return "within" if ours else "no limit"
