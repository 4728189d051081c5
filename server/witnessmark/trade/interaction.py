"""Whether some people measure some parts differently: the interaction of a gauge study judged."""

from __future__ import annotations

from typing import Literal

from scipy.special import betainc

from witnessmark.trade import amounts

POOLED_ABOVE = 0.25


def chance(
    mean_square_interaction: float,
    mean_square_repeat: float,
    *,
    people: int,
    repeats: int,
    parts: int,
) -> float:
    """How likely so large an interaction comes of the scatter of the repeats alone, 0 to 1.

    The mean squares are those of gauge_study.analysis_of_variance.
    raises: BelowZero, NotAboveZero, NotACount; NotANumber.
    source: F distribution of the ratio of two mean squares (computed with SciPy)
    >>> round(chance(0.01994346, 0.04598222, people=3, repeats=3, parts=10), 4)
    0.9741
    """
    mixed = amounts.not_below_zero(mean_square_interaction, "mean square of the interaction")
    repeat = amounts.above_zero(mean_square_repeat, "mean square of the repeats")
    persons, pieces = amounts.count(people, "people", 2), amounts.count(parts, "parts", 2)
    within = persons * pieces * (amounts.count(repeats, "repeats", 2) - 1)
    between = (persons - 1) * (pieces - 1)
    left = within / (within + between * mixed / repeat)
    return float(betainc(within / 2, between / 2, left))


def treatment(chance_of_it: float, above: float = POOLED_ABOVE) -> Literal["kept", "pooled"]:
    """Whether to keep the interaction as a share of its own or to pool it with the repeats.

    It is pooled where its chance is above the level, which is usually a quarter.
    raises: NotAShare; NotANumber.
    source: AIAG Measurement Systems Analysis (from memory)
    >>> treatment(0.9741), treatment(0.03)
    ('pooled', 'kept')
    """
    level = amounts.share(above, "level")
    return "pooled" if amounts.share(chance_of_it, "chance") > level else "kept"
