"""Numbers as people type them, made into plain decimal text; two meanings are asked about."""

from __future__ import annotations

import re

from witnessmark.trade.unit_errors import (
    NumberMissing,
    NumberNegative,
    NumberTooLong,
    NumberTwoMeanings,
    NumberUnclear,
)

MOST_DIGITS = 15

_PLAIN = re.compile(r"[-−]?[0-9]*[.,]?[0-9]*")
_THREES = re.compile(r"[1-9][0-9]{0,2}[.,][0-9]{3}")
_GROUPED = re.compile(r"[1-9][0-9]{0,2}([.,])[0-9]{3}((?!\1)[.,][0-9]+|(\1[0-9]{3})+)")
_BLANKS = " \t\r\n\u00a0\u202f"


def parse_number(typed: str, *, one_decimal_key: bool = False, signed: bool = False) -> str:
    """The plain decimal text of a typed number; "2,5" gives "2.5", "61.0" keeps its nought.

    Point and comma mean the same. Digits in threes ("1,250", "1.234,5") are asked about, never
    guessed; one_decimal_key says that the sign came from a keypad that has no other meaning for
    it, so that "1.250" is one and a quarter.
    raises: NumberMissing, NumberUnclear, NumberTwoMeanings, NumberNegative, NumberTooLong.
    source: common practice, no source
    >>> parse_number("2,50"), parse_number(".0021")
    ('2.50', '0.0021')
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
