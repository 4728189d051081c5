"""A reading held against limits: inside, outside, or too close to call."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from witnessmark.errors import TradeError
from witnessmark.trade import alike, amounts
from witnessmark.trade.units import Quantity

GUARD_RULES = {"expanded": 2.0, "one-sided": 1.65}
"""Standard uncertainties that a guard band is wide: U with k = 2, or 95 % to one side."""
Lies = Literal["inside", "outside", "too-close-to-call"]
_HAIR = 1e-12
"""Limit and guard band are added in floats, so a reading on the edge may miss it by a hair."""


class LimitsCrossed(TradeError):
    """A lower limit above the upper one."""

    code = "limits-crossed"
    says = "The lower limit {lower} lies above the upper limit {upper}."
    next_step = "Look which is which, and type both again."


class LimitsMissing(TradeError):
    """Nothing to hold the reading against."""

    code = "limits-missing"
    says = "There is no limit to hold the reading against."
    next_step = "Take a limit from the manual, to one side at least."


class GuardRuleUnknown(TradeError):
    """No rule for the guard band by this name."""

    code = "limits-guard-rule"
    says = "{rule} is no rule for a guard band."
    next_step = "Choose expanded (U, k = 2) or one-sided (1.65 u)."


@dataclass(frozen=True, slots=True)
class Decision:
    """Where a reading lies, what that proves, and from where to where it would prove what."""

    lies: Lies
    proves: Literal["conformity", "non-conformity"] | None
    accept_low: Quantity | None
    accept_high: Quantity | None
    reject_below: Quantity | None
    reject_above: Quantity | None
    provable: bool
    """False where the guard bands meet: no reading of this instrument can prove conformity."""


def guard_band(standard_uncertainty: Quantity, rule: str = "expanded") -> Quantity:
    """How far a reading must stay off a limit.

    rule: "expanded" is U = 2 u (1998 and 2013); "one-sided" is 1.65 u, which is 95 % to the one
    side that matters where the limits are far apart (2017).
    raises: GuardRuleUnknown; BelowZero; NoQuantity.
    source: ISO 14253-1 (from memory)
    >>> from witnessmark.trade import units
    >>> u = units.quantity(0.001, "mm")
    >>> [units.magnitude(guard_band(u, rule), "mm") for rule in GUARD_RULES]
    [0.002, 0.00165]
    """
    if not isinstance(rule, str) or rule not in GUARD_RULES:
        raise GuardRuleUnknown(rule=rule)
    size = alike.size(standard_uncertainty, standard_uncertainty, "uncertainty")
    u = amounts.not_below_zero(size, "uncertainty")
    return alike.like(u * GUARD_RULES[rule], standard_uncertainty)


def judge(
    reading: Quantity, lower: Quantity | None, upper: Quantity | None, guard: Quantity
) -> Decision:
    """Whether a reading proves that the thing keeps its limits, or that it does not.

    lower, upper: None where that side has no limit. guard: the guard band. Limits drawn in by it
    prove conformity, limits drawn out by it prove non-conformity; between them it is too close to
    call. A reading on the drawn-in limit is inside, one on the drawn-out limit too close to call.
    raises: LimitsMissing, LimitsCrossed; BelowZero; NoQuantity, WrongQuantity.
    source: ISO 14253-1, decision rules for verifying conformity (from memory)
    >>> from witnessmark.trade import units
    >>> amounts = [units.quantity(each, "mm") for each in (24.9982, 24.98, 25, 0.002)]
    >>> judge(*amounts).lies
    'too-close-to-call'
    """
    value = alike.size(reading, reading, "reading")
    band = amounts.not_below_zero(alike.size(guard, reading, "guard band"), "guard band")
    low = None if lower is None else alike.size(lower, reading, "lower limit")
    high = None if upper is None else alike.size(upper, reading, "upper limit")
    if low is None and high is None:
        raise LimitsMissing()
    if low is not None and high is not None and low > high:
        raise LimitsCrossed(lower=f"{low:g}", upper=f"{high:g}")
    hair = _HAIR * max(abs(each) for each in (value, band, low or 0.0, high or 0.0))
    lies = _lies(value, (low, high), band, hair)
    ends = [(low, 1), (high, -1), (low, -1), (high, 1)]
    made = [None if at is None else alike.like(at + side * band, reading) for at, side in ends]
    provable = low is None or high is None or low + band <= high - band + hair
    return Decision(lies, _proves(lies), made[0], made[1], made[2], made[3], provable)


def share_of_limits(guard: Quantity, lower: Quantity, upper: Quantity) -> float:
    """How much of the room between two limits the guard bands eat: 2 · guard / (upper − lower).

    From 1 on no reading can prove conformity; a tenth is a good instrument for the limit, a
    quarter still usual.
    raises: LimitsCrossed (also for limits that are one); BelowZero; NoQuantity, WrongQuantity.
    source: definition; the tenth and the quarter are common practice, no source
    >>> from witnessmark.trade import units
    >>> round(share_of_limits(*(units.quantity(each, "mm") for each in (0.001, 25, 25.02))), 6)
    0.1
    """
    band = amounts.not_below_zero(alike.size(guard, guard, "guard band"), "guard band")
    low, high = alike.size(lower, guard, "lower limit"), alike.size(upper, guard, "upper limit")
    if low >= high:
        raise LimitsCrossed(lower=f"{low:g}", upper=f"{high:g}")
    return 2 * band / (high - low)


def _lies(
    value: float, limits: tuple[float | None, float | None], band: float, hair: float
) -> Lies:
    low, high = limits
    # How far the reading stays inside the nearer limit; below zero it is beyond.
    inside = min(
        value - low if low is not None else float("inf"),
        high - value if high is not None else float("inf"),
    )
    if inside >= band - hair:
        return "inside"
    return "outside" if inside < -band - hair else "too-close-to-call"


def _proves(lies: Lies) -> Literal["conformity", "non-conformity"] | None:
    if lies == "too-close-to-call":
        return None
    return "conformity" if lies == "inside" else "non-conformity"
