"""Parts go where their differences lie nearest the wanted one: against every order."""

import itertools

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from witnessmark.trade import pairing, units

SIZES = st.integers(0, 40).map(lambda step: 20 + step / 1000)


def millimetres(sizes: list[float]) -> list[units.Quantity]:
    return [units.quantity(each, "mm") for each in sizes]


@settings(max_examples=60, deadline=None)
@given(
    st.lists(SIZES, min_size=1, max_size=4),
    st.lists(SIZES, min_size=4, max_size=5),
    st.integers(-20, 20).map(lambda step: step / 1000),
)
def test_no_other_order_lands_nearer(
    places: list[float], parts: list[float], wanted: float
) -> None:
    found = pairing.pair(millimetres(places), millimetres(parts), units.quantity(wanted, "mm"))
    least = min(
        sum(abs(place - part - wanted) for place, part in zip(places, order, strict=True))
        for order in itertools.permutations(parts, len(places))
    )
    assert units.magnitude(found.sum_of_deviations, "mm") == pytest.approx(least, abs=1e-9)
    assert sorted([*found.parts, *found.left]) == list(range(1, len(parts) + 1))


def test_inches_pair_with_millimetres() -> None:
    places = [units.quantity(20 / 25.4, "in"), units.quantity(20.1 / 25.4, "in")]
    found = pairing.pair(places, millimetres([20.05, 19.95]), units.quantity(0.05, "mm"))
    assert found.parts == (2, 1)
