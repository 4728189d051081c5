"""Published values of wrenches: adapters, permitted deviation, what was applied, marks."""

from typing import Any

from witnessmark.trade import adapter, units, wrench
from witnessmark.trade.units import Measured

Given = dict[str, Any]
TORQUES = {"_N_m": "N·m", "_lbf_ft": "lbf·ft", "_lbf_in": "lbf·in", "_kgf_m": "kgf·m"}
LENGTHS = {"_mm": "mm", "_in": "in", "_cm": "cm"}
WORDS = TORQUES | LENGTHS | {"_deg": "°"}


def amounts(given: Given) -> tuple[Given, str, str]:
    """The amounts by name, with the torque's ending of a key and its unit."""
    made: Given = {}
    ending = "_N_m"
    for key, value in given.items():
        # lbf_in ends like a length in inches, so torques go first.
        suffix = next((each for each in WORDS if key.endswith(each)), None)
        if suffix is None or value is None:
            made[key.removesuffix(suffix or "")] = value
            continue
        ending = suffix if suffix in TORQUES else ending
        made[key.removesuffix(suffix)] = units.quantity(value, WORDS[suffix])
    return made, ending, TORQUES[ending]


def through_adapter(made: Given, ending: str, word: str) -> Given:
    lever = made["wrench_length"], made["adapter_length"], made["adapter_angle"]
    torque = made.get("setting", made.get("set"))
    if torque is not None:
        return {f"applied{ending}": units.magnitude(adapter.applied(torque, *lever), word)}
    return {f"setting{ending}": units.magnitude(adapter.setting(made["wanted"], *lever), word)}


def judged(made: Given, ending: str, word: str) -> Given:
    off = wrench.deviation(made["set"] if "set" in made else made["indicated"], made["reference"])
    gives: Given = {"deviation": off}
    for share in (0.04, 0.06):
        gives[f"permitted_{share:.2f}".replace(".", "_")] = wrench.within(off, share)
    return gives


def applied(made: Given, ending: str, word: str) -> Given:
    band = wrench.applied(made["set"], made["permitted_deviation"])
    ends = zip(("low", "high"), (band.low, band.high), strict=True)
    return {f"applied_{end}{ending}": units.magnitude(each, word) for end, each in ends}


def settable(made: Given, ending: str, word: str) -> Given:
    mark = wrench.settable(made["wanted"], made["graduation"])
    return {f"settable{ending}": units.magnitude(mark.settable, word), "error": mark.error}


def in_range(given: Given) -> Given:
    ends = [
        next((Measured(str(v), TORQUES[e]) for e in TORQUES if (v := given.get(k + e))), None)
        for k in ("wanted", "range_low", "range_high")
    ]
    return {"in_range": ends[0] is not None and wrench.in_range(ends[0], ends[1], ends[2])}


def permitted(given: Given) -> Given:
    ending = next(each for each in TORQUES if f"largest_torque{each}" in given)
    most = Measured(str(given[f"largest_torque{ending}"]), TORQUES[ending])
    return {"permitted_deviation": wrench.permitted(most)}


def BY_SHAPE(given: Given) -> Given:  # noqa: N802 - the frame's name for it
    if any(key.startswith("largest_torque") for key in given):
        return permitted(given)
    if any(key.startswith("range_") for key in given):
        return in_range(given)
    made, ending, word = amounts(given)
    if "wrench_length" in made:
        return through_adapter(made, ending, word)
    if "reference" in made:
        return judged(made, ending, word)
    return (applied if "permitted_deviation" in made else settable)(made, ending, word)


TOPICS: dict[str, Any] = {}
