"""Numbers that a rule may compute with: finite, of a size that exists, above zero where need be."""

from __future__ import annotations

import math
from typing import Any, TypeVar

from witnessmark.errors import TradeError

Kind = TypeVar("Kind")

LARGEST = 1e15
"""Beyond it no unit of ours measures anything in a workshop; below it no sum overflows."""
LEAST = 1e-30
"""Less than this is nothing: no gauge shows it, and dividing by it overflows."""


class NotANumber(TradeError):
    """Text, nothing, NaN or infinity where a number belongs."""

    code = "amount-no-number"
    says = "The {what} is no number."
    next_step = "Read it again, and type the number."


class TooLarge(TradeError):
    """More than anything in a workshop measures."""

    code = "amount-too-large"
    says = "The {what} is larger than anything in a workshop."
    next_step = "Look at the decimal sign and the unit."


class NotAboveZero(TradeError):
    """Nothing, or less, where there must be something."""

    code = "amount-not-above-zero"
    says = "The {what} must be above zero."
    next_step = "Measure it again, or take it from the manual."


class BelowZero(TradeError):
    """Less than nothing, where that cannot be."""

    code = "amount-below-zero"
    says = "The {what} is below zero."
    next_step = "Leave the minus sign out, or measure again."


class NotAShare(TradeError):
    """A share that is less than nothing or more than the whole."""

    code = "amount-no-share"
    says = "The {what} is not between 0 and 1."
    next_step = "Type it as a share: 4 per cent is 0.04."


class NotACount(TradeError):
    """A count that is no whole number, or below the least there can be."""

    code = "amount-no-count"
    says = "The {what} must be a whole number of {least} or more."
    next_step = "Count again."


class WrongKind(TradeError):
    """A value of quite another kind than the rule takes."""

    code = "amount-wrong-kind"
    says = "The {what} is not of the kind that belongs there."
    next_step = "Look at what this rule takes, and give that."


def kind(value: Any, wanted: type[Kind] | tuple[type[Kind], ...], what: str) -> Kind:
    """The value, if it is of the kind a rule takes.

    raises: WrongKind.
    source: definition
    >>> kind("metric", str, "standard")
    'metric'
    """
    if not isinstance(value, wanted):
        raise WrongKind(what=what)
    return value


def finite(number: float, what: str) -> float:
    """The number as a float, if it is one.

    raises: NotANumber (also for True, text, None, NaN, infinity); TooLarge beyond 1e15.
    source: definition
    >>> finite(3, "length")
    3.0
    """
    if isinstance(number, bool) or not isinstance(number, int | float):
        raise NotANumber(what=what)
    try:
        plain = float(number)
    except OverflowError:
        raise TooLarge(what=what) from None
    if not math.isfinite(plain):
        raise NotANumber(what=what)
    if abs(plain) > LARGEST:
        raise TooLarge(what=what)
    return plain


def above_zero(number: float, what: str) -> float:
    """The number as a float, if it is above zero.

    raises: as finite; NotAboveZero.
    source: definition
    >>> above_zero(0.5, "bore")
    0.5
    """
    plain = finite(number, what)
    if plain < LEAST:
        raise NotAboveZero(what=what)
    return plain


def not_below_zero(number: float, what: str) -> float:
    """The number as a float, if it is zero or above.

    raises: as finite; BelowZero.
    source: definition
    >>> not_below_zero(0, "end play")
    0.0
    """
    plain = finite(number, what)
    if plain < 0:
        raise BelowZero(what=what)
    return plain


def share(number: float, what: str) -> float:
    """The number as a float, if it lies from 0 to 1.

    raises: as finite; NotAShare.
    source: definition
    >>> share(0.04, "deviation")
    0.04
    """
    plain = finite(number, what)
    if not 0 <= plain <= 1:
        raise NotAShare(what=what)
    return plain


def count(number: float, what: str, least: int = 0) -> int:
    """The number, if it is whole and not below the least.

    A float that is whole counts, since JavaScript knows no other numbers.
    raises: as finite; NotACount.
    source: definition
    >>> count(8, "bolts", 1)
    8
    """
    plain = finite(number, what)
    if plain != int(plain) or plain < least:
        raise NotACount(what=what, least=least)
    return int(plain)
