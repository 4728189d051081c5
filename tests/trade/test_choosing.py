"""Two shells of unlike thickness: no way of sharing out the stock is better than the one chosen."""

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
from witnessmark.trade import alike, choosing, mixing, units
from witnessmark.trade.units import Quantity

HERE = Path(__file__).parent
MANY = settings(max_examples=60, deadline=None, derandomize=True, database=None)
GAPS = st.lists(st.integers(4030, 4070).map(lambda each: each / 1000), min_size=1, max_size=3)
WALLS = st.lists(st.integers(1990, 2010).map(lambda each: each / 1000), min_size=6, max_size=6)


def mm(number: float) -> Quantity:
    return alike.of_mm(number)


def plain(amount: Quantity) -> float:
    return units.magnitude(amount, "mm")


def amounts(*lists: list[float]) -> list[list[Quantity]]:
    return [[mm(each) for each in listed] for listed in lists]


def least(gaps: list[float], walls: list[float]) -> float:
    orders = itertools.permutations(walls, 2 * len(gaps))
    pairs = range(len(gaps))
    return min(
        sum(abs(gaps[i] - order[2 * i] - order[2 * i + 1] - 0.05) for i in pairs)
        for order in orders
    )


@MANY
@given(GAPS, WALLS)
def test_mixed_shells_land_as_near_as_any_pairing(gaps: list[float], walls: list[float]) -> None:
    found = mixing.choose(*amounts(gaps, walls), mm(0.05))
    assert math.isclose(plain(found.sum_of_deviations), least(gaps, walls), abs_tol=1e-9)
    used = [shell for place in found.places for shell in place.shells]
    assert len(set(used)) == 2 * len(gaps)


@MANY
@given(GAPS, WALLS)
def test_mixing_is_never_worse_than_pairs_of_one_thickness(
    gaps: list[float], walls: list[float]
) -> None:
    twos = [2] * len(walls)
    mixed = mixing.choose(*amounts(gaps, walls), mm(0.05), counts=twos)
    paired = choosing.choose(*amounts(gaps, walls), mm(0.05), pieces=2)
    assert plain(mixed.sum_of_deviations) <= plain(paired.sum_of_deviations) + 1e-9


@MANY
@given(GAPS, WALLS)
def test_a_counted_stock_is_the_stock_piece_by_piece(gaps: list[float], walls: list[float]) -> None:
    kinds = sorted(set(walls))
    counts = [walls.count(each) for each in kinds]
    one = mixing.choose(*amounts(gaps, walls), mm(0.05))
    other = mixing.choose(*amounts(gaps, kinds), mm(0.05), counts=counts)
    assert math.isclose(plain(one.sum_of_deviations), plain(other.sum_of_deviations), abs_tol=1e-9)


def test_both_sides_mix_the_same_shells() -> None:
    random = np.random.default_rng(11)
    given_: list[dict[str, Any]] = []
    for _ in range(30):
        places = int(random.integers(1, 6))
        walls = [round(1.99 + 0.002 * i, 3) for i in range(6)]
        gaps = [float(each) for each in np.round(random.uniform(4.03, 4.07, places), 3)]
        counts = [int(each) for each in random.integers(2, 6, 6)]
        given_.append({"gaps_mm": gaps, "walls_mm": walls, "target_mm": 0.05, "counts": counts})
    calls = [["mixing.choose", each] for each in given_]
    theirs = under_node(HERE / "measured.mjs", calls, within=60)
    for each, there in zip(given_, theirs, strict=True):
        here = RULES["mixing.choose"](each)
        shells = [[place["shells"] for place in side["places"]] for side in (here, there)]
        assert shells[0] == shells[1]
