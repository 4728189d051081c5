"""What a person gave a working, read and ready for the rules."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from witnessmark.trade import units
from witnessmark.trade.units import Measured, Quantity
from witnessmark.trade.workings.errors import AskMissing


@dataclass(frozen=True, slots=True)
class Typed:
    """One value as it was read: plain text of a number or a word, and its unit word."""

    value: str
    unit: str | None = None


@dataclass(frozen=True, slots=True)
class Given:
    """Everything that was given, by the name of the ask; lists have several."""

    values: Mapping[str, tuple[Typed, ...]]

    def has(self, name: str) -> bool:
        """Whether it was given, or has a value when it is not."""
        return name in self.values

    def typed(self, name: str) -> Typed:
        """The value as it was read.

        raises: AskMissing.
        """
        if name not in self.values:
            raise AskMissing(ask=name.replace("-", " "), about=name)
        return self.values[name][0]

    def unit(self, name: str) -> str:
        """The unit it was given in."""
        return self.typed(name).unit or ""

    def measured(self, name: str) -> Measured:
        """The value with its unit as it was typed."""
        typed = self.typed(name)
        return Measured(typed.value, typed.unit or "")

    def amount(self, name: str) -> Quantity:
        """The value as a quantity."""
        return _amount(self.typed(name))

    def amount_or_none(self, name: str) -> Quantity | None:
        """The value as a quantity, if there is one."""
        return self.amount(name) if self.has(name) else None

    def amounts(self, name: str) -> list[Quantity]:
        """The values of a list as quantities."""
        self.typed(name)
        return [_amount(each) for each in self.values[name]]

    def all_in(self, name: str, unit: str) -> list[float]:
        """The values of a list as plain numbers of a unit."""
        self.typed(name)
        return [_plain(each, unit) for each in self.values[name]]

    def inside(self, name: str, unit: str) -> float:
        """The value as a plain number of a unit."""
        return _plain(self.typed(name), unit)

    def number(self, name: str) -> float:
        """A bare number."""
        return float(self.typed(name).value)

    def numbers(self, name: str) -> list[float]:
        """The bare numbers of a list."""
        self.typed(name)
        return [float(each.value) for each in self.values[name]]

    def count(self, name: str) -> int:
        """A whole number."""
        return int(self.typed(name).value)

    def share(self, name: str) -> float:
        """A share from 0 to 1; it is typed in per cent."""
        return float(self.typed(name).value) / 100

    def word(self, name: str) -> str:
        """A word: a choice or a designation."""
        return self.typed(name).value

    def decimals(self, name: str) -> int:
        """How many decimals it was typed with; of a list the most."""
        self.typed(name)
        return max(len(each.value.partition(".")[2]) for each in self.values[name])


def _plain(typed: Typed, unit: str) -> float:
    return units.convert(float(typed.value), typed.unit or "", unit)


def _amount(typed: Typed) -> Quantity:
    return units.quantity(float(typed.value), typed.unit or "")
