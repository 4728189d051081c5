"""What a set costs at the least, before any search."""

from __future__ import annotations

from witnessmark.trade.set_pick import Pool


def least_after(pool: Pool, orders: list[list[int]]) -> list[float]:
    """For each measure: what all measures after it cost at the least, each for itself.

    orders: the pieces in the order of each measure.
    source: definition
    >>> pool = Pool(((1.0, 2.0), (5.0, 8.0)), (1.0, 2.0), 2, frozenset(), (0.0,) * 2, ("",) * 2)
    >>> least_after(pool, [[0, 1], [0, 1]])
    [6.0, 0.0]
    """
    least = [0.0] * len(pool.columns)
    for level in range(len(pool.columns) - 1, 0, -1):
        sizes = [pool.columns[level][each] for each in orders[level]]
        windows = zip(sizes, sizes[pool.choose - 1 :], strict=False)
        narrowest = min((high - low for low, high in windows), default=0.0)
        least[level - 1] = least[level] + pool.factors[level] * narrowest
    return least
