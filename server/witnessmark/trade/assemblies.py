"""Pieces put together so that the totals are as equal as can be: piston with pin with rod."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from math import comb, inf

from witnessmark.errors import TradeError
from witnessmark.trade import alike, amounts, even_totals, narrowest
from witnessmark.trade.together import keeping, merged
from witnessmark.trade.units import Quantity

MOST_PLACES = 32
MOST_STATES = 50_000
"""Beyond it the best arrangement of three or more columns is sought, not proved."""
MOST_BETTERED = 16
"""Beyond it three or more columns are joined one by one and left so."""


class ColumnsDiffer(TradeError):
    """Not one of each for every place."""

    code = "assemblies-columns-differ"
    says = "There are {counts} pieces: not one of each for every assembly."
    next_step = "Weigh what is missing, or choose a set of equal number first."


class NothingToPair(TradeError):
    """One column only, or none, or empty ones."""

    code = "assemblies-nothing"
    says = "There must be two columns at least, with one piece in each."
    next_step = "Weigh pistons and rods, say."


class TooManyPlaces(TradeError):
    """More places than an engine has."""

    code = "assemblies-many"
    says = "{places} places are more than are balanced at a time."
    next_step = "Balance one bank after the other."


@dataclass(frozen=True, slots=True)
class Balance:
    """Which pieces go together; numbers count from 1, the first column keeps its order."""

    assemblies: tuple[tuple[int, ...], ...]
    totals: tuple[Quantity, ...]
    spread: Quantity
    proved: bool
    """Whether no other arrangement can be more equal."""


def balance(
    columns: Sequence[Sequence[Quantity]], together: Sequence[Sequence[int | None]] = ()
) -> Balance:
    """The arrangement with the least heaviest total less lightest total.

    columns: pistons, pins, rods…, one of each for every place. Two columns are always solved
    exactly, three up to nine places; beyond that columns are put anew in turn, not proved.
    together: pieces that stay in one assembly, counted from 1, None where any may come.
    raises: ColumnsDiffer, NothingToPair, TooManyPlaces; TogetherCrossed, TogetherUnknown;
    NotAboveZero; NoQuantity, WrongQuantity.
    source: exact search; proved against trying every arrangement
    >>> from witnessmark.trade import units
    >>> pistons = [units.quantity(each, "g") for each in (412.3, 413.1, 411.8, 412.6)]
    >>> rods = [units.quantity(each, "g") for each in (578.9, 580.2, 579.5, 578.4)]
    >>> round(units.magnitude(balance([pistons, rods]).spread, "g"), 6)
    0.5
    """
    weights = _weights(columns)
    rows = arranged(weights, keeping(merged(together, len(weights), len(weights[0]))))
    totals = even_totals.totals(weights, rows)
    first = columns[0][0]
    return Balance(
        assemblies=tuple(tuple(at + 1 for at in row) for row in rows),
        totals=tuple(alike.like(each, first) for each in totals),
        spread=alike.like(max(totals) - min(totals), first),
        proved=_provable(len(weights), len(weights[0])),
    )


def arranged(
    weights: Sequence[Sequence[float]], keeps: even_totals.Keeps = even_totals.anything
) -> list[list[int]]:
    """For each place the piece of every column, counted from 0, in plain numbers.

    source: exact search
    >>> arranged([[1.0, 2.0], [3.0, 4.0]])
    [[0, 1], [1, 0]]
    """
    joined = _joined(weights, keeps)
    if len(weights) == len("ab") or len(joined) > MOST_BETTERED:
        return joined
    bettered = even_totals.bettered(weights, joined, keeps)
    if _provable(len(weights), len(weights[0])):
        return even_totals.proved(weights, bettered, keeps)
    return bettered


def _joined(
    weights: Sequence[Sequence[float]], keeps: Callable[[Sequence[int]], bool]
) -> list[list[int]]:
    """Column by column, each put to the totals so far as equally as can be."""
    totals = list(weights[0])
    rows = [[at] for at in range(len(totals))]
    for column in weights[1:]:
        table = [
            [total + each if keeps([*row, at]) else inf for at, each in enumerate(column)]
            for total, row in zip(totals, rows, strict=True)
        ]
        for row, at in zip(rows, narrowest.pairs(table), strict=True):
            row.append(at)
        totals = [total + column[row[-1]] for total, row in zip(totals, rows, strict=True)]
    return rows


def _provable(columns: int, places: int) -> bool:
    states = sum(comb(places, done) ** (columns - 1) for done in range(places + 1))
    return columns == len("ab") or states <= MOST_STATES


def _weights(columns: Sequence[Sequence[Quantity]]) -> list[list[float]]:
    counts = [len(alike.many(column, "column")) for column in alike.many(columns, "columns")]
    if len(counts) < len("ab") or not max(counts):
        raise NothingToPair()
    if len(set(counts)) > 1:
        raise ColumnsDiffer(counts=", ".join(str(each) for each in counts))
    if counts[0] > MOST_PLACES:
        raise TooManyPlaces(places=counts[0])
    first = columns[0][0]
    return [
        [amounts.above_zero(alike.size(each, first, "weight"), "weight") for each in column]
        for column in columns
    ]
