"""Two shells of unlike thickness in one bearing, so that every bearing lands nearest its target.

Clearance at a place = its gap without shells − both walls. Every way to share out the stock is
looked at, the same stock left over counting once, so that the choice is proved best.
"""

from __future__ import annotations

import itertools
import math
from collections.abc import Sequence
from dataclasses import dataclass

from witnessmark.errors import TradeError
from witnessmark.trade import alike, amounts, choosing, units
from witnessmark.trade.units import Quantity

MOST_WAYS = 13_000
"""Different stocks left over that are looked at after any one place."""
_HAIR = 1e-9

Left = tuple[int, ...]
Pair = tuple[int, int]


class NoPair(TradeError):
    """Shells enough, but none that may stand together."""

    code = "mixing-no-pair"
    says = "The shells cannot be paired: their walls differ by more than {apart} mm."
    next_step = "Allow a larger difference, or get more of one thickness."


class TooMixed(TradeError):
    """More ways than can be looked at."""

    code = "mixing-too-mixed"
    says = "There are too many different walls to look at every way of pairing them."
    next_step = "Put walls that measure alike together with their count, or leave some out."


@dataclass(frozen=True, slots=True)
class Mixed:
    """The two shells of one place; numbers count from 1."""

    place: int
    shells: tuple[int, int]
    clearance: Quantity
    deviation: Quantity


@dataclass(frozen=True, slots=True)
class Mixture:
    """One of the best ways; others may be as good."""

    places: tuple[Mixed, ...]
    sum_of_deviations: Quantity
    worst: Quantity


@dataclass(frozen=True, slots=True)
class _Way:
    cost: float
    before: Left
    pair: Pair


@units.check("length", "length", "length")
def choose(
    gaps: Sequence[Quantity],
    walls: Sequence[Quantity],
    target: Quantity,
    *,
    counts: Sequence[int] | None = None,
    most_apart: Quantity | None = None,
) -> Mixture:
    """Two shells for each place with the least sum of deviations from the target, proved best.

    gaps: housing less journal of each place. walls: of single shells; each once, or as often as
    counts says. most_apart: how much the two walls of one place may differ at most.
    raises: NoPair, TooMixed; choosing.NoPlaces, TooFewPieces, CountsDiffer; BelowZero,
    NotAboveZero, NotACount; NoQuantity, WrongQuantity; NotANumber.
    source: every way tried (dynamic programming over the stock left)
    >>> gaps = [units.quantity(each, "mm") for each in (4.05, 4.054)]
    >>> walls = [units.quantity(each, "mm") for each in (2.0, 2.004)]
    >>> found = choose(gaps, walls, units.quantity(0.05, "mm"), counts=[3, 1])
    >>> [each.shells for each in found.places]
    [(1, 1), (1, 2)]
    """
    rooms = [amounts.finite(alike.mm(each, "gap"), "gap") for each in alike.many(gaps, "gaps")]
    thick = [
        amounts.above_zero(alike.mm(each, "wall"), "wall") for each in alike.many(walls, "walls")
    ]
    aim = amounts.finite(alike.mm(target, "target"), "target")
    stock = _stock(thick, counts, len(rooms))
    apart = math.inf
    if most_apart is not None:
        apart = amounts.not_below_zero(alike.mm(most_apart, "most apart"), "most apart")
    pairs = _pairs(thick, apart)
    off = [[room - thick[one] - thick[other] - aim for one, other in pairs] for room in rooms]
    chosen = _best(off, pairs, stock, apart)
    placed = [
        Mixed(row + 1, (one + 1, other + 1), alike.of_mm(each + aim), alike.of_mm(each))
        for row, (one, other) in enumerate(chosen)
        for each in (rooms[row] - thick[one] - thick[other] - aim,)
    ]
    found = [abs(alike.mm(each.deviation, "deviation")) for each in placed]
    return Mixture(tuple(placed), alike.of_mm(math.fsum(found)), alike.of_mm(max(found)))


def _pairs(thick: list[float], apart: float) -> list[Pair]:
    together = itertools.combinations_with_replacement(range(len(thick)), 2)
    return [pair for pair in together if abs(thick[pair[0]] - thick[pair[1]]) <= apart + _HAIR]


def _best(off: list[list[float]], pairs: list[Pair], stock: Left, apart: float) -> list[Pair]:
    layers: list[dict[Left, _Way]] = [{stock: _Way(0.0, stock, (0, 0))}]
    for row in off:
        layers.append(_next(layers[-1], row, pairs))
        if not layers[-1]:
            raise NoPair(apart=f"{apart:g}")
        if len(layers[-1]) > MOST_WAYS:
            raise TooMixed()
    left = min(layers[-1], key=lambda each: layers[-1][each].cost)
    chosen = []
    for layer in reversed(layers[1:]):
        chosen.append(layer[left].pair)
        left = layer[left].before
    return chosen[::-1]


def _next(layer: dict[Left, _Way], row: list[float], pairs: list[Pair]) -> dict[Left, _Way]:
    made: dict[Left, _Way] = {}
    for left, way in layer.items():
        for off, pair in zip(row, pairs, strict=True):
            rest = _without(left, pair)
            cost = way.cost + abs(off)
            if rest is not None and (rest not in made or cost < made[rest].cost):
                made[rest] = _Way(cost, left, pair)
    return made


def _without(left: Left, pair: Pair) -> Left | None:
    rest = list(left)
    for each in pair:
        rest[each] -= 1
    return None if min(rest) < 0 else tuple(rest)


def _stock(thick: list[float], counts: Sequence[int] | None, places: int) -> Left:
    if not places:
        raise choosing.NoPlaces()
    if counts is not None and len(alike.many(counts, "counts")) != len(thick):
        raise choosing.CountsDiffer(what="count", of="wall")
    many = [1] * len(thick) if counts is None else [amounts.count(each, "count") for each in counts]
    wanted = 2 * places
    if sum(many) < wanted:
        missing = wanted - sum(many)
        raise choosing.TooFewPieces(pieces=sum(many), places=places, missing=missing)
    return tuple(min(each, wanted) for each in many)
