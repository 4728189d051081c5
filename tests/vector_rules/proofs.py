"""Shared cases of proofs: leak-down, compression, oil pressure, prime."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from witnessmark.trade import proof
from witnessmark.trade.units import Quantity, magnitude, quantity

Given = dict[str, Any]


def points(given: Given) -> list[proof.Point]:
    return [
        proof.Point(quantity(each["time_s"], "s"), quantity(each["pressure_kPa"], "kPa"))
        for each in given["points"]
    ]


def evenness(given: Given) -> Given:
    found = proof.evenness([quantity(each, "kPa") for each in given["readings_kPa"]])
    return {
        "lowest_over_highest": found.lowest_over_highest,
        "mean_kPa": magnitude(found.mean, "kPa"),
        "lowest_place": found.lowest_place,
        "highest_place": found.highest_place,
    }


def time_to(given: Given) -> float | None:
    found = proof.time_to(points(given), quantity(given["threshold_kPa"], "kPa"))
    return None if found is None else magnitude(found, "s")


def plateau(given: Given) -> Given:
    found = proof.plateau(points(given), quantity(given["last_s"], "s"))
    return {
        "mean_kPa": magnitude(found.mean, "kPa"),
        "least_kPa": magnitude(found.least, "kPa"),
        "most_kPa": magnitude(found.most, "kPa"),
        "readings": found.readings,
    }


def limit(given: Given) -> proof.PressureLimit:
    def end(key: str, word: str) -> Quantity | None:
        return None if given.get(key) is None else quantity(given[key], word)

    return proof.PressureLimit(
        end("least_kPa", "kPa"),
        end("most_kPa", "kPa"),
        end("speed_from", "1/min"),
        end("speed_to", "1/min"),
        end("temperature_from_C", "°C"),
        end("temperature_to_C", "°C"),
    )


RULES: dict[str, Callable[[Given], Any]] = {
    "proof.leakage": lambda g: proof.leakage(
        quantity(g["supplied_kPa"], "kPa"), quantity(g["held_kPa"], "kPa")
    ),
    "proof.leaks_no_more_than": lambda g: proof.leaks_no_more_than(g["share"], g["limit"]),
    "proof.orifice": lambda g: magnitude(proof.orifice(quantity(g["bore_mm"], "mm")), "mm"),
    "proof.evenness": evenness,
    "proof.is_even": lambda g: proof.is_even(g["lowest_over_highest"], g["limit"]),
    "proof.time_to": time_to,
    "proof.plateau": plateau,
    "proof.missing_places": lambda g: list(proof.missing_places(g["places"], g["seen"])),
    "proof.oil_pressure": lambda g: proof.oil_pressure(
        quantity(g["pressure_kPa"], "kPa"),
        quantity(g["speed"], "1/min"),
        quantity(g["temperature_C"], "°C"),
        [limit(each) for each in g["limits"]],
    ),
}
