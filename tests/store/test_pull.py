"""A page after a cursor: nothing twice, nothing left out, within its bounds."""

import json
from dataclasses import replace

import pytest
from witnessmark.store import Bearer, Store, log_read
from witnessmark.store.log_read import PAGE_BYTES
from written import Writer, offers


def test_a_page_leaves_out_what_was_just_sent_and_the_cursor_counts_it(
    store: Store, one: Bearer, writer: Writer
) -> None:
    store.sync(one, None, offers(*writer.entries(3)), 0)
    mine = writer.entries(2)
    synced = store.sync(one, None, offers(*mine), 5000)
    assert [row[0] for row in synced.page.rows] == [1, 2, 3]
    assert str(synced.page.cursor) == f"5.{mine[1]['id'][-8:]}"


def test_a_repeat_sent_is_left_out_too(store: Store, one: Bearer, writer: Writer) -> None:
    entries = writer.entries(3)
    store.sync(one, None, offers(*entries), 0)
    synced = store.sync(one, None, offers(entries[1]), 5000)
    assert [row[0] for row in synced.page.rows] == [1, 3]


def test_another_text_under_a_taken_id_does_not_hide_the_entry(
    store: Store, one: Bearer, writer: Writer
) -> None:
    entry = writer.entry()
    store.sync(one, None, offers(entry), 0)
    other = {**entry, "body": {"text": "another"}}
    synced = store.sync(one, None, offers(other), 5000)
    assert [row[0] for row in synced.page.rows] == [1]


def test_the_cursor_stops_where_the_page_is_full(store: Store, one: Bearer, writer: Writer) -> None:
    entries = writer.entries(5)
    store.sync(one, None, offers(*entries), 0)
    synced = store.sync(one, None, [], 2)
    assert [row[0] for row in synced.page.rows] == [1, 2]
    assert str(synced.page.cursor) == f"2.{entries[1]['id'][-8:]}"
    rest = store.sync(one, synced.page.cursor, [], 5000)
    assert [row[0] for row in rest.page.rows] == [3, 4, 5]


def test_the_cursor_goes_over_sent_entries_behind_a_full_page(
    store: Store, one: Bearer, writer: Writer
) -> None:
    store.sync(one, None, offers(*writer.entries(2)), 0)
    mine = writer.entries(2)
    synced = store.sync(one, None, offers(*mine), 2)
    assert str(synced.page.cursor) == f"4.{mine[1]['id'][-8:]}"


def test_no_room_pulls_nothing_and_the_cursor_still_counts_what_was_sent(
    store: Store, one: Bearer, writer: Writer
) -> None:
    mine = writer.entries(2)
    synced = store.sync(one, None, offers(*mine), 0)
    assert synced.page.rows == []
    assert str(synced.page.cursor) == f"2.{mine[1]['id'][-8:]}"
    behind = store.sync(one, None, offers(writer.entry()), 0)
    assert (behind.page.rows, behind.page.cursor) == ([], None)


def test_a_page_has_at_most_four_mebibytes_but_at_least_one_entry(
    store: Store, one: Bearer, writer: Writer, monkeypatch: pytest.MonkeyPatch
) -> None:
    big = [writer.entry(body={"text": "ö" * 30_000}) for _ in range(75)]
    store.sync(one, None, offers(*big), 0)
    page = store.sync(one, None, [], 5000).page
    size = sum(len(row[2].encode()) for row in page.rows)
    assert PAGE_BYTES - 70_000 < size <= PAGE_BYTES
    monkeypatch.setattr(log_read, "PAGE_BYTES", 10)
    assert [row[0] for row in store.sync(one, None, [], 5000).page.rows] == [1]


def test_what_comes_out_is_the_text_that_went_in(store: Store, one: Bearer, writer: Writer) -> None:
    entry = writer.entry(body={"text": '45 lbf·ft \u2028 \U0001f529 \0 \\ "'})
    store.sync(one, None, offers(entry), 0)
    page = store.sync(one, None, [], 5000).page
    assert page.rows[0][2] == offers(entry)[0].text
    assert json.loads(page.rows[0][2]) == entry


def test_every_page_by_page_walk_ends_with_the_whole_log(
    store: Store, one: Bearer, writer: Writer
) -> None:
    store.sync(one, None, offers(*writer.entries(1_203)), 0)
    for room in (1, 7, 500, 501):
        seen, cursor = list[int](), None
        for _ in range(1 if room == 1 else 2_000):
            page = store.sync(one, cursor, [], room).page
            seen += [row[0] for row in page.rows]
            cursor = page.cursor
            if not page.rows:
                break
        assert seen == list(range(1, len(seen) + 1))
        assert len(seen) == (1 if room == 1 else 1_203)


def test_the_log_is_read_by_number_with_the_same_bounds(
    store: Store, one: Bearer, writer: Writer
) -> None:
    entries = writer.entries(5)
    store.sync(one, None, offers(*entries), 0)
    found = store.log(one.workshop, 2, 2)
    assert [row[0] for row in found.page.rows] == [3, 4]
    assert (str(found.page.cursor), found.head) == (f"4.{entries[3]['id'][-8:]}", 5)
    past = store.log(one.workshop, 99, 5)
    assert (past.page.rows, past.page.cursor) == ([], None)


def test_the_bearer_is_who_carried_the_entry(store: Store, one: Bearer, writer: Writer) -> None:
    store.sync(replace(one), None, offers(writer.entry()), 0)
    with store.engine.connect() as connection:
        told = connection.exec_driver_sql("SELECT carrier FROM entry").scalar()
    assert told == one.device
