"""POST /sync to the letter: shapes, answers, cursors, figures."""

import gzip
import json
from typing import Any

import pytest
from witnessmark.log.stamp import write_stamp
from witnessmark.store import Store
from written import Clock, Writer, digest_of


def code_of(answer: Any) -> tuple[int, str]:
    return answer.status_code, answer.json["code"]


def test_an_empty_log_answers_an_empty_request(phone: Any) -> None:
    answer = phone.post("/sync", {})
    assert answer.json == {
        "answers": [],
        "entries": [],
        "cursor": None,
        "head": 0,
        "count": 0,
        "digest": "0" * 64,
        "now": "2031-02-27T23:06:40.000Z",
    }


def test_entries_are_numbered_and_figures_are_of_the_same_moment(
    phone: Any, writer: Writer
) -> None:
    entries = writer.entries(3)
    told = phone.sync(*entries)
    assert told["answers"] == [1, 2, 3]
    assert told["entries"] == []
    assert told["cursor"] == f"3.{entries[2]['id'][-8:]}"
    assert (told["head"], told["count"]) == (3, 3)
    assert told["digest"] == digest_of([(entry, None) for entry in entries])


def test_another_device_gets_them_as_they_were(
    phone: Any, another_phone: Any, writer: Writer
) -> None:
    entries = writer.entries(2)
    phone.sync(*entries)
    told = another_phone.sync()
    assert told["entries"] == [{"seq": 1, "entry": entries[0]}, {"seq": 2, "entry": entries[1]}]


def test_an_order_of_the_server_travels_with_the_entry(
    phone: Any, another_phone: Any, writer: Writer, clock: Clock
) -> None:
    ahead = {**writer.entry(), "stamp": write_stamp(clock.ms + 10_000_000)}
    given = write_stamp(clock.ms)
    assert phone.sync(ahead)["answers"] == [{"seq": 1, "order": given}]
    assert another_phone.sync()["entries"] == [{"seq": 1, "order": given, "entry": ahead}]
    clock.on(3_600)
    assert phone.sync(ahead)["answers"] == [{"seq": 1, "order": given}]


def test_an_entry_can_be_sent_with_the_order_it_had(
    phone: Any, writer: Writer, clock: Clock
) -> None:
    entry = writer.entry()
    below = write_stamp(clock.ms - 99)
    assert phone.sync({"order": below, "entry": entry})["answers"] == [{"seq": 1, "order": below}]
    assert phone.sync({"order": None, "entry": writer.entry()})["answers"] == [2]
    told = phone.sync({"order": "soon", "entry": writer.entry()})["answers"]
    assert told[0]["code"] == "field-shape"


def test_each_refused_entry_has_code_sentence_and_next_step_and_blocks_nobody(
    phone: Any, writer: Writer
) -> None:
    good = [writer.entry(), writer.entry()]
    poison = [
        5,
        None,
        [],
        {},
        {"entry": 7},
        {**writer.entry(), "n": 0},
        {**writer.entry(), "id": "UPPER"},
        {**writer.entry(), "body": {"text": "\ud800"}},
        {**writer.entry(), "body": {"text": "x" * 70_000}},
        writer.strike("x", "  "),
    ]
    for place in (0, 1, 2):
        sent = [*good[:place], *poison, *good[place:]]
        answers = phone.sync(*sent)["answers"]
        taken = [answer for answer in answers if isinstance(answer, int)]
        refused = [answer for answer in answers if isinstance(answer, dict)]
        assert taken == [1, 2]
        assert [told["code"] for told in refused] == [
            "not-an-object",
            "not-an-object",
            "not-an-object",
            "field-missing",
            "not-an-object",
            "field-shape",
            "field-shape",
            "text-not-clean",
            "entry-too-large",
            "field-shape",
        ]
        assert all(set(told) == {"code", "says", "next"} for told in refused)


@pytest.mark.parametrize(
    ("text", "code"),
    [
        ('"n":1.0', "number-not-whole"),
        ('"n":1e3', "number-not-whole"),
        ('"n":-0', "number-not-whole"),
        ('"n":NaN', "number-not-whole"),
        ('"n":9007199254740992', "number-not-whole"),
        ('"n":1,"n":1', "text-not-clean"),
        ('"n":1,"ü":1', "text-not-clean"),
    ],
)
def test_what_two_languages_would_write_differently_is_refused_in_that_entry_alone(
    phone: Any, writer: Writer, text: str, code: str
) -> None:
    good = json.dumps(writer.entry())
    bad = json.dumps({**writer.entry(), "n": 7}).replace('"n": 7', text)
    told = phone.raw(f'{{"entries":[{bad},{good}]}}'.encode()).json
    assert told["answers"][0]["code"] == code
    assert told["answers"][1] == 1


def test_unknown_headings_and_newer_shapes_are_taken_and_handed_on(
    phone: Any, another_phone: Any, writer: Writer
) -> None:
    entries = [
        writer.entry("leak-down", body={"held": {"value": "70", "unit": "psi"}}),
        writer.entry("pull", v=2, body={"shape": "of next year"}),
        writer.entry("note", body={"text": "x", "mood": "calm"}),
    ]
    assert phone.sync(*entries)["answers"] == [1, 2, 3]
    assert [row["entry"] for row in another_phone.sync()["entries"]] == entries


@pytest.mark.parametrize(
    "facts",
    [
        {"room": -1},
        {"room": 1.0},
        {"room": "5"},
        {"room": None},
        {"room": True},
        {"entries": {}},
        {"entries": None},
        {"cursor": 5},
        {"cursor": "x"},
        {"cursor": "1.5C1F0A11"},
        {"cursor": "-1.5c1f0a11"},
        {"cursor": ""},
    ],
)
def test_a_request_of_the_wrong_shape_is_no_sync(phone: Any, facts: dict[str, Any]) -> None:
    assert code_of(phone.post("/sync", facts)) == (422, "field-shape")


@pytest.mark.parametrize("body", [b"[]", b"5", b'"x"', b"null", b'{"room":1,"room":1}'])
def test_a_body_that_is_no_object_is_no_sync(phone: Any, body: bytes) -> None:
    assert code_of(phone.raw(body)) == (422, "field-shape")


@pytest.mark.parametrize(
    "cursor", ["1.00000000", "9.00000000", "0.00000000", "9" * 20 + ".aaaaaaaa"]
)
def test_a_cursor_the_log_does_not_know_forks_and_takes_nothing(
    phone: Any, writer: Writer, cursor: str
) -> None:
    phone.sync(writer.entry())
    answer = phone.post("/sync", {"cursor": cursor, "entries": [writer.entry()]})
    assert code_of(answer) == (409, "log-forked")
    assert phone.sync()["count"] == 1


def test_room_is_five_thousand_at_most_and_when_it_is_absent(phone: Any, writer: Writer) -> None:
    for _ in range(3):
        phone.sync(*writer.entries(1_700), room=0)
    assert len(phone.sync()["entries"]) == 5_000
    told = phone.sync(room=10**15)
    assert len(told["entries"]) == 5_000
    assert told["cursor"].startswith("5000.")
    assert len(phone.sync(cursor=told["cursor"])["entries"]) == 100
    assert phone.sync(room=0)["entries"] == []


def test_both_ways_can_be_zipped(phone: Any, writer: Writer) -> None:
    body = gzip.compress(json.dumps({"entries": writer.entries(20)}).encode())
    assert phone.raw(body, Content_Encoding="gzip").json["head"] == 20
    answer = phone.raw(b"{}", Accept_Encoding="gzip")
    assert answer.headers["Content-Encoding"] == "gzip"
    assert len(json.loads(gzip.decompress(answer.data))["entries"]) == 20
    assert "Content-Encoding" not in phone.raw(b"{}", Accept_Encoding="identity").headers


def test_a_member_at_a_time_is_unzipped_too(phone: Any) -> None:
    body = gzip.compress(b'{"room":') + gzip.compress(b"3}")
    assert phone.raw(body, Content_Encoding="gzip").status_code == 200


def test_entries_of_another_device_are_taken_from_whoever_carries_them(
    phone: Any, store: Store
) -> None:
    lost = Writer(device="01c18537-0000-7000-8000-00000000dead")
    assert phone.sync(*lost.entries(2))["answers"] == [1, 2]
    assert store.head(store.ensure_workshop()) == 2
