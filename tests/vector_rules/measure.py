"""Shared cases of what is measured: keys with a unit become amounts, results become keys again."""

from collections.abc import Callable
from dataclasses import fields, is_dataclass
from typing import Any

import pint
from witnessmark.trade import (
    adapter,
    assignment,
    choosing,
    dimension,
    expansion,
    fit,
    gauge_study,
    interaction,
    limits,
    mixing,
    points,
    rule_of_thumb,
    scatter,
    sequence,
    shape,
    units,
    valve_train,
    wrench,
)
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


def judged(given: Given) -> str:
    window = {key: given[key] for key in ("least_mm", "most_mm", "rule") if key in given}
    found = fit.clearance(**amounts({k: v for k, v in given.items() if k not in window}))
    return fit.judge(found, **amounts(window)).lies


def turns(given: Given) -> Given:
    found = rule_of_thumb.plausible(given["fit"], units.quantity(given["reading_turns"], "turn"))
    ends = {end: units.magnitude(getattr(found, end), "turn") for end in ("low", "high")}
    return {**ends, "plausible": found.plausible, "mark": found.mark}


def best(given: Given) -> Given:
    found: Given = plain(choosing.choose(**amounts(given)))
    return {key: found[key] for key in ("sum_of_deviations_mm", "worst_mm", "missing")}


def best_mixture(given: Given) -> Given:
    found: Given = plain(mixing.choose(**amounts(given)))
    return {key: found[key] for key in ("sum_of_deviations_mm", "worst_mm")}


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
    "shape.out_of_round": rule(shape.out_of_round),
    "shape.out_of_round_of_planes": rule(shape.out_of_round_of_planes),
    "shape.taper_of_means": rule(shape.taper_of_means),
    "shape.taper_along": rule(shape.taper_along),
    "shape.run_out": rule(shape.run_out),
    "shape.wear": rule(shape.wear),
    "expansion.typical": rule(expansion.typical),
    "expansion.length_at_20": rule(expansion.length_at_20),
    "expansion.length_at": rule(expansion.length_at),
    "expansion.corrected": rule(expansion.corrected),
    "expansion.from_temperature": rule(expansion.from_temperature),
    "expansion.clearance_at": rule(expansion.clearance_at),
    "scatter.pooled": rule(scatter.pooled),
    "scatter.pooled_deviations": rule(scatter.pooled_deviations),
    "scatter.days": rule(scatter.days),
    "gauge_study.average_and_range": rule(gauge_study.average_and_range),
    "gauge_study.analysis_of_variance": rule(gauge_study.analysis_of_variance),
    "gauge_study.share_of_tolerance": rule(gauge_study.share_of_tolerance),
    "gauge_study.good_enough": rule(gauge_study.good_enough),
    "fit.clearance": rule(fit.clearance),
    "fit.oil_clearance": rule(fit.oil_clearance),
    "fit.side_clearance": rule(fit.side_clearance),
    "fit.piston_to_wall": rule(fit.piston_to_wall),
    "fit.end_play": rule(fit.end_play),
    "fit.ring_gap_after": rule(fit.ring_gap_after),
    "fit.gap_per_bore": rule(fit.gap_per_bore),
    "fit.to_file": rule(fit.to_file),
    "valve_train.lash_shim": rule(valve_train.lash_shim),
    "valve_train.lash_at_lifter": rule(valve_train.lash_at_lifter),
    "valve_train.lash_at_valve": rule(valve_train.lash_at_valve),
    "valve_train.preload": rule(valve_train.preload),
    "valve_train.turns_for": rule(valve_train.turns_for),
    "valve_train.height_shim": rule(valve_train.height_shim),
    "valve_train.coil_room": rule(valve_train.coil_room),
    "assignment.cheapest": rule(assignment.cheapest),
    "choosing.choose": rule(choosing.choose),
    "rule_of_thumb.plausible": unnamed(rule_of_thumb.plausible),
    "rule_of_thumb.plausible_turns": turns,
    "fit.judge": judged,
    "choosing.best": best,
    "mixing.choose": rule(mixing.choose),
    "mixing.best": best_mixture,
    "interaction.chance": rule(interaction.chance),
    "interaction.treatment": rule(interaction.treatment),
}
