"""How far a bore or journal is from round and straight, by what was read at its spots."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Any

from witnessmark.trade import shape, units
from witnessmark.trade.units import Quantity
from witnessmark.views import plain

Spot = dict[str, Any]
_LEAST = 1e-9
"""Less is no diameter."""
_TWO = 2


def out_of_round_of(spots: list[Spot], unit: str) -> float | None:
    """The worst position's largest less its smallest diameter, or None."""
    rings = [ring for ring in _by_position(spots) if len(ring) >= _TWO]
    planes = [[spot["mean"] for spot in ring] for ring in rings]
    return _shape_of(shape.out_of_round_of_planes, planes, unit)


def taper_of(measure: dict[str, Any], spots: list[Spot], unit: str) -> float | None:
    """The largest less the smallest diameter along the bore or journal, in the worst direction.

    Only a diameter, or what is measured in directions, has one: two ends of a rod have none.
    """
    around = plain.text(measure.get("quantity")) == "diameter"
    if not around and not plain.texts(measure.get("directions")):
        return None
    rings = [{spot["direction"]: spot["mean"] for spot in ring} for ring in _by_position(spots)]
    shared = [one for one in (rings[0] if rings else {}) if all(one in ring for ring in rings)]
    if len(rings) < _TWO or not shared:
        return None
    planes = [[ring[one] for one in shared] for ring in rings]
    return _shape_of(shape.taper_along, planes, unit)


def _by_position(spots: list[Spot]) -> list[list[Spot]]:
    positions = plain.once(spot["position"] for spot in spots)
    return [[spot for spot in spots if spot["position"] == each] for each in positions]


def _shape_of(
    rule: Callable[[Sequence[Sequence[Quantity]]], Quantity], planes: list[list[float]], unit: str
) -> float | None:
    if not planes or units.quantity_of(unit) != "length":
        return None
    in_mm = [[units.convert_difference(each, unit, "mm") for each in plane] for plane in planes]
    if any(each < _LEAST for plane in in_mm for each in plane):
        return None
    found = rule([[units.quantity(each, "mm") for each in plane] for plane in in_mm])
    return units.convert_difference(units.magnitude(found, "mm"), "mm", unit)
