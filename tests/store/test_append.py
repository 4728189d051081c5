"""Once, no hole, the first answer for a repeat: what a push promises, on both databases."""

import pytest
from witnessmark.errors import FieldMissing, IdTaken, LogForked
from witnessmark.log.stamp import write_stamp
from witnessmark.store import Bearer, Cursor, Store, Synced, Taken
from written import Clock, Writer, digest_of, offers

EMPTY_DIGEST = "0" * 64


def push(store: Store, one: Bearer, *entries: dict[str, object], room: int = 0) -> Synced:
    return store.sync(one, None, offers(*entries), room)


def test_an_empty_log_has_no_cursor_and_a_digest_of_zeros(store: Store, one: Bearer) -> None:
    synced = store.sync(one, None, [], 5000)
    assert synced.page.rows == []
    assert synced.page.cursor is None
    assert (synced.head.head, synced.head.count, synced.head.digest) == (0, 0, EMPTY_DIGEST)


def test_entries_get_the_next_numbers_in_the_order_sent(
    store: Store, one: Bearer, writer: Writer
) -> None:
    assert push(store, one, *writer.entries(3)).answers == [Taken(n, None) for n in (1, 2, 3)]
    assert push(store, one, *writer.entries(2)).answers == [Taken(4, None), Taken(5, None)]


def test_a_repeat_is_answered_as_the_first_time(store: Store, one: Bearer, writer: Writer) -> None:
    entries = writer.entries(3)
    first = push(store, one, *entries)
    again = push(store, one, entries[2], writer.entry(), entries[0])
    assert again.answers == [Taken(3, None), Taken(4, None), Taken(1, None)]
    assert (first.head.count, again.head.count, again.head.head) == (3, 4, 4)


def test_the_same_entry_twice_in_one_batch_has_one_number(
    store: Store, one: Bearer, writer: Writer
) -> None:
    entry = writer.entry()
    synced = push(store, one, entry, entry)
    assert synced.answers == [Taken(1, None), Taken(1, None)]
    assert synced.head.count == 1


def test_another_text_under_a_taken_id_is_refused_and_the_rest_goes_on(
    store: Store, one: Bearer, writer: Writer
) -> None:
    entry = writer.entry()
    other = {**entry, "body": {"text": "another"}}
    synced = push(store, one, entry, other, writer.entry())
    assert synced.answers[0] == Taken(1, None)
    assert isinstance(synced.answers[1], IdTaken)
    assert synced.answers[2] == Taken(2, None)
    assert isinstance(push(store, one, other).answers[0], IdTaken)


def test_a_refused_entry_takes_no_number_and_blocks_nobody(
    store: Store, one: Bearer, writer: Writer
) -> None:
    poison = FieldMissing(what="The run")
    good = offers(*writer.entries(2))
    synced = store.sync(one, None, [good[0], poison, good[1]], 0)
    assert synced.answers == [Taken(1, None), poison, Taken(2, None)]


def test_count_and_digest_are_those_of_the_entries(
    store: Store, one: Bearer, writer: Writer, clock: Clock
) -> None:
    entries = writer.entries(4)
    entries[2]["stamp"] = write_stamp(clock.ms + 3_600_000)
    synced = push(store, one, *entries)
    orders = [answer.order for answer in synced.answers if isinstance(answer, Taken)]
    assert synced.head.digest == digest_of(list(zip(entries, orders, strict=True)))


def test_a_stamp_far_ahead_gets_an_order_of_the_server_rising_in_the_batch(
    store: Store, one: Bearer, writer: Writer, clock: Clock
) -> None:
    limit = write_stamp(clock.ms + 600_000, 7)
    ahead = write_stamp(clock.ms + 600_001)
    stamps = [ahead, limit, ahead]
    entries = [{**writer.entry(), "stamp": stamp} for stamp in stamps]
    answers = push(store, one, *entries).answers
    expected = [write_stamp(clock.ms), None, write_stamp(clock.ms, 1)]
    assert answers == [Taken(n + 1, order) for n, order in enumerate(expected)]
    clock.on(60)
    assert push(store, one, *entries).answers == answers


@pytest.mark.parametrize(
    ("behind_ms", "kept"),
    [(0, True), (5_000, True), (-5_000, False)],
    ids=["as the stamp", "below the stamp", "above the stamp"],
)
def test_an_order_from_before_a_restore_is_kept_if_it_can_be(
    store: Store, one: Bearer, writer: Writer, clock: Clock, *, behind_ms: int, kept: bool
) -> None:
    entry = writer.entry()
    held = write_stamp(writer.ms - behind_ms, entry["n"])
    offer = offers(entry)[0]._replace(order=held)
    order = held if kept else write_stamp(clock.ms)
    assert store.sync(one, None, [offer], 0).answers == [Taken(1, order)]


def test_a_held_order_far_ahead_is_made_anew(
    store: Store, one: Bearer, writer: Writer, clock: Clock
) -> None:
    far = write_stamp(clock.ms + 700_000)
    offer = offers({**writer.entry(), "stamp": far})[0]._replace(order=far)
    assert store.sync(one, None, [offer], 0).answers == [Taken(1, write_stamp(clock.ms))]


def test_a_cursor_of_another_history_forks_and_takes_nothing(
    store: Store, one: Bearer, writer: Writer
) -> None:
    push(store, one, *writer.entries(2))
    for cursor in (Cursor(1, "00000000"), Cursor(3, "00000000"), Cursor(0, "00000000")):
        with pytest.raises(LogForked):
            store.sync(one, cursor, offers(writer.entry()), 10)
        with pytest.raises(LogForked):
            store.sync(one, cursor, [], 10)
    assert store.sync(one, None, [], 10).head.count == 2
