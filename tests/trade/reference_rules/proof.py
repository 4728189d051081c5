"""Published values of proofs: leak-down, orifice, evenness, pressure trace, prime."""

from typing import Any

from witnessmark.trade import proof
from witnessmark.trade.units import Quantity, magnitude, quantity

Given = dict[str, Any]
WORDS = {"psi": "psi", "kPa": "kPa", "bar": "bar"}


def amount(given: Given, name: str) -> Quantity:
    unit = next(each for each in WORDS if f"{name}_{each}" in given)
    return quantity(given[f"{name}_{unit}"], WORDS[unit])


def leak_down(given: Given) -> Given:
    share = proof.leakage(amount(given, "supply"), amount(given, "cylinder"))
    return {"leak_share": share, "within_25_percent": proof.leaks_no_more_than(share, 0.25)}


def orifice(given: Given) -> Given:
    unit = "in" if "bore_in" in given else "mm"
    found = proof.orifice(quantity(given[f"bore_{unit}"], unit))
    return {"orifice_in": magnitude(found, "in"), "orifice_mm": magnitude(found, "mm")}


def evenness(given: Given) -> Given:
    key = next(each for each in given if each.startswith("readings_"))
    unit = WORDS[key.removeprefix("readings_")]
    found = proof.evenness([quantity(each, unit) for each in given[key]])
    return {
        "lowest_over_highest": found.lowest_over_highest,
        "even_at_0_75": proof.is_even(found.lowest_over_highest, 0.75),
        "lowest_cylinder": found.lowest_place,
        "highest_cylinder": found.highest_place,
        **{f"mean_{each}": magnitude(found.mean, each) for each in WORDS},
    }


def trace(given: Given) -> Given:
    key = next(each for each in given if each.startswith("trace_s_"))
    unit = WORDS[key.removeprefix("trace_s_")]
    points = [proof.Point(quantity(t, "s"), quantity(p, unit)) for t, p in given[key]]
    if "plateau_last_s" in given:
        found = proof.plateau(points, quantity(given["plateau_last_s"], "s"))
        return {f"plateau_mean_{each}": magnitude(found.mean, each) for each in WORDS}
    reached = proof.time_to(points, amount(given, "threshold"))
    seconds = None if reached is None else magnitude(reached, "s")
    return {"time_to_threshold_s": seconds, "reached": reached is not None}


def prime(given: Given) -> Given:
    missing = list(proof.missing_places(given["places"], given["seen"]))
    return {"complete": not missing, "missing": missing}


def BY_SHAPE(given: Given) -> Given:  # noqa: N802 - the frame's name for it
    keys = " ".join(given)
    shapes = (
        ("supply_", leak_down), ("bore_", orifice), ("readings_", evenness), ("trace_", trace),
        ("places", prime),
    )  # fmt: skip
    return next(run for key, run in shapes if key in keys)(given)


TOPICS: dict[str, Any] = {}
