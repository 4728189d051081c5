"""Proof of an assembled engine: compression, leak-down, prime. Only the owner's limits judge."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from witnessmark.errors import TradeError
from witnessmark.trade import alike, amounts, units
from witnessmark.trade.units import Quantity

AVIATION_SHARE = 0.25
EVEN = 0.75
_HAIR = 1e-9


class GaugesCrossed(TradeError):
    """More pressure held than supplied."""

    code = "proof-gauges-crossed"
    says = "The cylinder gauge reads {held}, above the {supplied} supplied."
    next_step = "Check which gauge is which, then read both again."


class NoReadings(TradeError):
    """Nothing was read."""

    code = "proof-no-readings"
    says = "There are no readings."
    next_step = "Read one cylinder at least."


class PlaceUnknown(TradeError):
    """Seen at a place the engine has not."""

    code = "proof-place-unknown"
    says = "There is no place {place} of {places}."
    next_step = "Count the places again."


@dataclass(frozen=True, slots=True)
class Evenness:
    """How even the cylinders are; places count from 1."""

    lowest_over_highest: float
    mean: Quantity
    lowest: int
    highest: int
    shares: tuple[float, ...]
    """Each over the highest."""


@dataclass(frozen=True, slots=True)
class Prime:
    """Whether oil was seen everywhere."""

    complete: bool
    missing: tuple[int, ...]


@units.check("pressure", "pressure")
def leakage(supplied: Quantity, held: Quantity) -> float:
    """Share of the supplied pressure that a cylinder does not hold, 0 to 1; both are gauge.

    raises: GaugesCrossed; NotAboveZero, BelowZero; NoQuantity, WrongQuantity; NotANumber.
    source: definition
    >>> leakage(units.quantity(80, "psi"), units.quantity(72, "psi"))
    0.1
    """
    first = amounts.above_zero(alike.size(supplied, supplied, "supplied"), "supplied")
    second = amounts.not_below_zero(alike.size(held, supplied, "held"), "held")
    if second > first * (1 + _HAIR):
        raise GaugesCrossed(held=f"{second:g}", supplied=f"{first:g}")
    return max(0.0, (first - second) / first)


def within(share: float, most: float) -> bool:
    """Whether a leakage keeps a limit; the limit itself is within.

    raises: NotAShare; NotANumber.
    source: the owner's limit; for aircraft engines 25 % of 80 psi, FAA AC 43.13-1B, chapter 8
    (wording from memory)
    >>> within(0.25, AVIATION_SHARE), within(0.2625, AVIATION_SHARE)
    (True, False)
    """
    return amounts.share(share, "leakage") <= amounts.share(most, "limit") + _HAIR


def leak_mark(share: float) -> str:
    """A rule of thumb for leak-down: "good", "worn" from 10 %, "find-out-why" above 20 %.

    raises: NotAShare; NotANumber.
    source: common practice, no source
    >>> leak_mark(0.05), leak_mark(0.1), leak_mark(0.21)
    ('good', 'worn', 'find-out-why')
    """
    leak = amounts.share(share, "leakage")
    if leak < 0.1 - _HAIR:
        return "good"
    return "worn" if leak <= 0.2 + _HAIR else "find-out-why"


@units.check("length")
def orifice(bore: Quantity) -> Quantity:
    """The master orifice of a differential tester: 0.040 in, from 5.00 in bore on 0.060 in.

    raises: NotAboveZero; NoQuantity, WrongQuantity; NotANumber.
    source: FAA AC 43.13-1B change 1, paragraph 8-14
    >>> units.magnitude(orifice(units.quantity(4.99, "in")), "in")
    0.04
    """
    wide = amounts.above_zero(units.magnitude(bore, "in"), "bore")
    return units.quantity(0.06 if wide >= 5.0 * (1 - 1e-12) else 0.04, "in")


@units.check("pressure")
def evenness(readings: Sequence[Quantity]) -> Evenness:
    """How even the compression of the cylinders is; of equal readings the first is named.

    raises: NoReadings; NotAboveZero; NoQuantity, WrongQuantity; NotANumber.
    source: definition
    >>> found = evenness([units.quantity(each, "psi") for each in (160, 158, 120, 161)])
    >>> round(found.lowest_over_highest, 6), found.lowest
    (0.745342, 3)
    """
    if not readings:
        raise NoReadings()
    sizes = [amounts.above_zero(each, "reading") for each in alike.sizes(readings, "reading")]
    most = max(sizes)
    return Evenness(
        lowest_over_highest=min(sizes) / most,
        mean=alike.like(sum(sizes) / len(sizes), readings[0]),
        lowest=sizes.index(min(sizes)) + 1,
        highest=sizes.index(most) + 1,
        shares=tuple(each / most for each in sizes),
    )


def even(lowest_over_highest: float, least: float = EVEN) -> bool:
    """Whether the lowest is not below that share of the highest; exactly that share is even.

    raises: NotAShare; NotANumber.
    source: 75 %: common practice, no source
    >>> even(0.75), even(0.745)
    (True, False)
    """
    share = amounts.share(lowest_over_highest, "evenness")
    return share >= amounts.share(least, "limit") - _HAIR


def prime(places: int, seen: Sequence[int]) -> Prime:
    """Whether oil was seen at every place, and where not yet; places count from 1.

    raises: PlaceUnknown; NotACount; NotANumber.
    source: common practice, no source: oil at every rocker
    >>> prime(8, [1, 2, 3, 4, 5, 6, 7]).missing
    (8,)
    """
    many = amounts.count(places, "places", 1)
    known = {amounts.count(each, "place", 1) for each in seen}
    for place in sorted(known):
        if place > many:
            raise PlaceUnknown(place=place, places=many)
    missing = tuple(each for each in range(1, many + 1) if each not in known)
    return Prime(not missing, missing)
