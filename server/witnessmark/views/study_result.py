"""What a gauge study came to: the scatter of the gauge, held against the width of the limits."""

from __future__ import annotations

from fractions import Fraction
from typing import Any

from witnessmark.errors import TradeError
from witnessmark.trade import gauge_study, interaction, limits
from witnessmark.trade.units import Measured, convert, convert_difference

FEWEST = 2
_TENTH = 10
"""An instrument that shows a tenth of what is asked of it: common practice, no source."""
_HAIR = 1e-9


def size(value: Measured, unit: str) -> float:
    """A reading in the unit of the study."""
    return value.number if value.unit == unit else convert(value.number, value.unit, unit)


def step(value: Measured, unit: str) -> float:
    """What the last digit of a reading is worth in the unit of the study."""
    digit = float(f"1e-{len(value.value.partition('.')[2])}")
    return digit if value.unit == unit else abs(convert_difference(digit, value.unit, unit))


def width(least: str | None, most: str | None) -> float | None:
    """How far two limits are apart, as they were typed, where there are two in their order."""
    if least is None or most is None:
        return None
    room = Fraction(most) - Fraction(least)
    return float(room) if room > 0 else None


def result(readings: list[list[list[Measured]]], unit: str, room: float | None) -> dict[str, Any]:
    """The figures and the verdict, or what stands against reckoning it.

    readings: person → repeat → piece. room: the width of the limits, in the unit.
    """
    told: dict[str, Any] = {"trouble": None, "figures": None}
    sizes = [[[size(each, unit) for each in line] for line in person] for person in readings]
    try:
        study, treated = _study(sizes)
    except TradeError as error:
        return {**told, "trouble": error.code}
    shown = [step(each, unit) for person in readings for line in person for each in line]
    held = study.both_over_total
    share = None if room is None else gauge_study.share_of_tolerance(study.both, room)
    told["figures"] = {
        "people": len(sizes),
        "repeats": len(sizes[0]),
        "pieces": len(sizes[0][0]),
        "interaction_is": treated,
        "repeatability": study.repeatability,
        "reproducibility": study.reproducibility,
        "interaction": study.interaction,
        "both": study.both,
        "part": study.part,
        "total": study.total,
        "categories": study.categories,
        "width": room,
        "share": share,
        "share_of_total": held,
        "against": "pieces" if share is None else "limits",
        "verdict": gauge_study.good_enough(held if share is None else share),
        "near": limits.GUARD_RULES["expanded"] * study.both,
        "step": max(shown),
        "coarse": room is not None and max(shown) * _TENTH > room * (1 + _HAIR),
    }
    return told


def _study(sizes: list[list[list[float]]]) -> tuple[gauge_study.Study, str]:
    """The interaction is pooled where the scatter of the repeats alone may have made it."""
    kept = gauge_study.analysis_of_variance(sizes, "kept")
    if kept.mean_square_repeat == 0 or kept.mean_square_interaction < 0:
        return kept.study, "kept"
    chance = interaction.chance(
        kept.mean_square_interaction,
        kept.mean_square_repeat,
        people=len(sizes),
        repeats=len(sizes[0]),
        parts=len(sizes[0][0]),
    )
    treated = interaction.treatment(chance)
    if treated == "kept":
        return kept.study, treated
    return gauge_study.analysis_of_variance(sizes, treated).study, treated
