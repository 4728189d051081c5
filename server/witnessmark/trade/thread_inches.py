"""Sizes of inch threads: fractions, decimals and screw numbers."""

from __future__ import annotations

import re
from fractions import Fraction

from witnessmark.trade.thread import plain
from witnessmark.trade.thread_errors import ThreadUnread

NUMBERS = range(13)
FIRST_INCH_SIZES = 4
"""Whole numbers up to here are inches rather than screw numbers, if the pitch is coarse enough."""
SMALL_NUMBER_TPI = 24
NEAR_INCH = 0.0006


def inches(text: str, size: str, numbered: bool, tpi: float | None) -> Fraction:
    """The size in inches; a whole number is a screw number or inches, as its threads tell.

    raises: ThreadUnread.
    source: ASME B1.1: number sizes are 0.060 in + 0.013 in a number (from memory)
    >>> inches("7/16-20", "7/16", False, 20), inches("10-32", "10", False, 32)
    (Fraction(7, 16), Fraction(19, 100))
    """
    if "/" in size:
        *whole, above, below = (int(each) for each in re.findall("[0-9]+", size))
        if not below:
            raise ThreadUnread(typed=text)
        return sum(whole) + Fraction(above, below)
    if "." in size:
        return _nearest(Fraction(size))
    number = int(size)
    in_inches = number <= FIRST_INCH_SIZES and (tpi is None or tpi < SMALL_NUMBER_TPI)
    if numbered or not (in_inches and number):
        if number not in NUMBERS:
            raise ThreadUnread(typed=text)
        return Fraction(60 + 13 * number, 1000)
    return Fraction(number)


def _nearest(inches: Fraction) -> Fraction:
    """Decimals are rounded sizes: 0.312 is 5/16, .190 is a number 10."""
    known = [Fraction(each, 64) for each in range(1, 257)]
    known += [Fraction(60 + 13 * number, 1000) for number in NUMBERS]
    nearest = min(known, key=lambda size: abs(size - inches))
    return nearest if abs(nearest - inches) <= NEAR_INCH else inches


def size_text(parts: Fraction) -> str:
    """The size as it is written: #10, 7/16, 1 1/8, and decimals where no rule has the mark.

    source: as inches
    >>> size_text(Fraction(9, 8)), size_text(Fraction(19, 100))
    ('1 1/8', '#10')
    """
    number = (parts * 1000 - 60) / 13
    if number.denominator == 1 and int(number) in NUMBERS:
        return f"#{number}"
    whole, rest = divmod(parts, 1)
    if 64 % rest.denominator:  # the finest mark of an inch rule
        return plain(round(float(parts), 6))
    return " ".join(str(part) for part in (whole, rest) if part)
