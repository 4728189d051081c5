"""Between torque and preload: the nut-factor form, and the long forms with both frictions."""

from __future__ import annotations

import math
from dataclasses import dataclass

from witnessmark.errors import TradeError
from witnessmark.trade import amounts, thread, units
from witnessmark.trade.units import Quantity, magnitude, quantity

FLANK_DEGREES = 30.0
STEEPEST_FLANK_DEGREES = 60.0
LARGEST_FRICTION = 1.0
LARGEST_NUT_FACTOR = 2.0


class FrictionImpossible(TradeError):
    """A friction or nut factor that no pair of metals has."""

    code = "friction-impossible"
    says = "The {what} must lie between 0 and {most}."
    next_step = "Type it as a plain number, such as 0.12."


class ScrewLocks(TradeError):
    """So much friction on so steep a thread that no torque would turn it."""

    code = "screw-locks"
    says = "With this friction the thread cannot be turned at all."
    next_step = "Look at the lead, the pitch diameter and the friction again."


@dataclass(frozen=True, slots=True)
class Screw:
    """What the long forms want to know of a bolt; half_angle_degrees is that of the flanks."""

    pitch_diameter: Quantity
    lead: Quantity
    mean_bearing_diameter: Quantity
    half_angle_degrees: float = FLANK_DEGREES


@dataclass(frozen=True, slots=True)
class Friction:
    """Coefficients of friction in the thread and under the head or nut."""

    thread: float
    under_head: float

    def __post_init__(self) -> None:
        friction(self.thread, "friction in the thread")
        friction(self.under_head, "friction under the head")


def friction(number: float, what: str, most: float = LARGEST_FRICTION) -> float:
    """The number as a float, if metal can have it as friction: from 0 to 1.

    raises: as amounts.finite; FrictionImpossible.
    source: common practice, no source
    >>> friction(0.12, "friction in the thread")
    0.12
    """
    plain = amounts.finite(number, what)
    if not 0 <= plain <= most:
        raise FrictionImpossible(what=what, most=f"{most:g}")
    return plain


def nut_factor(number: float, what: str = "nut factor") -> float:
    """The number as a float, if it can be a nut factor: above 0, up to 2.

    raises: as amounts.above_zero; FrictionImpossible.
    source: common practice, no source
    >>> nut_factor(0.2)
    0.2
    """
    amounts.above_zero(number, what)
    return friction(number, what, LARGEST_NUT_FACTOR)


def _force(preload: Quantity) -> float:
    return amounts.above_zero(magnitude(preload, "N"), "preload")


def _torque(torque: Quantity) -> float:
    return amounts.above_zero(magnitude(torque, "N·m"), "torque")


def _length(length: Quantity, what: str) -> float:
    return amounts.above_zero(magnitude(length, "mm"), what) / 1000


@units.check("force", None, "length")
def torque_by_nut_factor(preload: Quantity, nut_factor_: float, diameter: Quantity) -> Quantity:
    """T = K F d, the torque that gives a preload.

    raises: as amounts; FrictionImpossible.
    source: Shigley's Mechanical Engineering Design, 9th ed., equation 8–27
    >>> bolt = quantity(0.75, "in")
    >>> round(magnitude(torque_by_nut_factor(quantity(25000, "lbf"), 0.2, bolt), "lbf·in"), 6)
    3750.0
    """
    factor = nut_factor(nut_factor_)
    return quantity(factor * _force(preload) * _length(diameter, "diameter"), "N·m")


@units.check("torque", None, "length")
def preload_by_nut_factor(torque: Quantity, nut_factor_: float, diameter: Quantity) -> Quantity:
    """F = T / (K d), the preload that a torque gives.

    raises: as amounts; FrictionImpossible.
    source: as torque_by_nut_factor
    >>> preload = preload_by_nut_factor(quantity(50, "N·m"), 0.2, quantity(10, "mm"))
    >>> round(magnitude(preload, "kN"), 6)
    25.0
    """
    factor = nut_factor(nut_factor_)
    return quantity(_torque(torque) / (factor * _length(diameter, "diameter")), "N")


def screw_of(threaded: thread.Thread, mean_bearing_diameter: Quantity) -> Screw:
    """The screw of a thread: its pitch diameter, its pitch as lead, 30° flanks.

    raises: nothing by itself.
    source: ISO 68-1, ASME B1.1: basic profile with 60° between the flanks
    >>> from witnessmark.trade.thread_text import parse
    >>> magnitude(screw_of(parse("M8"), quantity(10.3, "mm")).lead, "mm")
    1.25
    """
    pitch_diameter = quantity(thread.pitch_diameter_mm(threaded), "mm")
    return Screw(pitch_diameter, threaded.pitch, mean_bearing_diameter)


@units.check("length", "length")
def mean_bearing_diameter(outside: Quantity, hole: Quantity) -> Quantity:
    """The mean diameter that the head or nut rubs on: (outside + hole) / 2.

    raises: as amounts; HoleTooLarge where the hole is not the smaller.
    source: VDI 2230:2001, mean diameter for friction under the head
    >>> round(magnitude(mean_bearing_diameter(quantity(11.63, "mm"), quantity(9, "mm")), "mm"), 3)
    10.315
    """
    large = amounts.above_zero(magnitude(outside, "mm"), "outside diameter")
    small = amounts.not_below_zero(magnitude(hole, "mm"), "hole")
    if small >= large:
        raise HoleTooLarge()
    return quantity((large + small) / 2, "mm")


class HoleTooLarge(TradeError):
    """A hole that the head would fall through."""

    code = "hole-too-large"
    says = "The hole is not smaller than the face that bears."
    next_step = "Measure the washer face and the hole again."


def _arms(screw: Screw, rub: Friction) -> tuple[float, float]:
    """The arms in metres at which the preload turns back: in the thread, and under the head."""
    amounts.kind(screw, Screw, "screw")
    amounts.kind(rub, Friction, "friction")
    half = math.radians(
        friction(screw.half_angle_degrees, "half angle of the flanks", STEEPEST_FLANK_DEGREES)
    )
    middle = _length(screw.pitch_diameter, "pitch diameter")
    rise = _length(screw.lead, "lead") / (math.pi * middle)
    slant = rub.thread / math.cos(half)
    if slant * rise >= 1:
        raise ScrewLocks()
    bearing = _length(screw.mean_bearing_diameter, "mean bearing diameter")
    return middle / 2 * (rise + slant) / (1 - slant * rise), rub.under_head * bearing / 2


@units.check("force", None, None)
def torque_by_friction(preload: Quantity, screw: Screw, rub: Friction) -> Quantity:
    """T = F (d2/2 (tan λ + µ sec a)/(1 - µ tan λ sec a) + µc dc/2), tan λ = lead/(π d2).

    a is half the angle between the flanks.

    raises: as amounts; ScrewLocks; FrictionImpossible.
    source: Shigley's Mechanical Engineering Design, 9th ed., equation 8–26
    >>> from witnessmark.trade.thread_text import parse
    >>> screw = screw_of(parse("3/4-16"), quantity(0.9375, "in"))
    >>> torque = torque_by_friction(quantity(25000, "lbf"), screw, Friction(0.15, 0.15))
    >>> round(magnitude(torque, "lbf·in"))
    3551
    """
    return quantity(_force(preload) * sum(_arms(screw, rub)), "N·m")


@units.check("torque", None, None)
def preload_by_friction(torque: Quantity, screw: Screw, rub: Friction) -> Quantity:
    """The way back of torque_by_friction.

    raises: as amounts; ScrewLocks; FrictionImpossible.
    source: as torque_by_friction
    >>> from witnessmark.trade.thread_text import parse
    >>> screw = screw_of(parse("M8x1"), quantity(10.315, "mm"))
    >>> preload = preload_by_friction(quantity(26, "N·m"), screw, Friction(0.12, 0.12))
    >>> round(magnitude(preload, "kN"), 2)
    20.13
    """
    return quantity(_torque(torque) / sum(_arms(screw, rub)), "N")


def _guide_arm(screw: Screw, rub: Friction) -> float:
    amounts.kind(screw, Screw, "screw")
    amounts.kind(rub, Friction, "friction")
    lead = _length(screw.lead, "lead")
    middle = _length(screw.pitch_diameter, "pitch diameter")
    bearing = _length(screw.mean_bearing_diameter, "mean bearing diameter")
    flanks = rub.thread * middle / math.sqrt(3)
    return lead / (2 * math.pi) + flanks + rub.under_head * bearing / 2


@units.check("force", None, None)
def torque_by_guide(preload: Quantity, screw: Screw, rub: Friction) -> Quantity:
    """T = F (0.159155 P + 0.577350 µ d2 + µk Dkm/2): the long form with the small term left out.

    For 60° between the flanks; some 0.2 % below torque_by_friction.
    raises: as amounts.
    source: VDI 2230:2001, tightening torque
    >>> from witnessmark.trade.thread_text import parse
    >>> screw = screw_of(parse("M8x1"), quantity(10.315, "mm"))
    >>> torque = torque_by_guide(quantity(20.2, "kN"), screw, Friction(0.12, 0.12))
    >>> round(magnitude(torque, "N·m"), 1)
    26.0
    """
    return quantity(_force(preload) * _guide_arm(screw, rub), "N·m")


@units.check("torque", None, None)
def preload_by_guide(torque: Quantity, screw: Screw, rub: Friction) -> Quantity:
    """The way back of torque_by_guide.

    raises: as amounts.
    source: as torque_by_guide
    >>> from witnessmark.trade.thread_text import parse
    >>> screw = screw_of(parse("M8x1"), quantity(10.315, "mm"))
    >>> preload = preload_by_guide(quantity(26, "N·m"), screw, Friction(0.12, 0.12))
    >>> round(magnitude(preload, "kN"), 2)
    20.2
    """
    return quantity(_torque(torque) / _guide_arm(screw, rub), "N")
