"""Fasteners that stand where somebody put them: order from the middle outwards, and drawing."""

from __future__ import annotations

import math
from collections.abc import Sequence

from witnessmark.errors import TradeError
from witnessmark.trade import alike, amounts, sequence

Point = Sequence[float]
_DIGITS = 9


class PointsMeet(TradeError):
    """Two fasteners in one hole."""

    code = "points-meet"
    says = "Fasteners {one} and {other} stand at the same place."
    next_step = "Move one of them."


class PointUnclear(TradeError):
    """A place that is not two numbers."""

    code = "points-place"
    says = "Fastener {number} has no place."
    next_step = "Give each its two coordinates."


def order(points: Sequence[Point]) -> list[int]:
    """Numbers of free-standing fasteners from the middle of their outline outwards, in a spiral.

    points: x to the right, y downwards, in any one unit. Like distances go round clockwise.
    Proposed only: an order the manual gives goes before it.
    raises: PointUnclear, PointsMeet; NoFasteners, TooManyFasteners; NotANumber.
    source: common practice, no source
    >>> order([(0, 0), (10, 0), (5, 1), (0, 4), (10, 4)])
    [3, 1, 2, 5, 4]
    """
    places = _checked(points)
    left, right, top, bottom = _outline(places)
    size = max(right - left, bottom - top) or 1.0

    def spiral(index: int) -> tuple[float, float]:
        across = (places[index][0] - (left + right) / 2) / size
        down = (places[index][1] - (top + bottom) / 2) / size
        ring = math.floor(math.hypot(across, down) * 10**_DIGITS + 0.5)
        return ring, math.atan2(down, across)

    return [index + 1 for index in sorted(range(len(places)), key=spiral)]


def positions(points: Sequence[Point]) -> list[tuple[int, int]]:
    """Where each is drawn, x 0…1000 and y 0…500, as large as fits without being drawn out.

    raises: as order.
    source: definition
    >>> positions([(0, 0), (20, 0), (20, 10)])
    [(180, 90), (820, 90), (820, 410)]
    """
    places = _checked(points)
    left, right, top, bottom = _outline(places)
    room = sequence.WIDTH - 2 * sequence.EDGE, sequence.HEIGHT - 2 * sequence.TOP
    scales = [
        space / extent
        for space, extent in zip(room, (right - left, bottom - top), strict=True)
        if extent
    ]
    scale = min(scales, default=1.0)
    return [
        (
            math.floor(sequence.WIDTH / 2 + (x - (left + right) / 2) * scale + 0.5),
            math.floor(sequence.HEIGHT / 2 + (y - (top + bottom) / 2) * scale + 0.5),
        )
        for x, y in places
    ]


def _outline(places: list[tuple[float, float]]) -> tuple[float, float, float, float]:
    across, down = ([place[side] for place in places] for side in (0, 1))
    return min(across), max(across), min(down), max(down)


def _checked(points: Sequence[Point]) -> list[tuple[float, float]]:
    if not alike.many(points, "points"):
        raise sequence.NoFasteners()
    if len(points) > sequence.MOST:
        raise sequence.TooManyFasteners(count=len(points))
    seen: dict[tuple[float, float], int] = {}
    for number, point in enumerate(points, 1):
        if len(alike.many(point, "point")) != len("xy"):
            raise PointUnclear(number=number)
        x, y = (amounts.finite(each, "place") for each in point)
        if (x, y) in seen:
            raise PointsMeet(one=seen[x, y], other=number)
        seen[x, y] = number
    return list(seen)
