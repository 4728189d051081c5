"""Every order is whole, and goes from the middle or across."""

import pytest
from witnessmark.trade import sequence


@pytest.mark.parametrize("pattern", sequence.PATTERNS)
def test_every_fastener_has_one_place_in_the_order(pattern: str) -> None:
    for count in range(1, 61):
        for rows in range(1, min(count, 5) + 1):
            order = sequence.order(pattern, count, rows)
            assert sorted(order) == list(range(1, count + 1))


@pytest.mark.parametrize("pattern", sequence.PATTERNS)
def test_loosening_ends_where_tightening_began(pattern: str) -> None:
    for count in range(1, 61):
        order = sequence.order(pattern, count, 1)
        assert sequence.loosening(sequence.loosening(order)) == order
        assert sequence.loosening(order)[-1] == order[0]


@pytest.mark.parametrize("pattern", sequence.PATTERNS)
def test_every_fastener_is_drawn_at_a_place_of_its_own(pattern: str) -> None:
    for count in range(1, 61):
        places = sequence.positions(pattern, count, min(2, count))
        assert len(set(places)) == count
        assert all(0 <= x <= 1000 and 0 <= y <= 500 for x, y in places)


def test_across_a_circle_the_second_lies_as_far_off_as_may_be() -> None:
    for count in range(2, 61):
        first, second, *_ = sequence.order("circle", count)
        apart = abs(second - first)
        assert min(apart, count - apart) == count // 2


def test_circles_of_four_times_any_number_go_by_two_pairs_at_right_angles() -> None:
    for count in range(4, 61, 4):
        order = sequence.order("circle", count)
        for start in range(0, count, 4):
            one, opposite, quarter, last = order[start : start + 4]
            assert opposite - one == count // 2
            assert (quarter - one, last - one) == (count // 4, 3 * count // 4)


def test_rows_end_at_the_corners() -> None:
    for columns in range(2, 20):
        order = sequence.order("rows", 2 * columns, 2)
        assert set(order[-4:]) == {1, columns, columns + 1, 2 * columns}


def test_a_line_works_outwards_from_the_middle() -> None:
    for count in range(1, 61):
        off = [abs(2 * number - count - 1) for number in sequence.order("line", count)]
        assert off == sorted(off)
