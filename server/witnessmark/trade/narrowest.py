"""The arrangement whose totals lie closest together, found exactly.

A window over the sorted totals is moved and narrowed; whether an arrangement lies wholly in it is a
matching for two columns, and a search over what is left of each column for more.
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


def assemblies(weights: Sequence[Sequence[float]], start: list[list[int]]) -> list[list[int]]:
    """The most equal assemblies of three or more columns; start: an arrangement to better.

    source: exact: each total as the lowest, a search over what is left of each column
    >>> assemblies([[1.0, 2.0], [1.0, 2.0], [1.0, 3.0]], [[0, 0, 0], [1, 1, 1]])
    [[0, 0, 1], [1, 1, 0]]
    """
    rows = [_options(weights, place) for place in range(len(weights[0]))]
    best, spread = start, _spread(weights, start)
    mean = sum(sum(column) for column in weights) / len(weights[0])
    for low in sorted({total for row in rows for total, _ in row}, reverse=True):
        while low <= mean + _HAIR and mean < low + spread:
            window = (low - _HAIR, low + spread - 2 * _HAIR)
            inside = [[o for o in row if window[0] <= o[0] <= window[1]] for row in rows]
            order = sorted(range(len(inside)), key=lambda place: len(inside[place]))
            found = _filled([inside[place] for place in order], 0, (0,) * (len(weights) - 1), set())
            if found is None:
                break
            best = sorted([place, *pieces] for place, pieces in zip(order, found, strict=True))
            spread = _spread(weights, best)
    return best


_Option = tuple[float, tuple[int, ...]]


def _options(weights: Sequence[Sequence[float]], place: int) -> list[_Option]:
    """Every choice of one piece from each other column, with its total."""
    made: list[_Option] = [(weights[0][place], ())]
    for column in weights[1:]:
        made = [
            (total + each, (*taken, at)) for total, taken in made for at, each in enumerate(column)
        ]
    return made


def _spread(weights: Sequence[Sequence[float]], rows: list[list[int]]) -> float:
    totals = [sum(col[at] for col, at in zip(weights, row, strict=True)) for row in rows]
    return max(totals) - min(totals)


def _filled(
    inside: list[list[_Option]],
    place: int,
    used: tuple[int, ...],
    hopeless: set[tuple[int, ...]],
) -> list[tuple[int, ...]] | None:
    """Pieces for this place and all after it; used: bits of what is taken, column by column."""
    if place == len(inside):
        return []
    if used in hopeless:
        return None
    for _, pieces in inside[place]:
        if any(mask >> at & 1 for mask, at in zip(used, pieces, strict=True)):
            continue
        taken = tuple(mask | 1 << at for mask, at in zip(used, pieces, strict=True))
        rest = _filled(inside, place + 1, taken, hopeless)
        if rest is not None:
            return [pieces, *rest]
    hopeless.add(used)
    return None
