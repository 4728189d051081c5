"""Lash, preload, installed height and coil bind, and the shims that set them."""

from __future__ import annotations

from dataclasses import dataclass

from witnessmark.errors import TradeError
from witnessmark.trade import alike, amounts, units
from witnessmark.trade.units import Quantity


class NoShimRaises(TradeError):
    """A shim makes the installed height less, never more."""

    code = "valve-height-below"
    says = "The height of {installed} mm is already below {wanted} mm: no shim can raise it."
    next_step = "Sink the seat, or take a retainer or valve that stands higher."


class NoShimThatThin(TradeError):
    """A shim of nothing or less."""

    code = "valve-shim-none"
    says = "The shim would have to be {thickness} mm thick."
    next_step = "Shorten the stem, or sink the seat less; no shim does it."


@dataclass(frozen=True, slots=True)
class Preload:
    """What turns of an adjusting nut past zero lash do."""

    stud_travel: Quantity
    """Of the nut along the stud."""
    plunger_travel: Quantity
    """Of the pushrod end while the valve stays on its seat."""


@dataclass(frozen=True, slots=True)
class Room:
    """What is left of a spring before its coils touch, at full lift."""

    room: Quantity
    binds: bool


@units.check("length", "length", "length", None)
def lash_shim(
    lash_measured: Quantity, lash_wanted: Quantity, shim_in: Quantity, ratio: float = 1.0
) -> Quantity:
    """The shim that gives the wanted lash: shim in + (measured − wanted) / ratio.

    ratio: movement at the valve for each of movement at the shim; 1 with the shim under or on a
    bucket, the rocker's where the shim sits on its other side.
    raises: NoShimThatThin; NotAboveZero, BelowZero; NoQuantity, WrongQuantity; NotANumber.
    source: workshop arithmetic (common practice, no source)
    >>> found = lash_shim(*(units.quantity(each, "mm") for each in (0.28, 0.2, 2.4)))
    >>> round(units.magnitude(found, "mm"), 6)
    2.48
    """
    now = amounts.not_below_zero(alike.mm(lash_measured, "lash measured"), "lash measured")
    then = amounts.not_below_zero(alike.mm(lash_wanted, "lash wanted"), "lash wanted")
    thick = amounts.above_zero(alike.mm(shim_in, "shim in"), "shim in")
    wanted = thick + (now - then) / amounts.above_zero(ratio, "ratio")
    if wanted <= 0:
        raise NoShimThatThin(thickness=units.rounded(wanted, 3))
    return alike.of_mm(wanted)


@units.check("length", None)
def lash_at_lifter(lash: Quantity, ratio: float) -> Quantity:
    """Lash at the cam side of a rocker, from the lash at the valve.

    raises: BelowZero, NotAboveZero; NoQuantity, WrongQuantity.
    source: geometry of the lever
    >>> round(units.magnitude(lash_at_lifter(units.quantity(0.3, "mm"), 1.5), "mm"), 6)
    0.2
    """
    play = amounts.not_below_zero(alike.mm(lash, "lash"), "lash")
    return alike.of_mm(play / amounts.above_zero(ratio, "ratio"))


@units.check("length", None)
def lash_at_valve(lash: Quantity, ratio: float) -> Quantity:
    """Lash at the valve, from the lash at the cam side of a rocker.

    raises: as lash_at_lifter.
    source: geometry of the lever
    >>> round(units.magnitude(lash_at_valve(units.quantity(0.2, "mm"), 1.5), "mm"), 6)
    0.3
    """
    play = amounts.not_below_zero(alike.mm(lash, "lash"), "lash")
    return alike.of_mm(play * amounts.above_zero(ratio, "ratio"))


@units.check(None, "length")
def preload(turns: float, pitch: Quantity, ratio: float = 1.0) -> Preload:
    """How far turns past zero lash press the plunger of a hydraulic lifter.

    pitch: of the stud's thread. ratio: valve side over pushrod side of a rocker that turns about
    the stud. The nut moves turns · pitch; the valve end stays, so the pushrod end moves
    1 + 1 / ratio of that. A screw in the pushrod end moves the plunger by turns · pitch.
    raises: BelowZero, NotAboveZero; NoQuantity, WrongQuantity; NotANumber.
    source: geometry of thread and lever (common practice, no source)
    >>> found = preload(0.5, units.quantity(1.25, "mm"), 1.5)
    >>> round(units.magnitude(found.plunger_travel, "mm"), 6)
    1.041667
    """
    step = amounts.above_zero(alike.mm(pitch, "pitch"), "pitch")
    nut = amounts.not_below_zero(turns, "turns") * step
    return Preload(
        alike.of_mm(nut), alike.of_mm(nut * (1 + 1 / amounts.above_zero(ratio, "ratio")))
    )


@units.check("length", "length")
def turns_for(travel: Quantity, pitch: Quantity) -> float:
    """Turns of a nut or screw for a travel along its thread.

    raises: BelowZero, NotAboveZero; NoQuantity, WrongQuantity.
    source: geometry of the thread
    >>> turns_for(units.quantity(0.625, "mm"), units.quantity(1.25, "mm"))
    0.5
    """
    way = amounts.not_below_zero(alike.mm(travel, "travel"), "travel")
    return way / amounts.above_zero(alike.mm(pitch, "pitch"), "pitch")


@units.check("length", "length")
def height_shim(installed_height: Quantity, height_wanted: Quantity) -> Quantity:
    """The shim under a spring that brings its installed height down to the wanted one.

    raises: NoShimRaises; NotAboveZero; NoQuantity, WrongQuantity.
    source: workshop arithmetic (common practice, no source)
    >>> heights = units.quantity(40.6, "mm"), units.quantity(39.8, "mm")
    >>> round(units.magnitude(height_shim(*heights), "mm"), 6)
    0.8
    """
    now = amounts.above_zero(alike.mm(installed_height, "installed height"), "installed height")
    then = amounts.above_zero(alike.mm(height_wanted, "height wanted"), "height wanted")
    if now < then:
        shown = {"installed": units.rounded(now, 2), "wanted": units.rounded(then, 2)}
        raise NoShimRaises(**shown)
    return alike.of_mm(now - then)


@units.check("length", "length", "length")
def coil_room(installed_height: Quantity, lift: Quantity, bind_height: Quantity) -> Room:
    """What is left of a spring at full lift before its coils touch; below zero it binds.

    lift: at the valve. bind_height: of the spring pressed solid.
    raises: NotAboveZero, BelowZero; NoQuantity, WrongQuantity.
    source: workshop arithmetic (common practice, no source)
    >>> found = coil_room(*(units.quantity(each, "mm") for each in (40, 11, 27.5)))
    >>> units.magnitude(found.room, "mm"), found.binds
    (1.5, False)
    """
    stands = amounts.above_zero(alike.mm(installed_height, "installed height"), "installed height")
    moves = amounts.not_below_zero(alike.mm(lift, "lift"), "lift")
    solid = amounts.above_zero(alike.mm(bind_height, "bind height"), "bind height")
    left = stands - moves - solid
    return Room(alike.of_mm(left), left <= 0)
