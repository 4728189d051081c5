"""In which order the fasteners of a joint are tightened, and where they are drawn."""

from __future__ import annotations

import math
from dataclasses import dataclass

from witnessmark.errors import TradeError
from witnessmark.trade import alike, amounts

PATTERNS = ("circle", "rows", "line", "points")
MOST = 400
WIDTH, HEIGHT = 1000, 500
EDGE, TOP, _RADIUS = 60, 90, 200
_QUARTER_STARTS = {
    3: (1, 2, 3),
    6: (1, 4, 2, 5, 3, 6),
    7: (1, 4, 6, 2, 5, 7, 3),
    8: (1, 5, 3, 7, 2, 6, 4, 8),
}


class NoFasteners(TradeError):
    """A joint without fasteners has no order."""

    code = "sequence-no-fasteners"
    says = "This joint has no fasteners."
    next_step = "Say how many there are."


class TooManyFasteners(TradeError):
    """More than any joint of an engine has."""

    code = "sequence-too-many"
    says = "{count} fasteners are more than one joint has."
    next_step = "Count again, or make several joints of it."


class PatternUnknown(TradeError):
    """A pattern nobody draws here."""

    code = "sequence-pattern-unknown"
    says = "{pattern} is no pattern of fasteners."
    next_step = "Choose circle, rows, line or points."


class RowsUnclear(TradeError):
    """Rows that cannot hold the fasteners."""

    code = "sequence-rows"
    says = "{count} fasteners do not stand in {rows} rows."
    next_step = "Say how many rows there are, from one to the number of fasteners."


@dataclass(frozen=True, slots=True)
class Drawn:
    """One fastener as it is drawn: its number, its turn in the order, and where it stands."""

    number: int
    turn: int
    x: int
    y: int


def order(pattern: str, count: int, rows: int = 2) -> list[int]:
    """Numbers of the fasteners in the order of tightening.

    Numbering: circle clockwise from the top, line from the left, rows one after the other from
    the left, points as they were set. Circle: cross pattern; line and rows: from the middle
    outwards, corners last; points: as numbered.
    raises: NoFasteners, TooManyFasteners, PatternUnknown, RowsUnclear; NotANumber, NotACount.
    source: ASME PCC-1 (2013, 2019), legacy cross pattern, for circles of 4, 8, 12 … 32 (12
    fetched from a public page, the others from memory); the rest common practice, no source
    >>> order("circle", 8), order("line", 5)
    ([1, 5, 3, 7, 2, 6, 4, 8], [3, 4, 2, 5, 1])
    """
    _check(pattern, count, rows)
    if pattern == "circle":
        return _circle(count)
    if pattern == "line":
        return _outwards(count, 1)
    return _outwards(count, rows) if pattern == "rows" else list(range(1, count + 1))


def loosening(tightening: list[int]) -> list[int]:
    """The order of loosening: the reverse, so that the last is the first to give.

    raises: alike.NotAList.
    source: ASME PCC-1 (2013, 2019), from memory; common practice for rows
    >>> loosening(order("circle", 4))
    [4, 2, 3, 1]
    """
    return list(alike.many(tightening, "order"))[::-1]


def positions(pattern: str, count: int, rows: int = 2) -> list[tuple[int, int]]:
    """Where each fastener is drawn, x 0…1000 to the right and y 0…500 downwards, by number.

    raises: as order.
    source: definition
    >>> positions("line", 3)
    [(60, 250), (500, 250), (940, 250)]
    """
    _check(pattern, count, rows)
    if pattern == "circle":
        return [_on_circle(2 * math.pi * i / count) for i in range(count)]
    lines = rows if pattern == "rows" else 1
    columns = -(-count // lines)
    return [
        (
            _spread(EDGE, WIDTH - EDGE, i % columns, columns),
            _spread(TOP, HEIGHT - TOP, i // columns, lines),
        )
        for i in range(count)
    ]


def drawn(pattern: str, count: int, rows: int = 2, loosen: bool = False) -> list[Drawn]:
    """The drawing of a joint: its fasteners by number, each with its turn and its place.

    loosen: turns of loosening instead of tightening.
    raises: as order.
    source: as order, loosening and positions, of which it is made
    >>> drawn("line", 3)[0]
    Drawn(number=1, turn=3, x=60, y=250)
    """
    turns = order(pattern, count, rows)
    if loosen:
        turns = loosening(turns)
    turn = {number: place for place, number in enumerate(turns, 1)}
    return [
        Drawn(number, turn[number], x, y)
        for number, (x, y) in enumerate(positions(pattern, count, rows), 1)
    ]


def _check(pattern: str, count: int, rows: int) -> None:
    if pattern not in PATTERNS:
        raise PatternUnknown(pattern=pattern)
    whole = amounts.finite(count, "count")
    if whole >= 1:
        amounts.count(count, "count", 1)
    if pattern == "rows":
        amounts.count(rows, "rows")
    if count < 1:
        raise NoFasteners()
    if count > MOST:
        raise TooManyFasteners(count=count)
    if pattern == "rows" and not 1 <= rows <= count:
        raise RowsUnclear(count=count, rows=rows)


def _circle(count: int) -> list[int]:
    if count % 4 == 0:
        quarter = count // 4
        odd_first = (*range(1, quarter + 1, 2), *range(2, quarter + 1, 2))
        starts = _QUARTER_STARTS.get(quarter, odd_first)
        return [start + turn * quarter for start in starts for turn in (0, 2, 1, 3)]
    if count % 2 == 0:
        half = count // 2
        return [start + turn for start in _star(half) for turn in (0, half)]
    return _star(count)


def _star(count: int) -> list[int]:
    """An odd number, each time just short of half way round, comes by every place once."""
    return [1 + (i * (count // 2)) % count for i in range(count)]


def _outwards(count: int, rows: int) -> list[int]:
    columns = -(-count // rows)

    def place(index: int) -> tuple[int, float]:
        across = 2 * (index % columns) - (columns - 1)
        down = 2 * (index // columns) - (rows - 1)
        return abs(across) + abs(down), math.atan2(down, across)

    return [index + 1 for index in sorted(range(count), key=place)]


def _on_circle(angle: float) -> tuple[int, int]:
    return (
        math.floor(WIDTH / 2 + _RADIUS * math.sin(angle) + 0.5),
        math.floor(HEIGHT / 2 - _RADIUS * math.cos(angle) + 0.5),
    )


def _spread(low: int, high: int, index: int, count: int) -> int:
    if count == 1:
        return (low + high) // 2
    return low + (2 * (high - low) * index + count - 1) // (2 * (count - 1))
