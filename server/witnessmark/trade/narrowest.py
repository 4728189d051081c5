"""The pairs whose totals lie closest together, found exactly.

A window over the sorted totals is moved and narrowed; whether all pairs lie in it is a matching.
"""

from __future__ import annotations

from collections.abc import Sequence

_HAIR = 1e-9


def pairs(table: Sequence[Sequence[float]]) -> list[int]:
    """The column of each row, each column once, with the least largest less smallest entry.

    table: as many columns as rows.
    source: exact: two ends of a window over sorted entries, matching by augmenting ways
    >>> pairs([[1.0, 5.0], [4.0, 7.0]])
    [1, 0]
    """
    ends = sorted({each for row in table for each in row})
    best: list[int] = []
    spread = float("inf")
    low = high = 0
    while high < len(ends) and low < len(ends):
        found = None
        narrower = ends[high] - ends[low] < spread - _HAIR
        if narrower:
            found = _matched(table, ends[low], ends[high])
        if found is not None:
            best, spread = found, ends[high] - ends[low]
        if found is None and narrower:
            high += 1
        else:
            low += 1
            high = max(low, high)
    return best


def _matched(table: Sequence[Sequence[float]], low: float, high: float) -> list[int] | None:
    row_of: dict[int, int] = {}
    for row in range(len(table)):
        if not _serve(table, (low, high), row, row_of, set()):
            return None
    taken = {row: column for column, row in row_of.items()}
    return [taken[row] for row in range(len(table))]


def _serve(
    table: Sequence[Sequence[float]],
    window: tuple[float, float],
    row: int,
    row_of: dict[int, int],
    seen: set[int],
) -> bool:
    """Give the row a column in the window, moving others over where need be."""
    for column, each in enumerate(table[row]):
        if column in seen or not window[0] <= each <= window[1]:
            continue
        seen.add(column)
        held = row_of.get(column)
        if held is None or _serve(table, window, held, row_of, seen):
            row_of[column] = row
            return True
    return False
