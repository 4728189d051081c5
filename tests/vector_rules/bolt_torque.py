"""Shared cases of what torque does to a bolt: preload, plausibility, stretch, angle, single use."""

from collections.abc import Callable
from dataclasses import asdict
from typing import Any

from witnessmark.trade import angle, lubricant, preload, single_use, stretch, torque_form
from witnessmark.trade.plausibility import plausibility
from witnessmark.trade.thread_text import parse
from witnessmark.trade.units import Measured, magnitude, quantity

Given = dict[str, Any]


def screw_of(given: Given) -> torque_form.Screw:
    return torque_form.Screw(
        quantity(given["pitch_diameter_mm"], "mm"),
        quantity(given["lead_mm"], "mm"),
        quantity(given["mean_bearing_diameter_mm"], "mm"),
        given.get("half_angle_degrees", torque_form.FLANK_DEGREES),
    )


def rub_of(given: Given) -> torque_form.Friction:
    return torque_form.Friction(given["friction_thread"], given["friction_under_head"])


def to_torque(rule: Callable[..., Any]) -> Callable[[Given], float]:
    return lambda g: magnitude(rule(quantity(g["preload_N"], "N"), screw_of(g), rub_of(g)), "N·m")


def to_preload(rule: Callable[..., Any]) -> Callable[[Given], float]:
    return lambda g: magnitude(rule(quantity(g["torque_N_m"], "N·m"), screw_of(g), rub_of(g)), "N")


def band_of(given: Given) -> Given:
    found = preload.band(
        quantity(given["torque_N_m"], "N·m"),
        given["wrench_deviation"],
        given["nut_factor_low"],
        given["nut_factor_high"],
        quantity(given["diameter_mm"], "mm"),
    )
    return {f"{key}_N": magnitude(getattr(found, key), "N") for key in ("low", "mid", "high")}


def change_of(given: Given) -> Given:
    found = preload.change(
        quantity(given["torque_N_m"], "N·m"),
        quantity(given["diameter_mm"], "mm"),
        given["nut_factor_assumed"],
        given["nut_factor_actual"],
    )
    return {
        "assumed_N": magnitude(found.assumed, "N"),
        "actual_N": magnitude(found.actual, "N"),
        "change": found.change,
    }


def at_yield(given: Given) -> float:
    waist = given.get("waist_mm")
    found = preload.at_share_of_yield(
        parse(given["designation"]),
        given["property_class"],
        given["friction_thread"],
        given.get("share_of_yield", 0.9),
        None if waist is None else quantity(waist, "mm"),
    )
    return magnitude(found, "N")


def scatter_of(given: Given) -> Given:
    found = preload.scatter([quantity(each, "N") for each in given["preloads_N"]])
    return {
        "mean_N": magnitude(found.mean, "N"),
        "standard_deviation_N": magnitude(found.standard_deviation, "N"),
        "lowest_over_mean": found.lowest_over_mean,
        "highest_over_mean": found.highest_over_mean,
    }


def sections_of(given: Given) -> list[stretch.Section]:
    return [
        stretch.Section(quantity(each["length_mm"], "mm"), quantity(each["area_mm2"], "mm²"))
        for each in given["sections"]
    ]


def bolt_of(given: Given) -> list[Given]:
    waist = given.get("waist_mm")
    found = stretch.bolt(
        parse(given["designation"]),
        quantity(given["shank_mm"], "mm"),
        quantity(given["free_thread_mm"], "mm"),
        None if waist is None else quantity(waist, "mm"),
    )
    return [
        {"length_mm": magnitude(each.length, "mm"), "area_mm2": magnitude(each.area, "mm²")}
        for each in found
    ]


def plausible(given: Given) -> Given:
    found = asdict(
        plausibility(
            Measured(given["torque"]["value"], given["torque"]["unit"]),
            parse(given["designation"]),
            given["property_class"],
            state=given.get("state"),
            nut_factor=given.get("nut_factor"),
            value_for=given.get("value_for"),
            then_angle=given.get("then_angle", False),
        )
    )
    found["preload_N"] = found.pop("preload_newtons")
    found["proof_load_N"] = found.pop("proof_load_newtons")
    return found


def factors(given: Given) -> Given:
    found = lubricant.nut_factors(given["state"])
    return {**asdict(found), "mid": found.mid}


def caution(given: Given) -> Given | None:
    found = single_use.use_caution(given["single_use"], given["uses_before"])
    return None if found is None else asdict(found)


MPA, N, MM, DEG = "MPa", "N", "mm", "°"
RULES: dict[str, Callable[[Given], Any]] = {
    "lubricant.nut_factors": factors,
    "lubricant.state_of": lambda g: lubricant.state_of(g["words"]),
    "lubricant.find": lambda g: None if (b := lubricant.find(g["state"])) is None else b.state,
    "lubricant.surface_nut_factor": lambda g: lubricant.surface_nut_factor(g["surface"]),
    "torque_form.torque_by_nut_factor": lambda g: magnitude(
        torque_form.torque_by_nut_factor(
            quantity(g["preload_N"], N), g["nut_factor"], quantity(g["diameter_mm"], MM)
        ),
        "N·m",
    ),
    "torque_form.preload_by_nut_factor": lambda g: magnitude(
        torque_form.preload_by_nut_factor(
            quantity(g["torque_N_m"], "N·m"), g["nut_factor"], quantity(g["diameter_mm"], MM)
        ),
        N,
    ),
    "torque_form.mean_bearing_diameter": lambda g: magnitude(
        torque_form.mean_bearing_diameter(
            quantity(g["outside_mm"], MM), quantity(g["hole_mm"], MM)
        ),
        MM,
    ),
    "torque_form.torque_by_friction": to_torque(torque_form.torque_by_friction),
    "torque_form.preload_by_friction": to_preload(torque_form.preload_by_friction),
    "torque_form.torque_by_guide": to_torque(torque_form.torque_by_guide),
    "torque_form.preload_by_guide": to_preload(torque_form.preload_by_guide),
    "preload.band": band_of,
    "preload.change": change_of,
    "preload.stress": lambda g: magnitude(
        preload.stress(quantity(g["preload_N"], N), quantity(g["area_mm2"], "mm²")), MPA
    ),
    "preload.share": lambda g: preload.share(
        quantity(g["stress_MPa"], MPA), quantity(g["limit_MPa"], MPA)
    ),
    "preload.share_of_proof": lambda g: preload.share_of_proof(
        quantity(g["preload_N"], N), parse(g["designation"]), g["property_class"]
    ),
    "preload.at_share_of_yield": at_yield,
    "preload.scatter": scatter_of,
    "stretch.stretch": lambda g: magnitude(
        stretch.stretch(quantity(g["load_N"], N), quantity(g["modulus_MPa"], MPA), sections_of(g)),
        MM,
    ),
    "stretch.load": lambda g: magnitude(
        stretch.load(
            quantity(g["stretch_mm"], MM), quantity(g["modulus_MPa"], MPA), sections_of(g)
        ),
        N,
    ),
    "stretch.stiffness": lambda g: magnitude(
        stretch.stiffness(quantity(g["modulus_MPa"], MPA), sections_of(g)), "N/mm"
    ),
    "stretch.bolt": bolt_of,
    "angle.travel": lambda g: magnitude(
        angle.travel(quantity(g["pitch_mm"], MM), quantity(g["angle_degrees"], DEG)), MM
    ),
    "angle.stretch_by_angle": lambda g: magnitude(
        angle.stretch_by_angle(
            quantity(g["pitch_mm"], MM), quantity(g["angle_degrees"], DEG), g["joint_share"]
        ),
        MM,
    ),
    "angle.angle_by_stretch": lambda g: magnitude(
        angle.angle_by_stretch(
            quantity(g["stretch_mm"], MM), quantity(g["pitch_mm"], MM), g.get("joint_share", 0.0)
        ),
        DEG,
    ),
    "angle.joint_share": lambda g: angle.joint_share(
        quantity(g["bolt_N_per_mm"], "N/mm"), quantity(g["joint_N_per_mm"], "N/mm")
    ),
    "single_use.use_caution": caution,
    "plausibility.plausibility": plausible,
}
