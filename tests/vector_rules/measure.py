"""Shared cases of what is measured: keys with a unit become amounts, results become keys again."""

from collections.abc import Callable
from dataclasses import fields, is_dataclass
from typing import Any

import pint
from witnessmark.trade import adapter, dimension, limits, points, sequence, units, wrench
from witnessmark.trade.units import Measured

Given = dict[str, Any]
WORDS = {
    "_N_m": "N·m",
    "_mm": "mm",
    "_deg": "°",
    "_per_K": "1/K",
    "_K": "K",
    "_C": "°C",
}
RESULTS = {"torque": ("_N_m", "N·m"), "length": ("_mm", "mm"), "expansion": ("_per_K", "1/K")}


def amount(value: Any, word: str) -> Any:
    if isinstance(value, list):
        return [amount(each, word) for each in value]
    return None if value is None else units.quantity(value, word)


def amounts(given: Given) -> Given:
    """Each key that ends in a unit loses it, its number becomes an amount."""
    made = {}
    for key, value in given.items():
        suffix = next((each for each in WORDS if key.endswith(each)), None)
        name = key.removesuffix(suffix) if suffix else key
        made[name] = amount(value, WORDS[suffix]) if suffix else value
    return made


def number(size: Any) -> tuple[str, float]:
    for quantity, (suffix, word) in RESULTS.items():
        if size.dimensionality == units.quantity(1.0, units_word(quantity)).dimensionality:
            return suffix, units.magnitude(size, word)
    raise AssertionError(size)


def units_word(quantity: str) -> str:
    return next(iter(units.UNIT_WORDS[quantity]))


def plain(result: Any) -> Any:
    """A result as plain JSON; a field that is an amount has its unit in its key."""
    if isinstance(result, pint.Quantity):
        return number(result)[1]
    if isinstance(result, list | tuple):
        return [plain(each) for each in result]
    if not is_dataclass(result):
        return result
    # A field that may be missing carries its unit all the same, from its brothers.
    sizes = {each.name: getattr(result, each.name) for each in fields(result)}
    suffix = next((number(v)[0] for v in sizes.values() if isinstance(v, pint.Quantity)), "")
    made = {}
    for each in fields(result):
        measured = "Quantity" in str(each.type)
        made[each.name + (suffix if measured else "")] = plain(sizes[each.name])
    return made


def rule(called: Callable[..., Any]) -> Callable[[Given], Any]:
    return lambda given: plain(called(**amounts(given)))


def unnamed(called: Callable[..., Any]) -> Callable[[Given], Any]:
    """Rules for whatever is measured: their results bear no unit."""
    return lambda given: bare(plain(called(**amounts(given))))


def bare(made: Any) -> Any:
    if not isinstance(made, dict):
        return made
    return {key.removesuffix("_mm"): value for key, value in made.items()}


def reading(given: Given) -> Given:
    found = dimension.reading(**amounts(given))
    parts = found.value, found.standard_uncertainty
    return dict(zip(("value_mm", "standard_uncertainty_mm"), map(plain, parts), strict=True))


def measured(value: dict[str, str] | None) -> Measured | None:
    return None if value is None else Measured(value["value"], value["unit"])


def of(given: Given, *names: str) -> list[Any]:
    return [measured(given[name]) for name in names]


RULES: dict[str, Callable[[Given], Any]] = {
    "wrench.permitted": lambda g: wrench.permitted(measured(g["most"]), g["own"]),
    "wrench.fit": lambda g: wrench.fit(*of(g, "wanted", "least", "most")),
    "wrench.in_range": lambda g: wrench.in_range(*of(g, "wanted", "least", "most")),
    "wrench.deviation": rule(wrench.deviation),
    "wrench.within": rule(wrench.within),
    "wrench.applied": rule(wrench.applied),
    "wrench.settable": rule(wrench.settable),
    "wrench.range_low": rule(wrench.range_low),
    "wrench.days_since": rule(wrench.days_since),
    "wrench.calibration": rule(wrench.calibration),
    "adapter.effective_length": rule(adapter.effective_length),
    "adapter.setting": rule(adapter.setting),
    "adapter.applied": rule(adapter.applied),
    "adapter.through_extension": rule(adapter.through_extension),
    "adapter.band": rule(adapter.band),
    "adapter.plan": rule(adapter.plan),
    "sequence.order": rule(sequence.order),
    "sequence.loosening": rule(sequence.loosening),
    "sequence.positions": rule(sequence.positions),
    "sequence.drawn": rule(sequence.drawn),
    "points.order": rule(points.order),
    "points.positions": rule(points.positions),
    "dimension.from_resolution": rule(dimension.from_resolution),
    "dimension.from_limit": rule(dimension.from_limit),
    "dimension.combined": rule(dimension.combined),
    "dimension.expanded": rule(dimension.expanded),
    "dimension.repeats": unnamed(dimension.repeats),
    "dimension.reading": reading,
    "limits.guard_band": rule(limits.guard_band),
    "limits.judge": unnamed(limits.judge),
    "limits.share_of_limits": rule(limits.share_of_limits),
}
