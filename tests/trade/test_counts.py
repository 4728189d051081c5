"""Ratios, timing, money and yields: there and back, monotone, and against outside distributions."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.stats import betabinom, binom
from witnessmark.trade import compression_ratio, degree_wheel, money, units, yields

COINS = st.integers(-10_000, 10_000)


def cylinder(chamber: float) -> compression_ratio.Cylinder:
    bore, stroke, thick, below = (units.quantity(each, "mm") for each in (86, 86, 1.2, 0.3))
    return compression_ratio.Cylinder(bore, stroke, units.quantity(chamber, "cm³"), thick, below)


@settings(max_examples=40, deadline=None)
@given(st.floats(20, 90), st.floats(6, 16))
def test_the_chamber_that_is_wanted_gives_the_ratio_that_is_wanted(size: float, aim: float) -> None:
    chamber = compression_ratio.change_for(cylinder(size), aim).chamber
    assert chamber is not None
    found = compression_ratio.measured(cylinder(units.magnitude(chamber, "cm³")))
    assert found.ratio == pytest.approx(aim, rel=1e-9)


@settings(max_examples=40, deadline=None)
@given(st.tuples(*[st.integers(1, 85)] * 4))
def test_timing_and_readings_are_the_way_there_and_back(angles: tuple[int, ...]) -> None:
    found = degree_wheel.timing(*(units.quantity(each, "°") for each in angles))
    names = "intake_duration", "exhaust_duration", "lobe_separation", "advance"
    back = degree_wheel.readings_for(*(getattr(found, name) for name in names))
    again = [units.magnitude(getattr(back, name), "°") for name in back.__dataclass_fields__]
    assert again == pytest.approx(list(angles))


@given(COINS, st.lists(st.integers(0, 5000), min_size=1, max_size=12))
def test_shares_add_up_to_the_whole(whole: int, prices: list[int]) -> None:
    lines = [money.Money("EUR", price) for price in prices]
    shares = money.shared(money.Money("EUR", whole), lines)
    assert money.total(shares).minor == whole


@given(st.integers(-(10**14), 10**14), st.sampled_from(("EUR", "JPY", "KWD", "CLF")))
def test_an_amount_reads_back_as_it_is_shown(minor: int, currency: str) -> None:
    shown = money.Money(currency, minor).text
    assert money.parse(shown, currency).minor == minor


@settings(max_examples=60, deadline=None)
@given(st.integers(1, 40), st.integers(0, 60), st.floats(0.05, 0.99))
def test_a_known_share_gives_the_binomial_chance(needed: int, more: int, good: float) -> None:
    brought = needed + more
    expected = float(binom.sf(needed - 1, brought, good))
    assert yields.chance(brought, needed, good) == pytest.approx(expected, rel=1e-9)


@settings(max_examples=60, deadline=None)
@given(st.integers(1, 30), st.integers(0, 40), st.integers(0, 40), st.integers(0, 40))
def test_a_learned_share_gives_the_beta_binomial_chance(
    needed: int, more: int, good: int, bad: int
) -> None:
    brought = needed + more
    many = range(needed, brought + 1)
    expected = sum(float(betabinom.pmf(each, brought, 1 + good, 1 + bad)) for each in many)
    found = yields.chance_learned(brought, needed, good + bad, bad)
    assert found == pytest.approx(expected, rel=1e-8)


@settings(max_examples=40, deadline=None)
@given(st.integers(1, 20), st.floats(0.2, 1), st.floats(0.1, 0.99))
def test_one_fewer_brought_does_not_reach_the_chance(needed: int, good: float, aim: float) -> None:
    found = yields.bring(needed, good, aim)
    assert found.chance_reached >= aim - 1e-12
    assert yields.chance(found.bring - 1, needed, good) < aim
