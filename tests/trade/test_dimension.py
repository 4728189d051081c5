"""Uncertainties add as they should, limits judge both ways alike, warm parts come back to 20 °C."""

import math

import numpy as np
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from witnessmark.trade import (
    alike,
    dimension,
    expansion,
    gauge_study,
    limits,
    scatter,
    shape,
    units,
)
from witnessmark.trade.units import Quantity

MANY = settings(max_examples=60, deadline=None, derandomize=True, database=None)
LENGTH = st.floats(1, 300)
SMALL = st.floats(0, 0.1)


def mm(number: float) -> Quantity:
    return alike.of_mm(number)


def plain(amount: Quantity) -> float:
    return units.magnitude(amount, "mm")


@MANY
@given(st.lists(SMALL, min_size=1, max_size=6), st.floats(0.1, 50))
def test_uncertainties_together_exceed_each_and_scale(parts: list[float], times: float) -> None:
    together = plain(dimension.combined([mm(each) for each in parts]))
    assert together >= max(parts) * (1 - 1e-12)
    assert together <= sum(parts) * (1 + 1e-12)
    scaled = plain(dimension.combined([mm(each * times) for each in parts]))
    assert math.isclose(scaled, together * times, rel_tol=1e-9, abs_tol=1e-15)


@MANY
@given(st.lists(LENGTH, min_size=2, max_size=12), st.floats(-0.5, 50))
def test_repeats_shifted_scatter_as_before(values: list[float], by: float) -> None:
    one = dimension.repeats([mm(each) for each in values])
    other = dimension.repeats([mm(each + by) for each in values])
    assert math.isclose(plain(one.mean) + by, plain(other.mean), rel_tol=1e-9)
    scatters = plain(one.standard_deviation), plain(other.standard_deviation)
    assert math.isclose(*scatters, rel_tol=1e-6, abs_tol=1e-9)
    assert math.isclose(scatters[0], float(np.std(values, ddof=1)), rel_tol=1e-6, abs_tol=1e-9)


@MANY
@given(st.floats(-1, 1), st.floats(-0.5, 0), st.floats(0, 0.5), SMALL)
def test_a_reading_and_its_mirror_are_judged_alike(
    value: float, lower: float, upper: float, guard: float
) -> None:
    one = limits.judge(mm(value), mm(lower), mm(upper), mm(guard))
    other = limits.judge(mm(-value), mm(-upper), mm(-lower), mm(guard))
    assert (one.lies, one.provable) == (other.lies, other.provable)


@MANY
@given(st.floats(-1, 1), st.floats(-0.5, 0), st.floats(0, 0.5), SMALL, SMALL)
def test_a_wider_guard_band_never_proves_more(
    value: float, lower: float, upper: float, one: float, other: float
) -> None:
    window = mm(lower), mm(upper)
    narrow, wide = (
        limits.judge(mm(value), *window, mm(guard)).lies for guard in sorted((one, other))
    )
    assert wide in (narrow, "too-close-to-call")


@MANY
@given(st.floats(0, 1), SMALL)
def test_two_limits_judge_as_the_worse_of_either_alone(value: float, guard: float) -> None:
    low, high = mm(0.3), mm(0.6)
    order = ["inside", "too-close-to-call", "outside"]
    alone = [
        limits.judge(mm(value), *window, mm(guard)).lies for window in ((low, None), (None, high))
    ]
    both = limits.judge(mm(value), low, high, mm(guard)).lies
    assert both == max(alone, key=order.index)


def test_a_reading_is_judged_in_whatever_unit_it_came() -> None:
    reading, guard = units.quantity(0.9842, "in"), units.quantity(2, "µm")
    found = limits.judge(reading, mm(24.98), mm(25.0), guard)
    assert found.lies == "too-close-to-call"
    assert found.accept_high is not None
    assert math.isclose(plain(found.accept_high), 24.998, rel_tol=1e-12)


@MANY
@given(LENGTH, st.floats(-40, 300), st.floats(5e-6, 3e-5))
def test_a_length_comes_back_from_its_temperature(
    length: float, temperature: float, grows: float
) -> None:
    at = units.quantity(temperature, "°C"), units.quantity(grows, "1/K")
    there = expansion.length_at(mm(length), *at)
    assert math.isclose(plain(expansion.length_at_20(there, *at)), length, rel_tol=1e-12)
    assert (plain(there) - length) * (temperature - 20) >= 0


@MANY
@given(LENGTH, st.floats(-40, 120), st.floats(5e-6, 3e-5))
def test_part_and_instrument_alike_need_no_correction(
    length: float, temperature: float, grows: float
) -> None:
    at = units.quantity(temperature, "°C"), units.quantity(grows, "1/K")
    assert math.isclose(plain(expansion.corrected(mm(length), *at, *at)), length, rel_tol=1e-12)


@MANY
@given(st.floats(60, 120), st.floats(0.01, 0.2), st.floats(-20, 150))
def test_a_clearance_is_that_of_its_two_lengths(
    bore: float, room: float, temperature: float
) -> None:
    iron, alloy = expansion.typical("grey iron"), expansion.typical("piston alloy")
    warm = units.quantity(temperature, "°C")
    found = expansion.clearance_at(mm(room), mm(bore), iron, alloy, measured_at=warm)
    apart = plain(expansion.length_at_20(mm(bore), warm, iron)) - plain(
        expansion.length_at_20(mm(bore - room), warm, alloy)
    )
    assert math.isclose(plain(found), apart, abs_tol=1e-9)


PLANES = st.lists(st.lists(LENGTH, min_size=2, max_size=2), min_size=2, max_size=5)


@MANY
@given(PLANES)
def test_taper_of_means_is_never_more_than_taper_along(planes: list[list[float]]) -> None:
    rows = [[mm(each) for each in plane] for plane in planes]
    assert plain(shape.taper_of_means(rows)) <= plain(shape.taper_along(rows)) + 1e-9
    assert plain(shape.taper_along(rows[::-1])) == plain(shape.taper_along(rows))


@MANY
@given(LENGTH, LENGTH)
def test_a_bore_wears_as_a_shaft_does_turned_round(new: float, now: float) -> None:
    shaft, bore = shape.wear(mm(new), mm(now), "shaft"), shape.wear(mm(now), mm(new), "bore")
    assert math.isclose(plain(shaft.wear), plain(bore.wear), abs_tol=1e-9)


@MANY
@given(st.lists(st.lists(st.floats(-9, 9), min_size=3, max_size=3), min_size=2, max_size=5))
def test_days_are_what_their_readings_pool_to(readings: list[list[float]]) -> None:
    means = [float(np.mean(each)) for each in readings]
    spreads = [float(np.std(each, ddof=1)) for each in readings]
    found = scatter.days(means, spreads, 3)
    pooled = scatter.pooled_deviations(spreads, [3] * len(readings))
    assert math.isclose(found.repeatability, pooled.repeatability, rel_tol=1e-9, abs_tol=1e-12)
    assert found.standard_uncertainty >= found.repeatability * (1 - 1e-12)


STUDY = st.lists(
    st.lists(st.lists(st.floats(-9, 9), min_size=3, max_size=3), min_size=2, max_size=2),
    min_size=2,
    max_size=3,
)


@MANY
@given(STUDY, st.floats(0.5, 20), st.floats(-30, 30))
def test_a_study_scales_with_its_unit_and_not_with_its_zero(
    readings: list[list[list[float]]], times: float, by: float
) -> None:
    assume(np.std(readings) > 0.01)
    moved = [[[each * times + by for each in row] for row in person] for person in readings]
    for way in ("kept", "pooled"):
        one = gauge_study.analysis_of_variance(readings, way).study  # type: ignore[arg-type]
        other = gauge_study.analysis_of_variance(moved, way).study  # type: ignore[arg-type]
        assert math.isclose(one.total * times, other.total, rel_tol=1e-6)
        assert math.isclose(one.both**2 + one.part**2, one.total**2, rel_tol=1e-9)
    ranged = gauge_study.average_and_range(readings).study
    again = gauge_study.average_and_range(moved).study
    assert math.isclose(ranged.total * times, again.total, rel_tol=1e-6)
