"""What a number or a unit word can be refused for."""

from __future__ import annotations

from witnessmark.errors import TradeError


class NumberMissing(TradeError):
    """Nothing was typed where a number belongs."""

    code = "number-missing"
    says = "No number was typed."
    next_step = "Type what the scale showed."


class NumberUnclear(TradeError):
    """Signs that make no number."""

    code = "number-unclear"
    says = "{typed} is no number."
    next_step = "Type figures and one decimal sign."


class NumberTwoMeanings(TradeError):
    """A number that two countries read differently."""

    code = "number-two-meanings"
    says = "{typed} can be {one} or {other}."
    next_step = "Type it with one decimal sign and no sign between thousands."


class NumberNegative(TradeError):
    """Less than nothing, where that cannot be."""

    code = "number-negative"
    says = "{typed} is below zero."
    next_step = "Leave the minus sign out."


class NumberTooLong(TradeError):
    """More digits than any instrument shows."""

    code = "number-too-long"
    says = "{typed} has more than 15 digits."
    next_step = "Type the digits the scale shows."


class UnitUnknown(TradeError):
    """A unit word outside the closed lists."""

    code = "unit-unknown"
    says = "{unit} is not one of the units used here."
    next_step = "Choose the unit from the keys."


class UnitsDiffer(TradeError):
    """Two units that do not measure the same."""

    code = "units-differ"
    says = "{unit} and {other} do not measure the same thing."
    next_step = "Choose the unit from the keys."


class BelowAbsoluteZero(TradeError):
    """Colder than anything can be."""

    code = "temperature-below-zero"
    says = "{typed} is below the absolute zero."
    next_step = "Read the thermometer again, and look at the unit."


class NoQuantity(TradeError):
    """A bare number where an amount with its unit belongs."""

    code = "quantity-missing"
    says = "The {argument} has no unit."
    next_step = "Give the number together with its unit."


class WrongQuantity(TradeError):
    """An amount of something else than the rule wants."""

    code = "quantity-wrong"
    says = "The {argument} is not in a unit of {wanted}."
    next_step = "Choose a unit of that quantity."


class UnitMissing(TradeError):
    """A bare number was typed where its unit is not known."""

    code = "unit-missing"
    says = "{typed} has no unit."
    next_step = "Type the unit behind it: {words}."


class UnitTwoMeanings(TradeError):
    """A unit that the trade writes for two."""

    code = "unit-two-meanings"
    says = "{typed} can be {one} or {other}."
    next_step = "Type the whole unit."


class UnitNotTaken(TradeError):
    """A unit that is well known, but not read for this quantity."""

    code = "unit-not-taken"
    says = "{unit} is not taken here."
    next_step = "Type it in {words}."
