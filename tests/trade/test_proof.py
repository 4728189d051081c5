"""Proofs: shares stay shares, traces are read in their order, only the owner's limits judge."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from witnessmark.trade import proof
from witnessmark.trade.units import magnitude, quantity

PRESSURES = st.floats(0, 3000)


@settings(deadline=None)
@given(st.floats(1, 3000), st.floats(0, 1), st.floats(0.1, 10))
def test_leakage_is_the_share_not_held_in_any_unit(
    supply: float, held: float, times: float
) -> None:
    share = proof.leakage(quantity(supply, "kPa"), quantity(supply * held, "kPa"))
    again = proof.leakage(quantity(supply * times, "psi"), quantity(supply * held * times, "psi"))
    assert share == pytest.approx(1 - held, abs=1e-9)
    assert again == pytest.approx(share, abs=1e-9)


@settings(deadline=None)
@given(st.lists(st.floats(1, 3000), min_size=1, max_size=16), st.floats(0.1, 10))
def test_evenness_does_not_ask_for_the_unit(readings: list[float], times: float) -> None:
    one = proof.evenness([quantity(each, "kPa") for each in readings])
    other = proof.evenness([quantity(each * times, "kPa") for each in readings])
    assert 0 < one.lowest_over_highest <= 1
    assert other.lowest_over_highest == pytest.approx(one.lowest_over_highest)
    assert magnitude(other.mean, "kPa") == pytest.approx(magnitude(one.mean, "kPa") * times)


@settings(deadline=None)
@given(st.lists(PRESSURES, min_size=1, max_size=30), st.floats(1, 2999), st.floats(1, 2999))
def test_a_higher_threshold_is_reached_no_sooner(
    pressures: list[float], one: float, other: float
) -> None:
    points = [proof.Point(quantity(t, "s"), quantity(p, "kPa")) for t, p in enumerate(pressures)]
    low, high = sorted((one, other))
    first = proof.time_to(points, quantity(low, "kPa"))
    second = proof.time_to(points, quantity(high, "kPa"))
    assert (first is None) <= (second is None)
    if first is not None and second is not None:
        assert magnitude(first, "s") <= magnitude(second, "s") + 1e-9


@settings(deadline=None)
@given(st.lists(PRESSURES, min_size=1, max_size=30), st.floats(0.1, 40))
def test_a_plateau_lies_between_its_least_and_most(pressures: list[float], last: float) -> None:
    points = [proof.Point(quantity(t, "s"), quantity(p, "kPa")) for t, p in enumerate(pressures)]
    found = proof.plateau(points, quantity(last, "s"))
    least, mean, most = (magnitude(each, "kPa") for each in (found.least, found.mean, found.most))
    assert least - 1e-9 <= mean <= most + 1e-9
    assert 1 <= found.readings <= len(pressures)


@settings(deadline=None)
@given(st.integers(1, 40), st.data())
def test_seen_and_missing_places_are_all_places(places: int, data: st.DataObject) -> None:
    seen = data.draw(st.lists(st.integers(1, places)))
    missing = proof.missing_places(places, seen)
    assert set(missing) | set(seen) == set(range(1, places + 1))
    assert not set(missing) & set(seen)


@settings(deadline=None)
@given(PRESSURES, st.floats(0, 8000), st.floats(-40, 150))
def test_without_a_limit_of_the_owner_nothing_is_judged(
    pressure: float, speed: float, temperature: float
) -> None:
    reading = (quantity(pressure, "kPa"), quantity(speed, "1/min"), quantity(temperature, "°C"))
    assert proof.oil_pressure(*reading, []) == "no limit"
    assert proof.oil_pressure(*reading, [proof.PressureLimit()]) == "within"
