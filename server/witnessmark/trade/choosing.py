"""Which shells, shims or washers from stock go where, so that every place lands nearest its target.

Clearance at a place = its gap without the pieces − pieces · thickness.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from witnessmark.errors import TradeError
from witnessmark.trade import alike, amounts, assignment, units
from witnessmark.trade.units import Quantity

_HAIR = 1e-9


class TooFewPieces(TradeError):
    """Fewer shells, shims or washers than places."""

    code = "choosing-too-few"
    says = "There are {pieces} for {places} places."
    next_step = "Get {missing} more, or choose for fewer places."


class NoPlaces(TradeError):
    """Nothing to choose for."""

    code = "choosing-no-places"
    says = "There is no place to choose for."
    next_step = "Measure one place at least."


class CountsDiffer(TradeError):
    """Not a count, or a target, for each."""

    code = "choosing-lists-differ"
    says = "There must be one {what} for each {of}."
    next_step = "Give one each."


class WindowCrossed(TradeError):
    """A window with its ends exchanged."""

    code = "choosing-window"
    says = "The least clearance {least} mm is above the most, {most} mm."
    next_step = "Look which is which, and type both again."


@dataclass(frozen=True, slots=True)
class Placed:
    """What one place gets; numbers count from 1."""

    place: int
    piece: int | None
    """Its number in the stock; None where none fits."""
    clearance: Quantity | None
    deviation: Quantity | None
    """Clearance less target."""
    thickness_wanted: Quantity
    """What would land on the target."""


@dataclass(frozen=True, slots=True)
class Choice:
    """One of the best choices; others may be as good."""

    places: tuple[Placed, ...]
    sum_of_deviations: Quantity
    """Of all places that got one, above and below alike."""
    worst: Quantity
    missing: tuple[int, ...]
    """Places for which none in stock is left that keeps the window."""


@units.check("length", "length", "length")
def choose(
    gaps: Sequence[Quantity],
    stock: Sequence[Quantity],
    target: Quantity | Sequence[Quantity],
    *,
    counts: Sequence[int] | None = None,
    pieces: int = 1,
    least: Quantity | None = None,
    most: Quantity | None = None,
    may_lack: bool = False,
) -> Choice:
    """The choice from stock with the least sum of deviations from the targets, proved best.

    gaps: of each place, without the pieces. stock: thicknesses; each once, or as often as counts
    says. target: one for all places, or one each.
    pieces: how many of one thickness stand in a place: 2 for a pair of equal shells (the stock is
    then pairs), 1 for a shim or washer. least, most: the owner's window; where none in stock
    keeps it the place stays empty, as few as can be, and its wanted thickness is told.
    may_lack: fewer than places are no refusal; as many as can be get one.
    raises: NoPlaces, TooFewPieces, CountsDiffer, WindowCrossed; assignment.TooLarge; as amounts.
    source: linear sum assignment (see assignment.cheapest)
    >>> gaps = [units.quantity(each, "mm") for each in (4.05, 4.058)]
    >>> stock = [units.quantity(each, "mm") for each in (2.004, 1.992, 2.0)]
    >>> found = choose(gaps, stock, units.quantity(0.05, "mm"), pieces=2)
    >>> [each.piece for each in found.places]
    [3, 1]
    """
    rooms, thick = _lengths(gaps, stock)
    aims = _targets(target, len(rooms))
    times = amounts.count(pieces, "pieces", 1)
    listed = _pieces(thick, counts, len(rooms), may_lack=may_lack is True)
    both = list(zip(rooms, aims, strict=True))
    off = [[room - times * thick[piece] - aim for piece in listed] for room, aim in both]
    columns, fits = _assigned(off, aims, _window(least, most))
    chosen = [None if by is None else listed[at] for at, by in zip(columns, fits, strict=True)]
    said = zip(chosen, fits, both, strict=True)
    placed = [_placed(row, one, by, (*place, times)) for row, (one, by, place) in enumerate(said)]
    return _summed(placed, [abs(each) for each in fits if each is not None])


def _lengths(
    gaps: Sequence[Quantity], stock: Sequence[Quantity]
) -> tuple[list[float], list[float]]:
    rooms = [alike.mm(each, "gap") for each in alike.many(gaps, "gaps")]
    thick = [alike.mm(each, "stock") for each in alike.many(stock, "stock")]
    return rooms, [amounts.above_zero(each, "stock") for each in thick]


def _assigned(
    off: list[list[float]], aims: list[float], window: tuple[float, float]
) -> tuple[list[int], list[float | None]]:
    """The column of each row, and how far off it lands; None where it does not keep the window."""
    # One place left empty must cost more than all others can together.
    empty = 1 + len(off) * max((abs(each) for row in off for each in row), default=0.0)
    none = [empty] * (len(off) - len(off[0]))
    columns = assignment.cheapest(
        [
            [abs(each) if _keeps(each + aim, window) else empty for each in row] + none
            for row, aim in zip(off, aims, strict=True)
        ]
    )
    landed = [(*row, *(None for _ in none))[at] for row, at in zip(off, columns, strict=True)]
    return columns, [
        each if each is not None and _keeps(each + aim, window) else None
        for each, aim in zip(landed, aims, strict=True)
    ]


def _summed(placed: list[Placed], found: list[float]) -> Choice:
    return Choice(
        tuple(placed),
        alike.of_mm(math.fsum(found)),
        alike.of_mm(max(found, default=0.0)),
        tuple(each.place for each in placed if each.piece is None),
    )


def _placed(
    row: int, piece: int | None, off: float | None, place: tuple[float, float, int]
) -> Placed:
    room, aim, times = place
    wanted = alike.of_mm((room - aim) / times)
    if off is None or piece is None:
        return Placed(row + 1, None, None, None, wanted)
    return Placed(row + 1, piece + 1, alike.of_mm(off + aim), alike.of_mm(off), wanted)


def _targets(target: Quantity | Sequence[Quantity], places: int) -> list[float]:
    if not places:
        raise NoPlaces()
    if not isinstance(target, list | tuple):
        return [amounts.finite(alike.mm(target, "target"), "target")] * places  # type: ignore[arg-type]
    if len(target) != places:
        raise CountsDiffer(what="target", of="place")
    return [amounts.finite(alike.mm(each, "target"), "target") for each in target]


def _pieces(
    thick: list[float], counts: Sequence[int] | None, places: int, *, may_lack: bool
) -> list[int]:
    """The stock piece by piece; more of one than there are places changes nothing."""
    if counts is not None and len(alike.many(counts, "counts")) != len(thick):
        raise CountsDiffer(what="count", of="thickness")
    many = [1] * len(thick) if counts is None else [amounts.count(each, "count") for each in counts]
    if sum(many) < places and not may_lack:
        raise TooFewPieces(pieces=sum(many), places=places, missing=places - sum(many))
    return [piece for piece, each in enumerate(many) for _ in range(min(each, places))]


def _window(least: Quantity | None, most: Quantity | None) -> tuple[float, float]:
    low = -math.inf if least is None else amounts.finite(alike.mm(least, "least"), "least")
    high = math.inf if most is None else amounts.finite(alike.mm(most, "most"), "most")
    if low > high:
        raise WindowCrossed(least=f"{low:g}", most=f"{high:g}")
    return low, high


def _keeps(clearance: float, window: tuple[float, float]) -> bool:
    return window[0] - _HAIR <= clearance <= window[1] + _HAIR
