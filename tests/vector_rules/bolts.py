"""Shared cases of bolts: units, what people type, threads, torque, preload and stretch."""

from collections.abc import Callable
from dataclasses import asdict
from typing import Any

from witnessmark.trade import torque, typed, unit_spelled, units
from witnessmark.trade.units import Measured

Given = dict[str, Any]


def measured(value: dict[str, str] | None) -> Measured | None:
    return None if value is None else Measured(value["value"], value["unit"])


def of(given: Given, *names: str) -> list[Any]:
    return [measured(given[name]) for name in names]


RULES: dict[str, Callable[[Given], Any]] = {
    "units.convert": lambda g: units.convert(g["value"], g["unit"], g["to"]),
    "units.shown": lambda g: units.shown(*of(g, "measured"), g["to"]),
    "units.compare": lambda g: units.compare(*of(g, "one", "other")),
    "units.parse_number": lambda g: units.parse_number(**g),
    "units.quantity_of": lambda g: units.quantity_of(g["unit"]),
    "torque.deviation": lambda g: torque.deviation(*of(g, "reading", "target")),
    "torque.against": lambda g: torque.against(*of(g, "reading", "target"), g.get("permitted")),
    "torque.asks_unit": lambda g: torque.asks_unit(*of(g, "reading", "target")),
    "torque.out_of_reason": lambda g: torque.out_of_reason(*of(g, "reading", "target")),
    "units.convert_difference": lambda g: units.convert_difference(g["value"], g["unit"], g["to"]),
    "units.rounded": lambda g: units.rounded(g["amount"], g["decimals"]),
    "typed.read": lambda g: asdict(typed.read(**g)),
    "unit_spelled.unit_word": lambda g: unit_spelled.unit_word(g["typed"], g["wanted"]),
}
