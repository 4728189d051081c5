"""Numbers and quantities a rule may compute with, and those it refuses by name."""

import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from witnessmark.errors import TradeError
from witnessmark.trade import amounts, units
from witnessmark.trade.unit_errors import NoQuantity, UnitsDiffer, WrongQuantity
from witnessmark.trade.units import Quantity, magnitude, quantity

IMPOSSIBLE = [math.nan, math.inf, -math.inf, True, None, "3", 1e16, 10**400, [1], 1j]


@pytest.mark.parametrize("given", IMPOSSIBLE, ids=str)
@pytest.mark.parametrize("rule", [amounts.finite, amounts.above_zero, amounts.share, amounts.count])
def test_what_is_no_number_is_refused_by_name(rule, given) -> None:  # type: ignore[no-untyped-def]
    with pytest.raises(TradeError, match="bore"):
        rule(given, "bore")


@pytest.mark.parametrize("given", [0, -0.0, -1e-300, -5])
def test_nothing_and_less_is_not_above_zero(given: float) -> None:
    with pytest.raises(amounts.NotAboveZero, match="bore"):
        amounts.above_zero(given, "bore")


@pytest.mark.parametrize("given", [-0.01, 1.01])
def test_a_share_lies_between_nothing_and_the_whole(given: float) -> None:
    with pytest.raises(amounts.NotAShare):
        amounts.share(given, "deviation")


@pytest.mark.parametrize("given", [0.5, 1, -3])
def test_a_count_is_whole_and_not_below_the_least(given: float) -> None:
    with pytest.raises(amounts.NotACount):
        amounts.count(given, "bolts", 2)


@units.check("torque", "length", None)
def pull_at(torque: Quantity, arm: Quantity, count: int = 1) -> Quantity:
    return torque / arm * count


def test_a_rule_takes_amounts_of_what_it_wants() -> None:
    pull = pull_at(quantity(10, "N·m"), arm=quantity("2,5", "cm"))
    assert magnitude(pull, "N") == 400


def test_a_rule_refuses_another_quantity_by_the_arguments_name() -> None:
    with pytest.raises(WrongQuantity, match="The arm is not in a unit of length"):
        pull_at(quantity(10, "N·m"), quantity(3, "N"))


def test_a_rule_refuses_a_bare_number_by_the_arguments_name() -> None:
    with pytest.raises(NoQuantity, match="torque has no unit"):
        pull_at(10, quantity(3, "mm"))


def test_an_amount_is_not_read_in_another_quantitys_unit() -> None:
    with pytest.raises(UnitsDiffer):
        magnitude(quantity(3, "mm"), "N")


@settings(deadline=None)
@given(st.floats(-1e6, 1e6), st.sampled_from(sorted(units._QUANTITY)))
def test_an_amount_in_its_own_unit_is_the_number_given(number: float, word: str) -> None:
    if word in ("°C", "°F"):
        number = abs(number)
    assert magnitude(quantity(number, word), word) == pytest.approx(number, rel=1e-15)


@settings(deadline=None)
@given(st.floats(-459, 1e4))
def test_temperatures_go_there_and_back(number: float) -> None:
    celsius = magnitude(quantity(number, "°F"), "°C")
    assert magnitude(quantity(celsius, "°C"), "°F") == pytest.approx(number, abs=1e-9)
