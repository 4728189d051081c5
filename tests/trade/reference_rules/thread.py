"""Published values of threads and property classes."""

from typing import Any

from witnessmark.trade import strength, thread
from witnessmark.trade.thread_text import parse
from witnessmark.trade.units import magnitude, quantity

Given = dict[str, Any]


def of_thread(given: Given) -> Given:
    read = parse(given["designation"])
    sizes = thread.sizes(read)
    gives: Given = {
        "designation": read.designation,
        "diameter_mm": read.diameter_mm,
        "pitch_mm": read.pitch_mm,
        "threads_per_inch": read.threads_per_inch,
    }
    for name, key in (
        ("pitch_diameter", "pitch_diameter"),
        ("minor_diameter", "minor_diameter_d1"),
        ("minor_diameter", "minor_diameter"),
        ("root_diameter", "minor_diameter_d3"),
        ("root_diameter", "root_diameter"),
    ):
        gives |= {f"{key}_{unit}": magnitude(getattr(sizes, name), unit) for unit in ("mm", "in")}
    gives["stress_area_mm2"] = magnitude(sizes.stress_area, "mm²")
    gives["stress_area_in2"] = magnitude(sizes.stress_area, "in²")
    return gives


def of_loads(given: Given, name: str) -> Given:
    loads = strength.loads(parse(given["designation"]), name)
    return {
        f"{key}_{unit}": magnitude(getattr(loads, key), unit)
        for key in ("proof_load", "yield_load", "ultimate_load")
        for unit in ("N", "kN", "lbf")
    }


def of_class(given: Given, name: str) -> Given:
    unit = "mm" if "diameter_mm" in given else "in"
    found = strength.stresses(name, quantity(given[f"diameter_{unit}"], unit))
    return {
        f"{key}_{word}": magnitude(value, word)
        for key, value in (
            ("proof_stress", found.proof), ("yield", found.yields), ("tensile", found.tensile)
        )
        for word in ("MPa", "psi", "ksi")
    }  # fmt: skip


def BY_SHAPE(given: Given) -> Given:  # noqa: N802 - the frame's name for it
    name = given.get("property_class", given.get("grade"))
    if name is None:
        return of_thread(given)
    return of_loads(given, name) if "designation" in given else of_class(given, name)


TOPICS: dict[str, Any] = {}
