"""What is set and what arrives belong together; a band holds what it is a band of."""

import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from witnessmark.trade import adapter, alike, units, wrench
from witnessmark.trade.units import Quantity

MANY = settings(max_examples=60, deadline=None, derandomize=True, database=None)
TORQUE = st.floats(0.5, 800)
WRENCH = st.floats(120, 1200)
ADAPTER = st.floats(0, 110)
ANGLE = st.floats(-360, 360)
SHARE = st.floats(0, 0.2)


def torque(number: float) -> Quantity:
    return units.quantity(number, "N·m")


def lever(length: float, reach: float, angle: float) -> tuple[Quantity, Quantity, Quantity]:
    return alike.of_mm(length), alike.of_mm(reach), units.quantity(angle, "°")


def plain(amount: Quantity) -> float:
    return units.magnitude(amount, "N·m")


@MANY
@given(TORQUE, WRENCH, ADAPTER, ANGLE)
def test_what_is_set_for_a_torque_gives_that_torque(
    wanted: float, length: float, reach: float, angle: float
) -> None:
    at = lever(length, reach, angle)
    there = adapter.applied(adapter.setting(torque(wanted), *at), *at)
    assert math.isclose(plain(there), wanted, rel_tol=1e-9)


@MANY
@given(TORQUE, WRENCH, ADAPTER, st.floats(0.1, 20), ANGLE)
def test_only_the_proportion_of_the_lengths_counts(
    wanted: float, length: float, reach: float, times: float, angle: float
) -> None:
    one = adapter.setting(torque(wanted), *lever(length, reach, angle))
    other = adapter.setting(torque(wanted), *lever(length * times, reach * times, angle))
    assert math.isclose(plain(one), plain(other), rel_tol=1e-9)


@MANY
@given(TORQUE, WRENCH, ADAPTER, st.floats(0, 180), st.floats(0, 180))
def test_the_farther_the_adapter_is_turned_back_the_more_is_set(
    wanted: float, length: float, reach: float, one: float, other: float
) -> None:
    less, more = (
        plain(adapter.setting(torque(wanted), *lever(length, reach, angle)))
        for angle in sorted((one, other))
    )
    assert less <= more * (1 + 1e-12)


@MANY
@given(TORQUE, WRENCH, ADAPTER)
def test_across_the_handle_and_without_an_adapter_nothing_changes(
    wanted: float, length: float, reach: float
) -> None:
    for at in (lever(length, reach, 90), lever(length, reach, -90), lever(length, 0, 17)):
        assert math.isclose(plain(adapter.setting(torque(wanted), *at)), wanted, rel_tol=1e-12)
    bar = adapter.through_extension(torque(wanted), alike.of_mm(reach))
    assert plain(bar) == wanted


@MANY
@given(SHARE, WRENCH, ADAPTER, ANGLE, st.floats(0, 9))
def test_the_band_at_the_bolt_holds_what_arrives_there(
    share: float, length: float, reach: float, angle: float, stray: float
) -> None:
    set_to = torque(60)
    at = lever(length, reach, angle)
    band = adapter.band(set_to, share, *at, grip=alike.of_mm(stray))
    middle = plain(adapter.applied(set_to, *at))
    assert plain(band.low) <= middle * (1 + 1e-9)
    assert plain(band.high) >= middle * (1 - 1e-9)
    sure = adapter.band(set_to, 0, *at)
    assert math.isclose(plain(sure.low), middle, rel_tol=1e-9)


@MANY
@given(TORQUE, SHARE)
def test_the_ends_of_what_is_applied_are_just_permitted(set_to: float, share: float) -> None:
    band = wrench.applied(torque(set_to), share)
    for end in (band.low, band.high):
        assert math.isclose(abs(wrench.deviation(torque(set_to), end)), share, abs_tol=1e-9)
        assert wrench.within(wrench.deviation(torque(set_to), end), share)


@MANY
@given(st.floats(1, 400), st.sampled_from([0.1, 0.25, 0.5, 1, 2, 2.5, 5]))
def test_the_nearest_mark_is_no_farther_off_than_half_a_step(wanted: float, step: float) -> None:
    mark = wrench.settable(torque(wanted), torque(step))
    assert abs(plain(mark.settable) - wanted) <= step / 2 * (1 + 1e-6)
    assert math.isclose(plain(mark.settable), wanted * (1 + mark.error), rel_tol=1e-9)
    steps = plain(mark.settable) / step
    assert math.isclose(steps, round(steps), abs_tol=1e-6)


@settings(MANY, max_examples=50)
@given(TORQUE, WRENCH, ADAPTER, ANGLE)
def test_a_plan_in_pounds_is_the_plan_in_newtons(
    wanted: float, length: float, reach: float, angle: float
) -> None:
    pounds = units.convert(wanted, "N·m", "lbf·ft")
    one = adapter.plan(torque(wanted), *lever(length, reach, angle))
    other = adapter.plan(units.quantity(pounds, "lbf·ft"), *lever(length, reach, angle))
    assert math.isclose(plain(one.setting), plain(other.setting), rel_tol=1e-9)


def test_the_range_holds_for_the_setting_and_not_for_the_bolt() -> None:
    scale = {"least": torque(40), "most": torque(200)}
    assert adapter.plan(torque(42), *lever(400, 50, 0), **scale).fits == "starts-at"
    assert adapter.plan(torque(210), *lever(400, 50, 0), **scale).fits == "takes"


def test_a_setting_in_pound_inches_keeps_its_unit() -> None:
    inches = units.quantity(10, "in"), units.quantity(1.5, "in"), units.quantity(0, "°")
    found = adapter.setting(units.quantity(135, "lbf·in"), *inches)
    assert found.units == units.quantity(1, "lbf·in").units
    assert units.magnitude(found, "lbf·in") == pytest.approx(117.391304, abs=1e-6)
