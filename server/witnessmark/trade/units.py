"""Units: amounts in words of closed lists, converted exactly, shown without losing a digit."""

from __future__ import annotations

import inspect
import re
from collections.abc import Callable
from dataclasses import dataclass
from fractions import Fraction
from functools import cache, wraps
from typing import Any, ParamSpec, TypeAlias, TypeVar

import pint

from witnessmark.trade import amounts, number, unit_words
from witnessmark.trade.unit_errors import (
    BelowAbsoluteZero,
    NoQuantity,
    NumberUnclear,
    UnitsDiffer,
    UnitUnknown,
    WrongQuantity,
)

Quantity: TypeAlias = "pint.Quantity[float]"
P = ParamSpec("P")
R = TypeVar("R")

UNIT_WORDS = unit_words.UNIT_WORDS
TORQUE_WORDS = tuple(UNIT_WORDS["torque"])
LEAST_DECIMALS = {"torque": 1}
MOST_DECIMALS = 100
parse_number = number.parse_number

_QUANTITY = {word: quantity for quantity, words in UNIT_WORDS.items() for word in words}
_KEPT = re.compile(r"-?[0-9]*\.?[0-9]*")
_ABSOLUTE_ZERO = Fraction("-273.150000001")
"""A float of the absolute zero may stand a hair below it."""


@dataclass(frozen=True, slots=True)
class Measured:
    """A number as it was typed, with its unit word; if it exists, both can be read."""

    value: str
    unit: str

    def __post_init__(self) -> None:
        parse_number(self.value, one_decimal_key=True, signed=True)
        if not _KEPT.fullmatch(self.value):
            raise NumberUnclear(typed=self.value)
        quantity_of(self.unit)

    @property
    def number(self) -> float:
        """The number alone."""
        return float(self.value)


@dataclass(frozen=True, slots=True)
class _Line:
    """From one unit to another: number * scale + offset."""

    scale: Fraction
    offset: Fraction


@cache
def _registry() -> pint.UnitRegistry[Any]:
    """The one registry of units; its factors are fractions, so no digit is lost in it.

    source: definition
    """
    return pint.UnitRegistry(non_int_type=Fraction)


def quantity_of(unit: str) -> str:
    """What a unit word measures: "torque", "angle", "length"…

    raises: UnitUnknown.
    source: definition
    >>> quantity_of("lbf·ft")
    'torque'
    """
    if not isinstance(unit, str) or unit not in _QUANTITY:
        raise UnitUnknown(unit=unit)
    return _QUANTITY[unit]


@cache
def _unit(word: str) -> Any:
    return _registry().Unit(UNIT_WORDS[quantity_of(word)][word])


def _line(source: Any, into: Any) -> _Line:
    """Both units are of one dimension; two points make the line."""
    nought, one = (
        Fraction(_registry().Quantity(Fraction(point), source).to(into).magnitude)
        for point in (0, 1)
    )
    return _Line(one - nought, nought)


def _between(unit: str, to: str) -> _Line:
    if quantity_of(unit) != quantity_of(to):
        raise UnitsDiffer(unit=unit, other=to)
    return _known_line(unit, to)


@cache
def _known_line(unit: str, to: str) -> _Line:
    return _line(_unit(unit), _unit(to))


@cache
def _from(units: Any, word: str) -> tuple[float, _Line]:
    if units.dimensionality != _unit(word).dimensionality:
        raise UnitsDiffer(unit=_word_of(units), other=word)
    line = _line(units, _unit(word))
    return float(line.scale), line


def _word_of(units: Any) -> str:
    words = (word for word in _QUANTITY if _unit(word) == units)
    return next(words, "the unit given")


def _above_absolute_zero(amount: Fraction, unit: str) -> None:
    if quantity_of(unit) != "temperature":
        return
    line = _between(unit, "°C")
    if amount * line.scale + line.offset < _ABSOLUTE_ZERO:
        raise BelowAbsoluteZero(typed=f"{float(amount):g} {unit}")


def convert(value: float, unit: str, to: str) -> float:
    """The same amount in another unit of the same quantity; temperatures are points.

    raises: UnitUnknown; UnitsDiffer; NotANumber, TooLarge; BelowAbsoluteZero.
    source: NIST Special Publication 811, appendix B.8 (from memory; agrees with pint)
    >>> round(convert(35, "lbf·ft", "N·m"), 4), convert(20, "°C", "°F")
    (47.4536, 68.0)
    """
    line = _between(unit, to)
    amount = Fraction(amounts.finite(value, "amount"))
    _above_absolute_zero(amount, unit)
    return float(amount * line.scale + line.offset)


def convert_difference(value: float, unit: str, to: str) -> float:
    """A difference of two amounts in another unit: 18 °F warmer are 10 °C warmer.

    raises: UnitUnknown; UnitsDiffer; NotANumber, TooLarge.
    source: as convert; definition of the degree Fahrenheit
    >>> convert_difference(18, "°F", "°C")
    10.0
    """
    return float(Fraction(amounts.finite(value, "amount")) * _between(unit, to).scale)


def compare(one: Measured, other: Measured) -> int:
    """-1, 0 or 1 as the first amount is less than, as much as, or more than the second; exact.

    raises: UnitsDiffer.
    source: definition; factors as in convert
    >>> compare(Measured("25.4", "mm"), Measured("1", "in"))
    0
    """
    line = _between(*(amounts.kind(each, Measured, "amount").unit for each in (one, other)))
    left = Fraction(one.value) * line.scale + line.offset
    right = Fraction(other.value)
    return (left > right) - (left < right)


def shown(measured: Measured, to: str) -> str:
    """The amount in another unit, with the digits its resolution is worth, rounded half up.

    One step of the last digit shown is no more than one step of the last digit typed, so no two
    readings fall together; torque has one decimal at least. 45 lbf·ft show as 61.0 N·m.
    In its own unit a number stays as it was typed.
    raises: UnitUnknown; UnitsDiffer.
    source: definition; factors as in convert
    >>> shown(Measured("45", "lbf·ft"), "N·m"), shown(Measured("0.0021", "in"), "mm")
    ('61.0', '0.053')
    """
    if amounts.kind(measured, Measured, "amount").unit == to:
        return measured.value
    line = _between(measured.unit, to)
    step = line.scale / 10 ** len(measured.value.partition(".")[2])
    decimals = LEAST_DECIMALS.get(quantity_of(to), 0)
    while Fraction(1, 10**decimals) > step:
        decimals += 1
    return rounded(Fraction(measured.value) * line.scale + line.offset, decimals)


def rounded(amount: Fraction | float, decimals: int) -> str:
    """The amount as plain decimal text with so many decimals, rounded half away from zero.

    raises: NotANumber, NotACount, TooLarge beyond 100 decimals.
    source: definition
    >>> rounded(0.125, 2), rounded(-0.4, 0)
    ('0.13', '0')
    """
    places = amounts.count(decimals, "decimals")
    if places > MOST_DECIMALS:
        raise amounts.TooLarge(what="number of decimals")
    exact = amount if isinstance(amount, Fraction) else Fraction(amounts.finite(amount, "amount"))
    steps = int(abs(exact) * 10**places + Fraction(1, 2))
    digits = str(steps).rjust(places + 1, "0")
    text = f"{digits[: len(digits) - places]}.{digits[len(digits) - places :]}".rstrip(".")
    return f"-{text}" if exact < 0 and steps else text


def quantity(value: float | str, word: str) -> Quantity:
    """An amount with its unit, for the rules; text is read as parse_number reads it.

    raises: UnitUnknown; NotANumber, TooLarge; BelowAbsoluteZero; as parse_number.
    source: definition
    >>> magnitude(quantity("2,5", "mm"), "µm")
    2500.0
    """
    quantity_of(word)
    plain = parse_number(value, signed=True) if isinstance(value, str) else value
    size = amounts.finite(float(plain) if isinstance(plain, str) else plain, "amount")
    _above_absolute_zero(Fraction(size), word)
    made: Quantity = _registry().Quantity(size, _unit(word))
    return made


def magnitude(amount: Quantity, word: str) -> float:
    """How many of a unit an amount is, as a float.

    raises: NoQuantity; UnitUnknown; UnitsDiffer; NotANumber, TooLarge.
    source: factors as in convert
    >>> magnitude(quantity(1, "kgf·m"), "N·m")
    9.80665
    """
    if not isinstance(amount, pint.Quantity):
        raise NoQuantity(argument="amount")
    quantity_of(word)
    scale, line = _from(amount.units, word)
    size = amounts.finite(float(amount.magnitude), "amount")
    if line.offset:
        return float(Fraction(size) * line.scale + line.offset)
    return size * scale


@cache
def _dimension(name: str) -> Any:
    if name in UNIT_WORDS:
        return _unit(next(iter(UNIT_WORDS[name]))).dimensionality
    return _registry().get_dimensionality(name)


def _checked(given: object, argument: str, dimension: str) -> None:
    if given is None:
        return
    if isinstance(given, list | tuple):
        for each in given:
            _checked(each, argument, dimension)
        return
    if not isinstance(given, pint.Quantity):
        raise NoQuantity(argument=argument)
    if given.dimensionality != _dimension(dimension):
        raise WrongQuantity(argument=argument, wanted=dimension)


def check(*dimensions: str | None) -> Callable[[Callable[P, R]], Callable[P, R]]:
    """Refuse arguments that are no quantity of what the rule wants; keeps the signature.

    One name for each argument in order: a quantity of UNIT_WORDS ("torque"), a dimension in the
    registry's writing ("[length]"), or None for a number or a word. An argument that is None is
    left alone; of a list each is looked at.
    raises, when the rule is called: NoQuantity, WrongQuantity.
    source: definition
    >>> @check("length", None)
    ... def twice(length: Quantity, times: float = 2) -> Quantity:
    ...     return length * times
    >>> magnitude(twice(quantity(3, "mm")), "mm")
    6.0
    """

    def dressed(rule: Callable[P, R]) -> Callable[P, R]:
        signature = inspect.signature(rule)
        wanted = [
            (name, kind)
            for name, kind in zip(signature.parameters, dimensions, strict=False)
            if kind is not None
        ]

        @wraps(rule)
        def checked(*args: P.args, **kwargs: P.kwargs) -> R:
            given = signature.bind(*args, **kwargs).arguments
            for name, kind in wanted:
                _checked(given.get(name), name, kind)
            return rule(*args, **kwargs)

        return checked

    return dressed
