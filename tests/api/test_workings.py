"""Workings over the wire: listed, worked out, refused with the value they are about."""

from typing import Any

from flask.testing import FlaskClient
from witnessmark.trade.workings.registry import WORKINGS

API = "/api/v1"


def test_every_working_is_listed_with_what_it_asks(phone: Any) -> None:
    told = phone.get("/workings").json["workings"]
    assert [each["name"] for each in told] == list(WORKINGS)
    convert = told[0]
    assert convert["formula"]
    assert convert["source"]
    assert {"name", "quantity", "units", "default", "optional"} <= set(convert["asks"][1])


def test_an_amount_is_worked_out_as_it_was_typed(phone: Any) -> None:
    told = phone.post("/workings/convert", {"given": {"amount": "35 ft-lb"}}).json
    assert told["given"]["amount"] == {"value": "35", "unit": "lbf·ft"}
    first = told["lines"][0]
    assert (first["shown"], first["unit"]) == ("47.5", "N·m")
    assert abs(first["value"] - 47.4536) < 1e-4


def test_a_refusal_names_the_value_it_is_about(phone: Any) -> None:
    answer = phone.post("/workings/convert", {"given": {"amount": "35 lb"}})
    assert answer.status_code == 422
    assert answer.json["about"] == "amount"
    assert answer.json["code"] == "unit-two-meanings"
    assert "lbf·in" in answer.json["title"]


def test_a_working_nobody_knows_is_nowhere(phone: Any) -> None:
    answer = phone.post("/workings/luck", {"given": {}})
    assert (answer.status_code, answer.json["code"]) == (404, "working-unknown")
    assert "convert" in answer.json["next"]


def test_what_is_given_must_be_an_object_of_texts(phone: Any) -> None:
    codes = {
        "field-missing": {},
        "field-shape": {"given": []},
        "number-not-whole": {"given": {"amount": {"value": 35.5, "unit": "N·m"}}},
        "working-shape": {"given": {"amount": {"value": None, "unit": 3}, "quantity": ["torque"]}},
    }
    for code, body in codes.items():
        answer = phone.post("/workings/convert", body)
        assert (answer.status_code, answer.json["code"]) == (422, code)


def test_workings_want_a_key_as_every_route(stranger: FlaskClient) -> None:
    assert stranger.get(API + "/workings").status_code == 401
    answer = stranger.post(API + "/workings/convert", json={"given": {"amount": "35 Nm"}})
    assert (answer.status_code, answer.json["code"]) == (401, "device-unknown")
