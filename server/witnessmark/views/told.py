"""What the readings of one measure tell: mean, uncertainty, verdict, how round and straight."""

from __future__ import annotations

import math
from collections.abc import Callable
from typing import Any

from witnessmark.log.values import Subject
from witnessmark.trade import dimension, limits, units
from witnessmark.views import plain
from witnessmark.views.out_of_round import out_of_round_of, taper_of
from witnessmark.views.reading import MOST_DECIMALS, Line, Spot, in_unit, read_in, sureness

Measure = dict[str, Any]
Reading = dict[str, Any]
Instruments = Callable[[str], Subject | None]
Sure = tuple[float, str]

_WORST = ("outside", "too-close", "inside")
_NOTHING = dict.fromkeys(
    ("value", "size", "decimals", "uncertainty", "from", "verdict", "out_of_round", "taper")
)


def spots_of(measure: Measure) -> list[Spot]:
    """Where a measure is read, one spot after another."""
    positions: list[str | None] = [*plain.texts(measure.get("positions"))] or [None]
    directions: list[str | None] = [*plain.texts(measure.get("directions"))] or [None]
    return [(position, direction) for position in positions for direction in directions]


def told(measure: Measure, readings: list[Reading], instrument_of: Instruments) -> dict[str, Any]:
    """What readings of a measure tell, in the order they were taken.

    One that is of another quantity, or cannot be read, tells nothing. The value is the mean over
    the spots, the uncertainty (k = 2) that of the least sure spot, the verdict that of the worst.
    All sizes stand in `unit`.
    """
    unit, lines = _in_one_unit(measure, readings)

    def sure_of(line: Line) -> Sure:
        return sureness(instrument_of(line.instrument), unit, line.step)

    mine = _by_spot(measure, lines)
    spots = [_at_spot(measure, unit, each, sure_of) for each in mine.values()]
    asked = spots_of(measure)
    count = {
        "unit": unit or None,
        "times": len(lines),
        "read": len([spot for spot in asked if spot in mine]),
        "of": len(asked),
        "spots": spots,
    }
    found = size_told(measure, readings)
    if found is None:
        return {**count, **_NOTHING}
    shown = min(MOST_DECIMALS, found["decimals"] + (1 if len(lines) > 1 else 0))
    unsure = max(spots, key=lambda spot: float(spot["uncertainty"]))
    verdicts = [spot["verdict"] for spot in spots]
    return {
        **count,
        "value": units.rounded(found["size"], shown),
        **found,
        "uncertainty": unsure["uncertainty"],
        "from": unsure["from"],
        "verdict": next((word for word in _WORST if word in verdicts), None),
        "out_of_round": out_of_round_of(spots, unit),
        "taper": taper_of(measure, spots, unit),
    }


def size_told(measure: Measure, readings: list[Reading]) -> dict[str, Any] | None:
    """The size alone: the mean over the spots of the mean at each, and the finest decimals."""
    _, lines = _in_one_unit(measure, readings)
    if not lines:
        return None
    means = [_mean(each) for each in _by_spot(measure, lines).values()]
    decimals = max(line.decimals for line in lines)
    return {"size": math.fsum(means) / len(means), "decimals": decimals}


def _mean(lines: list[Line]) -> float:
    return math.fsum(line.size for line in lines) / len(lines)


def _in_one_unit(measure: Measure, readings: list[Reading]) -> tuple[str, list[Line]]:
    """The readings in the measure's unit, else in that of the first of them."""
    read = (plain.quantity(each.get("value")) for each in readings)
    first = next((each.unit for each in read if each), "")
    unit = plain.text(measure.get("unit")) or first
    return unit, [line for each in readings if (line := read_in(each, unit))]


def _by_spot(measure: Measure, lines: list[Line]) -> dict[Spot, list[Line]]:
    """What was read at each spot: those the measure names first, then others as they come."""
    known = plain.once([*spots_of(measure), *(line.spot for line in lines)])
    found = {spot: [line for line in lines if line.spot == spot] for spot in known}
    return {spot: mine for spot, mine in found.items() if mine}


def _at_spot(
    measure: Measure, unit: str, lines: list[Line], sure_of: Callable[[Line], Sure]
) -> dict[str, Any]:
    """What was read at one spot.

    Several instruments are as sure as the least sure of them; from two repeats on their scatter
    counts, too.
    """
    unsure, origin = max(map(sure_of, lines), key=lambda part: part[0])
    parts = [units.quantity(unsure, unit)]
    if len(lines) > 1:
        sizes = [units.quantity(line.size, unit) for line in lines]
        parts.append(dimension.repeats(sizes).standard_uncertainty_of_mean)
    u = units.magnitude(dimension.combined(parts), unit)
    mean = _mean(lines)
    return {
        "position": lines[0].spot[0],
        "direction": lines[0].spot[1],
        "times": len(lines),
        "mean": mean,
        "uncertainty": units.magnitude(dimension.expanded(units.quantity(u, unit)), unit),
        "from": origin,
        "verdict": _verdict(measure, unit, mean, u),
    }


def _verdict(measure: Measure, unit: str, mean: float, u: float) -> str | None:
    """Held against the limits by ISO 14253-1; limits that cross, or have no unit, judge nothing."""
    own = plain.text(measure.get("unit")) or ""
    least, most = (
        in_unit(plain.quantity({"value": measure.get(name), "unit": own}), own)
        for name in ("least", "most")
    )
    crossed = least is not None and most is not None and least > most
    if crossed or (least is None and most is None):
        return None
    low, high = (None if each is None else units.quantity(each, unit) for each in (least, most))
    band = limits.guard_band(units.quantity(u, unit))
    lies = limits.judge(units.quantity(mean, unit), low, high, band).lies
    return "too-close" if lies == "too-close-to-call" else lies
