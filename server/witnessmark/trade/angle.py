"""Torque plus angle: what a turn of the fastener after the snug torque does."""

from __future__ import annotations

from witnessmark.errors import TradeError
from witnessmark.trade import amounts, units
from witnessmark.trade.units import Quantity, magnitude, quantity

MOST_TURNS = 100


class JointTakesAll(TradeError):
    """A joint that would take the whole travel, so that nothing stretches the bolt."""

    code = "joint-takes-all"
    says = "If the joint gives way by the whole travel, the bolt does not stretch."
    next_step = "Type the share of the joint as less than 1."


def _share_of_joint(share: float) -> float:
    joint = amounts.share(share, "share of the joint")
    if joint >= 1:
        raise JointTakesAll()
    return joint


def _turns(angle: Quantity) -> float:
    turns = amounts.above_zero(magnitude(angle, "°"), "angle") / 360
    if turns > MOST_TURNS:
        raise amounts.TooLarge(what="angle")
    return turns


@units.check("length", "angle")
def travel(pitch: Quantity, angle: Quantity) -> Quantity:
    """How far the thread travels: pitch × angle/360°.

    Stretch of the bolt and compression of the joint share it, so it is the upper bound of both.
    raises: as amounts: pitch and angle above zero, no more than 100 turns.
    source: definition (geometry)
    >>> magnitude(travel(quantity(1.5, "mm"), quantity(90, "°")), "mm")
    0.375
    """
    step = amounts.above_zero(magnitude(pitch, "mm"), "pitch")
    return quantity(step * _turns(angle), "mm")


@units.check("length", "angle", None)
def stretch_by_angle(pitch: Quantity, angle: Quantity, joint_share: float) -> Quantity:
    """What of the travel stretches the bolt, when the joint takes a share of it.

    raises: as travel; NotAShare; JointTakesAll.
    source: definition (springs in series)
    >>> stretched = stretch_by_angle(quantity(1.5, "mm"), quantity(90, "°"), 0.2)
    >>> round(magnitude(stretched, "mm"), 3)
    0.3
    """
    whole = magnitude(travel(pitch, angle), "mm")
    return quantity(whole * (1 - _share_of_joint(joint_share)), "mm")


@units.check("length", "length", None)
def angle_by_stretch(stretched: Quantity, pitch: Quantity, joint_share: float = 0.0) -> Quantity:
    """The angle after snug that gives a stretch, when the joint takes a share of the travel.

    raises: as travel; NotAShare; JointTakesAll.
    source: definition (springs in series)
    >>> angle = angle_by_stretch(quantity(0.3, "mm"), quantity(1.5, "mm"), 0.2)
    >>> round(magnitude(angle, "°"), 6)
    90.0
    """
    longer = amounts.above_zero(magnitude(stretched, "mm"), "stretch")
    step = amounts.above_zero(magnitude(pitch, "mm"), "pitch")
    return quantity(360 * longer / (1 - _share_of_joint(joint_share)) / step, "°")


@units.check("spring-rate", "spring-rate")
def joint_share(bolt: Quantity, joint: Quantity) -> float:
    """The share of the travel that the joint takes: k_bolt/(k_bolt + k_joint).

    The stiffer the joint against the bolt, the smaller the share.
    raises: as amounts.
    source: definition (springs in series)
    >>> joint_share(quantity(200000, "N/mm"), quantity(800000, "N/mm"))
    0.2
    """
    own = amounts.above_zero(magnitude(bolt, "N/mm"), "stiffness of the bolt")
    other = amounts.above_zero(magnitude(joint, "N/mm"), "stiffness of the joint")
    return own / (own + other)
