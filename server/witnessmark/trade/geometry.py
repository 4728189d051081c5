"""Volumes and heights of a cylinder: displacement, gasket, deck, quench, piston speed."""

from __future__ import annotations

import math

from witnessmark.errors import TradeError
from witnessmark.trade import alike, amounts, units
from witnessmark.trade.units import Quantity

_QUARTER = math.pi / 4


class PistonStrikes(TradeError):
    """A piston that stands higher than the gasket is thick."""

    code = "geometry-piston-strikes"
    says = "The piston would strike the head: quench {quench} mm."
    next_step = "Measure deck height and gasket again, or take a thicker gasket."


class LandAboveBore(TradeError):
    """A ring land wider than its bore."""

    code = "geometry-land-above-bore"
    says = "The land, {land} mm, is wider than the bore, {bore} mm."
    next_step = "Measure the land above the top ring again."


@units.check("length", "length")
def swept_volume(bore: Quantity, stroke: Quantity) -> Quantity:
    """What one piston sweeps: π/4 · bore² · stroke.

    raises: NotAboveZero; NoQuantity, WrongQuantity; NotANumber, TooLarge.
    source: definition
    >>> found = swept_volume(units.quantity(86, "mm"), units.quantity(86, "mm"))
    >>> round(units.magnitude(found, "cm³"), 6)
    499.557214
    """
    height = amounts.above_zero(alike.mm(stroke, "stroke"), "stroke")
    return units.quantity(cm3_over(bore, "bore", height), "cm³")


@units.check("length", "length", None)
def displacement(bore: Quantity, stroke: Quantity, cylinders: int) -> Quantity:
    """What all pistons sweep together.

    raises: as swept_volume; NotACount.
    source: definition
    >>> found = displacement(units.quantity(83.7, "mm"), units.quantity(90.7, "mm"), 4)
    >>> round(units.magnitude(found, "cm³"), 4)
    1996.2185
    """
    one = units.magnitude(swept_volume(bore, stroke), "cm³")
    return units.quantity(one * amounts.count(cylinders, "cylinders", 1), "cm³")


@units.check("length", "length")
def gasket_volume(gasket_bore: Quantity, gasket_thickness: Quantity) -> Quantity:
    """The round opening of a head gasket; thickness as compressed.

    raises: NotAboveZero, BelowZero; NoQuantity, WrongQuantity; NotANumber, TooLarge.
    source: definition
    >>> sizes = [units.quantity(each, "mm") for each in (88, 1.2)]
    >>> round(units.magnitude(gasket_volume(*sizes), "cm³"), 6)
    7.298548
    """
    thick = amounts.not_below_zero(
        alike.mm(gasket_thickness, "gasket thickness"), "gasket thickness"
    )
    return units.quantity(cm3_over(gasket_bore, "gasket bore", thick), "cm³")


@units.check("length", "length")
def deck_volume(bore: Quantity, piston_below_deck: Quantity) -> Quantity:
    """The room over a piston at its top; below zero where the piston stands above the deck.

    piston_below_deck: positive below the deck, negative above it.
    raises: NotAboveZero; NoQuantity, WrongQuantity; NotANumber, TooLarge.
    source: definition
    >>> found = deck_volume(units.quantity(92, "mm"), units.quantity(-0.15, "mm"))
    >>> round(units.magnitude(found, "cm³"), 6)
    -0.997142
    """
    below = alike.mm(piston_below_deck, "piston below deck")
    return units.quantity(cm3_over(bore, "bore", below), "cm³")


@units.check("length", "length", "length")
def ring_land_volume(bore: Quantity, land: Quantity, height: Quantity) -> Quantity:
    """The crevice around a piston down to its top ring: π/4 · (bore² − land²) · height.

    land: its diameter; height: from crown to top ring.
    raises: LandAboveBore; NotAboveZero, BelowZero; NoQuantity, WrongQuantity; NotANumber.
    source: definition
    >>> sizes = [units.quantity(each, "mm") for each in (86, 85.4, 6)]
    >>> round(units.magnitude(ring_land_volume(*sizes), "cm³"), 6)
    0.484622
    """
    outer = amounts.above_zero(alike.mm(bore, "bore"), "bore")
    inner = amounts.above_zero(alike.mm(land, "land"), "land")
    tall = amounts.not_below_zero(alike.mm(height, "height"), "height")
    if inner > outer:
        raise LandAboveBore(land=units.rounded(inner, 3), bore=units.rounded(outer, 3))
    return units.quantity(_QUARTER * (outer - inner) * (outer + inner) * tall / 1000, "cm³")


@units.check("length", "length")
def quench(piston_below_deck: Quantity, gasket_thickness: Quantity) -> Quantity:
    """How near the flat of the piston comes to the head: below deck + compressed gasket.

    raises: PistonStrikes at nothing or less; BelowZero for the gasket; NoQuantity, WrongQuantity.
    source: common practice, no source
    >>> found = quench(units.quantity(-0.2, "mm"), units.quantity(1.2, "mm"))
    >>> round(units.magnitude(found, "mm"), 9)
    1.0
    """
    thick = amounts.not_below_zero(
        alike.mm(gasket_thickness, "gasket thickness"), "gasket thickness"
    )
    found = alike.mm(piston_below_deck, "piston below deck") + thick
    if found <= 0:
        raise PistonStrikes(quench=units.rounded(found, 3))
    return alike.of_mm(found)


@units.check("length", "volume", "volume")
def deck_cut(bore: Quantity, volume_now: Quantity, volume_wanted: Quantity) -> Quantity:
    """How much comes off a deck to bring the clearance volume down; below zero is to be added.

    raises: NotAboveZero; NoQuantity, WrongQuantity; NotANumber, TooLarge.
    source: definition
    >>> volumes = units.quantity(55, "cm³"), units.quantity(52.5, "cm³")
    >>> round(units.magnitude(deck_cut(units.quantity(86, "mm"), *volumes), "mm"), 8)
    0.43038113
    """
    now, wanted = (
        amounts.above_zero(units.magnitude(each, "cm³"), "clearance volume")
        for each in (volume_now, volume_wanted)
    )
    return alike.of_mm((now - wanted) / cm3_over(bore, "bore", 1.0))


@units.check("length", "speed")
def mean_piston_speed(stroke: Quantity, speed: Quantity) -> Quantity:
    """Mean speed of a piston: 2 · stroke · speed of turning.

    raises: NotAboveZero, BelowZero for the speed; NoQuantity, WrongQuantity; NotANumber.
    source: definition
    >>> found = mean_piston_speed(units.quantity(90, "mm"), units.quantity(6000, "1/min"))
    >>> round(units.magnitude(found, "m/s"), 9)
    18.0
    """
    travel = amounts.above_zero(alike.mm(stroke, "stroke"), "stroke")
    turns = amounts.not_below_zero(units.magnitude(speed, "1/min"), "speed")
    return units.quantity(2 * travel * turns / 60000, "m/s")


@units.check("travel-speed", "length")
def speed_for(mean_speed: Quantity, stroke: Quantity) -> Quantity:
    """The speed of turning at which a piston has that mean speed.

    raises: as mean_piston_speed.
    source: definition
    >>> found = speed_for(units.quantity(18, "m/s"), units.quantity(90, "mm"))
    >>> round(units.magnitude(found, "1/min"), 6)
    6000.0
    """
    travel = amounts.above_zero(alike.mm(stroke, "stroke"), "stroke")
    mean = amounts.not_below_zero(units.magnitude(mean_speed, "m/s"), "mean speed")
    return units.quantity(mean * 60000 / (2 * travel), "1/min")


def cm3_over(diameter: Quantity, what: str, height_mm: float) -> float:
    """Cubic centimetres of a round column of that diameter and so many millimetres high.

    raises: NotAboveZero; NoQuantity; NotANumber, TooLarge.
    source: definition
    >>> round(cm3_over(units.quantity(86, "mm"), "bore", 86), 6)
    499.557214
    """
    wide = amounts.above_zero(alike.mm(diameter, what), what)
    return _QUARTER * wide * wide * amounts.finite(height_mm, "height") / 1000
