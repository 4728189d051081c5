"""The chosen set is the best there is: against trying every choice, and against an exact solver."""

import itertools
import random

import numpy
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.optimize import Bounds, LinearConstraint, milp
from witnessmark.trade import sets, units
from witnessmark.trade.set_pick import Pool
from witnessmark.trade.set_search import cheapest


def cost(pool: Pool, places: tuple[int, ...] | list[int]) -> float:
    return sum(
        factor * (max(column[each] for each in places) - min(column[each] for each in places))
        for column, factor in zip(pool.columns, pool.factors, strict=True)
    )


def rank(pool: Pool, places: tuple[int, ...] | list[int]) -> tuple[float, float, int]:
    wear = sum(pool.wear[each] for each in places)
    donors = len({pool.donors[each] for each in places})
    return round(cost(pool, places), 7), wear, donors


@st.composite
def pools(draw: st.DrawFn) -> Pool:
    """Coarse steps, so that ties are many."""
    size, measures = draw(st.integers(3, 9)), draw(st.integers(1, 3))
    choose = draw(st.integers(1, size))
    column = st.lists(st.integers(0, 6).map(lambda step: step / 4), min_size=size, max_size=size)
    return Pool(
        columns=tuple(tuple(draw(column)) for _ in range(measures)),
        factors=tuple(draw(st.sampled_from((0.5, 1.0, 2.0))) for _ in range(measures)),
        choose=choose,
        pinned=frozenset(draw(st.sets(st.integers(0, size - 1), max_size=min(choose, 2)))),
        wear=tuple(float(draw(st.integers(0, 2))) for _ in range(size)),
        donors=tuple(draw(st.sampled_from("abc")) for _ in range(size)),
    )


@settings(max_examples=150, deadline=None)
@given(pools())
def test_the_set_equals_the_best_of_every_choice_ties_included(pool: Pool) -> None:
    every = itertools.combinations(range(len(pool.wear)), pool.choose)
    allowed = (each for each in every if pool.pinned <= set(each))
    assert rank(pool, cheapest(pool)) == min(rank(pool, each) for each in allowed)


def solved(pool: Pool) -> float:
    """The least cost by SciPy's mixed-integer solver: who is in, then each window's ends."""
    size, measures = len(pool.wear), len(pool.columns)
    width = size * (1 + 2 * measures)
    rows = [numpy.array([1.0] * size + [0.0] * (width - size))]
    lower, upper = [float(pool.choose)], [float(pool.choose)]
    price = [0.0] * size
    for at, column in enumerate(pool.columns):
        for side, sign in enumerate((-1.0, 1.0)):
            price += [sign * pool.factors[at] * value for value in column]
            start = size * (1 + 2 * at + side)
            once = numpy.zeros(width)
            once[start : start + size] = 1
            rows, lower, upper = [*rows, once], [*lower, 1.0], [*upper, 1.0]
            for place, value in enumerate(column):
                within = numpy.zeros(width)
                within[place] = 1
                for end, other in enumerate(column):
                    within[start + end] = -1.0 if sign * (other - value) >= 0 else 0.0
                rows, lower, upper = [*rows, within], [*lower, -numpy.inf], [*upper, 0.0]
    found = milp(
        price,
        constraints=LinearConstraint(numpy.array(rows), lower, upper),
        integrality=numpy.ones(width),
        bounds=Bounds(0, 1),
    )
    return float(found.fun)


@pytest.mark.parametrize("seed", [1, 2, 3])
def test_a_large_set_costs_what_an_exact_solver_finds(seed: int) -> None:
    chance = random.Random(seed)  # noqa: S311 - sizes, no secrets
    columns = tuple(tuple(round(chance.gauss(20, 1), 2) for _ in range(24)) for _ in range(2))
    pool = Pool(columns, (1.0, 0.5), 8, frozenset(), (0.0,) * 24, ("",) * 24)
    assert cost(pool, cheapest(pool)) == pytest.approx(solved(pool), abs=1e-6)


@pytest.mark.parametrize("seed", [4, 5])
def test_sixteen_of_sixty_four_cost_what_an_exact_solver_finds(seed: int) -> None:
    chance = random.Random(seed)  # noqa: S311 - sizes, no secrets
    columns = tuple(tuple(round(chance.gauss(20, 1), 2) for _ in range(64)) for _ in range(2))
    pool = Pool(columns, (1.0, 0.5), 16, frozenset(), (0.0,) * 64, ("",) * 64)
    assert cost(pool, cheapest(pool)) == pytest.approx(solved(pool), abs=1e-6)


LENGTHS = ("187.02", "187.11", "186.96", "187.05", "187.08", "187.21")


def pieces() -> list[sets.Piece]:
    listed = (units.quantity(each, "mm") for each in LENGTHS)
    return [sets.Piece(str(place), (each,)) for place, each in enumerate(listed, 1)]


@settings(max_examples=25, deadline=None)
@given(st.floats(0.5, 3), st.permutations(range(6)))
def test_order_of_the_pool_and_weight_change_no_spread(weight: float, order: list[int]) -> None:
    pool = pieces()
    shuffled = [pool[each] for each in order]
    measure = sets.Measure("length", weight, units.quantity(0.1, "mm"))
    found = sets.best(shuffled, [measure], 3)
    assert units.magnitude(found.spreads[0], "mm") == pytest.approx(0.06)


def test_the_next_best_spare_widens_the_set_least() -> None:
    found = sets.best(pieces(), [sets.Measure("length")], 3)
    assert [each.name for each in found.spares] == ["2", "3", "6"]
    assert units.magnitude(found.spares[0].spreads[0], "mm") == pytest.approx(0.09)


def test_a_pinned_piece_is_in_and_an_excluded_one_is_nowhere() -> None:
    found = sets.best(pieces(), [sets.Measure("length")], 2, pinned=["6"], excluded=["2"])
    assert found.chosen == ("5", "6")
    assert "2" not in [each.name for each in found.spares]


def test_limits_in_inches_turn_away_pieces_in_millimetres() -> None:
    measure = sets.Measure("length", upper=units.quantity(187.1 / 25.4, "in"))
    found = sets.best(pieces(), [measure], 3)
    assert [(each.name, each.side) for each in found.outside] == [("2", "above"), ("6", "above")]
