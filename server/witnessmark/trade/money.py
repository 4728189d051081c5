"""Money in minor units of its currency: read, summed and shared without a lost cent.

No float is taken or given; a fraction of the smallest coin is refused when typed and rounded in
whole numbers when it comes from a rate.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from witnessmark.trade import amounts, number
from witnessmark.trade.alike import many as _many
from witnessmark.trade.money_codes import DIGITS
from witnessmark.trade.money_errors import (
    CurrenciesMixed,
    CurrencyUnknown,
    LineBelowZero,
    NoLines,
    NoMoney,
    NothingToSum,
    TooManyDecimals,
)


@dataclass(frozen=True, slots=True)
class Money:
    """So many minor units of a currency; below zero is money given back."""

    currency: str
    minor: int

    def __post_init__(self) -> None:
        minor_digits(self.currency)
        if isinstance(self.minor, bool) or not isinstance(self.minor, int):
            raise NoMoney(what="amount")

    @property
    def text(self) -> str:
        """The amount as plain decimal text with the digits of its currency."""
        return text(self)

    def __str__(self) -> str:
        return f"{text(self)} {self.currency}"


def minor_digits(currency: str) -> int:
    """How many decimals amounts of a currency have.

    raises: CurrencyUnknown.
    source: ISO 4217, list one, minor unit (from memory)
    >>> minor_digits("EUR"), minor_digits("JPY"), minor_digits("KWD")
    (2, 0, 3)
    """
    if not isinstance(currency, str) or currency not in DIGITS:
        raise CurrencyUnknown(currency=currency)
    return DIGITS[currency]


def parse(typed: str, currency: str) -> Money:
    """The exact amount that was typed; point or comma is its one decimal sign.

    raises: CurrencyUnknown; TooManyDecimals; as number.parse_number.
    source: ISO 4217 (from memory); definition
    >>> parse("19,99", "EUR").minor, parse("-2.5", "EUR").text
    (1999, '-2.50')
    """
    digits = minor_digits(currency)
    plain = number.parse_number(typed, one_decimal_key=True, signed=True)
    decimals = len(plain.partition(".")[2])
    if decimals > digits:
        raise TooManyDecimals(typed=plain, decimals=decimals, currency=currency, digits=digits)
    whole, _, part = plain.partition(".")
    return Money(currency, int(whole + part.ljust(digits, "0")))


def text(money: Money) -> str:
    """Plain decimal text with the digits of the currency, however many figures it has.

    raises: NoMoney.
    source: definition
    >>> text(Money("KWD", -5)), text(Money("JPY", 1550))
    ('-0.005', '1550')
    """
    digits = DIGITS[checked(money, "amount").currency]
    plain = str(abs(money.minor)).rjust(digits + 1, "0")
    cut = len(plain) - digits
    sign = "-" if money.minor < 0 else ""
    return f"{sign}{plain[:cut]}.{plain[cut:]}" if digits else f"{sign}{plain}"


def total(listed: Sequence[Money]) -> Money:
    """The sum of amounts of one currency.

    raises: NothingToSum, CurrenciesMixed; NoMoney.
    source: definition
    >>> total([parse("0.10", "USD")] * 3).text
    '0.30'
    """
    if not _many(listed, "amounts"):
        raise NothingToSum()
    currency = _one_currency(listed)
    return Money(currency, sum(each.minor for each in listed))


def sums(listed: Sequence[Money]) -> dict[str, Money]:
    """A sum for each currency; currencies are never added without a rate.

    raises: NoMoney.
    source: definition
    >>> [str(each) for each in sums([parse("3", "EUR"), parse("3", "USD")]).values()]
    ['3.00 EUR', '3.00 USD']
    """
    found: dict[str, int] = {}
    for each in listed:
        currency = checked(each, "amount").currency
        found[currency] = found.get(currency, 0) + each.minor
    return {currency: Money(currency, minor) for currency, minor in sorted(found.items())}


def times(money: Money, count: int) -> Money:
    """The price of so many.

    raises: NoMoney; NotACount, NotANumber.
    source: definition
    >>> times(parse("4.00", "EUR"), 14).text
    '56.00'
    """
    return Money(checked(money, "price").currency, money.minor * amounts.count(count, "count"))


def shared(whole: Money, lines: Sequence[Money]) -> list[Money]:
    """Shipping or tax shared over lines by their price; the shares add up to the whole.

    Each gets its part rounded down, and what is left goes coin by coin to the largest remainders,
    of equal ones to the earlier line. A line of nothing gets nothing, unless all are of nothing:
    then all get alike. Less than nothing (given back) is shared likewise.
    raises: NoLines, LineBelowZero, CurrenciesMixed; NoMoney.
    source: largest remainder method (common practice, no source)
    >>> lines = [parse(each, "EUR") for each in ("12.00", "7.50", "0.50")]
    >>> [each.text for each in shared(parse("4.99", "EUR"), lines)]
    ['2.99', '1.87', '0.13']
    """
    if not _many(lines, "lines"):
        raise NoLines()
    currency = _one_currency([whole, *lines])
    weights = [_weight(each, place + 1) for place, each in enumerate(lines)]
    if not any(weights):
        weights = [1] * len(weights)
    every, size = sum(weights), abs(whole.minor)
    parts = [divmod(size * weight, every) for weight in weights]
    left = size - sum(part for part, _ in parts)
    first = sorted(range(len(parts)), key=lambda place: (-parts[place][1], place))[:left]
    sign = -1 if whole.minor < 0 else 1
    return [
        Money(currency, sign * (part + (place in first))) for place, (part, _) in enumerate(parts)
    ]


def checked(money: Money, what: str) -> Money:
    """The amount, if it is money.

    raises: NoMoney.
    source: definition
    >>> checked(Money("EUR", 5), "price").text
    '0.05'
    """
    if not isinstance(money, Money):
        raise NoMoney(what=what)
    return money


def _one_currency(listed: Sequence[Money]) -> str:
    first = checked(listed[0], "amount").currency
    for each in listed:
        if checked(each, "amount").currency != first:
            raise CurrenciesMixed(one=first, other=each.currency)
    return first


def _weight(line: Money, place: int) -> int:
    if line.minor < 0:
        raise LineBelowZero(line=place)
    return line.minor
