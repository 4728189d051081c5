"""Measured parts to measured places, so that each difference lands nearest the wanted one.

Difference = place − part: a bore less its piston, a housing less its bush.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from witnessmark.errors import TradeError
from witnessmark.trade import alike, amounts, assignment
from witnessmark.trade.units import Quantity


class TooFewParts(TradeError):
    """Fewer parts than places."""

    code = "pairing-too-few"
    says = "There are {parts} parts for {places} places."
    next_step = "Measure {missing} more, or pair fewer places."


class NothingToPair(TradeError):
    """No place at all."""

    code = "pairing-no-places"
    says = "There is no place to pair a part with."
    next_step = "Measure one place at least."


@dataclass(frozen=True, slots=True)
class Pairing:
    """The part of each place, numbered from 1, and how it lands; others may be as good."""

    parts: tuple[int, ...]
    differences: tuple[Quantity, ...]
    deviations: tuple[Quantity, ...]
    """Difference less the wanted one."""
    sum_of_deviations: Quantity
    """Above and below alike."""
    worst: Quantity
    left: tuple[int, ...]
    """Parts that no place got."""


def pair(places: Sequence[Quantity], parts: Sequence[Quantity], wanted: Quantity) -> Pairing:
    """The pairing with the least sum of deviations from the wanted difference, proved best.

    places, parts: sizes of one dimension, mixed units allowed; each part is used once at most.
    wanted: place less part; may be below zero (an interference).
    raises: NothingToPair, TooFewParts; assignment.TooLarge; NoQuantity, WrongQuantity; NotANumber.
    source: linear sum assignment (see assignment.cheapest)
    >>> from witnessmark.trade import units
    >>> bores = [units.quantity(each, "mm") for each in (86.012, 86.020)]
    >>> pistons = [units.quantity(each, "mm") for each in (85.978, 85.971, 85.99)]
    >>> pair(bores, pistons, units.quantity(0.04, "mm")).parts
    (2, 1)
    """
    if not alike.many(places, "places"):
        raise NothingToPair()
    first = places[0]
    rooms = [alike.size(each, first, "place") for each in places]
    sizes = [alike.size(each, first, "part") for each in alike.many(parts, "parts")]
    aim = amounts.finite(alike.size(wanted, first, "wanted"), "wanted")
    if len(sizes) < len(rooms):
        raise TooFewParts(parts=len(sizes), places=len(rooms), missing=len(rooms) - len(sizes))
    chosen = assignment.cheapest([[abs(room - each - aim) for each in sizes] for room in rooms])
    apart = [room - sizes[at] for room, at in zip(rooms, chosen, strict=True)]
    off = [each - aim for each in apart]
    return Pairing(
        parts=tuple(at + 1 for at in chosen),
        differences=tuple(alike.like(each, first) for each in apart),
        deviations=tuple(alike.like(each, first) for each in off),
        sum_of_deviations=alike.like(math.fsum(abs(each) for each in off), first),
        worst=alike.like(max(abs(each) for each in off), first),
        left=tuple(at + 1 for at in range(len(sizes)) if at not in chosen),
    )
