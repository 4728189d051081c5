"""Convert: one amount in every other unit of its quantity."""

from __future__ import annotations

from witnessmark.trade import units
from witnessmark.trade.unit_words import UNIT_WORDS
from witnessmark.trade.workings.given import Given
from witnessmark.trade.workings.working import Ask, Line, Result, Working

QUANTITIES = (
    "torque", "length", "pressure", "volume", "mass", "temperature", "force", "flow",
    "travel-speed", "spring-rate", "area", "angle",
)  # fmt: skip


def work(given: Given) -> Result:
    """The amount as it was typed, and in each other unit with the digits its own are worth."""
    typed = given.measured("amount")
    words = [word for word in UNIT_WORDS[given.word("quantity")] if word != typed.unit]
    return Result(tuple(_line(typed, word) for word in words))


def _line(typed: units.Measured, to: str) -> Line:
    return Line(
        name="amount",
        value=units.convert(typed.number, typed.unit, to),
        unit=to,
        shown=units.shown(typed, to),
    )


CONVERT = Working(
    name="convert",
    says="One amount in every other unit.",
    formula="amount × size of its unit ÷ size of the other",
    source="NIST Special Publication 811, appendix B.8, quoted from memory; every factor is "
    "exact by definition.",
    asks=(
        Ask("quantity", "choice", choices=QUANTITIES, default="torque"),
        Ask("amount", "any", follows="quantity", signed=True),
    ),
    work=work,
)
