"""Which column each row takes so that the sum of the costs is least, each column once at most."""

from __future__ import annotations

from collections.abc import Sequence

from scipy.optimize import linear_sum_assignment

from witnessmark.errors import TradeError
from witnessmark.trade import alike, amounts

MOST_ROWS, MOST_COLUMNS = 100, 2000


class TooManyRows(TradeError):
    """More rows than columns, so that some row goes without."""

    code = "assignment-rows"
    says = "There are {rows} to serve and only {columns} to choose from."
    next_step = "Add to what there is to choose from, or serve fewer."


class TooLarge(TradeError):
    """More than a workshop chooses at a time."""

    code = "assignment-large"
    says = "{rows} times {columns} are more than are chosen at a time."
    next_step = "Choose in portions."


class RowsUneven(TradeError):
    """Rows of different lengths."""

    code = "assignment-uneven"
    says = "Every row must have a cost for every column."
    next_step = "Give one cost each."


def cheapest(costs: Sequence[Sequence[float]]) -> list[int]:
    """The column of each row, counted from 0, in an assignment of least cost.

    Several may cost the same; which of them is given is left open.
    raises: TooManyRows, TooLarge, RowsUneven; NotANumber.
    source: linear sum assignment, scipy.optimize.linear_sum_assignment
    >>> cheapest([[4, 1, 3], [2, 0, 5]])
    [1, 0]
    """
    if not alike.many(costs, "costs"):
        return []
    rows, columns = len(costs), len(alike.many(costs[0], "costs"))
    if any(len(alike.many(row, "costs")) != columns for row in costs):
        raise RowsUneven()
    if rows > columns:
        raise TooManyRows(rows=rows, columns=columns)
    if rows > MOST_ROWS or columns > MOST_COLUMNS:
        raise TooLarge(rows=rows, columns=columns)
    table = [[amounts.finite(each, "cost") for each in row] for row in costs]
    chosen = linear_sum_assignment(table)[1]
    return [int(column) for column in chosen]
