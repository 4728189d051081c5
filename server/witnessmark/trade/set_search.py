"""The search behind sets: the cheapest box that holds enough pieces, and the best picked from it.

A box is a window on each measure. Whatever is picked from a cheapest box costs the same, and every
cheapest set lies in such a box; so it is enough to look at boxes whose sides are measured values.
A box is left as soon as it costs more than the best so far.
"""

from __future__ import annotations

from bisect import bisect
from dataclasses import dataclass, field

from witnessmark.trade.set_bounds import least_after
from witnessmark.trade.set_pick import Pool, picked

_HAIR = 1e-9
_MOST_BOXES = 64


@dataclass(slots=True)
class _Search:
    pool: Pool
    orders: list[list[int]]
    """The pieces in the order of each measure."""
    ranks: dict[int, int]
    """Where each piece stands in the order of the last measure."""
    least: list[float]
    """What the measures after each one cost at the least."""
    cost: float = float("inf")
    rank: tuple[float, int, list[int]] | None = None
    boxes: list[list[int]] = field(default_factory=list)
    """Cheapest boxes not yet asked which of them make the set."""


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
    ranks = {each: rank for rank, each in enumerate(orders[-1])}
    search = _Search(pool, orders, ranks, least_after(pool, orders))
    _descend(search, 0, orders[0], 0.0)
    _settle(search)
    return search.rank[2] if search.rank else []


def _descend(search: _Search, level: int, members: list[int], so_far: float) -> None:
    """members: in the order of this level's measure."""
    last = len(search.pool.columns) - 1
    if level == last:
        _scan(search, members, so_far, None)
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
        if cost + search.least[level] > search.cost + _HAIR:
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
    sizes = [search.pool.columns[level][each] for each in members]
    for low in range(len(sizes) - search.pool.choose + 1):
        if not low or sizes[low - 1] != sizes[low]:
            _grow(search, level, members[low:], sizes[low:], so_far)


def _grow(
    search: _Search, level: int, members: list[int], sizes: list[float], so_far: float
) -> None:
    """All windows that begin at the first piece."""
    pool, rank = search.pool, search.ranks.__getitem__
    factor, least = pool.factors[level], search.least[level]
    held: list[int] = []
    for high, (member, size) in enumerate(zip(members, sizes, strict=True)):
        cost = so_far + factor * (size - sizes[0])
        if cost + least > search.cost + _HAIR:
            return
        at = bisect(held, rank(member), key=rank)
        held.insert(at, member)
        more = high + 1 < len(sizes) and sizes[high + 1] == size
        if not more and high + 1 >= pool.choose:
            alone = bool(high) and sizes[high - 1] != size and not pool.pinned
            _scan(search, held, cost, at if alone else None)


def _scan(search: _Search, held: list[int], so_far: float, latecomer: int | None) -> None:
    """The narrowest windows on the last measure; held: in its order.

    latecomer: where the one stands that every window must hold; the others were looked at before.
    """
    pool = search.pool
    column, factor = pool.columns[-1], pool.factors[-1]
    sizes = [column[each] for each in held]
    latest, earliest = _pinned_at(pool, held)
    end = min(latest, len(sizes) - pool.choose, len(sizes) if latecomer is None else latecomer)
    for low in range(_begin(sizes, pool.choose, latecomer), end + 1):
        high = max(low + pool.choose - 1, earliest)
        cost = so_far + factor * (sizes[high] - sizes[low])
        if cost <= search.cost + _HAIR and (low == 0 or sizes[low - 1] != sizes[low]):
            while high + 1 < len(sizes) and sizes[high + 1] == sizes[high]:
                high += 1
            _take(search, held[low : high + 1], cost)


def _begin(sizes: list[float], choose: int, latecomer: int | None) -> int:
    """The first window that can hold the latecomer, with those as large as its last."""
    low = 0 if latecomer is None else max(0, latecomer - choose + 1)
    while low > 0 and latecomer is not None and sizes[low + choose - 2] == sizes[latecomer]:
        low -= 1
    return low


def _pinned_at(pool: Pool, held: list[int]) -> tuple[int, int]:
    """Where a window must begin at the latest, and end at the earliest."""
    if not pool.pinned:
        return len(held), 0
    must = [at for at, each in enumerate(held) if each in pool.pinned]
    return (must[0], must[-1]) if len(must) == len(pool.pinned) else (-1, 0)


def _take(search: _Search, inside: list[int], cost: float) -> None:
    """Which of the box make the set is asked later: most are soon bettered by a cheaper one."""
    if cost < search.cost - _HAIR:
        search.cost, search.rank = cost, None
        search.boxes.clear()
    search.boxes.append(inside)
    if len(search.boxes) > _MOST_BOXES:
        _settle(search)


def _settle(search: _Search) -> None:
    """Pick from the boxes that wait."""
    for inside in search.boxes:
        rank = picked(search.pool, inside)
        if search.rank is None or rank < search.rank:
            search.rank = rank
    search.boxes.clear()
