"""What an amount of money can be refused for."""

from __future__ import annotations

from witnessmark.errors import TradeError


class CurrencyUnknown(TradeError):
    """No code of ISO 4217 that has a minor unit."""

    code = "money-currency"
    says = "{currency} is no currency code."
    next_step = "Use the three letters of ISO 4217, such as EUR or USD."


class TooManyDecimals(TradeError):
    """A fraction of the smallest coin."""

    code = "money-decimals"
    says = "{typed} has {decimals} decimals; {currency} has {digits}."
    next_step = "Type the amount as it stands on the bill."


class CurrenciesMixed(TradeError):
    """Two currencies in one sum."""

    code = "money-mixed"
    says = "{one} and {other} are not added without a rate."
    next_step = "Sum each currency by itself."


class NothingToSum(TradeError):
    """No amount, so no currency."""

    code = "money-nothing"
    says = "There is no amount to sum."
    next_step = "Give one amount at least."


class NoMoney(TradeError):
    """Something else where money belongs, a float above all."""

    code = "money-none"
    says = "The {what} is no amount of money."
    next_step = "Give text and currency, such as 12.50 EUR."


class NoLines(TradeError):
    """Nothing to share over."""

    code = "money-no-lines"
    says = "There is no line to share over."
    next_step = "Give one line at least."


class LineBelowZero(TradeError):
    """A line that costs less than nothing takes no share."""

    code = "money-line-below-zero"
    says = "Line {line} is below zero."
    next_step = "Leave it out, or take the rebate off another line first."


class PercentUnclear(TradeError):
    """A rate of tax that is no plain decimal of 0 or more."""

    code = "money-percent"
    says = "{typed} is no percentage."
    next_step = "Type it as plain decimal, such as 19 or 7.7."


class RoundingUnknown(TradeError):
    """Neither half up nor half even."""

    code = "money-rounding"
    says = "{rounding} is no way of rounding here."
    next_step = "Choose half up or half even."
