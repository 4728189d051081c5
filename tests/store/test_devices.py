"""Pairing, keys, names, ends, and each device's own count."""

import pytest
from sqlalchemy import select
from witnessmark.errors import (
    DeviceRevoked,
    DeviceUnknown,
    PairingCodeUnknown,
    PairingPaused,
)
from witnessmark.store import Bearer, Store, tables
from witnessmark.store.errors import DeviceMissing
from witnessmark.store.ids import key_hash
from witnessmark.store.numbers import holes, with_numbers
from written import Clock, Writer, offers


def wrong(store: Store, times: int) -> None:
    for _ in range(times):
        with pytest.raises(PairingCodeUnknown):
            store.pair("0000-0000", "stranger")


def test_a_code_pairs_once(store: Store) -> None:
    code = store.pairing_code().code
    made = store.pair(code.replace("-", " "), "bench phone")
    assert store.bearer(made.key).device == made.device
    with pytest.raises(PairingCodeUnknown):
        store.pair(code, "a second phone")


def test_a_code_ends_after_ten_minutes(store: Store, clock: Clock) -> None:
    made = store.pairing_code()
    assert made.expires == "2031-02-27T23:16:40Z"
    clock.on(599)
    store.pair(made.code, "in time")
    late = store.pairing_code()
    clock.on(600)
    with pytest.raises(PairingCodeUnknown):
        store.pair(late.code, "too late")


def test_five_wrong_tries_pause_pairing_and_pauses_double_to_an_hour(
    store: Store, clock: Clock
) -> None:
    for minutes in (1, 2, 4, 8, 16, 32, 60, 60):
        wrong(store, 5)
        code = store.pairing_code().code
        with pytest.raises(PairingPaused) as paused:
            store.pair(code, "right code, wrong time")
        assert paused.value.facts["seconds"] == minutes * 60
        clock.on(minutes * 60)
    store.pair(store.pairing_code().code, "patient")
    wrong(store, 5)
    with pytest.raises(PairingPaused) as paused:
        store.pair("1", "after a success the first pause is a minute again")
    assert paused.value.facts["seconds"] == 60


def test_a_code_stays_good_through_a_pause(store: Store, clock: Clock) -> None:
    code = store.pairing_code().code
    wrong(store, 5)
    clock.on(60)
    store.pair(code, "patient")


def test_neither_key_nor_code_is_stored_as_it_is(store: Store) -> None:
    code = store.pairing_code().code
    key = store.pair(store.pairing_code().code, "phone").key
    with store.engine.connect() as connection:
        kept = str(connection.execute(select(tables.pairing)).all())
        kept += str(connection.execute(select(tables.device)).all())
    assert code not in kept
    assert code.replace("-", "") not in kept
    assert key not in kept
    assert key_hash(key) in kept
    assert len(key) == 43


@pytest.mark.parametrize("key", ["", "x", "\ud800", "a" * 100_000])
def test_a_broken_key_is_nobodys(store: Store, key: str) -> None:
    with pytest.raises(DeviceUnknown):
        store.bearer(key)


def test_a_revoked_device_is_told_so_and_its_entries_stay(store: Store, writer: Writer) -> None:
    made = store.pair(store.pairing_code().code, "lost phone")
    store.sync(store.bearer(made.key), None, offers(writer.entry()), 0)
    assert store.revoke(made.device).revoked is not None
    with pytest.raises(DeviceRevoked):
        store.bearer(made.key)
    assert store.head(made.workshop) == 1


def test_a_device_can_be_named_and_an_unknown_one_cannot(store: Store, one: Bearer) -> None:
    assert store.rename(one.device, "tablet").name == "tablet"
    with pytest.raises(DeviceMissing):
        store.rename("nobody", "x")


def test_holes_and_doubles_in_a_devices_count_show(
    store: Store, one: Bearer, writer: Writer
) -> None:
    mine = Writer(device=one.device)
    entries = mine.entries(9)
    for entry, n in zip(entries, (1, 2, 5, 6, 9, 6, 3, 12, 2), strict=True):
        entry["n"] = n
    store.sync(one, None, offers(*entries[:4]), 0)
    store.sync(one, None, offers(*entries[4:]), 0)
    told = next(d for d in store.devices() if d.id == one.device)
    assert (told.highest, told.holes) == (12, [[4, 4], [7, 8], [10, 11]])
    assert told.doubles == [2, 6]
    assert store.rebuild().differences == []


def test_runs_join_when_the_hole_between_them_is_filled() -> None:
    runs, doubles = with_numbers([[1, 3], [5, 6]], [4, 8, 8, 1])
    assert (runs, doubles) == ([[1, 6], [8, 8]], [1, 8])
    assert holes(runs) == [[7, 7]]
    assert holes([[3, 4]]) == [[1, 2]]
    assert holes([]) == []


def test_last_contact_is_noted_once_a_minute(store: Store, one: Bearer, clock: Clock) -> None:
    def contact() -> str | None:
        return next(d for d in store.devices() if d.id == one.device).last_contact

    store.sync(one, None, [], 0)
    assert contact() == "2031-02-27T23:06:40Z"
    clock.on(30)
    key = store.pair(store.pairing_code().code, "again").key
    phone = store.bearer(key)
    store.sync(phone, None, [], 0)
    phone = store.bearer(key)
    clock.on(30)
    store.sync(phone, None, [], 0)
    assert next(d for d in store.devices() if d.id == phone.device).last_contact == (
        "2031-02-27T23:07:10Z"
    )
