"""A gauge study: several people measure several parts several times; what is the gauge worth?

readings: person → repeat → part, in one unit, whatever is measured; results stand in the same.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Literal

from witnessmark.trade import alike, amounts
from witnessmark.trade.gauge_errors import (
    MethodUnknown,
    NoSpread,
    StudyTooLarge,
    StudyTooSmall,
    StudyUneven,
)

Readings = Sequence[Sequence[Sequence[float]]]
FEWEST, MOST = 2, 25
GOOD, MAY_DO = 0.10, 0.30
WIDTH = 6.0
"""Standard deviations a tolerance is held against; 5.15 was usual in older books."""
# One over d2 of so many repeats, and one over √(d2² + d3²) of so many people or parts.
_K1 = (
    0.8862, 0.5908, 0.4857, 0.4299, 0.3946, 0.3698, 0.3512, 0.3367, 0.3249, 0.3152, 0.3069, 0.2998,
    0.2935, 0.2880, 0.2831, 0.2787, 0.2747, 0.2711, 0.2677, 0.2647, 0.2618, 0.2592, 0.2567, 0.2544,
)  # fmt: skip
_K2 = (
    0.7071, 0.5231, 0.4467, 0.4030, 0.3742, 0.3534, 0.3375, 0.3249, 0.3146, 0.3059, 0.2985, 0.2921,
    0.2864, 0.2814, 0.2770, 0.2729, 0.2692, 0.2659, 0.2628, 0.2599, 0.2573, 0.2548, 0.2525, 0.2504,
)  # fmt: skip


@dataclass(frozen=True, slots=True)
class Study:
    """What the scatter of a study is made of; standard deviations all."""

    repeatability: float
    """Of the same person on the same part."""
    reproducibility: float
    """From person to person."""
    interaction: float
    """Some people measure some parts differently; nought where it is pooled."""
    both: float
    """Of the gauge in all: repeatability, reproducibility and interaction."""
    part: float
    total: float
    both_over_total: float
    categories: int
    """How many classes of parts the gauge can tell apart."""


@dataclass(frozen=True, slots=True)
class Ranged:
    """An average-and-range study, and the mean range it was made from."""

    mean_range: float
    study: Study


@dataclass(frozen=True, slots=True)
class Variance:
    """An analysis of variance, and the mean squares it was made from."""

    mean_square_part: float
    mean_square_person: float
    mean_square_interaction: float
    mean_square_repeat: float
    study: Study


def average_and_range(
    readings: Readings, *, k1: float | None = None, k2: float | None = None, k3: float | None = None
) -> Ranged:
    """Gauge study by averages and ranges, as it is done on paper.

    k1, k2, k3: factors for repeats, people and parts; from the tables where not given.
    raises: StudyTooSmall, StudyTooLarge, StudyUneven, NoSpread; NotANumber, NotAboveZero.
    source: AIAG Measurement Systems Analysis, average and range method (form fetched, factors
    computed from d2 and d3; they agree with the printed ones)
    >>> two = average_and_range([[[1.0, 2.0], [1.1, 2.1]], [[1.2, 2.0], [1.0, 2.2]]])
    >>> round(two.mean_range, 6), round(two.study.repeatability, 6)
    (0.15, 0.13293)
    """
    people, repeats, parts = _checked(readings)
    cells = _cells(readings)
    ranges = [max(each) - min(each) for row in cells for each in row]
    mean_range = math.fsum(ranges) / len(ranges)
    repeatability = mean_range * _factor(k1, _K1, repeats)
    means = [[_mean(each) for each in row] for row in cells]
    between = _spread([_mean(row) for row in means]) * _factor(k2, _K2, people)
    part = _spread([_mean(list(column)) for column in zip(*means, strict=True)])
    person = between**2 - repeatability**2 / (parts * repeats)
    variances = (repeatability**2, person, 0.0, (part * _factor(k3, _K2, parts)) ** 2)
    return Ranged(mean_range, _study(*variances))


def analysis_of_variance(
    readings: Readings, interaction: Literal["kept", "pooled"] = "pooled"
) -> Variance:
    """Gauge study by analysis of variance, parts and people both drawn at random.

    interaction: "kept" as a share of its own, or "pooled" with the repeats where it is no larger
    than they are. A share that comes out below nothing is nothing.
    raises: MethodUnknown; StudyTooSmall, StudyTooLarge, StudyUneven, NoSpread; NotANumber.
    source: AIAG Measurement Systems Analysis, analysis of variance method (from memory; agrees
    with NumPy and with every published result of its example)
    >>> two = analysis_of_variance([[[1.0, 2.0], [1.1, 2.1]], [[1.2, 2.0], [1.0, 2.2]]])
    >>> round(two.study.repeatability, 6), round(two.mean_square_part, 6)
    (0.1, 2.0)
    """
    if interaction not in ("kept", "pooled"):
        raise MethodUnknown(interaction=interaction)
    people, repeats, parts = _checked(readings)
    squares = _sums_of_squares(_cells(readings))
    freedom = parts - 1, people - 1, (parts - 1) * (people - 1), parts * people * (repeats - 1)
    part, person, both, repeat = (each / of for each, of in zip(squares, freedom, strict=True))
    if interaction == "kept":
        error, within, mixed = both, repeat, (both - repeat) / repeats
    else:
        error = within = (squares[2] + squares[3]) / (freedom[2] + freedom[3])
        mixed = 0.0
    variances = (
        within, (person - error) / (parts * repeats), mixed, (part - error) / (people * repeats)
    )  # fmt: skip
    return Variance(part, person, both, repeat, _study(*variances))


def share_of_tolerance(both: float, tolerance: float, width: float = WIDTH) -> float:
    """How much of a tolerance the gauge's own scatter takes: 6 · both / tolerance.

    tolerance: upper less lower limit, in the unit of the study.
    raises: BelowZero, NotAboveZero; NotANumber.
    source: AIAG Measurement Systems Analysis (from memory)
    >>> share_of_tolerance(0.001, 0.06)
    0.1
    """
    gauge = amounts.not_below_zero(both, "both")
    return amounts.above_zero(width, "width") * gauge / amounts.above_zero(tolerance, "tolerance")


def good_enough(share: float) -> Literal["good", "may-do", "not-good-enough"]:
    """Whether a gauge is good enough, by its share of the total scatter or of the tolerance.

    Under 0.10 good, over 0.30 not good enough, between them it may do.
    raises: BelowZero; NotANumber.
    source: common practice, no source (rule of thumb)
    >>> good_enough(0.2668)
    'may-do'
    """
    amounts.not_below_zero(share, "share")
    if share < GOOD:
        return "good"
    return "may-do" if share <= MAY_DO else "not-good-enough"


def _checked(readings: Readings) -> tuple[int, int, int]:
    people = [alike.many(person, "readings") for person in alike.many(readings, "readings")]
    repeats = {len(person) for person in people}
    parts = {len(alike.many(repeat, "readings")) for person in people for repeat in person}
    if len(readings) < FEWEST or min(repeats) < FEWEST or not parts or min(parts) < FEWEST:
        raise StudyTooSmall()
    if len(repeats) > 1 or len(parts) > 1:
        raise StudyUneven()
    shape = len(readings), repeats.pop(), parts.pop()
    if max(shape) > MOST:
        raise StudyTooLarge()
    listed = [each for person in readings for repeat in person for each in repeat]
    if len({amounts.finite(each, "reading") for each in listed}) == 1:
        raise NoSpread()
    return shape


def _cells(readings: Readings) -> list[list[list[float]]]:
    """Person → part → repeats."""
    return [[list(cell) for cell in zip(*person, strict=True)] for person in readings]


def _sums_of_squares(cells: list[list[list[float]]]) -> tuple[float, float, float, float]:
    repeats, parts, people = len(cells[0][0]), len(cells[0]), len(cells)
    means = [[_mean(cell) for cell in row] for row in cells]
    persons = [_mean(row) for row in means]
    columns = [_mean(list(column)) for column in zip(*means, strict=True)]
    grand = _mean(persons)
    mixed = [
        (means[i][j] - persons[i] - columns[j] + grand) ** 2
        for i in range(people)
        for j in range(parts)
    ]
    within = [
        (each - means[i][j]) ** 2
        for i, row in enumerate(cells)
        for j, cell in enumerate(row)
        for each in cell
    ]
    return (
        people * repeats * math.fsum((each - grand) ** 2 for each in columns),
        parts * repeats * math.fsum((each - grand) ** 2 for each in persons),
        repeats * math.fsum(mixed),
        math.fsum(within),
    )


def _study(repeat: float, person: float, mixed: float, part: float) -> Study:
    parts = [max(0.0, each) for each in (repeat, person, mixed, part)]
    gauge = math.sqrt(math.fsum(parts[:3]))
    total = math.sqrt(math.fsum(parts))
    roots = [math.sqrt(each) for each in parts]
    share = gauge / total if total else 0.0
    told_apart = math.floor(math.sqrt(2) * roots[3] / gauge) if gauge else 0
    return Study(roots[0], roots[1], roots[2], gauge, roots[3], total, share, told_apart)


def _factor(own: float | None, table: tuple[float, ...], count: int) -> float:
    return table[count - FEWEST] if own is None else amounts.above_zero(own, "factor")


def _mean(listed: list[float]) -> float:
    return math.fsum(listed) / len(listed)


def _spread(listed: list[float]) -> float:
    return max(listed) - min(listed)
