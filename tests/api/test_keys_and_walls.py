"""Who may ask, and that no key reaches a row of another workshop."""

import hashlib
import json
from typing import Any

import pytest
from flask import Flask
from flask.testing import FlaskClient
from witnessmark.store import Store
from witnessmark.store.engine import writing
from written import Clock, Writer

API = "/api/v1"
PICTURE = b"\xff\xd8\xffx"
SHA = hashlib.sha256(PICTURE).hexdigest()
OPEN = {"/health", "/openapi.json", "/docs", "/docs/docs.css"}


def code_of(answer: Any) -> tuple[int, str]:
    return answer.status_code, answer.json["code"]


def test_every_route_but_the_open_ones_refuses_strangers(app: Flask, stranger: FlaskClient) -> None:
    asked = 0
    for rule in app.url_map.iter_rules():
        if not rule.rule.startswith(API) or rule.rule.removeprefix(API) in OPEN | {"/pair"}:
            continue
        path = rule.rule.replace("<", "").replace(">", "")
        for method in (rule.methods or set()) - {"OPTIONS", "HEAD"}:
            answer = stranger.open(path, method=method)
            assert code_of(answer) == (401, "device-unknown"), path
            assert answer.headers["WWW-Authenticate"].startswith("Bearer")
            asked += 1
    assert asked >= 17


@pytest.mark.parametrize("path", sorted(OPEN))
def test_the_open_ones_answer_anybody(stranger: FlaskClient, path: str) -> None:
    assert stranger.get(API + path).status_code == 200


def test_health_says_only_that_it_is_up(stranger: FlaskClient) -> None:
    assert stranger.get(API + "/health").json == {"ok": True}


@pytest.mark.parametrize("path", ["/api/v1/nothing", "/api/v2/sync", "/api/", "/api/v1/../sync"])
def test_an_unknown_route_is_not_told_to_strangers(stranger: FlaskClient, path: str) -> None:
    assert code_of(stranger.get(path)) == (401, "device-unknown")


@pytest.mark.parametrize(
    "given",
    ["", "Bearer", "Bearer ", "Bearer x", "Basic eDp5", "Bearer \x7f", "Bearer " + "k" * 9000],
)
def test_no_key_and_a_broken_key_are_the_same_stranger(stranger: FlaskClient, given: str) -> None:
    answer = stranger.post(API + "/sync", json={}, headers={"Authorization": given})
    assert code_of(answer) == (401, "device-unknown")


def test_a_revoked_device_is_told_so(phone: Any, another_phone: Any) -> None:
    assert phone.post(f"/devices/{another_phone.id}/revoke").json["revoked"]
    assert code_of(another_phone.post("/sync", {})) == (401, "device-revoked")
    assert phone.post("/sync", {}).status_code == 200


def test_a_wrong_method_and_a_wrong_path_are_problems_for_those_with_a_key(phone: Any) -> None:
    answer = phone.get("/sync")
    assert code_of(answer) == (405, "method-unknown")
    assert "POST" in answer.headers["Allow"]
    assert code_of(phone.get("/nothing")) == (404, "address-unknown")


@pytest.fixture
def neighbour(app: Flask, store: Store, clock: Clock) -> Any:
    """A phone of another workshop of the same computer."""
    clock.on(1)
    with writing(store.engine) as connection:
        other = store.add_workshop(connection, "next door")
    made = store.pair(store.pairing_code(other).code, "neighbour")
    return made.key


def test_no_key_reaches_a_row_of_another_workshop(
    app: Flask, phone: Any, neighbour: str, writer: Writer
) -> None:
    part = writer.part("rocker")
    joint = writer.entry("joint", body={"fields": {"name": "head"}})
    holder = writer.entry("holder", body={"fields": {"name": "tray"}})
    label = writer.entry("label", "7K3MQ2RJ", body={"marks": part["about"]})
    phone.sync(part, joint, holder, label)
    named = phone.browser.put(f"{API}/photos/{SHA}", data=PICTURE, headers=phone.headers)
    assert named.status_code == 201
    sheet = phone.post("/sheets", {"layout": "a4-3x8", "count": 1}).json["id"]
    theirs = type(phone)(app.test_client(), neighbour, "")

    assert theirs.sync()["entries"] == []
    assert theirs.get("/log").json == {"entries": [], "cursor": None, "head": 0}
    assert code_of(theirs.post("/sync", {"cursor": phone.sync()["cursor"]})) == (409, "log-forked")
    for path in (
        f"/parts/{part['about']}",
        "/parts/7K3MQ2RJ",
        f"/joints/{joint['about']}",
        f"/holders/{holder['about']}",
        f"/photos/{SHA}",
        f"/sheets/{sheet}.pdf",
    ):
        assert theirs.get(path).status_code == 404, path
        assert phone.get(path).status_code == 200, path
    assert theirs.post("/photos/missing", {"photos": [SHA]}).json == {"missing": [SHA]}
    assert theirs.get("/search?q=rocker").json["count"] == 0
    assert phone.get("/search?q=rocker").json["count"] == 1
    assert phone.id not in theirs.get("/devices").text
    assert theirs.post(f"/devices/{phone.id}/revoke").status_code == 404
    renamed = theirs.browser.patch(
        f"{API}/devices/{phone.id}", json={"name": "mine"}, headers=theirs.headers
    )
    assert renamed.status_code == 404


def test_two_workshops_may_hold_the_same_entry_and_count_for_themselves(
    app: Flask, phone: Any, neighbour: str, writer: Writer
) -> None:
    theirs = type(phone)(app.test_client(), neighbour, "")
    entries = writer.entries(3)
    assert phone.sync(*entries)["answers"] == [1, 2, 3]
    assert theirs.sync(entries[2])["answers"] == [1]
    other = {**entries[0], "body": {"text": "another text under the same id"}}
    assert theirs.sync(other)["answers"] == [2]
    assert (phone.sync()["count"], theirs.sync()["count"]) == (3, 2)


def test_a_code_made_by_a_device_pairs_with_its_own_workshop(
    app: Flask, phone: Any, neighbour: str, stranger: FlaskClient
) -> None:
    theirs = type(phone)(app.test_client(), neighbour, "")
    made = theirs.post("/pairing-codes").json
    assert made["url"] == f"https://bokal.local:8443/pair#{made['code']}"
    assert len({len(row) for row in made["qr"]} | {len(made["qr"])}) == 1
    facts = {"code": made["code"], "name": "x"}
    told = stranger.post(API + "/pair", json=facts).json
    assert theirs.get("/devices").text.count(told["device"]) == 1
    assert told["device"] not in phone.get("/devices").text


def test_pairing_answers_with_a_key_that_works(stranger: FlaskClient, store: Store) -> None:
    code = store.pairing_code().code
    answer = stranger.post(API + "/pair", json={"code": code, "name": "  bench phone "})
    assert answer.status_code == 201
    assert set(answer.json) == {"device", "key", "workshop", "now"}
    headers = {"Authorization": f"Bearer {answer.json['key']}"}
    told = stranger.get(API + "/devices", headers=headers).json["devices"]
    assert [(d["name"], d["own"], d["this"]) for d in told] == [
        ("computer", True, False),
        ("bench phone", False, True),
    ]
    again = stranger.post(API + "/pair", json={"code": code, "name": "replayed"})
    assert code_of(again) == (403, "pairing-code-unknown")


@pytest.mark.parametrize("name", ["", "   ", "x" * 61, 5, None, "\ud800", "a\nb", "a\0b"])
def test_a_name_of_other_than_1_to_60_signs_is_refused_and_the_code_stays(
    stranger: FlaskClient, store: Store, name: object
) -> None:
    code = store.pairing_code().code
    body = json.dumps({"code": code, "name": name})
    answer = stranger.post(API + "/pair", data=body, content_type="application/json")
    assert code_of(answer) == (422, "field-shape")
    kept = stranger.post(API + "/pair", json={"code": code, "name": "\U0001f527" * 60})
    assert kept.status_code == 201


def test_a_field_that_is_not_there_is_named(stranger: FlaskClient) -> None:
    for facts in ({}, {"code": "1"}, {"name": "x"}):
        assert code_of(stranger.post(API + "/pair", json=facts)) == (422, "field-missing")


def test_guessing_is_paused_with_retry_after_also_over_a_restart(
    config: Any, stranger: FlaskClient, store: Store, clock: Clock
) -> None:
    for guess in ("00000000", "1234-5678", "", "\ud800", "x" * 999):
        facts = json.dumps({"code": guess, "name": "x"})
        answer = stranger.post(API + "/pair", data=facts, content_type="application/json")
        assert code_of(answer) == (403, "pairing-code-unknown")
    right = {"code": store.pairing_code().code, "name": "x"}
    paused = stranger.post(API + "/pair", json=right)
    assert code_of(paused) == (429, "pairing-paused")
    assert paused.headers["Retry-After"] == "60"
    clock.on(59.5)
    from witnessmark.api import create_app  # noqa: PLC0415 - the second start is the point

    restarted = create_app(config).test_client()
    paused = restarted.post(API + "/pair", json=right)
    assert (paused.status_code, paused.headers["Retry-After"]) == (429, "1")
    clock.on(0.5)
    assert restarted.post(API + "/pair", json=right).status_code == 201


def test_a_device_is_renamed_by_any_of_its_workshop(phone: Any, another_phone: Any) -> None:
    path = f"{API}/devices/{another_phone.id}"
    told = phone.browser.patch(path, json={"name": "tablet"}, headers=phone.headers)
    assert (told.status_code, told.json["name"], told.json["this"]) == (200, "tablet", False)
