"""The search behind sets: the cheapest box that holds enough pieces, and the best picked from it.

A box is a window on each measure. Whatever is picked from a cheapest box costs the same, and every
cheapest set lies in such a box; so it is enough to look at boxes whose sides are measured values.
A box is left as soon as it costs more than the best so far.
"""

from __future__ import annotations

from bisect import insort
from dataclasses import dataclass

from witnessmark.trade.set_pick import Pool, picked

_HAIR = 1e-9


@dataclass(slots=True)
class _Search:
    pool: Pool
    orders: list[list[int]]
    """The pieces in the order of each measure."""
    ranks: dict[int, int]
    """Where each piece stands in the order of the last measure."""
    cost: float = float("inf")
    rank: tuple[float, int, list[int]] | None = None


def cheapest(pool: Pool) -> list[int]:
    """Places of the best set: least cost, then least wear, then fewest donors.

    The pool holds at least as many pieces as are chosen.
    source: exact search; proved against trying every choice
    >>> alike = (0.0,) * 3, ("",) * 3
    >>> cheapest(Pool(((1.0, 5.0, 4.5),), (1.0,), 2, frozenset(), *alike))
    [1, 2]
    """
    places = range(len(pool.wear))
    orders = [sorted(places, key=column.__getitem__) for column in pool.columns]
    search = _Search(pool, orders, {each: rank for rank, each in enumerate(orders[-1])})
    _descend(search, 0, orders[0], 0.0)
    return search.rank[2] if search.rank else []


def _descend(search: _Search, level: int, members: list[int], so_far: float) -> None:
    """members: in the order of this level's measure."""
    last = len(search.pool.columns) - 1
    if level == last:
        _scan(search, members, so_far)
    elif level + 1 == last:
        _sweep(search, level, members, so_far)
    else:
        _narrowest_first(search, level, members, so_far)


def _narrowest_first(search: _Search, level: int, members: list[int], so_far: float) -> None:
    pool = search.pool
    sizes = [pool.columns[level][each] for each in members]
    windows = sorted(
        (so_far + pool.factors[level] * (sizes[high] - sizes[low]), low, high)
        for low in range(len(sizes) - pool.choose + 1)
        for high in range(low + pool.choose - 1, len(sizes))
        if _whole(sizes, low, high)
    )
    for cost, low, high in windows:
        if cost > search.cost + _HAIR:
            return
        inside = set(members[low : high + 1])
        ordered = [each for each in search.orders[level + 1] if each in inside]
        _descend(search, level + 1, ordered, cost)


def _whole(sizes: list[float], low: int, high: int) -> bool:
    """Whether a window begins at the first of equal sizes and ends at the last of them."""
    begins = low == 0 or sizes[low - 1] != sizes[low]
    return begins and (high + 1 == len(sizes) or sizes[high + 1] != sizes[high])


def _sweep(search: _Search, level: int, members: list[int], so_far: float) -> None:
    """Two measures left: windows of the one grow piece by piece, kept in the other's order."""
    pool = search.pool
    sizes = [pool.columns[level][each] for each in members]
    for low in range(len(sizes) - pool.choose + 1):
        if low and sizes[low - 1] == sizes[low]:
            continue
        held: list[int] = []
        for high in range(low, len(sizes)):
            cost = so_far + pool.factors[level] * (sizes[high] - sizes[low])
            if cost > search.cost + _HAIR:
                break
            insort(held, members[high], key=search.ranks.__getitem__)
            if high + 1 == len(sizes) or sizes[high + 1] != sizes[high]:
                _scan(search, held, cost)


def _scan(search: _Search, held: list[int], so_far: float) -> None:
    """The narrowest windows on the last measure; held: in its order."""
    pool = search.pool
    column, factor = pool.columns[-1], pool.factors[-1]
    sizes = [column[each] for each in held]
    latest, earliest = _pinned_at(pool, held)
    for low in range(min(latest, len(sizes) - pool.choose) + 1):
        high = max(low + pool.choose - 1, earliest)
        cost = so_far + factor * (sizes[high] - sizes[low])
        if cost <= search.cost + _HAIR and (low == 0 or sizes[low - 1] != sizes[low]):
            while high + 1 < len(sizes) and sizes[high + 1] == sizes[high]:
                high += 1
            _take(search, held[low : high + 1], cost)


def _pinned_at(pool: Pool, held: list[int]) -> tuple[int, int]:
    """Where a window must begin at the latest, and end at the earliest."""
    if not pool.pinned:
        return len(held), 0
    must = [at for at, each in enumerate(held) if each in pool.pinned]
    return (must[0], must[-1]) if len(must) == len(pool.pinned) else (-1, 0)


def _take(search: _Search, inside: list[int], cost: float) -> None:
    rank = picked(search.pool, inside)
    if search.rank is None or cost < search.cost - _HAIR:
        search.cost, search.rank = cost, rank
    elif rank < search.rank:
        search.cost, search.rank = min(cost, search.cost), rank
