"""Published values of torque, preload, stretch and angle; a case is known by its keys."""

from typing import Any

from witnessmark.trade import angle, lubricant, preload, stretch, torque_form, units
from witnessmark.trade.plausibility import plausibility
from witnessmark.trade.thread_text import parse
from witnessmark.trade.units import Measured, Quantity, magnitude, quantity

Given = dict[str, Any]
WORDS = {
    "N_m": "N·m", "lbf_ft": "lbf·ft", "lbf_in": "lbf·in", "kgf_m": "kgf·m", "N": "N", "kN": "kN",
    "lbf": "lbf", "mm": "mm", "in": "in", "mm2": "mm²", "in2": "in²", "psi": "psi", "kpsi": "ksi",
    "GPa": "GPa", "MPa": "MPa", "deg": "°", "um": "µm",
}  # fmt: skip


def typed(given: Given, name: str) -> tuple[float, str]:
    """The number and unit word of "torque_N_m" and its like."""
    for suffix, word in WORDS.items():
        if f"{name}_{suffix}" in given:
            return given[f"{name}_{suffix}"], word
    raise KeyError(name)


def has(given: Given, name: str) -> bool:
    return any(f"{name}_{suffix}" in given for suffix in WORDS)


def amount(given: Given, name: str) -> Quantity:
    return quantity(*typed(given, name))


def told(name: str, value: Quantity, *suffixes: str) -> Given:
    return {f"{name}_{suffix}": magnitude(value, WORDS[suffix]) for suffix in suffixes}


TORQUES = ("N_m", "lbf_ft", "lbf_in", "kgf_m")
FORCES = ("N", "kN", "lbf")


def nut_factor(given: Given) -> Given:
    diameter = amount(given, "diameter")
    if has(given, "preload"):
        found = torque_form.torque_by_nut_factor(
            amount(given, "preload"), given["nut_factor"], diameter
        )
        return told("torque", found, *TORQUES)
    found = torque_form.preload_by_nut_factor(
        amount(given, "torque"), given["nut_factor"], diameter
    )
    return told("preload", found, *FORCES)


def long_form(given: Given) -> Given:
    bearing = amount(given, "mean_bearing_diameter")
    rub = torque_form.Friction(given["friction_thread"], given["friction_under_head"])
    exact = "designation" not in given
    if exact:
        screw = torque_form.Screw(
            amount(given, "pitch_diameter"), amount(given, "lead"), bearing,
            given.get("half_angle_deg", torque_form.FLANK_DEGREES),
        )  # fmt: skip
    else:
        screw = torque_form.screw_of(parse(given["designation"]), bearing)
    if has(given, "torque"):
        back = torque_form.preload_by_friction if exact else torque_form.preload_by_guide
        return told("preload", back(amount(given, "torque"), screw, rub), *FORCES)
    rule = torque_form.torque_by_friction if exact else torque_form.torque_by_guide
    return told("torque", rule(amount(given, "preload"), screw, rub), *TORQUES)


def stresses(given: Given) -> Given:
    if has(given, "stress"):
        limit = amount(given, "proof_stress")
        return {"share_of_proof": preload.share(amount(given, "stress"), limit)}
    found = preload.stress(amount(given, "preload"), amount(given, "stress_area"))
    return told("stress", found, "psi", "kpsi", "MPa")


def scatter(given: Given) -> Given:
    found = preload.scatter([quantity(each, "kN") for each in given["preloads_kN"]])
    return {
        **told("mean", found.mean, *FORCES),
        **told("standard_deviation", found.standard_deviation, *FORCES),
        "lowest_over_mean": found.lowest_over_mean,
        "highest_over_mean": found.highest_over_mean,
    }


def at_yield(given: Given) -> Given:
    found = preload.at_share_of_yield(
        parse(given["designation"]),
        given["property_class"],
        given["friction_thread"],
        given["share_of_yield"],
    )
    return told("preload", found, *FORCES)


def band(given: Given) -> Given:
    found = preload.band(
        amount(given, "torque"),
        given["wrench_deviation"],
        given["nut_factor_low"],
        given["nut_factor_high"],
        amount(given, "diameter"),
    )
    return {
        **told("preload_low", found.low, *FORCES),
        **told("preload_mid", found.mid, *FORCES),
        **told("preload_high", found.high, *FORCES),
    }


def change(given: Given) -> Given:
    found = preload.change(
        amount(given, "torque"),
        amount(given, "diameter"),
        given["nut_factor_assumed"],
        given["nut_factor_actual"],
    )
    return {
        **told("preload_assumed", found.assumed, *FORCES),
        **told("preload_actual", found.actual, *FORCES),
        "change": found.change,
    }


def plausible(given: Given) -> Given:
    number, word = typed(given, "torque")
    threaded, name = parse(given["designation"]), given.get("property_class", given.get("grade"))

    def judged(unit: str) -> Any:
        typed_so = Measured(str(number), unit)
        return plausibility(typed_so, threaded, name, nut_factor=given["nut_factor"])

    gives = {"share_of_proof": judged(word).share_of_proof, "verdict": judged(word).verdict}
    for suffix in TORQUES:
        gives[f"as_{suffix}_share"] = judged(WORDS[suffix]).share_of_proof
    return gives


def stretched(given: Given) -> Given:
    sections = [
        stretch.Section(amount(each, "length"), amount(each, "area")) for each in given["sections"]
    ]
    modulus = amount(given, "modulus")
    if has(given, "load"):
        found = stretch.stretch(amount(given, "load"), modulus, sections)
        return told("stretch", found, "mm", "in", "um")
    return told("load", stretch.load(amount(given, "stretch"), modulus, sections), *FORCES)


def travelled(given: Given) -> Given:
    if "threads_per_inch" in given:
        pitch = quantity(25.4 / given["threads_per_inch"], "mm")
    else:
        pitch = amount(given, "pitch")
    return told("travel", angle.travel(pitch, amount(given, "angle")), "mm", "in")


def shown(given: Given) -> Given:
    number = units.shown(Measured(str(given["value"]), given["unit"]), given["to"])
    return {"value": float(number),
            "unit": given["to"]}  # fmt: skip


SHAPES: tuple[tuple[set[str], Any], ...] = (
    ({"sections"}, stretched),
    ({"angle_deg"}, travelled),
    ({"preloads_kN"}, scatter),
    ({"nut_factor_low"}, band),
    ({"nut_factor_assumed"}, change),
    ({"share_of_yield"}, at_yield),
    ({"friction_under_head"}, long_form),
    ({"nut_factor", "designation"}, plausible),
    ({"nut_factor"}, nut_factor),
)


def BY_SHAPE(given: Given) -> Given:  # noqa: N802 - the frame's name for it
    if "surface" in given:
        return {"nut_factor": lubricant.surface_nut_factor(given["surface"])}
    if has(given, "stress") or has(given, "stress_area"):
        return stresses(given)
    gives: Given = next(run for keys, run in SHAPES if keys <= given.keys())(given)
    return gives


TOPICS: dict[str, Any] = {"A three-pass joint": shown}
