"""What was read of one measure over time: a point for each spot and inspection."""

from __future__ import annotations

import math
from collections.abc import Iterable
from typing import Any

from witnessmark.log.values import Fact, Subject
from witnessmark.log.workshop import Workshop
from witnessmark.views import plain
from witnessmark.views.measured import READ, measures_of
from witnessmark.views.told import told

_NAMES = ("id", "name", "unit", "least", "most", "source")


def plots_of(
    workshop: Workshop, kind: Subject | None, parts: Iterable[Subject]
) -> list[dict[str, Any]]:
    """Each measure of a kind with all that was read of it on these parts, oldest first."""
    facts = [
        (part["id"], fact) for part in parts for fact in part["facts"] if fact["heading"] in READ
    ]
    facts.sort(key=lambda each: (each[1]["order"], each[1]["device"], each[1]["id"]))
    return [_plot(workshop, measure, facts) for measure in measures_of(kind)]


def _plot(
    workshop: Workshop, measure: dict[str, Any], facts: list[tuple[str, Fact]]
) -> dict[str, Any]:
    read = [(part, fact, _readings(fact, measure["id"])) for part, fact in facts]
    # Limits without a unit judge nothing, even where the readings bring one.
    known = {} if measure["unit"] else {"unit": _last_unit(read), "least": None, "most": None}
    asked = {**measure, **known}
    points = [point for each in read if each[2] for point in _points(workshop, asked, *each)]
    return {**{name: asked[name] for name in _NAMES}, "points": points, **_summed(points)}


def _summed(points: list[dict[str, Any]]) -> dict[str, Any]:
    """What the points say together, those struck out left aside."""
    open_ = [point for point in points if not point["struck"]]
    sizes = [point["size"] for point in open_]
    return {
        "pieces": len({point["part"] for point in open_}),
        "low": min(sizes, default=None),
        "high": max(sizes, default=None),
        "mean": math.fsum(sizes) / len(sizes) if sizes else None,
        "decimals": max((point["decimals"] for point in open_), default=0),
        "outside": sum(1 for point in open_ if point["verdict"] == "outside"),
        "close": sum(1 for point in open_ if point["verdict"] == "too-close"),
    }


def _readings(fact: Fact, measure: str) -> list[dict[str, Any]]:
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
    workshop: Workshop,
    measure: dict[str, Any],
    part: str,
    fact: Fact,
    readings: list[dict[str, Any]],
) -> list[dict[str, Any]]:
    """The mean at each spot, how sure it is (k = 2), and how it lies to the limits."""
    found = told(measure, readings, workshop.subject)
    return [
        {
            "entry": fact["id"],
            "part": part,
            "made": fact["made"],
            "struck": fact["struck"] is not None,
            "position": spot["position"],
            "direction": spot["direction"],
            "times": spot["times"],
            "size": spot["mean"],
            "decimals": found["decimals"],
            "uncertainty": spot["uncertainty"],
            "from": spot["from"],
            "verdict": spot["verdict"],
        }
        for spot in found["spots"]
    ]
