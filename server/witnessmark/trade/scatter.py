"""How an instrument scatters, pooled over many checks, and from one day to the next.

Numbers of one call stand in one unit, whatever is measured; so does what comes out.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from witnessmark.errors import TradeError
from witnessmark.trade import alike, amounts


class ListsDiffer(TradeError):
    """Two lists that belong together and are not of one length."""

    code = "scatter-lists-differ"
    says = "{one} and {other} are not as many."
    next_step = "Give one of each for every check."


class TooFewDays(TradeError):
    """One day has no scatter between days."""

    code = "scatter-few-days"
    says = "One day says nothing about scatter from day to day."
    next_step = "Measure the same part again on another day."


class NothingToPool(TradeError):
    """No checks at all."""

    code = "scatter-nothing"
    says = "There are no checks to pool."
    next_step = "Give one set of repeats at least."


@dataclass(frozen=True, slots=True)
class Pooled:
    """Repeatability from several sets of repeats together."""

    sum: float
    degrees_of_freedom: float
    repeatability: float


@dataclass(frozen=True, slots=True)
class Days:
    """What several days of repeats say of one gauge."""

    mean: float
    repeatability: float
    """Within a day: the root of the mean of the squared daily deviations."""
    standard_deviation_of_daily_means: float
    between_days: float
    """Of the days alone, what the repeats would scatter their means by taken out."""
    standard_uncertainty: float
    """Of a single reading on any day."""


def pooled(sums_of_squares: Sequence[float], degrees_of_freedom: Sequence[float]) -> Pooled:
    """Pooled repeatability: s = √(sum of SS / sum of degrees of freedom).

    sums_of_squares: of each set about its own mean. degrees_of_freedom: repeats less one.
    raises: NothingToPool, ListsDiffer; BelowZero, NotAboveZero; NotANumber.
    source: NIST/SEMATECH e-Handbook of Statistical Methods, 2.4.4.4
    >>> round(pooled([0.48115, 0.69209], [60, 60]).repeatability, 6)
    0.098879
    """
    if not alike.many(sums_of_squares, "sums of squares"):
        raise NothingToPool()
    if len(sums_of_squares) != len(alike.many(degrees_of_freedom, "degrees of freedom")):
        raise ListsDiffer(one="Sums of squares", other="degrees of freedom")
    squares = math.fsum(amounts.not_below_zero(each, "sum of squares") for each in sums_of_squares)
    freedom = math.fsum(
        amounts.above_zero(each, "degrees of freedom") for each in degrees_of_freedom
    )
    return Pooled(squares, freedom, math.sqrt(squares / freedom))


def pooled_deviations(deviations: Sequence[float], counts: Sequence[int]) -> Pooled:
    """Pooled repeatability from the standard deviation of each set and its number of repeats.

    raises: as pooled; NotACount for fewer than two repeats.
    source: as pooled, with SS = s² times the degrees of freedom
    >>> round(pooled_deviations([1.0, 2.0], [3, 5]).repeatability, 6)
    1.732051
    """
    if len(alike.many(deviations, "deviations")) != len(alike.many(counts, "counts")):
        raise ListsDiffer(one="Standard deviations", other="numbers of repeats")
    freedom = [amounts.count(each, "repeats", 2) - 1 for each in counts]
    squares = [
        degrees * amounts.not_below_zero(each, "standard deviation") ** 2
        for each, degrees in zip(deviations, freedom, strict=True)
    ]
    return pooled(squares, freedom)


def days(
    daily_means: Sequence[float], daily_standard_deviations: Sequence[float], readings_a_day: int
) -> Days:
    """Repeatability within a day and scatter from day to day of one gauge on one part.

    raises: TooFewDays, ListsDiffer; NotACount, BelowZero, NotANumber.
    source: NIST/SEMATECH e-Handbook of Statistical Methods, 2.4.4 (levels 1 and 2) and 2.6.1.1
    >>> found = days([10.0, 10.2], [0.1, 0.1], 4)
    >>> round(found.repeatability, 6), round(found.between_days, 6)
    (0.1, 0.132288)
    """
    if len(alike.many(daily_means, "daily means")) < len("ab"):
        raise TooFewDays()
    spreads = alike.many(daily_standard_deviations, "daily standard deviations")
    if len(daily_means) != len(spreads):
        raise ListsDiffer(one="Daily means", other="daily standard deviations")
    a_day = amounts.count(readings_a_day, "readings a day", 2)
    means = [amounts.finite(each, "daily mean") for each in daily_means]
    squares = [amounts.not_below_zero(each, "standard deviation") ** 2 for each in spreads]
    within = math.fsum(squares) / len(squares)
    mean = math.fsum(means) / len(means)
    of_means = math.fsum((each - mean) ** 2 for each in means) / (len(means) - 1)
    between = max(0.0, of_means - within / a_day)
    return Days(
        mean,
        math.sqrt(within),
        math.sqrt(of_means),
        math.sqrt(between),
        math.sqrt(between + within),
    )
