"""Published values of fits: clearances, ring gap, end play, shims, choosing shells."""

from collections.abc import Callable
from typing import Any

from trade.reference_lengths import Plain, named
from witnessmark.trade import choosing, fit, valve_train

Given = dict[str, Any]
INNER = ("journal", "pin", "shaft", "stem", "piston", "ring", "lifter")
OUTER = ("bore", "groove", "guide", "housing")


def first(made: Plain, names: tuple[str, ...], place: int) -> str:
    """The feature by its name; by its place among the keys where the name is no usual one."""
    plain = [name for name in made.amounts if not name.endswith("_u")]
    return next((name for name in names if name in plain), plain[place])


def told(made: Plain, found: fit.Clearance) -> Given:
    gives: Given = {}
    for name in ("clearance", "side_clearance", "piston_to_wall"):
        gives |= made.told(name, found.clearance)
    gives |= made.told("interference", found.interference)
    if found.standard_uncertainty is not None:
        gives |= made.told("standard_uncertainty", found.standard_uncertainty)
    return gives


def cleared(made: Plain, given: Given) -> Given:
    outer, inner = first(made, OUTER, 0), first(made, INNER, 1)
    known = [made.amounts.get(f"{name}_u") for name in (outer, inner)]
    return told(made, fit.clearance(made.amounts[outer], made.amounts[inner], *known))


def with_shells(made: Plain, given: Given) -> Given:
    walls, known = made.amounts["wall"], made.amounts
    both = walls if isinstance(walls, list) else [walls, walls]
    return told(
        made,
        fit.oil_clearance(
            known["housing"],
            both,
            known["journal"],
            housing_u=known.get("housing_u"),
            wall_u=known.get("wall_u"),
            journal_u=known.get("journal_u"),
        ),
    )


def gap(made: Plain, given: Given) -> Given:
    if "bore" in made.amounts:
        return {"gap_per_bore": fit.gap_per_bore(made.amounts["gap"], made.amounts["bore"])}
    return made.told("gap", fit.ring_gap_after(made.amounts["gap"], made.amounts["bore_change"]))


def play(made: Plain, given: Given) -> Given:
    ends = (made.amounts[f"indicator_{way}"] for way in ("back", "forward"))
    return made.told("end_play", fit.end_play(*ends).clearance)


def lash(made: Plain, given: Given) -> Given:
    names = "lash_measured", "lash_wanted", "shim_in"
    lengths = (made.amounts[name] for name in names)
    ratio = given.get("ratio", given.get("rocker_ratio", 1.0))
    return made.told("shim_wanted", valve_train.lash_shim(*lengths, ratio))


def through_rocker(made: Plain, given: Given) -> Given:
    ratio = given.get("ratio", given.get("rocker_ratio", 1.0))
    if "lash_at_valve" in made.amounts:
        found = valve_train.lash_at_lifter(made.amounts["lash_at_valve"], ratio)
        return made.told("lash_at_lifter", found)
    found = valve_train.lash_at_valve(made.amounts["lash_at_lifter"], ratio)
    return made.told("lash_at_valve", found)


def height(made: Plain, given: Given) -> Given:
    if "height_wanted" not in made.amounts:
        names = "installed_height", "lift", "bind_height"
        return made.told("room", valve_train.coil_room(*(made.amounts[n] for n in names)).room)
    heights = made.amounts["installed_height"], made.amounts["height_wanted"]
    return made.told("shim", valve_train.height_shim(*heights))


def turned(made: Plain, given: Given) -> Given:
    turns, ratio = given["turns_after_zero_lash"], given.get("rocker_ratio", 1.0)
    found = valve_train.preload(turns, made.amounts["pitch"], ratio)
    names = "stud_travel", "plunger_travel"
    return made.told(names[0], found.stud_travel) | made.told(names[1], found.plunger_travel)


def chosen(made: Plain, given: Given) -> Given:
    gaps = next(value for key, value in made.amounts.items() if key.startswith("gap"))
    stock = next(k for k, v in made.amounts.items() if isinstance(v, list) and k[:3] != "gap")
    target = next(value for key, value in made.amounts.items() if key.startswith("target"))
    found = choosing.choose(
        gaps,
        made.amounts[stock],
        target,
        counts=given.get("counts"),
        pieces=2 if "pair" in stock or "2 ×" in given.get("minimise", "") else 1,
        least=made.amounts.get("least_clearance"),
        most=made.amounts.get("most_clearance"),
    )
    return made.told("sum_of_deviations", found.sum_of_deviations) | {
        "places_missing": list(found.missing)
    }


SHAPES: dict[str, Callable[[Plain, Given], Given]] = {
    "indicator_back": play,
    "lash_measured": lash,
    "lash_at_valve": through_rocker,
    "lash_at_lifter": through_rocker,
    "installed_height": height,
    "pitch": turned,
    "gap": gap,
    "wall": with_shells,
}


def BY_SHAPE(given: Given) -> Given:  # noqa: N802 - the frame's name for it
    made = named(given)
    if any(key.startswith("target") for key in made.amounts):
        return chosen(made, given)
    run = next((run for key, run in SHAPES.items() if key in made.amounts), cleared)
    return run(made, given)


TOPICS: dict[str, Any] = {}
