"""Published values of readings: scatter, limits, 20 °C, shape, uncertainty, gauge studies."""

from collections.abc import Callable
from typing import Any

from trade.reference_lengths import Plain, named
from witnessmark.trade import dimension, expansion, gauge_study, limits, scatter, shape, units

Given = dict[str, Any]


def pooled(given: Given) -> Given:
    found = scatter.pooled(given["sums_of_squares"], given["degrees_of_freedom"])
    return {
        "sum": found.sum,
        "degrees_of_freedom": found.degrees_of_freedom,
        "repeatability": found.repeatability,
    }


def days(given: Given) -> Given:
    names = "daily_means", "daily_standard_deviations", "readings_a_day"
    found = scatter.days(*(given[name] for name in names))
    return {
        "repeatability": found.repeatability,
        "standard_deviation_of_daily_means": found.standard_deviation_of_daily_means,
        "mean": found.mean,
    }


def judged(given: Given) -> Given:
    made = named(given)
    guard = made.amounts.get("guard_band", made.amounts.get("expanded_uncertainty"))
    if guard is None and "k" in given:
        guard = dimension.expanded(made.amounts["standard_uncertainty"], given["k"])
    if guard is None:
        one_sided = "1.65" in given.get("rule", "") or "one-sided" in given.get("rule", "")
        rule = "one-sided" if one_sided else "expanded"
        guard = limits.guard_band(made.amounts["standard_uncertainty"], rule)
    window = made.amounts.get("lower"), made.amounts.get("upper")
    found = limits.judge(made.amounts["reading"], *window, guard)
    return {
        "verdict": found.lies.replace("-", " "),
        f"guard_band{made.ending}": made.number(guard),
    }


def at_20(given: Given) -> Given:
    made = named(given)
    heat = units.quantity(given["temperature_C"], "°C")

    def grows(key: str) -> units.Quantity:
        return units.quantity(given[key], "1/K")

    if "clearance_apart" in made.amounts:
        room = expansion.clearance_at(
            made.amounts["clearance_apart"],
            made.amounts["bore"],
            grows("bore_expansion_per_K"),
            grows("piston_expansion_per_K"),
            measured_at=heat,
        )
        return {f"clearance_20{made.ending}": made.number(room)}
    if "length_20" in made.amounts:
        there = expansion.length_at(made.amounts["length_20"], heat, grows("expansion_per_K"))
        return {f"length{made.ending}": made.number(there)}
    length = expansion.length_at_20(made.amounts["length"], heat, grows("expansion_per_K"))
    return {f"length_20{made.ending}": made.number(length)}


def shaped(given: Given) -> Given:
    made = named(given)
    if "plane" in made.amounts:
        return made.told("out_of_round", shape.out_of_round(made.amounts["plane"]))
    if "indicator" in made.amounts:
        found = shape.run_out(made.amounts["indicator"])
        return made.told("run_out", found.run_out) | made.told("eccentricity", found.eccentricity)
    if "new" in made.amounts:
        return worn(made)
    planes = [each for each in made.amounts.values() if isinstance(each, list)]
    return (
        made.told("out_of_round", shape.out_of_round_of_planes(planes))
        | made.told("taper", shape.taper_of_means(planes))
        | made.told("taper_along", shape.taper_along(planes))
    )


def worn(made: Plain) -> Given:
    new, now = made.amounts["new"], made.amounts["now"]
    feature = "bore" if units.magnitude(now, "mm") > units.magnitude(new, "mm") else "shaft"
    return made.told("wear", shape.wear(new, now, feature).wear)


def repeated(given: Given) -> Given:
    made = named(given)
    found = dimension.repeats(made.amounts["repeats"])
    names = "mean", "spread", "standard_deviation", "standard_uncertainty_of_mean"
    gives: Given = {}
    for name in names:
        gives |= made.told(name, getattr(found, name))
    return gives


def resolution(given: Given) -> Given:
    made = named(given)
    parts = []
    if "resolution" in made.amounts:
        parts.append(dimension.from_resolution(made.amounts["resolution"]))
    if "permitted_error" in made.amounts:
        width = made.amounts["permitted_error"]
        parts.append(dimension.from_limit(width, given.get("shape", "rectangular")))
    u = dimension.combined(parts)
    return made.told("standard_uncertainty", u) | made.told("expanded_k2", dimension.expanded(u))


def studied(given: Given) -> Given:
    readings = list(given["readings"].values())
    if given["method"].startswith("average"):
        factors = {key.lower(): given[key] for key in ("K1", "K2", "K3") if key in given}
        ranged = gauge_study.average_and_range(readings, **factors)
        return {"mean_range": ranged.mean_range} | parts_of(ranged.study)
    way = "kept" if "kept" in given["method"] else "pooled"
    found = gauge_study.analysis_of_variance(readings, way)  # type: ignore[arg-type]
    names = [f"mean_square_{name}" for name in ("part", "person", "interaction", "repeat")]
    return {name: getattr(found, name) for name in names} | parts_of(found.study)


def parts_of(study: gauge_study.Study) -> Given:
    return {name: getattr(study, name) for name in gauge_study.Study.__slots__}


SHAPES: dict[str, Callable[[Given], Given]] = {
    "sums_of_squares": pooled,
    "daily_means": days,
    "readings": studied,
    "reading": judged,
    "temperature_C": at_20,
    "repeats": repeated,
    "resolution": resolution,
    "permitted_error": resolution,
}


def BY_SHAPE(given: Given) -> Given:  # noqa: N802 - the frame's name for it
    keys = given.keys() | named(given).amounts.keys()
    run = next((run for key, run in SHAPES.items() if key in keys), shaped)
    return run(given)


TOPICS: dict[str, Any] = {}
