"""The best n of m pieces to be used together: hard limits first, then the least spread.

Cost = Σ weight · (largest − smallest) / scale over the measures. Of equally cheap sets the one
with the least wear is chosen, then the one from the fewest donors. What is found is proved best.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from witnessmark.trade import alike, amounts, set_search
from witnessmark.trade.set_errors import (
    LimitsCrossed,
    MeasureMissing,
    NameDoubled,
    NameUnknown,
    NoMeasure,
    PinnedOutside,
    PinnedTwiceOver,
    TooFewInPool,
    TooFewInside,
    TooManyPieces,
)
from witnessmark.trade.set_pick import Pool
from witnessmark.trade.units import Quantity

MOST = {1: 1000, 2: 128, 3: 48}
"""Pieces by number of measures."""


@dataclass(frozen=True, slots=True)
class Measure:
    """What pieces are compared by; limits and scale in any unit of it."""

    name: str
    weight: float = 1.0
    scale: Quantity | None = None
    """The spread that costs as much as the weight; one of the first piece's unit without it."""
    lower: Quantity | None = None
    upper: Quantity | None = None


@dataclass(frozen=True, slots=True)
class Piece:
    """One piece of the pool, with a size for each measure in their order."""

    name: str
    sizes: tuple[Quantity, ...]
    wear: float = 0.0
    """Less is better; counts only between sets of equal cost."""
    donor: str | None = None


@dataclass(frozen=True, slots=True)
class Spare:
    """One not chosen: what the set would span and cost with it in."""

    name: str
    cost: float
    spreads: tuple[Quantity, ...]


@dataclass(frozen=True, slots=True)
class Outside:
    """One that a hard limit turned away."""

    name: str
    measure: str
    side: str
    """"below" or "above"."""


@dataclass(frozen=True, slots=True)
class Choice:
    """The best set; the first spare is the next best."""

    chosen: tuple[str, ...]
    cost: float
    spreads: tuple[Quantity, ...]
    wear: float
    donors: int
    spares: tuple[Spare, ...]
    outside: tuple[Outside, ...]


@dataclass(frozen=True, slots=True)
class _Plain:
    """Measures and pieces in plain numbers, each measure in the unit of the first piece."""

    measures: tuple[Measure, ...]
    pieces: tuple[Piece, ...]
    rows: tuple[tuple[float, ...], ...]
    factors: tuple[float, ...]


def best(
    pieces: Sequence[Piece],
    measures: Sequence[Measure],
    choose: int,
    *,
    pinned: Sequence[str] = (),
    excluded: Sequence[str] = (),
) -> Choice:
    """The best set of so many pieces, with ranked spares and who was turned away.

    pinned: must be in; excluded: may not, and are no spares either.
    raises: TooFewInPool, TooFewInside, TooManyPieces, NoMeasure, MeasureMissing, NameDoubled,
    NameUnknown, PinnedTwiceOver, PinnedOutside, LimitsCrossed; NotACount, NotAboveZero, BelowZero;
    NoQuantity, WrongQuantity; NotANumber.
    source: exact search; proved against trying every choice and SciPy's MILP
    >>> from witnessmark.trade import units
    >>> lengths = [units.quantity(each, "mm") for each in (187.02, 187.11, 186.96, 187.05)]
    >>> pool = [Piece(str(place), (each,)) for place, each in enumerate(lengths, 1)]
    >>> best(pool, [Measure("length")], 2).chosen
    ('1', '4')
    """
    many = amounts.count(choose, "choose", 1)
    _kinds(pieces, measures, (*alike.many(pinned, "pinned"), *alike.many(excluded, "excluded")))
    plain = _plain(pieces, measures)
    places = _places(plain, many, pinned, excluded)
    kept, outside = _inside(plain, places, pinned)
    if len(kept) < many:
        raise TooFewInside(
            inside=len(kept), pieces=len(places), choose=many, missing=many - len(kept)
        )
    chosen = [kept[each] for each in set_search.cheapest(_pool(plain, kept, many, pinned))]
    return _told(plain, chosen, kept, outside)


def _kinds(pieces: Sequence[Piece], measures: Sequence[Measure], names: Sequence[str]) -> None:
    for piece in alike.many(pieces, "pieces"):
        amounts.kind(piece, Piece, "piece")
    for measure in alike.many(measures, "measures"):
        amounts.kind(measure, Measure, "measure")
    for name in names:
        amounts.kind(name, str, "name")


def _plain(pieces: Sequence[Piece], measures: Sequence[Measure]) -> _Plain:
    if not measures:
        raise NoMeasure()
    most = MOST.get(len(measures), 0)
    if len(pieces) > most:
        raise TooManyPieces(pieces=len(pieces), measures=len(measures), most=most)
    for each in pieces:
        if len(each.sizes) != len(measures):
            raise MeasureMissing(name=each.name, sizes=len(each.sizes), measures=len(measures))
        amounts.not_below_zero(each.wear, "wear")
    first = pieces[0].sizes if pieces else ()
    rows = tuple(
        tuple(
            alike.size(size, unit, measure.name)
            for size, unit, measure in zip(each.sizes, first, measures, strict=True)
        )
        for each in pieces
    )
    factors = tuple(_factor(each, unit) for each, unit in zip(measures, first, strict=False))
    return _Plain(tuple(measures), tuple(pieces), rows, factors)


def _factor(measure: Measure, unit: Quantity) -> float:
    weight = amounts.above_zero(measure.weight, "weight")
    if measure.scale is None:
        return weight
    return weight / amounts.above_zero(alike.size(measure.scale, unit, "scale"), "scale")


def _places(
    plain: _Plain, choose: int, pinned: Sequence[str], excluded: Sequence[str]
) -> list[int]:
    """The pieces that may be chosen, and that the wish can be met at all."""
    names = [each.name for each in plain.pieces]
    for at, name in enumerate(names):
        if name in names[:at]:
            raise NameDoubled(name=name)
    for name in (*pinned, *excluded):
        if name not in names:
            raise NameUnknown(name=name)
    if len(set(pinned)) > choose or set(pinned) & set(excluded):
        raise PinnedTwiceOver(pinned=len(set(pinned)), choose=choose)
    places = [at for at, name in enumerate(names) if name not in excluded]
    if len(places) < choose:
        raise TooFewInPool(pieces=len(places), choose=choose, missing=choose - len(places))
    return places


def _inside(
    plain: _Plain, places: list[int], pinned: Sequence[str]
) -> tuple[list[int], tuple[Outside, ...]]:
    limits = [_limits(each, plain, at) for at, each in enumerate(plain.measures)]
    kept, outside = [], []
    for place in places:
        off = _off(plain, place, limits)
        if off is None:
            kept.append(place)
        elif off.name in pinned:
            raise PinnedOutside(name=off.name, side=off.side, measure=off.measure)
        else:
            outside.append(off)
    return kept, tuple(outside)


def _limits(measure: Measure, plain: _Plain, at: int) -> tuple[float, float]:
    unit = plain.pieces[0].sizes[at]
    low = -float("inf") if measure.lower is None else alike.size(measure.lower, unit, "lower")
    high = float("inf") if measure.upper is None else alike.size(measure.upper, unit, "upper")
    if low > high:
        raise LimitsCrossed(measure=measure.name)
    return low, high


def _off(plain: _Plain, place: int, limits: list[tuple[float, float]]) -> Outside | None:
    for size, measure, (low, high) in zip(plain.rows[place], plain.measures, limits, strict=True):
        # A hair for limits that were converted from another unit.
        hair = 1e-9 * max(1.0, abs(size))
        if size < low - hair:
            return Outside(plain.pieces[place].name, measure.name, "below")
        if size > high + hair:
            return Outside(plain.pieces[place].name, measure.name, "above")
    return None


def _pool(plain: _Plain, kept: list[int], choose: int, pinned: Sequence[str]) -> Pool:
    pieces = [plain.pieces[each] for each in kept]
    return Pool(
        columns=tuple(zip(*(plain.rows[each] for each in kept), strict=True)),
        factors=plain.factors,
        choose=choose,
        pinned=frozenset(at for at, each in enumerate(pieces) if each.name in pinned),
        wear=tuple(float(each.wear) for each in pieces),
        donors=tuple(each.donor or "" for each in pieces),
    )


def _spreads(plain: _Plain, places: Sequence[int]) -> list[float]:
    columns = zip(*(plain.rows[each] for each in places), strict=True)
    return [max(column) - min(column) for column in columns]


def _cost(plain: _Plain, spreads: Sequence[float]) -> float:
    return sum(factor * each for factor, each in zip(plain.factors, spreads, strict=True))


def _like(plain: _Plain, spreads: Sequence[float]) -> tuple[Quantity, ...]:
    units = plain.pieces[0].sizes
    return tuple(alike.like(each, unit) for each, unit in zip(spreads, units, strict=True))


def _told(
    plain: _Plain, chosen: list[int], kept: list[int], outside: tuple[Outside, ...]
) -> Choice:
    spares = []
    for place in (each for each in kept if each not in chosen):
        wider = _spreads(plain, [*chosen, place])
        cost = _cost(plain, wider)
        made = Spare(plain.pieces[place].name, cost, _like(plain, wider))
        spares.append((cost, plain.pieces[place].wear, place, made))
    spares.sort(key=lambda each: each[:3])
    spreads = _spreads(plain, chosen)
    pieces = [plain.pieces[each] for each in chosen]
    return Choice(
        chosen=tuple(each.name for each in pieces),
        cost=_cost(plain, spreads),
        spreads=_like(plain, spreads),
        wear=sum(each.wear for each in pieces),
        donors=len({each.donor or "" for each in pieces}),
        spares=tuple(each[3] for each in spares),
        outside=outside,
    )
