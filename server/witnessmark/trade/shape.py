"""How far a bore or journal is from round and straight, how a shaft runs, and what wear has taken.

Every result is a length; every list holds readings of one feature.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Literal

from witnessmark.errors import TradeError
from witnessmark.trade import alike, amounts, units
from witnessmark.trade.units import Quantity

Plane = Sequence[Quantity]


class TooFewDirections(TradeError):
    """One diameter is always round."""

    code = "shape-directions"
    says = "Out-of-round needs two directions in one plane."
    next_step = "Measure the same plane again, a quarter turn on."


class TooFewPlanes(TradeError):
    """One plane has no taper."""

    code = "shape-planes"
    says = "Taper needs two planes."
    next_step = "Measure again farther along, in the same directions."


class TooFewStations(TradeError):
    """A dial that was read once has not moved."""

    code = "shape-stations"
    says = "Run-out needs two readings of the dial."
    next_step = "Turn the shaft once round, and note the highest and the lowest."


class DirectionsDiffer(TradeError):
    """Planes that were not measured alike."""

    code = "shape-directions-differ"
    says = "The planes were not measured in the same directions."
    next_step = "Give every plane as many readings, in the same order."


class FeatureUnknown(TradeError):
    """Neither a shaft nor a bore."""

    code = "shape-feature"
    says = "{feature} is neither shaft nor bore."
    next_step = "Choose shaft, which wears smaller, or bore, which wears larger."


class NoWearAllowed(TradeError):
    """A wear limit on the wrong side of new."""

    code = "shape-no-wear"
    says = "The wear limit leaves no wear between it and new."
    next_step = "Look which is the size when new, and which the limit."


@dataclass(frozen=True, slots=True)
class RunOut:
    """What a dial indicator told of a shaft turned once round."""

    run_out: Quantity
    """Total indicator reading: highest less lowest."""
    eccentricity: Quantity
    """Half of it: how far the middle of the feature is off the axis it turned on."""


@dataclass(frozen=True, slots=True)
class Wear:
    """What is gone, and how much of what may go."""

    wear: Quantity
    share_of_allowed: float | None


@units.check("length")
def out_of_round(plane: Plane) -> Quantity:
    """Largest less smallest diameter of one plane.

    raises: TooFewDirections; NotAboveZero; NoQuantity, WrongQuantity.
    source: workshop definition (common practice, no source)
    >>> plane = [units.quantity(each, "mm") for each in (53.975, 53.968)]
    >>> round(units.magnitude(out_of_round(plane), "mm"), 6)
    0.007
    """
    diameters = _diameters(plane)
    return alike.of_mm(max(diameters) - min(diameters))


@units.check("length")
def out_of_round_of_planes(planes: Sequence[Plane]) -> Quantity:
    """The largest out-of-round of several planes.

    raises: as out_of_round; TooFewPlanes for none at all.
    source: as out_of_round
    >>> rows = (86.03, 86.01), (86.02, 86.0), (85.99, 85.98)
    >>> planes = [[units.quantity(each, "mm") for each in row] for row in rows]
    >>> round(units.magnitude(out_of_round_of_planes(planes), "mm"), 6)
    0.02
    """
    if not alike.many(planes, "planes"):
        raise TooFewPlanes()
    return alike.of_mm(max(max(each) - min(each) for each in map(_diameters, planes)))


@units.check("length")
def taper_of_means(planes: Sequence[Plane]) -> Quantity:
    """Taper as the difference of two planes' mean diameters: the widest mean less the narrowest.

    The other definition in use is taper_along; say which one a limit means.
    raises: TooFewPlanes, DirectionsDiffer; as out_of_round.
    source: workshop definition (common practice, no source)
    >>> rows = (86.03, 86.01), (86.02, 86.0), (85.99, 85.98)
    >>> planes = [[units.quantity(each, "mm") for each in row] for row in rows]
    >>> round(units.magnitude(taper_of_means(planes), "mm"), 6)
    0.035
    """
    means = [math.fsum(each) / len(each) for each in _alike_planes(planes)]
    return alike.of_mm(max(means) - min(means))


@units.check("length")
def taper_along(planes: Sequence[Plane]) -> Quantity:
    """Taper as the largest less the smallest diameter along one direction, the worst direction.

    raises: as taper_of_means.
    source: the other workshop definition (common practice, no source)
    >>> rows = (86.03, 86.01), (86.02, 86.0), (85.99, 85.98)
    >>> planes = [[units.quantity(each, "mm") for each in row] for row in rows]
    >>> round(units.magnitude(taper_along(planes), "mm"), 6)
    0.04
    """
    directions = zip(*_alike_planes(planes), strict=True)
    return alike.of_mm(max(max(each) - min(each) for each in directions))


@units.check("length")
def run_out(dial: Sequence[Quantity]) -> RunOut:
    """Run-out from the readings of a dial while the shaft turns once round.

    dial: as read, below zero too; the highest and the lowest are enough.
    raises: TooFewStations; NoQuantity, WrongQuantity; NotANumber.
    source: workshop definition, full indicator movement (common practice, no source)
    >>> dial = [units.quantity(each, "mm") for each in (0, 0.02, -0.015, 0.01)]
    >>> found = run_out(dial)
    >>> [round(units.magnitude(each, "mm"), 6) for each in (found.run_out, found.eccentricity)]
    [0.035, 0.0175]
    """
    if len(alike.many(dial, "dial")) < len("ab"):
        raise TooFewStations()
    listed = [alike.mm(each, "dial") for each in dial]
    total = max(listed) - min(listed)
    return RunOut(alike.of_mm(total), alike.of_mm(total / 2))


@units.check("length", "length", None, "length")
def wear(
    new: Quantity,
    now: Quantity,
    feature: Literal["shaft", "bore"] = "shaft",
    limit: Quantity | None = None,
) -> Wear:
    """What wear has taken, and which share of what may go.

    feature: a shaft wears smaller, a bore larger. limit: the size at which it is worn out.
    Below zero is larger than new, which scatter of the readings can do; above 1 is worn out.
    raises: FeatureUnknown, NoWearAllowed; NotAboveZero; NoQuantity, WrongQuantity.
    source: workshop definition (common practice, no source)
    >>> sizes = [units.quantity(each, "mm") for each in (54.0, 53.962, 53.95)]
    >>> found = wear(sizes[0], sizes[1], "shaft", sizes[2])
    >>> round(units.magnitude(found.wear, "mm"), 6), round(found.share_of_allowed, 6)
    (0.038, 0.76)
    """
    if feature not in ("shaft", "bore"):
        raise FeatureUnknown(feature=feature)
    side = 1 if feature == "shaft" else -1
    size = amounts.above_zero(alike.mm(new, "new"), "new")
    gone = side * (size - amounts.above_zero(alike.mm(now, "now"), "now"))
    if limit is None:
        return Wear(alike.of_mm(gone), None)
    allowed = side * (size - amounts.above_zero(alike.mm(limit, "limit"), "limit"))
    if allowed <= 0:
        raise NoWearAllowed()
    return Wear(alike.of_mm(gone), gone / allowed)


def _diameters(plane: Plane) -> list[float]:
    if len(alike.many(plane, "plane")) < len("ab"):
        raise TooFewDirections()
    return [amounts.above_zero(alike.mm(each, "diameter"), "diameter") for each in plane]


def _alike_planes(planes: Sequence[Plane]) -> list[list[float]]:
    if len(alike.many(planes, "planes")) < len("ab"):
        raise TooFewPlanes()
    for plane in planes:
        alike.many(plane, "plane")
    if not planes[0] or len({len(each) for each in planes}) > 1:
        raise DirectionsDiffer()
    return [
        [amounts.above_zero(alike.mm(each, "diameter"), "diameter") for each in plane]
        for plane in planes
    ]
