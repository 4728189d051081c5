"""An amount as people type it, number and unit in one text, read as the quantity that is wanted."""

from __future__ import annotations

import re
from dataclasses import dataclass
from fractions import Fraction

from witnessmark.trade import units
from witnessmark.trade.amounts import WrongKind
from witnessmark.trade.number import MOST_DIGITS, parse_number
from witnessmark.trade.unit_errors import (
    NumberMissing,
    NumberNegative,
    NumberTwoMeanings,
    NumberUnclear,
    UnitMissing,
    UnitUnknown,
)
from witnessmark.trade.unit_spelled import SAME, unit_word
from witnessmark.trade.units import UNIT_WORDS, Measured, Quantity

SIGNED = {"temperature", "temperature-difference", "length", "volume", "angle", "expansion"}
"""Quantities that may lie below zero: a dome is a negative dish, a cam may stand early."""

_BLANKS = " \t\r\n\u00a0\u202f"
_VULGAR = str.maketrans(
    {
        "½": " 1/2 ",
        "¼": " 1/4 ",
        "¾": " 3/4 ",
        "⅛": " 1/8 ",
        "⅜": " 3/8 ",
        "⅝": " 5/8 ",
        "⅞": " 7/8 ",
        "\u2044": "/",
    }
)
_FRACTION = r"(?:[0-9]+(?:\s+|\s*-\s*))?[0-9]+\s*/\s*[0-9]+(?![0-9])"
_NUMBER = re.compile(
    rf"((?:[-−+]\s*)?(?:{_FRACTION}|[0-9.,]+(?:\s[0-9]{{3}}(?![0-9/]))*))\s*(.*)", re.DOTALL
)
_FEET_INCHES = re.compile(
    rf"([0-9]+)\s*(?:'|ft|feet|foot)\.?\s*-?\s*({_FRACTION}|[0-9]*[.,]?[0-9]+)\s*"
    r"(?:\"|''|in|inch|inches)?\.?"
)
_INCHES_A_FOOT = 12
POINT_WORDS = frozenset(
    {"in", "thou", "ft", "in²", "in³", "in³/min", "lbf", "lbf·ft", "lbf·in", "lbf/in", "psi", "ksi"}
    | {"oz", "lb", "°F", "Δ°F", "ft/min"}
)
EITHER = "either"
"""The number style of a keypad: point and comma both begin the decimals."""


@dataclass(frozen=True, slots=True)
class Typed:
    """What was typed, and what it means.

    text: all of it; value: the number as typed ("2,5"); unit: its word of UNIT_WORDS; number: the
    plain decimal ("2.5"). Feet and inches together have the whole in inches as their value.
    """

    text: str
    value: str
    unit: str
    number: str

    @property
    def measured(self) -> Measured:
        """The plain number with its unit word, to be kept or shown."""
        return Measured(self.number, self.unit)

    @property
    def quantity(self) -> Quantity:
        """The amount, for computing."""
        return units.quantity(float(self.number), self.unit)


def read(
    typed: str, wanted: str, *, unit: str | None = None, decimal_sign: str | None = None
) -> Typed:
    """What a person typed, as the quantity that is wanted.

    unit: the word chosen beside the field, used where none was typed. decimal_sign: "." or "," if
    the person's number style is known, or "either" where both can only begin decimals; without it
    a number like 1,250 is asked about, and 1.250 too unless inches or pounds stand behind it.
    Feet and inches (2'6), fractions (6 1/2 in) and both decimal signs are read.
    raises: UnitMissing; as unit_word and parse_number; NumberNegative where nothing is below zero.
    source: common practice, no source
    >>> read("35 ft-lb", "torque").measured
    Measured(value='35', unit='lbf·ft')
    >>> read("2'6", "length").measured, read("2,5 mm", "length").value
    (Measured(value='30', unit='in'), '2,5')
    """
    if not isinstance(wanted, str) or wanted not in UNIT_WORDS:
        raise UnitUnknown(unit=wanted)
    if decimal_sign not in (None, ".", ",", EITHER):
        raise WrongKind(what="decimal sign")
    text = typed.strip(_BLANKS) if isinstance(typed, str) else ""
    if not text:
        raise NumberMissing()
    if wanted == "length":
        together = _feet_and_inches(text, decimal_sign)
        if together:
            return Typed(text, together, "in", together)
    return _number_and_unit(text, wanted, unit, decimal_sign)


def _number_and_unit(text: str, wanted: str, unit: str | None, decimal_sign: str | None) -> Typed:
    found = _NUMBER.fullmatch(text.translate(_VULGAR).strip(_BLANKS))
    if not found:
        raise NumberUnclear(typed=text)
    value, behind = found[1].strip(_BLANKS), found[2].strip(_BLANKS)
    if not behind and unit is None:
        words = list(UNIT_WORDS[wanted])
        raise UnitMissing(typed=text, words=", ".join(words))
    word = unit_word(behind or str(unit), wanted)
    try:
        number = _plain(value, _style(value, word, decimal_sign))
    except NumberTwoMeanings as two:
        one, other = (f"{two.facts[key]} {word}" for key in ("one", "other"))
        raise NumberTwoMeanings(typed=text, one=one, other=other) from two
    if number.startswith("-") and wanted not in SIGNED:
        raise NumberNegative(typed=text)
    units.convert(float(number), word, word)
    return Typed(text, value, word, number)


def _style(value: str, word: str, decimal_sign: str | None) -> str | None:
    """Who measures in inches and pounds writes decimals behind a point: 1.250 in is no thousand."""
    if decimal_sign is None and word in POINT_WORDS and "," not in value:
        return "."
    return decimal_sign


def _feet_and_inches(text: str, decimal_sign: str | None) -> str | None:
    found = _FEET_INCHES.fullmatch(text.lower().translate(SAME).translate(_VULGAR))
    if not found:
        return None
    inches = Fraction(_plain(found[2], _style(found[2], "in", decimal_sign)))
    if inches >= _INCHES_A_FOOT:
        raise NumberUnclear(typed=text)
    return _decimal(int(found[1]) * _INCHES_A_FOOT + inches, text)


def _plain(value: str, decimal_sign: str | None) -> str:
    sign = "-" if value[0] in "-−" else ""
    digits = value.lstrip("-−+ \u00a0\u202f")
    if "/" in digits:
        return _decimal(_fraction(digits), value, sign)
    if decimal_sign is None:
        return parse_number(sign + digits, signed=True)
    if decimal_sign == EITHER:
        return parse_number(sign + digits, signed=True, one_decimal_key=True)
    other = "." if decimal_sign == "," else ","
    threes = (
        rf"[1-9][0-9]{{0,2}}(?:{re.escape(other)}[0-9]{{3}})+(?:{re.escape(decimal_sign)}[0-9]+)?"
    )
    if re.fullmatch(threes, digits):
        digits = digits.replace(other, "")
    return parse_number(sign + digits, signed=True, one_decimal_key=True)


def _fraction(digits: str) -> Fraction:
    *whole, above, below = (int(each) for each in re.findall("[0-9]+", digits))
    if not below:
        raise NumberUnclear(typed=digits)
    return sum(whole) + Fraction(above, below)


def _decimal(amount: Fraction, typed: str, sign: str = "") -> str:
    """Every digit of a fraction that has so few; a third of an inch is on no scale."""
    for decimals in range(MOST_DIGITS):
        if (amount * 10**decimals).denominator == 1:
            return (sign if amount else "") + units.rounded(amount, decimals)
    raise NumberUnclear(typed=typed)
