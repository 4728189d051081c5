"""The description of the routes is true: a validator and a judge of APIs read it."""

from typing import Any

import schemathesis
from flask import Flask
from flask.testing import FlaskClient
from hypothesis import HealthCheck, Phase, given, settings
from openapi_spec_validator import validate
from schemathesis.checks import load_all_checks, not_a_server_error
from schemathesis.specs.openapi.checks import (
    content_type_conformance,
    ignored_auth,
    response_schema_conformance,
    status_code_conformance,
)

API = "/api/v1"
PLAIN = {"Accept-Encoding": "identity"}  # the judge does not unzip
load_all_checks()
CHECKS = [
    not_a_server_error,
    content_type_conformance,
    response_schema_conformance,
    status_code_conformance,
    ignored_auth,
]


def test_every_route_answers_as_described(app: Flask, phone: Any) -> None:
    described = schemathesis.openapi.from_wsgi(API + "/openapi.json", app)
    asked = set()
    for found in described.get_all_operations():
        operation = found.ok()

        @given(case=operation.as_strategy())
        @settings(
            max_examples=8,
            derandomize=True,
            deadline=None,
            database=None,
            phases=[Phase.generate],
            suppress_health_check=list(HealthCheck),
        )
        def ask(case: Any) -> None:
            case.call_and_validate(headers={**phone.headers, **PLAIN}, checks=CHECKS)

        ask()
        asked.add(operation.label)
    assert len(asked) >= 20


def test_the_description_is_a_document_of_openapi_3_1(stranger: FlaskClient) -> None:
    document = stranger.get(API + "/openapi.json").json
    validate(document)
    assert document["openapi"].startswith("3.1")
    open_routes = {
        path.removeprefix(API)
        for path, methods in document["paths"].items()
        for facts in methods.values()
        if isinstance(facts, dict) and facts.get("security") == []
    }
    assert open_routes == {"/pair", "/health", "/docs", "/docs/docs.css"}


def test_the_page_of_routes_names_every_route_and_code_and_loads_nothing_foreign(
    stranger: FlaskClient,
) -> None:
    page = stranger.get(API + "/docs").text
    for path in stranger.get(API + "/openapi.json").json["paths"]:
        assert path in page
    for code in ("device-unknown", "log-forked", "id-taken", "label-check", "sheet-unknown"):
        assert f"id='{code}'" in page
    assert "//" not in page.replace("<!doctype", "")
    assert "<script" not in page
    assert "style=" not in page


def test_a_problem_points_to_its_line_on_that_page(stranger: FlaskClient) -> None:
    answer = stranger.post(API + "/sync", json={})
    page, place = answer.json["type"].split("#")
    assert f"id='{place}'" in stranger.get(page).text
