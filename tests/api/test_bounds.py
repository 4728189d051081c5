"""Bombs, wrong types, broken bodies: each turned away before it costs anything."""

import errno
import gzip
import json
import sqlite3
import zlib
from contextlib import closing
from pathlib import Path
from typing import Any

import pytest
from witnessmark.store import Store, engine, photos
from written import Writer

MEBIBYTE = 1024 * 1024


def code_of(answer: Any) -> tuple[int, str]:
    assert answer.mimetype == "application/problem+json"
    assert set(answer.json) == {"type", "title", "status", "code", "next"}
    assert answer.json["status"] == answer.status_code
    return answer.status_code, answer.json["code"]


def test_a_bomb_of_zeros_is_cut_off_while_it_is_unzipped(phone: Any) -> None:
    bomb = gzip.compress(bytes(300 * MEBIBYTE), 9)
    assert len(bomb) < 2 * MEBIBYTE
    assert code_of(phone.raw(bomb, Content_Encoding="gzip")) == (413, "too-much")


def test_more_than_two_mebibytes_zipped_are_too_much(phone: Any) -> None:
    packed = zlib.compressobj(0, wbits=31)
    body = packed.compress(b'{"x":"' + b"x" * 2 * MEBIBYTE + b'"}') + packed.flush()
    assert code_of(phone.raw(body, Content_Encoding="gzip")) == (413, "too-much")


def test_more_than_eight_mebibytes_plain_are_too_much(phone: Any) -> None:
    fits = b'{"x":"' + b"x" * (8 * MEBIBYTE - 8) + b'"}'
    assert len(fits) == 8 * MEBIBYTE
    assert phone.raw(fits).status_code == 200
    assert code_of(phone.raw(fits + b" ")) == (413, "too-much")


def test_more_than_two_thousand_entries_are_too_much_and_none_is_taken(
    phone: Any, writer: Writer
) -> None:
    entries = writer.entries(2_001)
    assert code_of(phone.post("/sync", {"entries": entries})) == (413, "too-much")
    assert phone.sync(room=0)["head"] == 0
    assert phone.sync(*entries[:2_000], room=0)["head"] == 2_000


@pytest.mark.parametrize("opens", [b"[", b'{"a":', b'[{"a":'])
def test_deep_nesting_is_counted_on_bytes(phone: Any, opens: bytes) -> None:
    bomb = b'{"entries":' + opens * 100_000
    assert code_of(phone.raw(bomb)) == (413, "too-much")


def test_sixty_four_levels_are_read_and_sixty_five_are_not(phone: Any) -> None:
    # The object and the list of entries are two of the levels.
    fits = b'{"entries":[' + b"[" * 62 + b"]" * 62 + b"]}"
    assert phone.raw(fits).json["answers"][0]["code"] == "not-an-object"
    deep = b'{"entries":[' + b"[" * 63 + b"]" * 63 + b"]}"
    assert code_of(phone.raw(deep)) == (413, "too-much")


def test_brackets_in_text_are_no_nesting(phone: Any, writer: Writer) -> None:
    entry = writer.entry(body={"text": '\\"[{' * 500})
    assert phone.sync(entry)["answers"] == [1]


@pytest.mark.parametrize(
    "body",
    [b"", b"{", b'{"a":1}x', b"\xff\xfe{}", b"\xef\xbb\xbf{}", b"{'a':1}", b'{"a":"\n"}', b"nul"],
)
def test_what_no_parser_reads_is_not_json(phone: Any, body: bytes) -> None:
    assert code_of(phone.raw(body)) == (400, "not-json")


@pytest.mark.parametrize("cut", [5, 25, -1])
def test_a_zipped_body_cut_off_half_way_is_not_json(phone: Any, writer: Writer, cut: int) -> None:
    body = gzip.compress(json.dumps({"entries": [writer.entry()]}).encode())[:cut]
    assert code_of(phone.raw(body, Content_Encoding="gzip")) == (400, "not-json")
    assert code_of(phone.raw(b"{}", Content_Encoding="gzip")) == (400, "not-json")


@pytest.mark.parametrize("mime", ["text/plain", "application/x-www-form-urlencoded", ""])
def test_another_type_is_not_read(phone: Any, mime: str) -> None:
    assert code_of(phone.raw(b"{}", Content_Type=mime)) == (415, "type-unknown")


def test_json_with_a_charset_is_read_and_another_encoding_is_not(phone: Any) -> None:
    assert phone.raw(b"{}", Content_Type="application/json; charset=utf-8").status_code == 200
    assert code_of(phone.raw(b"{}", Content_Encoding="br")) == (415, "type-unknown")
    assert phone.raw(b"{}", Content_Encoding="identity").status_code == 200


def test_a_held_database_asks_to_come_again(
    app: Any, phone: Any, store: Store, writer: Writer
) -> None:
    with closing(sqlite3.connect(store.data / engine.FILE_NAME)) as holder:
        holder.execute("BEGIN IMMEDIATE")
        impatient = "PRAGMA busy_timeout=10"
        engine.event.listen(store.engine, "begin", lambda c: c.exec_driver_sql(impatient))
        with store.engine.connect() as connection:
            connection.exec_driver_sql("SELECT 1")
        answer = phone.post("/sync", {"entries": [writer.entry()]})
    assert code_of(answer) == (503, "store-busy")
    assert int(answer.headers["Retry-After"]) > 0
    assert phone.sync(room=0)["head"] == 0


def test_a_full_disk_is_no_room(
    phone: Any, store: Store, writer: Writer, monkeypatch: pytest.MonkeyPatch
) -> None:
    with store.engine.connect() as connection:
        pages = connection.exec_driver_sql("PRAGMA page_count").scalar_one()
        connection.exec_driver_sql(f"PRAGMA max_page_count={pages + 3}")
    big = [writer.entry(body={"text": "x" * 60_000}) for _ in range(9)]
    assert code_of(phone.post("/sync", {"entries": big})) == (507, "no-room")
    assert phone.sync(room=0)["head"] == 0

    def full(*_: object) -> None:
        raise OSError(errno.ENOSPC, "No space left on device")

    monkeypatch.setattr(photos.os, "fsync", full)
    picture = b"\xff\xd8\xffx"
    name = photos.hashlib.sha256(picture).hexdigest()
    put = phone.browser.put(f"/api/v1/photos/{name}", data=picture, headers=phone.headers)
    assert code_of(put) == (507, "no-room")
    assert [path for path in (store.data / "photos").rglob("*") if path.is_file()] == []


def test_a_fault_of_ours_leaks_nothing(
    phone: Any, monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> None:
    def broken(*_: object) -> None:
        raise ZeroDivisionError(f"secret of {tmp_path}")

    monkeypatch.setattr("witnessmark.store.opened.sync", broken)
    answer = phone.post("/sync", {})
    assert code_of(answer) == (500, "something-broke")
    assert "secret" not in answer.text
