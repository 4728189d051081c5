"""Preload of a bolt: its band from one torque, its share of proof, its limit in tightening."""

from __future__ import annotations

import math
import statistics
from collections.abc import Sequence
from dataclasses import dataclass

from witnessmark.errors import TradeError
from witnessmark.trade import alike, amounts, strength, thread, units
from witnessmark.trade.thread import Thread
from witnessmark.trade.torque_form import friction, nut_factor, preload_by_nut_factor
from witnessmark.trade.units import Quantity, magnitude, quantity

FEWEST_TO_SCATTER = 2
HELIX = 1.155
"""2/√3 as the guideline rounds it: one over the cosine of half the flank angle."""


class NutFactorsCrossed(TradeError):
    """A band of nut factors whose low end lies above its high end."""

    code = "nut-factors-crossed"
    says = "The lower nut factor {low} is above the upper one {high}."
    next_step = "Look which is which, then type both again."


class WaistTooWide(TradeError):
    """A waist that is no narrower part of the bolt."""

    code = "waist-too-wide"
    says = "The waist is not narrower than the thread itself."
    next_step = "Measure the thinnest part of the shank, or leave it out."


@dataclass(frozen=True, slots=True)
class Band:
    """The least, the middle and the most preload that may come of one torque."""

    low: Quantity
    mid: Quantity
    high: Quantity


@dataclass(frozen=True, slots=True)
class Change:
    """The preload a value assumes, the one that comes, and the change as a share of the first."""

    assumed: Quantity
    actual: Quantity
    change: float


@dataclass(frozen=True, slots=True)
class Scatter:
    """Mean and standard deviation (n - 1) of preloads, and the ends as shares of the mean."""

    mean: Quantity
    standard_deviation: Quantity
    lowest_over_mean: float
    highest_over_mean: float


@units.check("torque", None, None, None, "length")
def band(
    torque: Quantity,
    wrench_deviation: float,
    nut_factor_low: float,
    nut_factor_high: float,
    diameter: Quantity,
) -> Band:
    """The band of preload from one torque, wrench and friction at their worst together.

    low = T (1 - e)/(K_high d), high = T (1 + e)/(K_low d), mid = T/(K_mid d).
    wrench_deviation: the permitted share, 0.04 for ±4 %.
    raises: as amounts; FrictionImpossible; NutFactorsCrossed.
    source: common practice, no source: definition T = K F d, corners taken together
    >>> found = band(quantity(47.5, "N·m"), 0.04, 0.16, 0.22, quantity(10, "mm"))
    >>> round(magnitude(found.low, "kN"), 2), round(magnitude(found.high, "kN"), 2)
    (20.73, 30.88)
    """
    off = amounts.share(wrench_deviation, "wrench deviation")
    low = nut_factor(nut_factor_low, "lower nut factor")
    high = nut_factor(nut_factor_high, "upper nut factor")
    if low > high:
        raise NutFactorsCrossed(low=f"{low:g}", high=f"{high:g}")
    mid = preload_by_nut_factor(torque, (low + high) / 2, diameter)
    middle = (low + high) / 2
    return Band(mid * (1 - off) * (middle / high), mid, mid * (1 + off) * (middle / low))


@units.check("torque", "length", None, None)
def change(
    torque: Quantity, diameter: Quantity, nut_factor_assumed: float, nut_factor_actual: float
) -> Change:
    """What becomes of the preload when the thread is not as the value assumes.

    raises: as amounts; FrictionImpossible.
    source: common practice, no source: definition T = K F d
    >>> oiled = change(quantity(50, "N·m"), quantity(10, "mm"), 0.20, 0.15)
    >>> round(oiled.change, 4)
    0.3333
    """
    assumed = preload_by_nut_factor(torque, nut_factor_assumed, diameter)
    actual = preload_by_nut_factor(torque, nut_factor_actual, diameter)
    return Change(assumed, actual, nut_factor_assumed / nut_factor_actual - 1)


@units.check("force", "area")
def stress(preload: Quantity, area: Quantity) -> Quantity:
    """F/A, the pull on each square millimetre.

    raises: as amounts.
    source: definition
    >>> round(magnitude(stress(quantity(25000, "lbf"), quantity(0.373, "in²")), "ksi"), 2)
    67.02
    """
    force = amounts.above_zero(magnitude(preload, "N"), "preload")
    return quantity(force / amounts.above_zero(magnitude(area, "mm²"), "area"), "MPa")


@units.check("pressure", "pressure")
def share(stress_: Quantity, limit: Quantity) -> float:
    """A stress as a share of a limit, such as the proof stress.

    raises: as amounts.
    source: definition
    >>> round(share(quantity(67.02, "ksi"), quantity(85, "ksi")), 3)
    0.788
    """
    pull = amounts.above_zero(magnitude(stress_, "MPa"), "stress")
    return pull / amounts.above_zero(magnitude(limit, "MPa"), "limit")


@units.check("force", None, None)
def share_of_proof(preload: Quantity, threaded: Thread, property_class: str) -> float:
    """A preload as a share of the proof load of its thread and class.

    raises: as amounts; as strength.loads.
    source: as strength.loads (table values)
    >>> from witnessmark.trade.thread_text import parse
    >>> round(share_of_proof(quantity(30, "kN"), parse("M10"), "10.9"), 3)
    0.623
    """
    force = amounts.above_zero(magnitude(preload, "N"), "preload")
    return force / magnitude(strength.loads(threaded, property_class).proof_load, "N")


@units.check(None, None, None, None, "length")
def at_share_of_yield(
    threaded: Thread,
    property_class: str,
    friction_thread: float,
    share_of_yield: float = 0.9,
    waist: Quantity | None = None,
) -> Quantity:
    """The preload at which pull and twist together reach a share of the yield stress.

    FM = v Rp A/√(1 + 3 (1.5 (d2/d0)(P/(π d2) + 1.155 µ))²), d0 = (d2 + d3)/2, A = π/4 d0².
    waist: the diameter of a reduced shank, which then is d0 where it is the narrower.
    raises: as amounts; FrictionImpossible; as strength.stresses; WaistTooWide.
    source: VDI 2230:2001, assembly preload
    >>> from witnessmark.trade.thread_text import parse
    >>> round(magnitude(at_share_of_yield(parse("M8x1"), "8.8", 0.12), "kN"), 1)
    20.2
    """
    amounts.kind(threaded, Thread, "thread")
    part = amounts.above_zero(amounts.share(share_of_yield, "share of yield"), "share of yield")
    rub = friction(friction_thread, "friction in the thread")
    name = strength.class_of(property_class, threaded.standard)
    limit = part * strength.yield_stress_mpa(name, threaded.diameter_mm)
    narrow, middle = _narrowest(threaded, waist), thread.pitch_diameter_mm(threaded)
    twist = 1.5 * middle / narrow * (threaded.pitch_mm / (math.pi * middle) + HELIX * rub)
    return quantity(limit * math.pi / 4 * narrow**2 / math.sqrt(1 + 3 * twist**2), "N")


def _narrowest(threaded: Thread, waist: Quantity | None) -> float:
    narrow = (thread.pitch_diameter_mm(threaded) + thread.root_diameter_mm(threaded)) / 2
    if waist is None:
        return narrow
    own = amounts.above_zero(magnitude(waist, "mm"), "waist")
    if own > threaded.diameter_mm:
        raise WaistTooWide()
    return min(own, narrow)


@units.check("force")
def scatter(preloads: Sequence[Quantity]) -> Scatter:
    """How preloads from one torque lie about their mean.

    raises: NotACount with fewer than two; as amounts.
    source: definition; sample standard deviation with n - 1
    >>> found = scatter([quantity(30, "kN"), quantity(34, "kN")])
    >>> round(magnitude(found.standard_deviation, "kN"), 3)
    2.828
    """
    amounts.count(len(alike.many(preloads, "preloads")), "number of preloads", FEWEST_TO_SCATTER)
    forces = [amounts.above_zero(magnitude(each, "N"), "preload") for each in preloads]
    mean = statistics.fmean(forces)
    spread = math.sqrt(math.fsum((each - mean) ** 2 for each in forces) / (len(forces) - 1))
    return Scatter(
        quantity(mean, "N"), quantity(spread, "N"), min(forces) / mean, max(forces) / mean
    )
