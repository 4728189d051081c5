"""Oil pressure against speed and temperature; only the owner's limits judge."""

from __future__ import annotations

import itertools
from collections.abc import Sequence
from dataclasses import dataclass

from witnessmark.errors import TradeError
from witnessmark.trade import amounts, units
from witnessmark.trade.units import Quantity

_HAIR = 1e-9


class LimitsCrossed(TradeError):
    """A least above a most."""

    code = "oil-limits-crossed"
    says = "The least pressure is above the most."
    next_step = "Look which is which, and type both again."


class LimitDoubled(TradeError):
    """Two limits for one speed."""

    code = "oil-limit-doubled"
    says = "There are two limits for {speed} 1/min."
    next_step = "Leave one out."


@dataclass(frozen=True, slots=True)
class OilLimit:
    """The owner's limits at one speed, from the manual."""

    speed: Quantity
    least: Quantity | None = None
    most: Quantity | None = None


@units.check("pressure", "speed", None, "temperature", "temperature")
def judge(
    pressure: Quantity,
    speed: Quantity,
    limits: Sequence[OilLimit],
    temperature: Quantity | None = None,
    warm_from: Quantity | None = None,
) -> str:
    """Where oil pressure lies against the owner's limits: "inside", "below", "above" or why not.

    Between two speeds the limits run straight; outside them there is none: "no-limit". Colder than
    warm_from nothing is judged: "too-cold"; so too where the temperature is not known.
    raises: LimitsCrossed, LimitDoubled; BelowZero; NoQuantity, WrongQuantity; NotANumber.
    source: the owner's limits, from the manual
    >>> rows = [OilLimit(units.quantity(2000, "1/min"), units.quantity(2, "bar"))]
    >>> judge(units.quantity(1.8, "bar"), units.quantity(2000, "1/min"), rows)
    'below'
    """
    found = amounts.not_below_zero(units.magnitude(pressure, "kPa"), "pressure")
    turning = amounts.not_below_zero(units.magnitude(speed, "1/min"), "speed")
    rows = sorted((_row(each) for each in limits), key=lambda each: each[0])
    _refuse_doubled([each[0] for each in rows])
    if warm_from is not None:
        warm = units.magnitude(warm_from, "°C")
        if temperature is None or units.magnitude(temperature, "°C") < warm - _HAIR:
            return "too-cold"
    least, most = (_along(rows, turning, end) for end in (1, 2))
    if least is None and most is None:
        return "no-limit"
    if least is not None and found < least - _HAIR * least:
        return "below"
    return "above" if most is not None and found > most + _HAIR * most else "inside"


_Row = tuple[float, float | None, float | None]


def _row(limit: OilLimit) -> _Row:
    ends = [
        None if each is None else amounts.not_below_zero(units.magnitude(each, "kPa"), "limit")
        for each in (limit.least, limit.most)
    ]
    if ends[0] is not None and ends[1] is not None and ends[0] > ends[1]:
        raise LimitsCrossed()
    speed = amounts.not_below_zero(units.magnitude(limit.speed, "1/min"), "speed")
    return speed, ends[0], ends[1]


def _refuse_doubled(speeds: list[float]) -> None:
    for one, other in itertools.pairwise(speeds):
        if one == other:
            raise LimitDoubled(speed=f"{one:g}")


def _along(rows: list[_Row], speed: float, end: int) -> float | None:
    """The limit at a speed, straight between the two beside it that have one."""
    known = [(row[0], float(row[end] or 0.0)) for row in rows if row[end] is not None]
    if len(known) == 1:
        return known[0][1] if known[0][0] == speed else None
    for (before, low), (after, high) in itertools.pairwise(known):
        if before <= speed <= after:
            return low + (high - low) * (speed - before) / (after - before)
    return None
