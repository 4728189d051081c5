"""Tax on an amount of money, or within it, rounded in whole numbers."""

from __future__ import annotations

import re
from dataclasses import dataclass
from fractions import Fraction

from witnessmark.trade.money import Money, checked
from witnessmark.trade.money_errors import PercentUnclear, RoundingUnknown

_PERCENT = re.compile(r"[0-9]{1,6}([.,][0-9]{1,6})?")
ROUNDINGS = ("half up", "half even")


@dataclass(frozen=True, slots=True)
class Taxed:
    """An amount without tax, the tax, and both together."""

    net: Money
    tax: Money
    gross: Money


def tax_on(net: Money, percent: str, rounding: str = "half up") -> Taxed:
    """Tax put on an amount without tax.

    percent: plain decimal text. rounding: "half up" (away from zero) or "half even".
    raises: PercentUnclear, RoundingUnknown; NoMoney.
    source: decimal arithmetic (definition); the rate is the bill's
    >>> from witnessmark.trade.money import parse
    >>> tax_on(parse("2.50", "EUR"), "7").tax.text
    '0.18'
    """
    rate = _rate(percent)
    tax = _rounded(checked(net, "net").minor * rate, rounding)
    return Taxed(net, Money(net.currency, tax), Money(net.currency, net.minor + tax))


def tax_within(gross: Money, percent: str, rounding: str = "half up") -> Taxed:
    """The tax that an amount holds already.

    raises: as tax_on.
    source: decimal arithmetic (definition)
    >>> from witnessmark.trade.money import parse
    >>> tax_within(parse("119.00", "EUR"), "19").net.text
    '100.00'
    """
    rate = _rate(percent)
    tax = _rounded(checked(gross, "gross").minor * rate / (1 + rate), rounding)
    return Taxed(Money(gross.currency, gross.minor - tax), Money(gross.currency, tax), gross)


def _rate(percent: str) -> Fraction:
    if not isinstance(percent, str) or not _PERCENT.fullmatch(percent):
        raise PercentUnclear(typed=percent)
    return Fraction(percent.replace(",", ".")) / 100


def _rounded(exact: Fraction, rounding: str) -> int:
    if rounding not in ROUNDINGS:
        raise RoundingUnknown(rounding=rounding)
    if rounding == "half even":
        return round(exact)
    size = int(abs(exact) + Fraction(1, 2))
    return -size if exact < 0 else size
