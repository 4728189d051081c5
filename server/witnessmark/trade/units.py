"""Closed lists of unit words, and numbers as people type them.

Text of a person never reaches pint's parser: it reads "35 Nm" as a textile unit.
pint cannot tell torque from energy either, so every word belongs to one quantity here.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from fractions import Fraction
from functools import cache
from typing import Any

import pint

from witnessmark.trade.unit_errors import (
    NumberMissing,
    NumberNegative,
    NumberTooLong,
    NumberTwoMeanings,
    NumberUnclear,
    UnitsDiffer,
    UnitUnknown,
)

UNIT_WORDS: dict[str, dict[str, str]] = {
    "torque": {
        "N·m": "newton * meter",
        "lbf·ft": "pound_force * foot",
        "lbf·in": "pound_force * inch",
        "kgf·m": "kilogram_force * meter",
    },
    "angle": {"°": "degree"},
    "force": {"N": "newton", "lbf": "pound_force"},
    "length": {"mm": "millimeter", "µm": "micrometer", "in": "inch", "thou": "thou"},
    "pressure": {
        "kPa": "kilopascal",
        "bar": "bar",
        "psi": "pound_force / inch ** 2",
        "kgf/cm²": "kilogram_force / centimeter ** 2",
    },
    "volume": {"cm³": "centimeter ** 3", "in³": "inch ** 3", "L": "liter"},
    "mass": {"g": "gram", "kg": "kilogram", "oz": "ounce", "lb": "pound"},
}
"""Quantity → word on the screen → the registry's expression for it."""

TORQUE_WORDS = tuple(UNIT_WORDS["torque"])
LEAST_DECIMALS = {"torque": 1}
MOST_DIGITS = 15

_QUANTITY = {word: quantity for quantity, words in UNIT_WORDS.items() for word in words}
_PLAIN = re.compile(r"[-−]?[0-9]*[.,]?[0-9]*")
_KEPT = re.compile(r"-?[0-9]*\.?[0-9]*")
_THREES = re.compile(r"[1-9][0-9]{0,2}[.,][0-9]{3}")
_GROUPED = re.compile(r"[1-9][0-9]{0,2}([.,])[0-9]{3}((?!\1)[.,][0-9]+|(\1[0-9]{3})+)")
_BLANKS = " \t\r\n\u00a0\u202f"


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
        """The number alone, for computing."""
        return float(self.value)


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
    """
    if not isinstance(unit, str) or unit not in _QUANTITY:
        raise UnitUnknown(unit=unit)
    return _QUANTITY[unit]


@cache
def _factor(unit: str, to: str) -> Fraction:
    """How many of the second unit are one of the first, exactly.

    raises: UnitUnknown; UnitsDiffer.
    source: NIST Special Publication 811, appendix B.8 (from memory; agrees with pint)
    """
    if quantity_of(unit) != quantity_of(to):
        raise UnitsDiffer(unit=unit, other=to)
    words = UNIT_WORDS[_QUANTITY[unit]]
    one = _registry().Quantity(Fraction(1), words[unit])
    return Fraction(one.to(words[to]).magnitude)


def convert(value: float, unit: str, to: str) -> float:
    """The same amount in another unit of the same quantity: 35 lbf·ft are 47.45… N·m.

    raises: UnitUnknown; UnitsDiffer.
    source: NIST Special Publication 811, appendix B.8 (from memory; agrees with pint)
    """
    return float(Fraction(value) * _factor(unit, to))


def compare(one: Measured, other: Measured) -> int:
    """-1, 0 or 1 as the first amount is less than, as much as, or more than the second; exact.

    raises: UnitsDiffer.
    source: definition; factors as in convert
    """
    left = Fraction(one.value) * _factor(one.unit, other.unit)
    right = Fraction(other.value)
    return (left > right) - (left < right)


def parse_number(typed: str, *, one_decimal_key: bool = False, signed: bool = False) -> str:
    """The plain decimal text of a typed number; "2,5" gives "2.5", "61.0" keeps its nought.

    Point and comma mean the same. Digits in threes ("1,250", "1.234,5") are asked about, never
    guessed; one_decimal_key says that the sign came from a keypad that has no other meaning for
    it, so that "1.250" is one and a quarter.
    raises: NumberMissing, NumberUnclear, NumberTwoMeanings, NumberNegative, NumberTooLong.
    source: common practice, no source
    """
    text = typed.strip(_BLANKS) if isinstance(typed, str) else ""
    if not text:
        raise NumberMissing()
    _refuse_two_meanings(text, one_decimal_key)
    if not _PLAIN.fullmatch(text) or not any(sign in "0123456789" for sign in text):
        raise NumberUnclear(typed=text)
    negative = text[0] in "-−"
    if negative and not signed:
        raise NumberNegative(typed=text)
    whole, _, part = text.lstrip("-−").replace(",", ".").partition(".")
    if len(whole + part) > MOST_DIGITS:
        raise NumberTooLong(typed=text)
    plain = (whole.lstrip("0") or "0") + (f".{part}" if part else "")
    return f"-{plain}" if negative and plain.strip("0.") else plain


def _refuse_two_meanings(text: str, one_decimal_key: bool) -> None:
    if _THREES.fullmatch(text):
        if not one_decimal_key:
            raise NumberTwoMeanings(
                typed=text, one=text.replace(",", "."), other=re.sub("[.,]", "", text)
            )
    elif _GROUPED.fullmatch(text):
        first, *rest = re.split("[.,]", text)
        whole, last = "".join([first, *rest[:-1]]), rest[-1]
        joined = "".join(rest)
        meanings = (f"{whole}.{last}", f"{first}.{joined}")
        if len(rest) > 1 and text.count(".") * text.count(",") == 0:
            meanings = (whole + last, f"{whole}.{last}")
        raise NumberTwoMeanings(typed=text, one=meanings[0], other=meanings[1])


def shown(measured: Measured, to: str) -> str:
    """The amount in another unit, with the digits its resolution is worth, rounded half up.

    One step of the last digit shown is no more than one step of the last digit typed, so no two
    readings fall together; torque has one decimal at least. 45 lbf·ft show as 61.0 N·m.
    In its own unit a number stays as it was typed.
    raises: UnitUnknown; UnitsDiffer.
    source: definition; factors as in convert
    """
    if measured.unit == to:
        return measured.value
    ratio = _factor(measured.unit, to)
    step = ratio / 10 ** len(measured.value.partition(".")[2])
    decimals = LEAST_DECIMALS.get(quantity_of(to), 0)
    while Fraction(1, 10**decimals) > step:
        decimals += 1
    amount = Fraction(measured.value) * ratio
    steps = int(abs(amount) * 10**decimals + Fraction(1, 2))
    digits = str(steps).rjust(decimals + 1, "0")
    text = f"{digits[: len(digits) - decimals]}.{digits[len(digits) - decimals :]}".rstrip(".")
    return f"-{text}" if amount < 0 and steps else text
