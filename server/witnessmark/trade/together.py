"""Pieces that must stay together in one assembly, whatever the rest does."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from witnessmark.errors import TradeError
from witnessmark.trade import alike

Held = list[int | None]
"""For each column the piece it must hold, counted from 0, or None."""


class TogetherCrossed(TradeError):
    """A piece that is asked for in two assemblies, or two pieces of one column in one."""

    code = "together-crossed"
    says = "Piece {piece} of column {column} would be in two assemblies."
    next_step = "Let go of one of the two."


class TogetherUnknown(TradeError):
    """A piece that is not among the columns."""

    code = "together-unknown"
    says = "There is no piece {piece} in column {column}."
    next_step = "Look at the numbers again."


def merged(together: Sequence[Sequence[int | None]], columns: int, places: int) -> list[Held]:
    """What must stay together, one line an assembly: lines that share a piece become one.

    together: pieces counted from 1, None where any may come.
    raises: TogetherCrossed, TogetherUnknown.
    source: definition
    >>> merged([[2, None, 3], [None, 1, 3]], 3, 4)
    [[1, 0, 2]]
    """
    lines: list[Held] = []
    for asked in alike.many(together, "together"):
        line = _counted(asked, columns, places)
        joined = [other for other in lines if _share(line, other)]
        for other in joined:
            line = _joined(line, other)
        lines = [other for other in lines if other not in joined] + [line]
    return lines


def keeping(lines: Sequence[Held]) -> Callable[[Sequence[int]], bool]:
    """Whether a row of pieces, from the first column on, parts nothing that must stay together.

    source: definition
    >>> keeping([[1, 0]])([1, 2])
    False
    """

    def keeps(row: Sequence[int]) -> bool:
        for line in lines:
            pairs = zip(line, row, strict=False)
            has = [held == piece for held, piece in pairs if held is not None]
            if any(has) and not all(has):
                return False
        return True

    return keeps


def _counted(asked: Sequence[int | None], columns: int, places: int) -> Held:
    line: Held = []
    for column, piece in enumerate(alike.many(asked, "together")):
        if piece is None:
            line.append(None)
            continue
        if column >= columns or type(piece) is not int or not 1 <= piece <= places:
            raise TogetherUnknown(piece=piece, column=column + 1)
        line.append(piece - 1)
    return line


def _share(line: Held, other: Held) -> bool:
    return any(one is not None and one == two for one, two in zip(line, other, strict=False))


def _joined(line: Held, other: Held) -> Held:
    wide = max(len(line), len(other))
    made: Held = []
    for column in range(wide):
        one = line[column] if column < len(line) else None
        two = other[column] if column < len(other) else None
        if one is not None and two is not None and one != two:
            raise TogetherCrossed(piece=one + 1, column=column + 1)
        made.append(two if one is None else one)
    return made
