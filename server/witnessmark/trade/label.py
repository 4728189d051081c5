"""Label codes: seven signs and a check sign that catches every wrong sign and every swap.

A sign's value is its place in the alphabet, taken as an element of the field of 32 with
x⁵ + x² + 1. The sum of sign i times αⁱ, i = 0…7 from the left, is zero in a good code.
"""

from __future__ import annotations

import re

from witnessmark.errors import TradeError

ALPHABET = "0123456789ABCDEFGHJKMNPQRSTVWXYZ"
LENGTH = 8
_LOOK_ALIKES = str.maketrans("ILO", "110")
_PATH = re.compile(r"/[lL]/([0-9A-Za-z]{8})(?![0-9A-Za-z])")
_LEFT_OUT = re.compile(r"[ \t\r\n\u00a0\u202f\-–]")
_OVERFLOW, _FIELD = 0b100000, 0b100101


class LabelLength(TradeError):
    """More or fewer than eight signs."""

    code = "label-length"
    says = "A code has eight signs; {count} were typed."
    next_step = "Type the two groups of four below the symbol."


class LabelSign(TradeError):
    """A sign that stands in no code."""

    code = "label-sign"
    says = "{sign}, sign {place}, stands in no code."
    next_step = "Look at it again: U is V, and a dash is left out."


class LabelCheck(TradeError):
    """The eight signs do not belong together."""

    code = "label-check"
    says = "The last sign does not fit: {code} ends in {last}."
    next_step = "Look at 0 and D, 8 and B again."


class LabelNone(TradeError):
    """A text that is no label of ours."""

    code = "label-none"
    says = "This is not one of our labels."
    next_step = "Scan the square on one of our labels, or type its eight signs."


def value(sign: str) -> int:
    """The value of a sign, 0 to 31; small letters count, and I, L, O are read as 1, 1, 0.

    raises: LabelSign.
    source: Base 32, D. Crockford (2019), alphabet and decoding of look-alikes
    >>> value("Z"), value("O")
    (31, 0)
    """
    return _value(sign, 1)


def _value(sign: str, place: int) -> int:
    known = isinstance(sign, str) and len(sign) == 1 and sign.isascii()
    found = ALPHABET.find(sign.upper().translate(_LOOK_ALIKES)) if known else -1
    if found < 0:
        raise LabelSign(sign=sign, place=place)
    return found


def _text(typed: object) -> str:
    """What is no text has no signs."""
    return typed if isinstance(typed, str) else ""


def _remainder(values: list[int]) -> int:
    total = 0
    for number in reversed(values):
        total <<= 1
        if total & _OVERFLOW:
            total ^= _FIELD
        total ^= number
    return total


def check(seven: str) -> str:
    """The sign that makes seven signs a code: "7K3MQ2R" gives "J".

    raises: LabelLength; LabelSign.
    source: definition (arithmetic of the field of 32 with x⁵ + x² + 1)
    >>> check("0000001")
    'J'
    """
    signs = _text(seven)
    if len(signs) != LENGTH - 1:
        raise LabelLength(count=len(signs))
    values = [_value(sign, place) for place, sign in enumerate(signs, 1)]
    return next(sign for last, sign in enumerate(ALPHABET) if not _remainder([*values, last]))


def parse(typed: str) -> str:
    """The code a person typed: capitals, look-alikes read, spaces and dashes left out.

    raises: LabelLength, LabelSign, LabelCheck.
    source: Base 32, D. Crockford (2019), for look-alikes; check sign by definition
    >>> parse("oooo-oo1j")
    '0000001J'
    """
    signs = _LEFT_OUT.sub("", _text(typed))
    values = [_value(sign, place) for place, sign in enumerate(signs, 1)]
    if len(signs) != LENGTH:
        raise LabelLength(count=len(signs))
    code = "".join(ALPHABET[number] for number in values)
    if _remainder(values):
        raise LabelCheck(code=grouped(code), last=code[-1])
    return code


def code_from_text(text: str) -> str:
    """The code in what a scanner read: the last /L/ and eight signs, or the eight signs alone.

    The computer named before it is ignored, so labels outlive a change of computer.
    raises: LabelNone; LabelSign and LabelCheck for eight signs that do not fit.
    source: definition
    >>> code_from_text("https://bench.local/L/0000001J")
    '0000001J'
    """
    found = _PATH.findall(_text(text))
    bare = _LEFT_OUT.sub("", _text(text))
    if found:
        return parse(found[-1])
    if re.fullmatch(r"[0-9A-Za-z]{8}", bare):
        return parse(bare)
    raise LabelNone()


def grouped(code: str) -> str:
    """The code as people read it, in two groups of four: "7K3M Q2RJ".

    source: definition
    >>> grouped("0000001J")
    '0000 001J'
    """
    signs = _text(code)
    return f"{signs[:4]} {signs[4:]}"
