"""Shared cases of bolts: units, what people type, threads, torque, preload and stretch."""

from collections.abc import Callable
from dataclasses import asdict
from typing import Any

from witnessmark.trade import amounts, strength, thread, torque, typed, unit_spelled, units
from witnessmark.trade.thread_text import parse
from witnessmark.trade.units import Measured, magnitude, quantity

Given = dict[str, Any]


def measured(value: dict[str, str] | None) -> Measured | None:
    return None if value is None else Measured(value["value"], value["unit"])


def of(given: Given, *names: str) -> list[Any]:
    return [measured(given[name]) for name in names]


def thread_of(given: Given) -> Given:
    read = parse(given["designation"])
    return {**asdict(read), "designation": read.designation}


def sizes_of(given: Given) -> Given:
    found = thread.sizes(parse(given["designation"]))
    return {
        "pitch_diameter_mm": magnitude(found.pitch_diameter, "mm"),
        "minor_diameter_mm": magnitude(found.minor_diameter, "mm"),
        "root_diameter_mm": magnitude(found.root_diameter, "mm"),
        "stress_area_mm2": magnitude(found.stress_area, "mm²"),
    }


def stresses_of(given: Given) -> Given:
    found = strength.stresses(given["property_class"], quantity(given["diameter_mm"], "mm"))
    unit = "MPa" if found.property_class in strength.METRIC else "psi"
    return {
        "property_class": found.property_class,
        "unit": unit,
        "proof": magnitude(found.proof, unit),
        "yields": magnitude(found.yields, unit),
        "tensile": magnitude(found.tensile, unit),
    }


def loads_of(given: Given) -> Given:
    found = strength.loads(parse(given["designation"]), given["property_class"])
    return {
        "proof_load_N": magnitude(found.proof_load, "N"),
        "yield_load_N": magnitude(found.yield_load, "N"),
        "ultimate_load_N": magnitude(found.ultimate_load, "N"),
    }


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
    "amounts.finite": lambda g: amounts.finite(g["number"], "bore"),
    "amounts.above_zero": lambda g: amounts.above_zero(g["number"], "bore"),
    "amounts.not_below_zero": lambda g: amounts.not_below_zero(g["number"], "bore"),
    "amounts.share": lambda g: amounts.share(g["number"], "bore"),
    "amounts.count": lambda g: amounts.count(g["number"], "bore", g.get("least", 0)),
    "units.convert_difference": lambda g: units.convert_difference(g["value"], g["unit"], g["to"]),
    "units.rounded": lambda g: units.rounded(g["amount"], g["decimals"]),
    "typed.read": lambda g: asdict(typed.read(**g)),
    "thread_text.parse": thread_of,
    "thread.sizes": sizes_of,
    "thread.stress_area_mm2": lambda g: thread.stress_area_mm2(
        parse(g["designation"]), g["formula"]
    ),
    "strength.class_of": lambda g: strength.class_of(g["typed"], g.get("standard")),
    "strength.stresses": stresses_of,
    "strength.loads": loads_of,
    "unit_spelled.unit_word": lambda g: unit_spelled.unit_word(g["typed"], g["wanted"]),
}
