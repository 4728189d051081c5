"""A trace of oil pressure while priming, reduced to when it rose, how fast, and where it stays."""

from __future__ import annotations

import itertools
import math
from collections.abc import Sequence
from dataclasses import dataclass

from witnessmark.errors import TradeError
from witnessmark.trade import amounts, units
from witnessmark.trade.units import Quantity

_LOW, _HIGH = 0.1, 0.9


class TraceTooShort(TradeError):
    """Fewer than two points."""

    code = "trace-too-short"
    says = "A trace needs two readings at least."
    next_step = "Read the gauge every second while the engine is turned."


class TimeBackwards(TradeError):
    """A reading not later than the one before."""

    code = "trace-time-backwards"
    says = "Reading {place} is not later than the one before."
    next_step = "Put the readings in the order they were taken."


@dataclass(frozen=True, slots=True)
class Point:
    """One reading of the gauge."""

    time: Quantity
    pressure: Quantity


@dataclass(frozen=True, slots=True)
class Rise:
    """From a tenth to nine tenths of the plateau."""

    starts: Quantity
    takes: Quantity
    falls_back: Quantity
    """From the highest reading down to the last: air at the pick-up, where it is much."""


@units.check(None, "pressure")
def time_to(trace: Sequence[Point], threshold: Quantity) -> Quantity | None:
    """When the pressure first reached a threshold, straight between readings; None if never.

    raises: TraceTooShort, TimeBackwards; BelowZero; NoQuantity, WrongQuantity; NotANumber.
    source: linear interpolation; 20 to 25 psi count as primed (common practice, no source)
    >>> rows = [(3, 2), (4, 9), (5, 16)]
    >>> trace = [Point(units.quantity(t, "s"), units.quantity(p, "psi")) for t, p in rows]
    >>> round(units.magnitude(time_to(trace, units.quantity(10, "psi")), "s"), 6)
    4.142857
    """
    aim = amounts.not_below_zero(units.magnitude(threshold, "kPa"), "threshold")
    found = _reached(_plain(trace), aim)
    return None if found is None else units.quantity(found, "s")


@units.check(None, "time")
def plateau(trace: Sequence[Point], last: Quantity) -> Quantity:
    """Mean of the readings later than so long before the end.

    raises: as time_to; NotAboveZero.
    source: definition (mean of the last readings)
    >>> trace = [Point(units.quantity(t, "s"), units.quantity(23, "psi")) for t in range(5)]
    >>> round(units.magnitude(plateau(trace, units.quantity(3, "s")), "psi"), 6)
    23.0
    """
    long = amounts.above_zero(units.magnitude(last, "s"), "last")
    return units.quantity(_mean(_plain(trace), long), "kPa")


@units.check(None, "time")
def rise(trace: Sequence[Point], last: Quantity) -> Rise | None:
    """How the pressure rose to its plateau; None where there is none to speak of.

    raises: as plateau.
    source: definition (10 % to 90 % of the plateau)
    """
    rows = _plain(trace)
    level = _mean(rows, amounts.above_zero(units.magnitude(last, "s"), "last"))
    starts, ends = (_reached(rows, share * level) for share in (_LOW, _HIGH))
    if level <= 0 or starts is None or ends is None:
        return None
    back = max(pressure for _, pressure in rows) - rows[-1][1]
    return Rise(
        units.quantity(starts, "s"), units.quantity(ends - starts, "s"), units.quantity(back, "kPa")
    )


def _plain(trace: Sequence[Point]) -> list[tuple[float, float]]:
    if len(trace) < len("ab"):
        raise TraceTooShort()
    rows = [
        (
            units.magnitude(each.time, "s"),
            amounts.not_below_zero(units.magnitude(each.pressure, "kPa"), "pressure"),
        )
        for each in trace
    ]
    for at, ((before, _), (after, _)) in enumerate(itertools.pairwise(rows)):
        if after <= before:
            raise TimeBackwards(place=at + 2)
    return rows


def _reached(rows: list[tuple[float, float]], aim: float) -> float | None:
    if rows[0][1] >= aim:
        return rows[0][0]
    for (before, low), (after, high) in itertools.pairwise(rows):
        # A hair for thresholds that were converted from another unit.
        if high >= aim * (1 - 1e-12):
            return before + (after - before) * min(1.0, (aim - low) / (high - low))
    return None


def _mean(rows: list[tuple[float, float]], last: float) -> float:
    from_time = rows[-1][0] - last
    late = [pressure for time, pressure in rows if time > from_time + 1e-9]
    return math.fsum(late) / len(late)
