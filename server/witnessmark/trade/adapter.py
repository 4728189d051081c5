"""A torque wrench through an adapter: what to set, and what then arrives at the bolt.

The torque a wrench shows is force times its length to the hand; at the bolt the same force has the
lever wrench_length + adapter_length · cos(angle). A straight extension stands along the bolt and
lengthens no lever; a crowfoot at a right angle to the handle neither.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Literal

from witnessmark.errors import TradeError
from witnessmark.trade import alike, amounts, units, wrench
from witnessmark.trade.units import Quantity

_COSINES: dict[float, float] = {
    0: 1.0,
    60: 0.5,
    90: 0.0,
    120: -0.5,
    180: -1.0,
    240: -0.5,
    270: 0.0,
    300: 0.5,
}
"""Angles whose cosine is a plain number, which floats would miss by a hair."""
_HAIR = 1e-9


class LeverGone(TradeError):
    """The adapter points back as far as the hand, or farther."""

    code = "adapter-no-lever"
    says = "Turned back like this the adapter leaves no lever: {lever} mm."
    next_step = "Turn the adapter outwards, or hold the wrench farther out."


class AngleUnclear(TradeError):
    """More than one turn."""

    code = "adapter-angle"
    says = "{angle}° is no angle between adapter and handle."
    next_step = "0 points straight out, 90 across, 180 back over the handle."


class GripUnclear(TradeError):
    """A hand that may be anywhere on the wrench."""

    code = "adapter-grip"
    says = "The hand cannot stray by the whole length of the wrench."
    next_step = "Say how far from the mark of the grip it may be."


@dataclass(frozen=True, slots=True)
class Plan:
    """What to set, whether the wrench takes it, and what then arrives at the bolt."""

    setting: Quantity
    mark: Quantity
    """The mark nearest to the setting; the setting itself where no graduation is known."""
    fits: Literal["takes", "starts-at", "ends-at"]
    applied: Quantity
    low: Quantity
    high: Quantity
    error: float
    """How far `applied` is off what was wanted, as a share of it."""


@units.check("length", "length", "angle")
def effective_length(
    wrench_length: Quantity, adapter_length: Quantity, angle: Quantity
) -> Quantity:
    """The lever the hand has on the bolt.

    wrench_length: from the middle of the square drive to the middle of the grip.
    adapter_length: from the middle of the square drive to the middle of the bolt.
    angle: between them; 0 points straight out, 90° across, 180° back over the handle.
    raises: LeverGone, AngleUnclear; NotAboveZero, BelowZero; NoQuantity, WrongQuantity.
    source: US Army TM 9-254, torque wrench, adapter length compensation, fig. 46
    >>> lengths = units.quantity(400, "mm"), units.quantity(50, "mm")
    >>> units.magnitude(effective_length(*lengths, units.quantity(60, "°")), "mm")
    425.0
    """
    return alike.of_mm(_lever(wrench_length, adapter_length, angle)[1])


@units.check("torque", "length", "length", "angle")
def setting(
    wanted: Quantity, wrench_length: Quantity, adapter_length: Quantity, angle: Quantity
) -> Quantity:
    """What to set for a wanted torque at the bolt, in its unit; lengths as in effective_length.

    raises: as effective_length; NotAboveZero.
    source: as effective_length; set = T L / (L + E cos(angle))
    >>> inches = units.quantity(12, "in"), units.quantity(4, "in")
    >>> at = setting(units.quantity(40, "lbf·ft"), *inches, units.quantity(0, "°"))
    >>> units.rounded(units.magnitude(at, "lbf·ft"), 3)
    '30.000'
    """
    length, lever = _lever(wrench_length, adapter_length, angle)
    return alike.like(_torque(wanted, "wanted") * length / lever, wanted)


@units.check("torque", "length", "length", "angle")
def applied(
    set_to: Quantity, wrench_length: Quantity, adapter_length: Quantity, angle: Quantity
) -> Quantity:
    """What arrives at the bolt at a setting, in its unit; lengths as in effective_length.

    raises: as effective_length; NotAboveZero.
    source: as setting, solved for T
    >>> inches = units.quantity(12, "in"), units.quantity(2, "in")
    >>> at = applied(units.quantity(60, "lbf·in"), *inches, units.quantity(0, "°"))
    >>> units.rounded(units.magnitude(at, "lbf·in"), 3)
    '70.000'
    """
    length, lever = _lever(wrench_length, adapter_length, angle)
    return alike.like(_torque(set_to, "setting") * lever / length, set_to)


@units.check("torque", "length")
def through_extension(torque: Quantity, extension_length: Quantity) -> Quantity:
    """The setting through a straight extension bar: it stays as it is.

    A long thin bar twists, which the wrench does not see either; pull slowly.
    raises: NotAboveZero, BelowZero; NoQuantity, WrongQuantity.
    source: public instruction sheets of adapters; the lever does not change
    >>> bar = units.quantity(150, "mm")
    >>> units.magnitude(through_extension(units.quantity(60, "N·m"), bar), "N·m")
    60.0
    """
    amounts.not_below_zero(alike.mm(extension_length, "extension length"), "extension length")
    return alike.like(_torque(torque, "torque"), torque)


@units.check("torque", None, "length", "length", "angle", "length")
def band(
    set_to: Quantity,
    share: float,
    wrench_length: Quantity,
    adapter_length: Quantity,
    angle: Quantity,
    *,
    grip: Quantity | None = None,
) -> wrench.Band:
    """Least and most that may arrive at the bolt, at the ends of everything that is not sure.

    share: the wrench's permitted deviation. grip: how far, to either side, the hand may be from
    where wrench_length was measured; the lever at the wrench changes more than that at the bolt.
    raises: as applied and wrench.applied; GripUnclear.
    source: ISO 6789-1:2017, calculation of deviation (from memory); lever as in effective_length
    >>> lengths = units.quantity(400, "mm"), units.quantity(50, "mm"), units.quantity(0, "°")
    >>> found = band(units.quantity(60, "N·m"), 0.04, *lengths)
    >>> units.rounded(units.magnitude(found.low, "N·m"), 2)
    '64.90'
    """
    length, lever = _lever(wrench_length, adapter_length, angle)
    stray = 0.0 if grip is None else amounts.not_below_zero(alike.mm(grip, "grip"), "grip")
    if stray >= length:
        raise GripUnclear()
    reach = lever - length
    factors = [1 + reach / (length + side * stray) for side in (-1, 1)]
    if min(factors) <= _HAIR:
        raise LeverGone(lever=f"{lever - stray:.1f}")
    at_wrench = wrench.applied(set_to, share)
    low, high = (alike.size(each, set_to, "setting") for each in (at_wrench.low, at_wrench.high))
    return wrench.Band(
        alike.like(low * min(factors), set_to), alike.like(high * max(factors), set_to)
    )


@units.check("torque", "length", "length", "angle", "torque", None, "torque", "torque", "length")
def plan(
    wanted: Quantity,
    wrench_length: Quantity,
    adapter_length: Quantity,
    angle: Quantity,
    *,
    graduation: Quantity | None = None,
    share: float = 0.0,
    least: Quantity | None = None,
    most: Quantity | None = None,
    grip: Quantity | None = None,
) -> Plan:
    """All of it for one wanted torque: setting, mark, range, and what arrives at the bolt.

    graduation, least, most: of the wrench's scale; they hold for the setting, not for the bolt.
    share: the wrench's permitted deviation. grip: as in band.
    raises: as setting, band and wrench.settable.
    source: as setting and band
    >>> lengths = units.quantity(400, "mm"), units.quantity(50, "mm"), units.quantity(0, "°")
    >>> found = plan(units.quantity(60, "N·m"), *lengths, graduation=units.quantity(0.5, "N·m"))
    >>> units.magnitude(found.mark, "N·m"), found.fits, round(found.error, 5)
    (53.5, 'takes', 0.00313)
    """
    exact = setting(wanted, wrench_length, adapter_length, angle)
    mark = exact
    if graduation is not None:
        mark = wrench.settable(exact, graduation, least, most).settable
    at_bolt = applied(mark, wrench_length, adapter_length, angle)
    ends = band(mark, share, wrench_length, adapter_length, angle, grip=grip)
    aim = _torque(wanted, "wanted")
    error = (alike.size(at_bolt, wanted, "wanted") - aim) / aim
    return Plan(exact, mark, _fits(exact, least, most), at_bolt, ends.low, ends.high, error)


def _fits(
    exact: Quantity, least: Quantity | None, most: Quantity | None
) -> Literal["takes", "starts-at", "ends-at"]:
    amount = alike.size(exact, exact, "setting")
    if least is not None and amount < alike.size(least, exact, "least") * (1 - _HAIR):
        return "starts-at"
    if most is not None and amount > alike.size(most, exact, "most") * (1 + _HAIR):
        return "ends-at"
    return "takes"


def _torque(torque: Quantity, what: str) -> float:
    return amounts.above_zero(alike.size(torque, torque, what), what)


def _lever(
    wrench_length: Quantity, adapter_length: Quantity, angle: Quantity
) -> tuple[float, float]:
    length = amounts.above_zero(alike.mm(wrench_length, "wrench length"), "wrench length")
    reach = amounts.not_below_zero(alike.mm(adapter_length, "adapter length"), "adapter length")
    lever = length + reach * _cosine(units.magnitude(angle, "°"))
    if lever <= length * _HAIR:
        raise LeverGone(lever=units.rounded(lever, 1))
    return length, lever


def _cosine(degrees: float) -> float:
    if abs(degrees) > 360:  # noqa: PLR2004 - a full turn
        raise AngleUnclear(angle=f"{degrees:g}")
    turned = degrees % 360
    return _COSINES.get(turned, math.cos(math.radians(turned)))
