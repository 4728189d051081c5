"""Compression ratio from measured volumes: how sure it is, what matters most, what to change."""

from __future__ import annotations

import math
from dataclasses import dataclass, fields

import pint

from witnessmark.errors import TradeError
from witnessmark.trade import alike, amounts, geometry, units
from witnessmark.trade.unit_errors import NoQuantity
from witnessmark.trade.units import Quantity

COVERAGE = 2.0


class NoClearanceVolume(TradeError):
    """A dome larger than all the room above it."""

    code = "ratio-no-clearance-volume"
    says = "Nothing is left above the piston: {volume} cm³."
    next_step = "Measure chamber, dome and deck height again."


class RatioTooSmall(TradeError):
    """A ratio of 1 compresses nothing."""

    code = "ratio-not-above-one"
    says = "A compression ratio must be above 1."
    next_step = "Type it as 9.5 for 9.5 to 1."


@dataclass(frozen=True, slots=True)
class Cylinder:
    """What is measured of one cylinder. Thickness of the gasket as compressed."""

    bore: Quantity
    stroke: Quantity
    chamber: Quantity
    gasket_thickness: Quantity
    piston_below_deck: Quantity
    """Above the deck it is negative."""
    gasket_bore: Quantity | None = None
    """As the bore where it is not known."""
    dish: Quantity | None = None
    """A dome is negative."""
    ring_land: Quantity | None = None


@dataclass(frozen=True, slots=True)
class Unsure:
    """Standard uncertainties of what was measured; what is not known counts as none."""

    bore: Quantity | None = None
    stroke: Quantity | None = None
    chamber: Quantity | None = None
    gasket_thickness: Quantity | None = None
    piston_below_deck: Quantity | None = None
    gasket_bore: Quantity | None = None
    dish: Quantity | None = None
    ring_land: Quantity | None = None


@dataclass(frozen=True, slots=True)
class Compression:
    """The ratio of one cylinder and the volumes it comes from."""

    ratio: float
    swept: Quantity
    gasket: Quantity
    deck: Quantity
    clearance_volume: Quantity
    quench: Quantity | None
    """None where the piston stands higher than the gasket is thick."""
    standard_uncertainty: float | None
    low: float | None
    high: float | None
    """Ratio ± U, k = 2; None where no uncertainty is known."""
    matters: tuple[tuple[str, float], ...]
    """Each measured thing with its share of the variance, largest first."""


@dataclass(frozen=True, slots=True)
class Change:
    """What one thing alone would have to be; None where it cannot bring the ratio wanted."""

    clearance_volume: Quantity
    chamber: Quantity | None
    gasket_thickness: Quantity | None
    piston_below_deck: Quantity | None
    dish: Quantity
    deck_cut: Quantity
    """Off the deck; below zero is to be added."""


@units.check("volume", "volume")
def ratio(swept: Quantity, clearance_volume: Quantity) -> float:
    """(swept + clearance volume) / clearance volume.

    raises: NotAboveZero, NoClearanceVolume; NoQuantity, WrongQuantity; NotANumber, TooLarge.
    source: definition
    >>> ratio(units.quantity(500, "cm³"), units.quantity(50, "cm³"))
    11.0
    """
    room = units.magnitude(clearance_volume, "cm³")
    return 1 + _swept(swept) / _room(room)


@units.check("volume", "volume", "volume", "volume")
def ratio_uncertainty(
    swept: Quantity,
    clearance_volume: Quantity,
    clearance_u: Quantity,
    swept_u: Quantity | None = None,
) -> float:
    """Standard uncertainty of the ratio from those of the two volumes, not correlated.

    raises: as ratio; BelowZero.
    source: JCGM 100:2008 (GUM), 5.1.2; dr = Vs / Vc² · dVc
    >>> volumes = [units.quantity(each, "cm³") for each in (500, 50, 0.8)]
    >>> round(ratio_uncertainty(*volumes), 9)
    0.16
    """
    room = _room(units.magnitude(clearance_volume, "cm³"))
    of_room = amounts.not_below_zero(units.magnitude(clearance_u, "cm³"), "clearance volume")
    of_swept = 0.0 if swept_u is None else units.magnitude(swept_u, "cm³")
    amounts.not_below_zero(of_swept, "swept volume")
    return math.hypot(_swept(swept) / room**2 * of_room, of_swept / room)


@units.check("volume", None)
def clearance_for(swept: Quantity, wanted: float) -> Quantity:
    """The clearance volume that gives a ratio: swept / (ratio − 1).

    raises: RatioTooSmall; NotAboveZero; NoQuantity, WrongQuantity; NotANumber, TooLarge.
    source: definition
    >>> found = clearance_for(units.quantity(500, "cm³"), 9.5)
    >>> round(units.magnitude(found, "cm³"), 7)
    58.8235294
    """
    if amounts.finite(wanted, "ratio") <= 1:
        raise RatioTooSmall()
    return units.quantity(_swept(swept) / (wanted - 1), "cm³")


def measured(cylinder: Cylinder, unsure: Unsure | None = None) -> Compression:
    """The ratio of a cylinder with its volumes, its uncertainty and what matters most in it.

    Clearance volume = chamber + gasket + deck + dish (− dome) + ring land.
    raises: NoClearanceVolume; NotAboveZero, BelowZero; NoQuantity, UnitsDiffer; NotANumber.
    source: definition; JCGM 100:2008 (GUM), 5.1.2
    >>> sizes = [units.quantity(each, "mm") for each in (86, 86, 1.2, 0.3)]
    >>> found = measured(Cylinder(sizes[0], sizes[1], units.quantity(52, "cm³"), *sizes[2:]))
    >>> round(found.ratio, 6)
    9.228147
    """
    plain = _plain(amounts.kind(cylinder, Cylinder, "cylinder"))
    doubt = Unsure() if unsure is None else amounts.kind(unsure, Unsure, "doubt")
    swept, gasket, deck = _columns(plain)
    room = _room(plain["chamber"] + gasket + deck + plain["dish"] + plain["ring_land"])
    parts = _parts(plain, doubt, (swept, gasket, deck), room)
    u = math.hypot(*parts.values()) if parts else None
    found = 1 + swept / room
    quench = plain["piston_below_deck"] + plain["gasket_thickness"]
    return Compression(
        ratio=found,
        swept=units.quantity(swept, "cm³"),
        gasket=units.quantity(gasket, "cm³"),
        deck=units.quantity(deck, "cm³"),
        clearance_volume=units.quantity(room, "cm³"),
        quench=alike.of_mm(quench) if quench > 0 else None,
        standard_uncertainty=u,
        low=None if u is None else found - COVERAGE * u,
        high=None if u is None else found + COVERAGE * u,
        matters=_ranked(parts, u),
    )


def change_for(cylinder: Cylinder, wanted: float) -> Change:
    """What chamber, gasket, deck height or dish alone gives the ratio wanted.

    raises: as measured; RatioTooSmall.
    source: definition
    >>> sizes = [units.quantity(each, "mm") for each in (86, 86, 1.2, 0.3)]
    >>> made = Cylinder(sizes[0], sizes[1], units.quantity(52, "cm³"), *sizes[2:])
    >>> round(units.magnitude(change_for(made, 9.5).deck_cut, "mm"), 4)
    0.3343
    """
    plain = _plain(amounts.kind(cylinder, Cylinder, "cylinder"))
    swept, gasket, deck = _columns(plain)
    now = _room(plain["chamber"] + gasket + deck + plain["dish"] + plain["ring_land"])
    aim = units.magnitude(clearance_for(units.quantity(swept, "cm³"), wanted), "cm³")
    less = now - aim
    cut = less / geometry.cm3_over(cylinder.bore, "bore", 1.0)
    per_mm = geometry.cm3_over(alike.of_mm(plain["gasket_bore"]), "gasket bore", 1.0)
    thick = plain["gasket_thickness"] - less / per_mm
    chamber, below = plain["chamber"] - less, plain["piston_below_deck"] - cut
    return Change(
        clearance_volume=units.quantity(aim, "cm³"),
        chamber=units.quantity(chamber, "cm³") if chamber > 0 else None,
        gasket_thickness=alike.of_mm(thick) if thick > 0 else None,
        piston_below_deck=(alike.of_mm(below) if below + plain["gasket_thickness"] > 0 else None),
        dish=units.quantity(plain["dish"] - less, "cm³"),
        deck_cut=alike.of_mm(cut),
    )


def _swept(swept: Quantity) -> float:
    return amounts.above_zero(units.magnitude(swept, "cm³"), "swept volume")


def _room(volume: float) -> float:
    if volume < amounts.LEAST:
        raise NoClearanceVolume(volume=units.rounded(volume, 2))
    return volume


_LENGTHS = ("bore", "stroke", "gasket_thickness", "piston_below_deck", "gasket_bore")
_LEAST = {
    "bore": amounts.above_zero,
    "stroke": amounts.above_zero,
    "gasket_bore": amounts.above_zero,
    "chamber": amounts.not_below_zero,
    "gasket_thickness": amounts.not_below_zero,
    "ring_land": amounts.not_below_zero,
}


_MAY_BE_LEFT_OUT = ("gasket_bore", "dish", "ring_land")


def _size(amount: Quantity | None, name: str) -> float:
    """Of a length millimetres, of a volume cubic centimetres."""
    if amount is None and name in _MAY_BE_LEFT_OUT:
        return 0.0
    if not isinstance(amount, pint.Quantity):
        raise NoQuantity(argument=name.replace("_", " "))
    if name in _LENGTHS:
        return alike.mm(amount, name)
    return units.magnitude(amount, "cm³")


def _plain(cylinder: Cylinder) -> dict[str, float]:
    plain = {each.name: _size(getattr(cylinder, each.name), each.name) for each in fields(Cylinder)}
    if cylinder.gasket_bore is None:
        plain["gasket_bore"] = plain["bore"]
    for name, least in _LEAST.items():
        least(plain[name], name.replace("_", " "))
    return plain


def _columns(plain: dict[str, float]) -> tuple[float, float, float]:
    """Swept, gasket and deck volume in cubic centimetres."""
    quarter = math.pi / 4000
    bore, gasket = plain["bore"] ** 2 * quarter, plain["gasket_bore"] ** 2 * quarter
    thick, below = plain["gasket_thickness"], plain["piston_below_deck"]
    return bore * plain["stroke"], gasket * thick, bore * below


def _parts(
    plain: dict[str, float], unsure: Unsure, columns: tuple[float, float, float], room: float
) -> dict[str, float]:
    """What each known uncertainty adds to that of the ratio."""
    swept, gasket, deck = columns
    area = {"bore": swept / plain["stroke"], "gasket": math.pi / 4000 * plain["gasket_bore"] ** 2}
    of_room = -swept / room**2
    slopes = {
        "bore": (swept / room + of_room * deck) * 2 / plain["bore"],
        "stroke": area["bore"] / room,
        "chamber": of_room,
        "gasket_thickness": of_room * area["gasket"],
        "piston_below_deck": of_room * area["bore"],
        "gasket_bore": of_room * gasket * 2 / plain["gasket_bore"],
        "dish": of_room,
        "ring_land": of_room,
    }
    known = {each.name: getattr(unsure, each.name) for each in fields(Unsure)}
    return {
        name: abs(slope) * amounts.not_below_zero(_size(known[name], name), name.replace("_", " "))
        for name, slope in slopes.items()
        if known[name] is not None
    }


def _ranked(parts: dict[str, float], u: float | None) -> tuple[tuple[str, float], ...]:
    shares = {name: (part / u) ** 2 if u else 0.0 for name, part in parts.items()}
    return tuple(sorted(shares.items(), key=lambda each: -each[1]))
