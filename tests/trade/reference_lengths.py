"""Keys of published cases that end in a unit of length, as amounts by name."""

from dataclasses import dataclass
from typing import Any

from witnessmark.trade import units

LENGTHS = {"_mm": "mm", "_in": "in", "_um": "µm", "_thou": "thou", "_cm": "cm"}


@dataclass(frozen=True)
class Plain:
    """The amounts of a case, and the unit its results are told in."""

    amounts: dict[str, Any]
    ending: str

    def number(self, amount: units.Quantity) -> float:
        return units.magnitude(amount, LENGTHS[self.ending])

    def told(self, name: str, amount: units.Quantity) -> dict[str, float]:
        return {f"{name}{self.ending}": self.number(amount)}


def amount(value: Any, word: str) -> Any:
    if isinstance(value, list):
        return [amount(each, word) for each in value]
    return None if value is None else units.quantity(value, word)


def named(given: dict[str, Any]) -> Plain:
    made, ending = {}, "_mm"
    for key, value in given.items():
        suffix = next((each for each in LENGTHS if key.endswith(each)), None)
        if suffix:
            made[key.removesuffix(suffix)], ending = amount(value, LENGTHS[suffix]), suffix
    return Plain(made, ending)
