"""The most equal totals of three or more columns: bettered first, then proved.

A window over the totals is moved and narrowed. Whether an arrangement lies wholly in it is asked
from both ends: what one half of the places can use up, and what the other half can leave.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from itertools import pairwise
from math import inf

from witnessmark.trade import narrowest

_HAIR = 1e-9

_Option = tuple[float, int]
"""A total, and the pieces it uses as bits: column by column, so many bits as there are places."""

Keeps = Callable[[Sequence[int]], bool]
"""Whether a row may stand."""


def anything(row: Sequence[int]) -> bool:
    """Any row may stand.

    source: definition
    >>> anything([0, 1])
    True
    """
    return bool(row)


def totals(weights: Sequence[Sequence[float]], rows: Sequence[Sequence[int]]) -> list[float]:
    """The total of each assembly.

    source: a sum
    >>> totals([[1.0, 2.0], [3.0, 4.0]], [[0, 1], [1, 0]])
    [5.0, 5.0]
    """
    return [sum(col[at] for col, at in zip(weights, row, strict=True)) for row in rows]


def spread(weights: Sequence[Sequence[float]], rows: Sequence[Sequence[int]]) -> float:
    """The heaviest total less the lightest.

    source: a difference
    >>> spread([[1.0, 2.0], [3.0, 4.5]], [[0, 1], [1, 0]])
    0.5
    """
    listed = totals(weights, rows)
    return max(listed) - min(listed)


def bettered(
    weights: Sequence[Sequence[float]], start: list[list[int]], keeps: Keeps = anything
) -> list[list[int]]:
    """Column after column put anew to the totals of the others, until none makes them more equal.

    source: each step exact, the end not
    >>> bettered([[1.0, 2.0], [1.0, 2.0], [1.0, 3.0]], [[0, 0, 0], [1, 1, 1]])
    [[0, 0, 1], [1, 1, 0]]
    """
    rows, width = start, spread(weights, start)
    still = 0
    while still < len(weights):
        for moved in range(len(weights)):
            tried = _put_anew(weights, rows, moved, keeps)
            narrower = spread(weights, tried)
            still += 1
            if narrower < width - _HAIR:
                rows, width, still = tried, narrower, 0
    return rows


def _put_anew(
    weights: Sequence[Sequence[float]], rows: list[list[int]], moved: int, keeps: Keeps
) -> list[list[int]]:
    column = [weights[moved][row[moved]] for row in rows]
    rest = [total - own for total, own in zip(totals(weights, rows), column, strict=True)]
    table = [
        [
            each + other if keeps([*row[:moved], of[moved], *row[moved + 1 :]]) else inf
            for other, of in zip(column, rows, strict=True)
        ]
        for each, row in zip(rest, rows, strict=True)
    ]
    taken = narrowest.pairs(table)
    put = [
        [rows[of][moved] if at == moved else piece for at, piece in enumerate(row)]
        for row, of in zip(rows, taken, strict=True)
    ]
    return sorted(put)


def proved(
    weights: Sequence[Sequence[float]], start: list[list[int]], keeps: Keeps = anything
) -> list[list[int]]:
    """The most equal assemblies; start: an arrangement to better.

    source: exact: each total as the lowest, all that lies in the window above it
    >>> proved([[1.0, 2.0], [1.0, 2.0], [1.0, 3.0]], [[0, 0, 0], [1, 1, 1]])
    [[0, 0, 1], [1, 1, 0]]
    """
    rows = [
        [each for each in _options(weights, place) if keeps(_pieces(place, each[1], weights))]
        for place in range(len(weights[0]))
    ]
    best, width = start, spread(weights, start)
    mean = sum(sum(column) for column in weights) / len(rows)
    for low in sorted({total for row in rows for total, _ in row}, reverse=True):
        while low <= mean + _HAIR and mean < low + width:
            found = _within(rows, low - _HAIR, low + width - 2 * _HAIR)
            if found is None:
                break
            best = [_pieces(place, mask, weights) for place, mask in enumerate(found)]
            width = spread(weights, best)
    return best


def _options(weights: Sequence[Sequence[float]], place: int) -> list[_Option]:
    """Every choice of one piece from each other column."""
    made: list[_Option] = [(weights[0][place], 0)]
    for shift, column in enumerate(weights[1:]):
        made = [
            (total + each, mask | 1 << shift * len(column) + at)
            for total, mask in made
            for at, each in enumerate(column)
        ]
    return made


def _pieces(place: int, mask: int, weights: Sequence[Sequence[float]]) -> list[int]:
    many = len(weights[0])
    bits = (mask >> shift * many & (1 << many) - 1 for shift in range(len(weights) - 1))
    return [place, *(each.bit_length() - 1 for each in bits)]


def _within(rows: list[list[_Option]], low: float, high: float) -> list[int] | None:
    """What each place uses if all totals can lie in the window together."""
    inside = [[mask for total, mask in row if low <= total <= high] for row in rows]
    full = 0
    for _, mask in (option for row in rows for option in row):
        full |= mask
    if not all(inside) or _used_up(inside) != full:
        return None
    order = sorted(range(len(inside)), key=lambda place: len(inside[place]))
    halves = order[::2], order[1::2]
    one, other = (_layers([inside[place] for place in half]) for half in halves)
    met = next((each for each in one[-1] if full ^ each in other[-1]), None)
    if met is None:
        return None
    used = [0] * len(rows)
    for half, layers, state in ((halves[0], one, met), (halves[1], other, full ^ met)):
        for place, mask in zip(reversed(half), _way_back(layers, inside, half, state), strict=True):
            used[place] = mask
    return used


def _used_up(inside: list[list[int]]) -> int:
    used = 0
    for masks in inside:
        for mask in masks:
            used |= mask
    return used


def _layers(inside: list[list[int]]) -> list[set[int]]:
    """What can be used up by the first place, by the first two, and so on."""
    layers = [{0}]
    for masks in inside:
        layers.append({state | mask for state in layers[-1] for mask in masks if not state & mask})
    return layers


def _way_back(
    layers: list[set[int]], inside: list[list[int]], half: list[int], state: int
) -> Iterable[int]:
    for place, (_, before) in zip(reversed(half), pairwise(reversed(layers)), strict=True):
        mask = next(
            mask for mask in inside[place] if state & mask == mask and state ^ mask in before
        )
        yield mask
        state ^= mask
