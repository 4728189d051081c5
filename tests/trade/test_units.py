"""Torque in four units: there and back, in digits that keep readings apart."""

from decimal import Decimal
from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from witnessmark.errors import TradeError
from witnessmark.trade import units
from witnessmark.trade.units import Measured

NUMBERS = st.decimals(min_value="0.01", max_value=99999, places=2).map(str)
TORQUES = st.sampled_from(units.TORQUE_WORDS)


@settings(deadline=None)
@given(value=st.floats(min_value=1e-6, max_value=1e6), unit=TORQUES, to=TORQUES)
def test_there_and_back_gives_the_same_amount(value: float, unit: str, to: str) -> None:
    assert units.convert(units.convert(value, unit, to), to, unit) == pytest.approx(
        value, rel=1e-12
    )


@settings(deadline=None)
@given(value=st.floats(min_value=1e-3, max_value=1e5), unit=TORQUES, to=TORQUES)
def test_twice_the_torque_is_twice_the_number(value: float, unit: str, to: str) -> None:
    once, twice = units.convert(value, unit, to), units.convert(2 * value, unit, to)
    assert twice == pytest.approx(2 * once, rel=1e-12)


@settings(deadline=None)
@given(number=NUMBERS, unit=TORQUES, to=TORQUES)
def test_what_is_shown_is_less_than_one_typed_step_off(number: str, unit: str, to: str) -> None:
    shown = Measured(units.shown(Measured(number, unit), to), to)
    back = Fraction(units.convert(float(shown.value), to, unit))
    assert abs(back - Fraction(number)) <= Fraction(51, 10000)


@settings(deadline=None)
@given(number=st.integers(1, 9999), unit=TORQUES, to=TORQUES)
def test_neighbouring_readings_are_never_shown_alike(number: int, unit: str, to: str) -> None:
    shown = [units.shown(Measured(str(each), unit), to) for each in (number, number + 1)]
    assert Decimal(shown[0]) < Decimal(shown[1])


@settings(deadline=None)
@given(number=NUMBERS, unit=TORQUES)
def test_in_its_own_unit_a_number_stays_as_it_was_typed(number: str, unit: str) -> None:
    assert units.shown(Measured(number, unit), unit) == number


@settings(deadline=None)
@given(one=NUMBERS, other=NUMBERS, unit=TORQUES, to=TORQUES)
def test_comparing_one_way_is_comparing_the_other_way(
    one: str, other: str, unit: str, to: str
) -> None:
    first, second = Measured(one, unit), Measured(other, to)
    assert units.compare(first, second) == -units.compare(second, first)


@settings(deadline=None)
@given(st.text(max_size=12))
def test_typed_text_gives_a_plain_number_or_a_refusal_with_a_code(typed: str) -> None:
    refused = ""
    try:
        plain = units.parse_number(typed, signed=True)
    except TradeError as error:
        refused = error.code
    if refused:
        assert refused.startswith("number-")
    else:
        assert Measured(plain, "N·m").number == float(plain)


@settings(deadline=None)
@given(st.decimals(min_value=0, max_value=99999, places=3).map(str))
def test_a_comma_means_the_same_as_a_point_on_a_keypad(typed: str) -> None:
    with_comma = units.parse_number(typed.replace(".", ","), one_decimal_key=True)
    assert units.parse_number(typed, one_decimal_key=True) == with_comma


def test_a_number_with_two_meanings_names_both() -> None:
    with pytest.raises(TradeError) as refused:
        units.parse_number("1.234,5")
    assert refused.value.sentence == "1.234,5 can be 1234.5 or 1.2345."
