"""Chances of enough good ones among 1, 2, 3… brought, term by term; all terms are above zero."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from itertools import islice

from witnessmark.errors import TradeError
from witnessmark.trade import amounts

MOST = 1_000_000
"""Nobody brings home more."""
_HAIR = 1e-12
_STEP = 1e250


class NoCertainty(TradeError):
    """A chance of all or nothing."""

    code = "yields-no-certainty"
    says = "The {what} must lie between 0 and 1; certainty cannot be had."
    next_step = "Take 0.95, say."


class TooManyToBring(TradeError):
    """More than a million."""

    code = "yields-too-many"
    says = "More than {most} would have to be brought."
    next_step = "Buy new, or be content with a smaller chance."


@dataclass(frozen=True, slots=True)
class Bring:
    """The least number to bring, and the chance it gives."""

    bring: int
    chance_reached: float


def open_chance(number: float, what: str) -> float:
    """The number, if it lies between 0 and 1 and is neither.

    raises: NoCertainty; NotANumber.
    source: definition
    >>> open_chance(0.95, "chance")
    0.95
    """
    if not 0 < amounts.finite(number, what) < 1:
        raise NoCertainty(what=what)
    return number


def known(needed: int, good: float) -> Iterator[float]:
    """The chances with needed, needed + 1… brought, each good with that share.

    The term of so many is the chance that the last of them is the last good one needed.
    source: negative binomial distribution (definition)
    >>> [round(each, 4) for each in islice(known(1, 0.75), 3)]
    [0.75, 0.9375, 0.9844]
    """
    bad = 1 - good
    return _series(needed, lambda _: good, lambda many: bad * many / (many - needed + 1))


def learned(needed: int, a: float, b: float) -> Iterator[float]:
    """The same where the share good has a beta distribution of a and b.

    source: beta negative binomial distribution (definition)
    >>> [round(each, 4) for each in islice(learned(1, 1, 1), 3)]
    [0.5, 0.6667, 0.75]
    """
    return _series(
        needed,
        lambda place: (a + place) / (a + b + place),
        lambda many: (b + many - needed) / (a + b + many) * many / (many - needed + 1),
    )


def least(chances: Iterator[float], needed: int, wanted: float) -> Bring:
    """The first number that reaches the chance wanted.

    raises: NoCertainty, TooManyToBring; NotANumber.
    source: definition
    >>> least(known(8, 0.75), 8, 0.95).bring
    14
    """
    aim = open_chance(wanted, "chance") - _HAIR
    for many, reached in zip(range(needed, MOST + 1), chances, strict=False):
        if reached >= aim:
            return Bring(many, reached)
    raise TooManyToBring(most=MOST)


def at(chances: Iterator[float], needed: int, brought: int) -> float:
    """The chance with so many brought; none with fewer than needed.

    source: definition
    >>> at(known(2, 0.5), 2, 1), at(known(2, 0.5), 2, 2)
    (0.0, 0.25)
    """
    if brought < needed:
        return 0.0
    return next(islice(chances, brought - needed, None))


def _series(
    needed: int, first: Callable[[int], float], grow: Callable[[int], float]
) -> Iterator[float]:
    """Sums of terms above zero, held in steps of 1e250 so that none is lost below the least."""
    term, steps = 1.0, 0
    for place in range(needed):
        term *= first(place)
        if term < 1 / _STEP:
            term, steps = term * _STEP, steps + 1
    whole, many = 0.0, needed
    while True:
        whole += term
        if steps and whole >= 1:
            term, whole, steps = term / _STEP, whole / _STEP, steps - 1
        yield min(1.0, whole * (1 / _STEP) ** steps)
        term *= grow(many)
        many += 1
