"""Shared cases of what is counted: geometry, sets, yields and money."""

from collections.abc import Callable
from dataclasses import asdict, is_dataclass
from typing import Any

import pint
from trade.reference_amounts import named
from witnessmark.trade import (
    assemblies,
    compression_ratio,
    degree_wheel,
    geometry,
    money,
    pairing,
    sets,
    tax,
    units,
    yields,
)

Given = dict[str, Any]
ENDINGS = (
    ("_mm", "mm"), ("_cm3", "cm³"), ("_kPa", "kPa"), ("_deg", "°"), ("_g", "g"), ("_s", "s"),
    ("_m_s", "m/s"), ("_rpm", "1/min"),
)  # fmt: skip


def number(size: Any) -> tuple[str, float]:
    for suffix, word in ENDINGS:
        if size.dimensionality == units.quantity(1.0, word).dimensionality:
            return suffix, units.magnitude(size, word)
    raise AssertionError(size)


def plain(result: Any) -> Any:
    """A result as JSON: money as text, amounts as numbers with the unit in their key."""
    if isinstance(result, money.Money):
        return result.text
    if isinstance(result, pint.Quantity):
        return number(result)[1]
    if isinstance(result, list | tuple):
        return [plain(each) for each in result]
    if not is_dataclass(result):
        return result
    made = {}
    for name in result.__dataclass_fields__:
        value = getattr(result, name)
        first = value[0] if isinstance(value, tuple) and value else value
        suffix = number(first)[0] if isinstance(first, pint.Quantity) else ""
        made[name + suffix] = plain(value)
    return made


def rule(called: Callable[..., Any]) -> Callable[[Given], Any]:
    return lambda given: plain(called(*named(given).values()))


def of_money(called: Callable[..., Any]) -> Callable[[Given], Any]:
    """Texts in the case's currency become money; a share of tax or a way of rounding stays."""
    kept = ("percent", "rounding", "brought", "needed")

    def run(given: Given) -> Any:
        currency = given["currency"]
        made = [
            value
            if key in kept
            else [money.parse(each, currency) for each in value]
            if isinstance(value, list)
            else money.parse(value, currency)
            for key, value in given.items()
            if key != "currency"
        ]
        return plain(called(*made))

    return run


def compression(given: Given) -> Given:
    made = named(given)
    unsure = {key.removesuffix("_u"): made.pop(key) for key in list(made) if key.endswith("_u")}
    cylinder = compression_ratio.Cylinder(**made)
    found = compression_ratio.measured(cylinder, compression_ratio.Unsure(**unsure))
    return {
        "ratio": found.ratio,
        "clearance_volume_cm3": units.magnitude(found.clearance_volume, "cm³"),
        "quench_mm": None if found.quench is None else units.magnitude(found.quench, "mm"),
        "standard_uncertainty": found.standard_uncertainty,
        "low": found.low,
        "high": found.high,
        "matters": [each[0] for each in found.matters],
    }


def change(given: Given) -> Given:
    made = named(given)
    wanted = made.pop("wanted")
    found = compression_ratio.change_for(compression_ratio.Cylinder(**made), wanted)
    lengths = "gasket_thickness", "piston_below_deck", "deck_cut"
    return {
        f"{each}{'_mm' if each in lengths else '_cm3'}": plain(getattr(found, each))
        for each in found.__dataclass_fields__
    }


def best(given: Given, *, spares: bool = False) -> Given:
    measures = [
        sets.Measure(
            each["name"],
            each.get("weight", 1),
            *(
                None if each.get(key) is None else units.quantity(each[key], "mm")
                for key in ("scale", "lower", "upper")
            ),
        )
        for each in given["measures"]
    ]
    pieces = [
        sets.Piece(
            each["name"],
            tuple(units.quantity(size, "mm") for size in each["sizes"]),
            each.get("wear", 0),
            each.get("donor"),
        )
        for each in given["pieces"]
    ]
    wish = {key: given[key] for key in ("pinned", "excluded") if key in given}
    found = sets.best(pieces, measures, given["choose"], **wish)
    if spares:
        return {"spreads": plain(found.spreads), "spares": [told(each) for each in found.spares]}
    return {
        "chosen": list(found.chosen),
        "cost": found.cost,
        "spreads": plain(found.spreads),
        "wear": found.wear,
        "donors": found.donors,
        "spares": [each.name for each in found.spares],
        "outside": [asdict(each) for each in found.outside],
    }


def told(spare: sets.Spare) -> Given:
    return {"name": spare.name, "cost": spare.cost, "spreads": plain(spare.spreads)}


def balanced(given: Given) -> Given:
    columns = {key: value for key, value in given.items() if key != "together"}
    found = assemblies.balance([*named(columns).values()], given.get("together", []))
    return {"spread_g": plain(found.spread), "proved": found.proved}


def learned(called: Callable[..., Any]) -> Callable[[Given], Any]:
    """The priors are named arguments."""
    return lambda given: plain(called(**given))


RULES: dict[str, Callable[[Given], Any]] = {
    "geometry.displacement": rule(geometry.displacement),
    "geometry.swept_volume": rule(geometry.swept_volume),
    "geometry.gasket_volume": rule(geometry.gasket_volume),
    "geometry.deck_volume": rule(geometry.deck_volume),
    "geometry.ring_land_volume": rule(geometry.ring_land_volume),
    "geometry.quench": rule(geometry.quench),
    "geometry.deck_cut": rule(geometry.deck_cut),
    "geometry.mean_piston_speed": rule(geometry.mean_piston_speed),
    "geometry.speed_for": rule(geometry.speed_for),
    "compression_ratio.ratio": rule(compression_ratio.ratio),
    "compression_ratio.ratio_uncertainty": rule(compression_ratio.ratio_uncertainty),
    "compression_ratio.clearance_for": rule(compression_ratio.clearance_for),
    "compression_ratio.measured": compression,
    "compression_ratio.change_for": change,
    "degree_wheel.timing": rule(degree_wheel.timing),
    "degree_wheel.readings_for": rule(degree_wheel.readings_for),
    "degree_wheel.true_top": rule(degree_wheel.true_top),
    "degree_wheel.corrected": rule(degree_wheel.corrected),
    "money.minor_digits": lambda g: money.minor_digits(g["currency"]),
    "money.parse": lambda g: money.parse(g["typed"], g["currency"]).text,
    "money.total": of_money(money.total),
    "money.shared": of_money(money.shared),
    "money.times": lambda g: money.times(money.parse(g["price"], g["currency"]), g["count"]).text,
    "tax.tax_on": of_money(tax.tax_on),
    "tax.tax_within": of_money(tax.tax_within),
    "yields.share_rejected": learned(yields.share_rejected),
    "yields.bring": learned(yields.bring),
    "yields.bring_learned": learned(yields.bring_learned),
    "yields.chance": learned(yields.chance),
    "yields.chance_learned": learned(yields.chance_learned),
    "yields.used_against_new": of_money(yields.used_against_new),
    "sets.best": best,
    "sets.spares": lambda given: best(given, spares=True),
    "assemblies.balance": balanced,
    "pairing.pair": rule(pairing.pair),
}
