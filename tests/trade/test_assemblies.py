"""No arrangement is more equal: against trying every one, and against an exact solver."""

import itertools
import random
import time

import numpy
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.optimize import Bounds, LinearConstraint, milp
from witnessmark.trade import assemblies, even_totals, together, units

Columns = list[list[float]]


def every_spread(columns: Columns) -> float:
    """The least spread of all arrangements."""
    places = range(len(columns[0]))
    orders = itertools.product(itertools.permutations(places), repeat=len(columns) - 1)
    return min(
        even_totals.spread(columns, [list(row) for row in zip(places, *order, strict=True)])
        for order in orders
    )


def found(columns: Columns) -> tuple[float, bool]:
    made = assemblies.balance([[units.quantity(each, "g") for each in col] for col in columns])
    for pieces in zip(*made.assemblies, strict=True):
        assert sorted(pieces) == list(range(1, len(columns[0]) + 1))
    return units.magnitude(made.spread, "g"), made.proved


def pools(most: int, columns: int) -> st.SearchStrategy[Columns]:
    """Coarse and fine steps, so that ties are many and few."""
    weight = st.one_of(
        st.integers(1, 12).map(float), st.integers(10_000, 10_300).map(lambda step: step / 100)
    )
    return st.integers(1, most).flatmap(
        lambda places: st.lists(
            st.lists(weight, min_size=places, max_size=places), min_size=columns, max_size=columns
        )
    )


@settings(max_examples=60, deadline=None)
@given(pools(5, 2))
def test_pairs_equal_the_best_of_every_arrangement(columns: Columns) -> None:
    spread, proved = found(columns)
    assert spread == pytest.approx(every_spread(columns), abs=1e-6)
    assert proved


@settings(max_examples=60, deadline=None)
@given(pools(4, 3))
def test_threes_equal_the_best_of_every_arrangement(columns: Columns) -> None:
    spread, proved = found(columns)
    assert spread == pytest.approx(every_spread(columns), abs=1e-6)
    assert proved


@settings(max_examples=30, deadline=None)
@given(pools(4, 3), st.randoms(use_true_random=False))
def test_the_order_on_the_bench_changes_no_spread(columns: Columns, chance: random.Random) -> None:
    shuffled = [chance.sample(column, len(column)) for column in columns]
    assert found(shuffled)[0] == pytest.approx(found(columns)[0], abs=1e-6)


@settings(max_examples=40, deadline=None)
@given(st.integers(2, 3).flatmap(lambda columns: pools(4, columns)), st.data())
def test_what_stays_together_is_as_equal_as_the_best_that_keeps_it(
    columns: Columns, data: st.DataObject
) -> None:
    places = len(columns[0])
    line = [data.draw(st.none() | st.integers(1, places)) for _ in columns]
    made = assemblies.balance(
        [[units.quantity(each, "g") for each in col] for col in columns], [line]
    )
    keeps = together.keeping(together.merged([line], len(columns), places))
    assert all(keeps([at - 1 for at in row]) for row in made.assemblies)
    orders = itertools.product(itertools.permutations(range(places)), repeat=len(columns) - 1)
    tried = ([list(row) for row in zip(range(places), *order, strict=True)] for order in orders)
    best = min(even_totals.spread(columns, rows) for rows in tried if all(map(keeps, rows)))
    assert units.magnitude(made.spread, "g") == pytest.approx(best, abs=1e-6)


def drawn(seed: int, resolution: float, places: int = 8) -> Columns:
    chance = random.Random(seed)  # noqa: S311 - weights, no secrets
    return [
        [round(chance.uniform(mean - 3, mean + 3) / resolution) * resolution for _ in range(places)]
        for mean in (412, 104, 579)
    ]


def solved(columns: Columns) -> float:
    """The least spread by SciPy's mixed-integer solver: who sits where, then low and high."""
    places = len(columns[0])
    seats = places * places
    size = 2 * seats + 2
    once, ends = [], []
    for column in range(2):
        table = numpy.arange(seats).reshape(places, places) + column * seats
        for line in (*table, *table.T):
            row = numpy.zeros(size)
            row[line] = 1
            once.append(row)
    for place in range(places):
        total = numpy.zeros(size)
        for column in range(2):
            start = column * seats + place * places
            total[start : start + places] = numpy.array(columns[column + 1]) - 570 * column
        ends += [(total, -2, place), (total, -1, place)]
    rows, low, high = list(once), [1.0] * len(once), [1.0] * len(once)
    for total, end, place in ends:
        row = total.copy()
        row[end] = -1
        own = columns[0][place] - 412
        rows.append(row)
        low.append(-own if end == -2 else -numpy.inf)
        high.append(numpy.inf if end == -2 else -own)
    price = numpy.zeros(size)
    price[-2:] = -1, 1
    kind = numpy.array([1] * (2 * seats) + [0, 0])
    bounds = Bounds([0] * (2 * seats) + [-numpy.inf] * 2, [1] * (2 * seats) + [numpy.inf] * 2)
    answer = milp(
        price,
        constraints=LinearConstraint(numpy.array(rows), low, high),
        integrality=kind,
        bounds=bounds,
    )
    assert answer.success
    return float(answer.fun)


@pytest.mark.parametrize(("seed", "resolution"), [(1, 1.0), (2, 0.5), (3, 0.1)])
def test_eight_places_are_as_equal_as_an_exact_solver_makes_them(
    seed: int, resolution: float
) -> None:
    columns = drawn(seed, resolution)
    spread, proved = found(columns)
    assert spread == pytest.approx(solved(columns), abs=1e-5)
    assert proved


@pytest.mark.parametrize("resolution", [1.0, 0.1, 0.01, 0.001])
def test_eight_places_take_less_than_two_seconds(resolution: float) -> None:
    columns = drawn(7, resolution)
    begin = time.process_time()
    assert assemblies.arranged(columns)
    assert time.process_time() - begin < 2


def test_twelve_places_are_told_as_not_proved() -> None:
    assert not found(drawn(1, 0.01, places=12))[1]
