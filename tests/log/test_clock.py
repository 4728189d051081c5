"""Clocks that run fast, slow or backwards never turn the order of what a device knows."""

from hypothesis import given, settings
from hypothesis import strategies as st
from witnessmark.log.stamp import (
    AHEAD_MS,
    Clock,
    answered,
    order_given,
    seen,
    stamp_ms,
    tick,
    write_stamp,
)

MANY = settings(max_examples=1000, deadline=None, derandomize=True, database=None)
YEAR = 365 * 24 * 3600 * 1000
NOW = 1_930_000_000_000
CLOCKS = st.integers(NOW - YEAR, NOW + YEAR)
STAMPS = st.builds(write_stamp, CLOCKS, st.integers(0, 0xFFFF))


@MANY
@given(st.lists(st.one_of(CLOCKS, STAMPS), max_size=20))
def test_each_stamp_is_above_all_made_and_seen_before(steps: list[int | str]) -> None:
    clock, most = Clock(), ""
    for step in steps:
        if isinstance(step, str):
            clock, most = seen(clock, step), max(most, step)
        else:
            ticked = tick(clock, step)
            assert ticked.stamp > most
            clock, most = ticked.clock, ticked.stamp


@MANY
@given(st.lists(CLOCKS, min_size=1, max_size=5), CLOCKS)
def test_after_an_answer_no_new_stamp_is_far_ahead(before: list[int], device_ms: int) -> None:
    clock = Clock()
    for moment in before:
        clock = tick(clock, moment).clock
    clock = answered(clock, NOW, device_ms)
    assert stamp_ms(tick(clock, device_ms).stamp) <= NOW + AHEAD_MS + 1


@MANY
@given(st.lists(STAMPS, max_size=20))
def test_orders_given_in_a_batch_rise_and_lie_near_the_servers_time(stamps: list[str]) -> None:
    given_before, last = [], None
    for stamp in stamps:
        order = order_given(stamp, NOW, last)
        assert (order is None) is (stamp_ms(stamp) <= NOW + AHEAD_MS)
        if order is not None:
            given_before.append(order)
            last = order
    assert sorted(set(given_before)) == given_before
    assert all(stamp_ms(order) == NOW for order in given_before)


@MANY
@given(STAMPS, st.integers(0, YEAR))
def test_an_order_handed_back_after_a_restore_is_kept(stamp: str, later: int) -> None:
    order = order_given(stamp, NOW)
    if order is not None:
        assert order_given(stamp, NOW + later, None, order) == order
