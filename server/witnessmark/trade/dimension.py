"""A reading: its value, the instrument, and how far the true value may lie from it."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from witnessmark.errors import TradeError
from witnessmark.trade import alike, amounts
from witnessmark.trade.units import Quantity

SHAPES = {
    "rectangular": math.sqrt(3),
    "triangular": math.sqrt(6),
    "arcsine": math.sqrt(2),
    "normal": 2.0,
}
"""What half the width of a limit is divided by; "normal" is a certificate's U with k = 2."""


class TooFewRepeats(TradeError):
    """One reading has no scatter."""

    code = "dimension-few-repeats"
    says = "One reading says nothing about scatter."
    next_step = "Read it at least twice, the instrument taken off in between."


class ShapeUnknown(TradeError):
    """No known way a limit spreads."""

    code = "dimension-shape"
    says = "{shape} is no known spread of a limit."
    next_step = "Choose rectangular, triangular, arcsine or normal."


class NoParts(TradeError):
    """Nothing to combine."""

    code = "dimension-nothing"
    says = "There is nothing to combine."
    next_step = "Give the resolution at least."


@dataclass(frozen=True, slots=True)
class Repeats:
    """Several readings of one thing, summed up."""

    mean: Quantity
    spread: Quantity
    """Largest less smallest."""
    standard_deviation: Quantity
    standard_uncertainty_of_mean: Quantity
    count: int


@dataclass(frozen=True, slots=True)
class Reading:
    """One measured value with what is known of its instrument."""

    value: Quantity
    standard_uncertainty: Quantity
    instrument: str = ""
    resolution: Quantity | None = None


def from_resolution(resolution: Quantity) -> Quantity:
    """Standard uncertainty of a reading that shows only whole steps: resolution / √12.

    raises: NotAboveZero; NoQuantity.
    source: JCGM 100:2008 (GUM), F.2.2.1 (from memory)
    >>> from witnessmark.trade import units
    >>> round(units.magnitude(from_resolution(units.quantity(0.01, "mm")), "mm"), 7)
    0.0028868
    """
    step = amounts.above_zero(alike.size(resolution, resolution, "resolution"), "resolution")
    return alike.like(step / math.sqrt(12), resolution)


def from_limit(permitted_error: Quantity, shape: str = "rectangular") -> Quantity:
    """Standard uncertainty of an instrument known only to lie within ± a permitted error.

    shape: rectangular /√3 where nothing more is known; triangular /√6; arcsine /√2 for what
    swings between two ends; normal /2 for the U of a certificate with k = 2.
    raises: ShapeUnknown; BelowZero; NoQuantity.
    source: JCGM 100:2008 (GUM), 4.3.7, 4.3.9, 4.3.3 (from memory)
    >>> from witnessmark.trade import units
    >>> round(units.magnitude(from_limit(units.quantity(0.02, "mm")), "mm"), 7)
    0.011547
    """
    if not isinstance(shape, str) or shape not in SHAPES:
        raise ShapeUnknown(shape=shape)
    width = alike.size(permitted_error, permitted_error, "permitted error")
    half = amounts.not_below_zero(width, "permitted error")
    return alike.like(half / SHAPES[shape], permitted_error)


def combined(parts: Sequence[Quantity]) -> Quantity:
    """Independent standard uncertainties together: the root of the sum of their squares.

    raises: NoParts; BelowZero; NoQuantity, WrongQuantity.
    source: JCGM 100:2008 (GUM), 5.1.2
    >>> from witnessmark.trade import units
    >>> parts = [units.quantity(0.004, "mm"), units.quantity(3, "µm")]
    >>> round(units.magnitude(combined(parts), "mm"), 9)
    0.005
    """
    if not alike.many(parts, "parts"):
        raise NoParts()
    listed = [
        amounts.not_below_zero(each, "uncertainty") for each in alike.sizes(parts, "uncertainty")
    ]
    return alike.like(math.hypot(*listed), parts[0])


def expanded(standard_uncertainty: Quantity, k: float = 2.0) -> Quantity:
    """Expanded uncertainty U = k · u; k = 2 covers about 95 of 100.

    raises: BelowZero, NotAboveZero; NoQuantity.
    source: JCGM 100:2008 (GUM), 6.2.1
    >>> from witnessmark.trade import units
    >>> units.magnitude(expanded(units.quantity(0.005, "mm")), "mm")
    0.01
    """
    u = alike.size(standard_uncertainty, standard_uncertainty, "uncertainty")
    amounts.not_below_zero(u, "uncertainty")
    return alike.like(u * amounts.above_zero(k, "k"), standard_uncertainty)


def repeats(values: Sequence[Quantity]) -> Repeats:
    """Mean, spread and standard deviation of repeated readings, with the uncertainty of the mean.

    The deviation is that of a sample (n − 1); that of the mean is its n-th root part, s / √n.
    raises: TooFewRepeats; NoQuantity, WrongQuantity; NotANumber.
    source: JCGM 100:2008 (GUM), 4.2
    >>> from witnessmark.trade import units
    >>> found = repeats([units.quantity(each, "mm") for each in (12.703, 12.705, 12.704)])
    >>> round(units.magnitude(found.mean, "mm"), 4)
    12.704
    """
    if len(alike.many(values, "readings")) < len("ab"):
        raise TooFewRepeats()
    listed = alike.sizes(values, "reading")
    mean = math.fsum(listed) / len(listed)
    scatter = math.sqrt(math.fsum((each - mean) ** 2 for each in listed) / (len(listed) - 1))
    wide = max(listed) - min(listed)
    of_mean = scatter / math.sqrt(len(listed))
    made = [alike.like(each, values[0]) for each in (mean, wide, scatter, of_mean)]
    return Repeats(made[0], made[1], made[2], made[3], len(listed))


def reading(
    values: Sequence[Quantity],
    *,
    resolution: Quantity | None = None,
    permitted_error: Quantity | None = None,
    shape: str = "rectangular",
    instrument: str = "",
) -> Reading:
    """A reading from one or several values, with everything known of its uncertainty combined.

    The value is the mean. Parts: resolution, permitted error by its shape, scatter of the mean.
    One value without any of these has no known uncertainty and is refused.
    raises: NoParts; as from_resolution, from_limit and repeats.
    source: JCGM 100:2008 (GUM), clause 5
    >>> from witnessmark.trade import units
    >>> step, error = units.quantity(0.01, "mm"), units.quantity(0.02, "mm")
    >>> found = reading([units.quantity(54, "mm")], resolution=step, permitted_error=error)
    >>> round(units.magnitude(found.standard_uncertainty, "mm"), 9)
    0.011902381
    """
    amounts.kind(instrument, str, "instrument")
    if not alike.many(values, "readings"):
        raise NoParts()
    amounts.finite(alike.size(values[0], values[0], "reading"), "reading")
    parts = [] if resolution is None else [from_resolution(resolution)]
    if permitted_error is not None:
        parts.append(from_limit(permitted_error, shape))
    value = values[0]
    if len(values) > 1:
        summed = repeats(values)
        value = summed.mean
        parts.append(summed.standard_uncertainty_of_mean)
    together = combined(parts)
    u = alike.like(alike.size(together, value, "uncertainty"), value)
    return Reading(value, u, instrument, resolution)
