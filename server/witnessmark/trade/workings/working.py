"""What a working is: what it asks, and what it tells."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field

from witnessmark.trade.unit_words import UNIT_WORDS
from witnessmark.trade.workings.cautions import Caution
from witnessmark.trade.workings.given import Given

PLAIN = ("number", "count", "share", "designation", "choice", "currency", "any")
"""What an ask may be beside a quantity of UNIT_WORDS.

A share is typed in per cent; "any" is of the quantity chosen in the ask it follows.
"""


@dataclass(frozen=True, slots=True)
class Ask:
    """One value a working asks for."""

    name: str
    quantity: str
    unit: str | None = None
    choices: tuple[str, ...] = ()
    many: bool = False
    optional: bool = False
    default: str | None = None
    signed: bool = False
    row: str | None = None
    follows: str | None = None

    @property
    def units(self) -> tuple[str, ...]:
        """The unit words its number may have, its own first."""
        words = tuple(UNIT_WORDS.get(self.quantity, ()))
        return (self.unit, *(word for word in words if word != self.unit)) if self.unit else words

    def told(self) -> dict[str, object]:
        """The ask as plain facts for the wire."""
        return {
            "name": self.name,
            "quantity": self.quantity,
            "unit": self.unit,
            "units": list(self.units),
            "choices": list(self.choices),
            "many": self.many,
            "optional": self.optional,
            "default": self.default,
            "signed": self.signed,
            "row": self.row,
            "follows": self.follows,
        }


@dataclass(frozen=True, slots=True)
class Line:
    """One line of a result: a number with unit and band, a word, or a list of numbers.

    shown: the value with the digits it is worth; between: so the band; other: in another unit.
    mark: "table-value" or "rule-of-thumb", where the value is no more than that.
    """

    name: str
    value: float | int | str | tuple[int, ...]
    unit: str | None = None
    low: float | None = None
    high: float | None = None
    shown: str = ""
    between: tuple[str, str] | None = None
    other: str | None = None
    mark: str | None = None

    def told(self) -> dict[str, object]:
        """The line as plain facts for the wire."""
        return {
            "name": self.name,
            "value": list(self.value) if isinstance(self.value, tuple) else self.value,
            "unit": self.unit,
            "low": self.low,
            "high": self.high,
            "shown": self.shown,
            "between": list(self.between) if self.between else None,
            "other": self.other,
            "mark": self.mark,
        }


@dataclass(frozen=True, slots=True)
class Result:
    """What a working found."""

    lines: tuple[Line, ...]
    cautions: tuple[Caution, ...] = ()


@dataclass(frozen=True, slots=True)
class Working:
    """A computation: what it asks, its formula and source, and what it does with what is given."""

    name: str
    says: str
    formula: str
    source: str
    asks: tuple[Ask, ...]
    work: Callable[[Given], Result]
    blames: Mapping[str, str] = field(default_factory=dict)
    """Code of a rule's refusal, or what it calls an argument → the ask it is about."""
    by_name: Mapping[str, Ask] = field(init=False)

    def __post_init__(self) -> None:
        object.__setattr__(self, "by_name", {ask.name: ask for ask in self.asks})

    def told(self) -> dict[str, object]:
        """The working as plain facts for the wire."""
        return {
            "name": self.name,
            "says": self.says,
            "formula": self.formula,
            "source": self.source,
            "asks": [ask.told() for ask in self.asks],
        }
