"""Amounts of one quantity side by side: plain numbers in the first one's unit, and back."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TypeVar

import pint

from witnessmark.errors import TradeError
from witnessmark.trade import amounts, units
from witnessmark.trade.unit_errors import NoQuantity, WrongQuantity
from witnessmark.trade.units import Quantity

Each = TypeVar("Each")


class NotAList(TradeError):
    """One thing, or none, where several belong."""

    code = "amount-no-list"
    says = "The {what} must be a list."
    next_step = "Give them all, one after the other."


def many(listed: Sequence[Each], what: str) -> Sequence[Each]:
    """The list, if it is one.

    raises: NotAList.
    source: definition
    >>> many([1, 2], "gaps")
    [1, 2]
    """
    if not isinstance(listed, list | tuple):
        raise NotAList(what=what)
    return listed


def size(amount: Quantity, first: Quantity, what: str) -> float:
    """How many of the first amount's unit another one is; both measure the same.

    raises: NoQuantity, WrongQuantity; NotANumber, TooLarge.
    source: definition
    >>> size(units.quantity(1, "in"), units.quantity(1, "mm"), "length")
    25.4
    """
    if not isinstance(amount, pint.Quantity):
        raise NoQuantity(argument=what)
    if not isinstance(first, pint.Quantity):
        raise NoQuantity(argument="first amount")
    if amount.dimensionality != first.dimensionality:
        raise WrongQuantity(argument=what, wanted="what the others measure")
    if amount.units == first.units:
        return amounts.finite(float(amount.magnitude), what)
    return amounts.finite(float(amount.to(first.units).magnitude), what)


def sizes(listed: Sequence[Quantity], what: str) -> list[float]:
    """Each of a list in the unit of its first.

    raises: as size.
    source: definition
    >>> sizes([units.quantity(2, "mm"), units.quantity(500, "µm")], "length")
    [2.0, 0.5]
    """
    return [size(each, listed[0], what) for each in many(listed, what)]


def like(number: float, first: Quantity) -> Quantity:
    """So many of the first amount's unit.

    source: definition
    >>> units.magnitude(like(3.0, units.quantity(1, "bar")), "bar")
    3.0
    """
    made: Quantity = type(first)(number, first.units)
    return made


def mm(length: Quantity, what: str) -> float:
    """A length in millimetres.

    raises: NoQuantity, UnitsDiffer; NotANumber, TooLarge.
    source: definition
    >>> mm(units.quantity(1, "in"), "length")
    25.4
    """
    if not isinstance(length, pint.Quantity):
        raise NoQuantity(argument=what)
    return amounts.finite(units.magnitude(length, "mm"), what)


def of_mm(number: float) -> Quantity:
    """So many millimetres.

    raises: NotANumber, TooLarge.
    source: definition
    >>> units.magnitude(of_mm(0.5), "µm")
    500.0
    """
    return units.quantity(number, "mm")
