"""Clearances turn round with their sign, and the choice from stock is the best there is."""

from __future__ import annotations

import itertools
import math
from pathlib import Path
from typing import Any

import numpy as np
from hypothesis import given, settings
from hypothesis import strategies as st
from tools import under_node
from vector_rules.measure import RULES
from witnessmark.trade import alike, assignment, choosing, fit, units, valve_train
from witnessmark.trade.units import Quantity

MANY = settings(max_examples=60, deadline=None, derandomize=True, database=None)
HERE = Path(__file__).parent
LENGTH = st.floats(1, 300)
SMALL = st.floats(0, 0.1)


def mm(number: float) -> Quantity:
    return alike.of_mm(number)


def plain(amount: Quantity | None) -> float:
    assert amount is not None
    return units.magnitude(amount, "mm")


@MANY
@given(LENGTH, LENGTH, SMALL, SMALL)
def test_shaft_and_bore_exchanged_turn_clearance_into_interference(
    bore: float, shaft: float, one: float, other: float
) -> None:
    found = fit.clearance(mm(bore), mm(shaft), mm(one), mm(other))
    turned = fit.clearance(mm(shaft), mm(bore), mm(other), mm(one))
    assert math.isclose(plain(found.clearance), plain(turned.interference), abs_tol=1e-9)
    assert plain(found.standard_uncertainty) == plain(turned.standard_uncertainty)
    assert plain(found.low) <= plain(found.clearance) <= plain(found.high)


@MANY
@given(st.floats(40, 80), st.floats(1.5, 2.5), st.floats(30, 60))
def test_oil_clearance_is_that_of_the_bore_the_shells_leave(
    housing: float, wall: float, journal: float
) -> None:
    found = fit.oil_clearance(mm(housing), [mm(wall), mm(wall)], mm(journal))
    left = fit.clearance(mm(housing - 2 * wall), mm(journal))
    assert math.isclose(plain(found.clearance), plain(left.clearance), abs_tol=1e-9)


@MANY
@given(st.floats(0.2, 1), st.floats(-0.05, 0.2))
def test_a_ring_gap_comes_back_with_its_bore(gap: float, change: float) -> None:
    there = fit.ring_gap_after(mm(gap), mm(change))
    assert math.isclose(plain(fit.ring_gap_after(there, mm(-change))), gap, rel_tol=1e-9)


@MANY
@given(st.floats(0, 1), st.floats(0.1, 1), st.floats(2, 4), st.floats(0.8, 2))
def test_the_shim_that_is_wanted_leaves_nothing_to_shim(
    measured: float, wanted: float, shim: float, ratio: float
) -> None:
    found = plain(valve_train.lash_shim(mm(measured), mm(wanted), mm(shim), ratio))
    lash = measured - (found - shim) * ratio
    assert math.isclose(lash, wanted, abs_tol=1e-9)


@MANY
@given(st.floats(0, 3), st.floats(0.5, 2), st.floats(1, 2))
def test_turns_come_back_from_their_travel(turns: float, pitch: float, ratio: float) -> None:
    found = valve_train.preload(turns, mm(pitch), ratio)
    assert math.isclose(valve_train.turns_for(found.stud_travel, mm(pitch)), turns, abs_tol=1e-9)
    assert plain(found.plunger_travel) >= plain(found.stud_travel)


@MANY
@given(st.floats(0.05, 1), st.floats(0.5, 2))
def test_lash_goes_through_a_rocker_and_back(lash: float, ratio: float) -> None:
    there = valve_train.lash_at_lifter(mm(lash), ratio)
    assert math.isclose(plain(valve_train.lash_at_valve(there, ratio)), lash, rel_tol=1e-12)


@st.composite
def tables(draw: st.DrawFn, rows: int = 5, columns: int = 6) -> list[list[float]]:
    height = draw(st.integers(1, rows))
    width = draw(st.integers(height, columns))
    # Whole numbers make many arrangements equally good, which is where searches go astray.
    cost = st.one_of(st.integers(-3, 3).map(float), st.floats(-50, 50))
    line = st.lists(cost, min_size=width, max_size=width)
    return draw(st.lists(line, min_size=height, max_size=height))


def least(costs: list[list[float]]) -> float:
    width = range(len(costs[0]))
    return min(
        math.fsum(row[column] for row, column in zip(costs, columns, strict=True))
        for columns in itertools.permutations(width, len(costs))
    )


def total(costs: list[list[float]], columns: list[int]) -> float:
    assert len(set(columns)) == len(costs)
    return math.fsum(row[column] for row, column in zip(costs, columns, strict=True))


def in_javascript(calls: list[tuple[str, Any]]) -> list[Any]:
    return under_node(HERE / "measured.mjs", calls, within=60)


@settings(MANY, max_examples=150)
@given(tables())
def test_an_assignment_costs_no_more_than_any_other(costs: list[list[float]]) -> None:
    assert math.isclose(total(costs, assignment.cheapest(costs)), least(costs), abs_tol=1e-9)


def test_both_sides_find_assignments_of_one_cost() -> None:
    random = np.random.default_rng(7)
    many = []
    for _ in range(120):
        rows, more = (int(each) for each in random.integers((1, 0), (16, 9)))
        # Every other table has many like costs, and so many arrangements of one cost.
        steps = random.integers(-4, 4, (rows, rows + more)).astype(float)
        many.append(steps if random.random() < 0.5 else steps + random.random(steps.shape))
    tables_ = [each.tolist() for each in many]
    answers = in_javascript([("assignment.cheapest", {"costs": costs}) for costs in tables_])
    for costs, columns in zip(tables_, answers, strict=True):
        here = total(costs, assignment.cheapest(costs))
        assert math.isclose(here, total(costs, columns), abs_tol=1e-9)


STOCK = st.lists(st.integers(1980, 2020).map(lambda each: each / 1000), min_size=4, max_size=6)
GAPS = st.lists(st.integers(4010, 4090).map(lambda each: each / 1000), min_size=1, max_size=4)


def choice(gaps: list[float], stock: list[float], target: float) -> choosing.Choice:
    amounts = [[mm(each) for each in listed] for listed in (gaps, stock)]
    return choosing.choose(*amounts, mm(target), pieces=2)


@settings(MANY, max_examples=100)
@given(GAPS, STOCK)
def test_shells_land_as_near_their_target_as_any_arrangement(
    gaps: list[float], stock: list[float]
) -> None:
    found = choice(gaps, stock, 0.05)
    costs = [[abs(gap - 2 * wall - 0.05) for wall in stock] for gap in gaps]
    assert math.isclose(plain(found.sum_of_deviations), least(costs), abs_tol=1e-9)
    assert not found.missing


@settings(MANY, max_examples=60)
@given(GAPS, STOCK, st.floats(0, 0.03))
def test_a_window_leaves_as_few_places_empty_as_can_be(
    gaps: list[float], stock: list[float], half: float
) -> None:
    window = {"least": mm(0.05 - half), "most": mm(0.05 + half)}
    amounts = [[mm(each) for each in listed] for listed in (gaps, stock)]
    found = choosing.choose(*amounts, mm(0.05), pieces=2, **window)
    fits = [[abs(gap - 2 * wall - 0.05) <= half + 1e-9 for wall in stock] for gap in gaps]
    served = max(
        sum(fits[row][column] for row, column in enumerate(columns))
        for columns in itertools.permutations(range(len(stock)), len(gaps))
    )
    assert len(gaps) - len(found.missing) == served
    for place in found.places:
        assert (place.piece is None) == (place.place in found.missing)
        if place.piece is not None and place.clearance is not None:
            room = gaps[place.place - 1] - 2 * stock[place.piece - 1]
            assert math.isclose(plain(place.clearance), room, abs_tol=1e-9)


@settings(MANY, max_examples=2)
@given(st.lists(st.tuples(GAPS, STOCK), min_size=20, max_size=30))
def test_both_sides_choose_with_one_sum(many: list[tuple[list[float], list[float]]]) -> None:
    given_ = [
        {"gaps_mm": gaps, "stock_mm": stock, "target_mm": 0.05, "pieces": 2} for gaps, stock in many
    ]
    answers = in_javascript([("choosing.best", each) for each in given_])
    for each, there in zip(given_, answers, strict=True):
        here = RULES["choosing.best"](each)
        for key in ("sum_of_deviations_mm", "missing"):
            assert here[key] == there[key] or math.isclose(here[key], there[key], abs_tol=1e-9)
