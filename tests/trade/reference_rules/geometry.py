"""Published values of geometry: displacement, compression ratio, quench, speed, valve timing."""

from collections.abc import Callable
from typing import Any

from trade.reference_amounts import named, told
from witnessmark.trade import compression_ratio, degree_wheel, geometry, units

Given = dict[str, Any]
INPUTS = tuple(compression_ratio.Cylinder.__dataclass_fields__)


def cylinder(made: Given) -> compression_ratio.Cylinder:
    known = {name: made[name] for name in INPUTS if name in made}
    if "dish_positive_dome_negative" in made:
        known["dish"] = made["dish_positive_dome_negative"]
    if "dome" in made:
        known["dish"] = -made["dome"]
    nothing = units.quantity(0.0, "mm")
    return compression_ratio.Cylinder(**({"piston_below_deck": nothing} | known))


def ratio(made: Given) -> Given:
    unsure = {name: made[f"{name}_u"] for name in INPUTS if f"{name}_u" in made}
    found = compression_ratio.measured(cylinder(made), compression_ratio.Unsure(**unsure))
    gives = {
        "compression_ratio": found.ratio,
        "standard_uncertainty": found.standard_uncertainty,
        **told("swept", found.swept),
        **told("gasket_volume", found.gasket),
        **told("deck_volume", found.deck),
        **told("clearance_volume", found.clearance_volume),
        **told("quench", found.quench),
    }
    if "wanted_compression_ratio" not in made:
        return gives
    change = compression_ratio.change_for(cylinder(made), made["wanted_compression_ratio"])
    for name in ("clearance_volume", "chamber", "gasket_thickness", "piston_below_deck"):
        gives |= told(name, getattr(change, name)) | told(f"{name}_wanted", getattr(change, name))
    return gives | told("dish", change.dish) | told("deck_cut", change.deck_cut)


def from_volumes(made: Given) -> Given:
    swept, room = made["swept"], made["clearance_volume"]
    gives: Given = {"compression_ratio": compression_ratio.ratio(swept, room)}
    if "clearance_volume_u" in made:
        gives["standard_uncertainty"] = compression_ratio.ratio_uncertainty(
            swept, room, made["clearance_volume_u"], made.get("swept_u")
        )
    return gives


def wanted(made: Given) -> Given:
    if "chamber" in made:
        return ratio(made)
    swept = made.get("swept")
    if swept is None:
        swept = geometry.swept_volume(made["bore"], made["stroke"])
    return told(
        "clearance_volume", compression_ratio.clearance_for(swept, made["wanted_compression_ratio"])
    )


def cut(made: Given) -> Given:
    volumes = made["clearance_volume_now"], made["clearance_volume_wanted"]
    return told("deck_cut", geometry.deck_cut(made["bore"], *volumes))


def speed(made: Given) -> Given:
    return told("mean_piston_speed", geometry.mean_piston_speed(made["stroke"], made["speed"]))


def timing(made: Given) -> Given:
    names = "intake_opens_BTDC", "intake_closes_ABDC", "exhaust_opens_BBDC", "exhaust_closes_ATDC"
    found = degree_wheel.timing(*[made[name] for name in names])
    return {
        **told("intake_duration", found.intake_duration),
        **told("exhaust_duration", found.exhaust_duration),
        **told("overlap", found.overlap),
        **told("intake_centreline_ATDC", found.intake_centreline),
        **told("exhaust_centreline_BTDC", found.exhaust_centreline),
        **told("lobe_separation", found.lobe_separation),
        **told("advance", found.advance),
    }


def top(made: Given) -> Given:
    readings = made["stop_reading_BTDC"], made["stop_reading_ATDC"]
    return told("wheel_at_true_TDC_BTDC", degree_wheel.true_top(*readings))


def pieces(made: Given) -> Given:
    gives: Given = {}
    if {"bore", "stroke"} <= made.keys():
        whole = geometry.displacement(made["bore"], made["stroke"], made.get("cylinders", 1))
        gives |= told("swept", geometry.swept_volume(made["bore"], made["stroke"]))
        gives |= told("displacement", whole)
    bore = made.get("gasket_bore", made.get("bore"))
    if bore is not None and "gasket_thickness" in made:
        gives |= told("gasket_volume", geometry.gasket_volume(bore, made["gasket_thickness"]))
    if {"bore", "piston_below_deck"} <= made.keys():
        gives |= told("deck_volume", geometry.deck_volume(made["bore"], made["piston_below_deck"]))
    if {"piston_below_deck", "gasket_thickness"} <= made.keys():
        gives |= told(
            "quench", geometry.quench(made["piston_below_deck"], made["gasket_thickness"])
        )
    return gives


SHAPES: dict[str, Callable[[Given], Given]] = {
    "stop_reading_BTDC": top,
    "intake_opens_BTDC": timing,
    "speed": speed,
    "clearance_volume_now": cut,
    "wanted_compression_ratio": wanted,
    "clearance_volume": from_volumes,
    "chamber": ratio,
}


def BY_SHAPE(given: Given) -> Given:  # noqa: N802 - the frame's name for it
    made = named(given)
    return next((run for key, run in SHAPES.items() if key in made), pieces)(made)


TOPICS: dict[str, Any] = {}
