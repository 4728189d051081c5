"""Valve timing from a degree wheel: durations, overlap, centrelines, and back.

Angles are at the crankshaft. Each is counted towards the side its name tells; below zero lies on
the other side of that dead centre. The lift at which they were read belongs beside the figures.
"""

from __future__ import annotations

from dataclasses import dataclass

from witnessmark.errors import TradeError
from witnessmark.trade import amounts, units
from witnessmark.trade.units import Quantity

_HALF = 180.0


class AngleTooLarge(TradeError):
    """Farther from its dead centre than the next one."""

    code = "wheel-angle-too-large"
    says = "The {what}, {angle}°, lies beyond the next dead centre."
    next_step = "Count from the dead centre that is nearest."


class ValveNeverOpen(TradeError):
    """Closed before it opens."""

    code = "wheel-never-open"
    says = "The {valve} would close before it opens."
    next_step = "Look which side of the dead centre each reading lies on."


@dataclass(frozen=True, slots=True)
class Timing:
    """What the four readings say."""

    intake_duration: Quantity
    exhaust_duration: Quantity
    overlap: Quantity
    """Below zero: both are shut between exhaust and intake."""
    intake_centreline: Quantity
    """After top dead centre."""
    exhaust_centreline: Quantity
    """Before top dead centre."""
    lobe_separation: Quantity
    advance: Quantity
    """Lobe separation less intake centreline; below zero is retarded."""


@dataclass(frozen=True, slots=True)
class Readings:
    """Where the valves open and close."""

    intake_opens_btdc: Quantity
    intake_closes_abdc: Quantity
    exhaust_opens_bbdc: Quantity
    exhaust_closes_atdc: Quantity


@units.check("angle", "angle", "angle", "angle")
def timing(
    intake_opens_btdc: Quantity,
    intake_closes_abdc: Quantity,
    exhaust_opens_bbdc: Quantity,
    exhaust_closes_atdc: Quantity,
) -> Timing:
    """Durations, overlap, centrelines, lobe separation and advance from the four readings.

    raises: AngleTooLarge, ValveNeverOpen; NoQuantity, WrongQuantity; NotANumber.
    source: common practice, no source (definitions)
    >>> found = timing(*[units.quantity(each, "°") for each in (32, 72, 77, 27)])
    >>> [units.magnitude(each, "°") for each in (found.overlap, found.lobe_separation)]
    [59.0, 112.5]
    """
    opens = _angle(intake_opens_btdc, "intake opening")
    closes = _angle(intake_closes_abdc, "intake closing")
    exhaust_opens = _angle(exhaust_opens_bbdc, "exhaust opening")
    exhaust_closes = _angle(exhaust_closes_atdc, "exhaust closing")
    intake = _open(opens + _HALF + closes, "intake")
    exhaust = _open(exhaust_opens + _HALF + exhaust_closes, "exhaust")
    middles = intake / 2 - opens, exhaust / 2 - exhaust_closes
    separation = (middles[0] + middles[1]) / 2
    return Timing(
        _deg(intake),
        _deg(exhaust),
        _deg(opens + exhaust_closes),
        _deg(middles[0]),
        _deg(middles[1]),
        _deg(separation),
        _deg(separation - middles[0]),
    )


@units.check("angle", "angle", "angle", "angle")
def readings_for(
    intake_duration: Quantity,
    exhaust_duration: Quantity,
    lobe_separation: Quantity,
    advance: Quantity,
) -> Readings:
    """Where the wheel should read for a camshaft of those figures; timing the other way round.

    raises: AngleTooLarge, ValveNeverOpen; NoQuantity, WrongQuantity; NotANumber.
    source: common practice, no source (definitions)
    >>> found = readings_for(*[units.quantity(each, "°") for each in (284, 284, 112.5, 2.5)])
    >>> units.magnitude(found.intake_opens_btdc, "°")
    32.0
    """
    intake = _open(units.magnitude(intake_duration, "°"), "intake")
    exhaust = _open(units.magnitude(exhaust_duration, "°"), "exhaust")
    separation, early = (units.magnitude(each, "°") for each in (lobe_separation, advance))
    opens = intake / 2 - (separation - early)
    closes = exhaust / 2 - (separation + early)
    found = {
        "intake opening": opens,
        "intake closing": intake - _HALF - opens,
        "exhaust opening": exhaust - _HALF - closes,
        "exhaust closing": closes,
    }
    return Readings(*[_deg(_within(each, what)) for what, each in found.items()])


@units.check("angle", "angle")
def true_top(stop_btdc: Quantity, stop_atdc: Quantity) -> Quantity:
    """What the wheel shows, before top dead centre, where the piston truly is at its top.

    stop_btdc, stop_atdc: readings at a positive stop, turned forwards and backwards.
    raises: AngleTooLarge; NoQuantity, WrongQuantity; NotANumber.
    source: common practice, no source: true top lies midway between both
    >>> units.magnitude(true_top(units.quantity(38, "°"), units.quantity(34, "°")), "°")
    2.0
    """
    before, after = _angle(stop_btdc, "stop before top"), _angle(stop_atdc, "stop after top")
    return _deg((before - after) / 2)


@units.check("angle", "angle", None)
def corrected(reading: Quantity, wheel_at_top: Quantity, side: str) -> Quantity:
    """A reading set right for a wheel that shows so much before top at true top.

    side: "before" or "after" the dead centre the reading is counted from.
    raises: SideUnknown; AngleTooLarge; NoQuantity, WrongQuantity; NotANumber.
    source: common practice, no source
    >>> found = corrected(units.quantity(30, "°"), units.quantity(2, "°"), "before")
    >>> units.magnitude(found, "°")
    28.0
    """
    if not isinstance(side, str) or side not in _SIDES:
        raise SideUnknown(side=side)
    shift = _SIDES[side] * _angle(wheel_at_top, "wheel at top")
    return _deg(_angle(reading, "reading") - shift)


class SideUnknown(TradeError):
    """Neither before nor after."""

    code = "wheel-side"
    says = "{side} is no side of a dead centre."
    next_step = "Choose before or after."


_SIDES = {"before": 1, "after": -1}


def _deg(angle: float) -> Quantity:
    return units.quantity(angle, "°")


def _within(angle: float, what: str) -> float:
    if abs(amounts.finite(angle, what)) >= _HALF:
        raise AngleTooLarge(what=what, angle=units.rounded(angle, 1))
    return angle


def _angle(amount: Quantity, what: str) -> float:
    return _within(units.magnitude(amount, "°"), what)


def _open(duration: float, valve: str) -> float:
    if duration <= 0:
        raise ValveNeverOpen(valve=valve)
    return duration
