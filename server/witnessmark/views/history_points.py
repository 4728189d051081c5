"""What was read of one measure over time: a point for each place and inspection."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

from witnessmark.errors import TradeError
from witnessmark.log.values import Fact, Subject
from witnessmark.log.workshop import value
from witnessmark.trade import dimension, limits, units
from witnessmark.views import plain
from witnessmark.views.sizes import measures_of

_READ = ("inspection", "returned")


def plots_of(kind: Subject | None, parts: Iterable[Subject]) -> list[dict[str, Any]]:
    """Each measure of a kind with all that was read of it on these parts, oldest first."""
    facts = [
        (part["id"], fact) for part in parts for fact in part["facts"] if fact["heading"] in _READ
    ]
    facts.sort(key=lambda each: (each[1]["order"], each[1]["device"], each[1]["id"]))
    sources = {
        plain.text(each.get("id")): plain.text(each.get("source"))
        for each in plain.mappings(value(kind, "measures"))
    }
    return [_plot(measure, sources.get(measure["id"]), facts) for measure in measures_of(kind)]


def _plot(
    measure: dict[str, Any], source: str | None, facts: list[tuple[str, Fact]]
) -> dict[str, Any]:
    read = [(part, fact, _read(fact, measure["id"])) for part, fact in facts]
    unit = measure["unit"] or _last_unit(read)
    ends = [_limit(measure[name], unit) for name in ("least", "most")]
    points = [
        point
        for part, fact, found in read
        for point in _points(part, fact, found, unit, ends)
        if unit
    ]
    return {**measure, "unit": unit, "source": source, "points": points, **_told(points)}


def _told(points: list[dict[str, Any]]) -> dict[str, Any]:
    """What the points say together, those struck out left aside."""
    open_ = [point for point in points if not point["struck"]]
    sizes = [point["size"] for point in open_]
    return {
        "pieces": len({point["part"] for point in open_}),
        "low": min(sizes, default=None),
        "high": max(sizes, default=None),
        "mean": sum(sizes) / len(sizes) if sizes else None,
        "decimals": max((point["decimals"] for point in open_), default=0),
        "outside": sum(1 for point in open_ if point["lies"] == "outside"),
        "close": sum(1 for point in open_ if point["lies"] == "too-close-to-call"),
    }


def _read(fact: Fact, measure: str) -> list[dict[str, Any]]:
    readings = plain.mappings(fact["body"].get("readings"))
    return [each for each in readings if each.get("measure") == measure]


def _last_unit(read: list[tuple[str, Fact, list[dict[str, Any]]]]) -> str | None:
    """Where a kind names no unit, that of the latest reading."""
    for _, _, found in reversed(read):
        for each in reversed(found):
            if kept := plain.quantity(each.get("value")):
                return kept.unit
    return None


def _points(
    part: str, fact: Fact, found: list[dict[str, Any]], unit: str | None, ends: list[float | None]
) -> list[dict[str, Any]]:
    """The mean at each place, what its last digit leaves open, and how it lies to the limits."""
    places: dict[tuple[str | None, str | None], list[tuple[float, int, float]]] = {}
    for each in found:
        place = plain.text(each.get("position")), plain.text(each.get("direction"))
        if size := _in_unit(each.get("value"), unit):
            places.setdefault(place, []).append(size)
    return [
        {
            "entry": fact["id"],
            "part": part,
            "made": fact["made"],
            "struck": fact["struck"] is not None,
            "position": position,
            "direction": direction,
            "times": len(sizes),
            **_judged(sizes, str(unit), ends),
        }
        for (position, direction), sizes in places.items()
    ]


def _judged(
    sizes: list[tuple[float, int, float]], unit: str, ends: list[float | None]
) -> dict[str, Any]:
    size = sum(each for each, _, _ in sizes) / len(sizes)
    guard = _guard(max(step for _, _, step in sizes), unit)
    return {
        "size": size,
        "decimals": max(decimals for _, decimals, _ in sizes),
        "guard": guard,
        "lies": _lies(size, guard, unit, ends),
    }


def _in_unit(kept: object, unit: str | None) -> tuple[float, int, float] | None:
    """The size in a unit, with how many decimals it was read, and what the last one is worth."""
    read = plain.quantity(kept)
    if read is None or unit is None:
        return None
    decimals = len(read.value.partition(".")[2])
    step = 10.0**-decimals
    if unit == read.unit:
        return read.number, decimals, step
    try:
        size = units.convert(read.number, read.unit, unit)
        return size, decimals, abs(units.convert_difference(step, read.unit, unit))
    except TradeError:
        return None


def _guard(step: float, unit: str) -> float:
    """How far off a limit a reading must stay for its last digit alone."""
    known = dimension.from_resolution(units.quantity(step, unit))
    return float(limits.guard_band(known).magnitude)


def _limit(typed: str | None, unit: str | None) -> float | None:
    kept = plain.quantity({"value": typed, "unit": unit})
    return kept.number if kept else None


def _lies(size: float, guard: float, unit: str, ends: list[float | None]) -> str | None:
    low, high = (None if end is None else units.quantity(end, unit) for end in ends)
    try:
        read, band = units.quantity(size, unit), units.quantity(guard, unit)
        return limits.judge(read, low, high, band).lies
    except TradeError:
        return None
