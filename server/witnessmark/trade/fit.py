"""Fits: the clearance or interference of two measured features, and how sure it is.

Standard uncertainties of the readings combine as the root of the sum of their squares; a fit whose
readings come without any has none, and cannot be held against a window.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from witnessmark.errors import TradeError
from witnessmark.trade import alike, amounts, limits, units
from witnessmark.trade.units import Quantity

COVERAGE = 2.0


class TwoWalls(TradeError):
    """A plain bearing is two shells."""

    code = "fit-two-walls"
    says = "A bearing has two shells, so two walls."
    next_step = "Measure both, or give the same wall twice."


class NoUncertainty(TradeError):
    """A window cannot be judged by a reading of unknown quality."""

    code = "fit-no-uncertainty"
    says = "How sure the readings are is not known."
    next_step = "Give the resolution of each instrument at least."


class GapClosed(TradeError):
    """Less than nothing between the ends of a ring."""

    code = "fit-gap-closed"
    says = "The ring gap would close: {gap} mm."
    next_step = "Measure the bore again, or file the ring before it goes in."


@dataclass(frozen=True, slots=True)
class Clearance:
    """The room between two features; interference where there is less than none."""

    clearance: Quantity
    """Below zero is interference."""
    interference: Quantity
    """The same with the other sign."""
    standard_uncertainty: Quantity | None
    low: Quantity | None
    high: Quantity | None
    """Clearance ± U, k = 2."""


@units.check("length", "length", "length", "length")
def clearance(
    bore: Quantity,
    shaft: Quantity,
    bore_u: Quantity | None = None,
    shaft_u: Quantity | None = None,
) -> Clearance:
    """Clearance of a shaft in a bore, with the standard uncertainty of both readings.

    bore_u, shaft_u: standard uncertainties; the result has one only where both are known.
    raises: NotAboveZero, BelowZero; NoQuantity, WrongQuantity; NotANumber, TooLarge.
    source: definition; JCGM 100:2008 (GUM), 5.1.2
    >>> sizes = [units.quantity(each, "mm") for each in (57.052, 57.006, 0.004, 0.003)]
    >>> found = clearance(*sizes)
    >>> round(units.magnitude(found.clearance, "mm"), 6)
    0.046
    >>> round(units.magnitude(found.standard_uncertainty, "mm"), 6)
    0.005
    """
    outer = amounts.above_zero(alike.mm(bore, "bore"), "bore")
    inner = amounts.above_zero(alike.mm(shaft, "shaft"), "shaft")
    return _with_band(outer - inner, [(bore_u, 1.0), (shaft_u, 1.0)])


@units.check("length", "length", "length", "length", "length", "length")
def oil_clearance(
    housing: Quantity,
    walls: Sequence[Quantity],
    journal: Quantity,
    *,
    housing_u: Quantity | None = None,
    wall_u: Quantity | None = None,
    journal_u: Quantity | None = None,
) -> Clearance:
    """Oil clearance of a plain bearing: housing less the walls of both shells less journal.

    housing: its bore without shells, caps torqued. walls: of the two shells, at the crown.
    wall_u: of each wall. Crush narrows the bore a little more; only a reading with the shells in
    and the caps torqued sees that (then it is a clearance of bore and shaft).
    raises: TwoWalls; as clearance.
    source: definition; JCGM 100:2008 (GUM), 5.1.2
    >>> walls = [units.quantity(each, "mm") for each in (1.988, 1.99)]
    >>> found = oil_clearance(units.quantity(61, "mm"), walls, units.quantity(56.97, "mm"))
    >>> round(units.magnitude(found.clearance, "mm"), 6)
    0.052
    """
    outer = amounts.above_zero(alike.mm(housing, "housing"), "housing")
    inner = amounts.above_zero(alike.mm(journal, "journal"), "journal")
    if len(alike.many(walls, "walls")) != len("ab"):
        raise TwoWalls()
    both = [amounts.above_zero(alike.mm(each, "wall"), "wall") for each in walls]
    room = outer - both[0] - both[1] - inner
    return _with_band(room, [(housing_u, 1.0), (wall_u, math.sqrt(2)), (journal_u, 1.0)])


@units.check("length", "length", "length", "length")
def side_clearance(
    groove: Quantity,
    width: Quantity,
    groove_u: Quantity | None = None,
    width_u: Quantity | None = None,
) -> Clearance:
    """Side clearance of a ring in its groove, or of rods between the cheeks.

    width: of the ring, or of all that stands side by side.
    raises: as clearance.
    source: as clearance
    >>> found = side_clearance(units.quantity(1.53, "mm"), units.quantity(1.48, "mm"))
    >>> round(units.magnitude(found.clearance, "mm"), 6)
    0.05
    """
    return clearance(groove, width, groove_u, width_u)


@units.check("length", "length", "length", "length")
def piston_to_wall(
    bore: Quantity,
    piston: Quantity,
    bore_u: Quantity | None = None,
    piston_u: Quantity | None = None,
) -> Clearance:
    """Piston to wall: bore at the gauge height less the skirt there, both at one temperature.

    For parts measured warm see expansion.clearance_at.
    raises: as clearance.
    source: as clearance
    >>> found = piston_to_wall(units.quantity(86.012, "mm"), units.quantity(85.958, "mm"))
    >>> round(units.magnitude(found.clearance, "mm"), 6)
    0.054
    """
    return clearance(bore, piston, bore_u, piston_u)


@units.check("length", "length", "length")
def end_play(back: Quantity, forward: Quantity, dial_u: Quantity | None = None) -> Clearance:
    """End play: how far the dial moves from one end to the other; dial_u: of one reading.

    raises: BelowZero for dial_u; NoQuantity, WrongQuantity; NotANumber.
    source: definition; JCGM 100:2008 (GUM), 5.1.2
    >>> dial = units.quantity(0, "mm"), units.quantity(0.14, "mm")
    >>> units.magnitude(end_play(*dial).clearance, "mm")
    0.14
    """
    moved = abs(alike.mm(forward, "forward") - alike.mm(back, "back"))
    return _with_band(moved, [(dial_u, math.sqrt(2))])


@units.check("length", "length")
def ring_gap_after(gap: Quantity, bore_change: Quantity) -> Quantity:
    """The gap of a ring in a bore that is wider by so much: it grows by π for each of diameter.

    bore_change: of the diameter; below zero for a narrower bore.
    raises: GapClosed; BelowZero; NoQuantity, WrongQuantity; NotANumber.
    source: geometry of the circle
    >>> found = ring_gap_after(units.quantity(0.35, "mm"), units.quantity(0.05, "mm"))
    >>> round(units.magnitude(found, "mm"), 9)
    0.507079633
    """
    now = amounts.not_below_zero(alike.mm(gap, "gap"), "gap")
    then = now + math.pi * alike.mm(bore_change, "bore change")
    if then < 0:
        raise GapClosed(gap=units.rounded(then, 3))
    return alike.of_mm(then)


@units.check("length", "length")
def gap_per_bore(gap: Quantity, bore: Quantity) -> float:
    """The ring gap as a share of the bore, which is how rules of thumb put it.

    raises: BelowZero, NotAboveZero; NoQuantity, WrongQuantity; NotANumber.
    source: definition
    >>> round(gap_per_bore(units.quantity(0.36, "mm"), units.quantity(86, "mm")), 9)
    0.004186047
    """
    now = amounts.not_below_zero(alike.mm(gap, "gap"), "gap")
    return now / amounts.above_zero(alike.mm(bore, "bore"), "bore")


@units.check("length", "length")
def to_file(gap: Quantity, wanted: Quantity) -> Quantity:
    """How much is to be filed off the ends of a ring; nothing where the gap is wide enough.

    raises: BelowZero; NoQuantity, WrongQuantity; NotANumber.
    source: definition
    >>> found = to_file(units.quantity(0.25, "mm"), units.quantity(0.35, "mm"))
    >>> round(units.magnitude(found, "mm"), 6)
    0.1
    """
    now = amounts.not_below_zero(alike.mm(gap, "gap"), "gap")
    return alike.of_mm(max(0.0, amounts.not_below_zero(alike.mm(wanted, "wanted"), "wanted") - now))


@units.check(None, "length", "length")
def judge(
    found: Clearance, least: Quantity | None, most: Quantity | None, rule: str = "expanded"
) -> limits.Decision:
    """Whether a fit lies in the owner's window: inside, outside, or too close to call.

    rule: of the guard band, as limits.guard_band.
    raises: NoUncertainty; as limits.judge.
    source: ISO 14253-1 (from memory); the window is the owner's, from the manual
    >>> sizes = [units.quantity(each, "mm") for each in (57.052, 57.006, 0.004, 0.003)]
    >>> window = units.quantity(0.03, "mm"), units.quantity(0.06, "mm")
    >>> judge(clearance(*sizes), *window).lies
    'inside'
    """
    amounts.kind(found, Clearance, "clearance")
    if found.standard_uncertainty is None:
        raise NoUncertainty()
    guard = limits.guard_band(found.standard_uncertainty, rule)
    return limits.judge(found.clearance, least, most, guard)


def _with_band(room: float, parts: list[tuple[Quantity | None, float]]) -> Clearance:
    known = [
        amounts.not_below_zero(alike.mm(each, "uncertainty"), "uncertainty") * times
        for each, times in parts
        if each is not None
    ]
    made, turned = alike.of_mm(room), alike.of_mm(-room)
    if len(known) < len(parts):
        return Clearance(made, turned, None, None, None)
    u = math.hypot(*known)
    ends = [alike.of_mm(room + side * COVERAGE * u) for side in (-1, 1)]
    return Clearance(made, turned, alike.of_mm(u), ends[0], ends[1])
