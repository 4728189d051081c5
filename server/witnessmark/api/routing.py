"""Blueprints with types: a route states what it reads, what it tells, and who may ask."""

import json
from collections.abc import Callable
from typing import Any, ParamSpec, cast

from flask import Flask, Response
from flask_smorest import Api, Blueprint  # type: ignore[import-untyped]
from marshmallow import Schema

from witnessmark.api.shapes import Problem

P = ParamSpec("P")
Route = Callable[P, Response]
JSON = "application/json"
CREATED = 201


_TROUBLE = {
    "description": "What is in the way, and the next step.",
    "content": {"application/problem+json": {"schema": Problem}},
}


class Routes:
    """The routes of one subject."""

    def __init__(self, name: str, says: str) -> None:
        self.blueprint = Blueprint(name, __name__, description=says)

    def get(self, rule: str, **facts: Any) -> Callable[[Route[P]], Route[P]]:
        """A route that reads."""
        return self._route(rule, "GET", facts)

    def post(self, rule: str, **facts: Any) -> Callable[[Route[P]], Route[P]]:
        """A route that takes something."""
        return self._route(rule, "POST", facts)

    def put(self, rule: str, **facts: Any) -> Callable[[Route[P]], Route[P]]:
        """A route that keeps a file under its name."""
        return self._route(rule, "PUT", facts)

    def patch(self, rule: str, **facts: Any) -> Callable[[Route[P]], Route[P]]:
        """A route that changes something."""
        return self._route(rule, "PATCH", facts)

    def _route(
        self, rule: str, method: str, facts: dict[str, Any]
    ) -> Callable[[Route[P]], Route[P]]:
        def decorate(function: Route[P]) -> Route[P]:
            documented = self.blueprint.doc(**_documented(**facts))(function)
            return _same(self.blueprint.route(rule, methods=[method])(documented), function)

        return decorate


def _same(routed: Any, _like: Route[P]) -> Route[P]:
    return routed  # type: ignore[no-any-return]


def _documented(
    *,
    told: type[Schema] | str,
    wanted: type[Schema] | str | None = None,
    number: int = 200,
    had: bool = False,
    is_open: bool = False,
    query: tuple[dict[str, Any], ...] = (),
) -> dict[str, Any]:
    """The OpenAPI facts of a route that reads and writes its own bytes.

    told, wanted: a schema of JSON, or a media type. had: the answer is 200 when it was here.
    """
    says = told.__doc__ if isinstance(told, type) else "A file."
    good = {"description": says, "content": _content(told)}
    facts: dict[str, Any] = {"responses": {str(number): good, "default": _TROUBLE}}
    if had:
        facts["responses"]["200"] = good
    if wanted:
        facts["requestBody"] = {"required": True, "content": _content(wanted)}
    if query:
        facts["parameters"] = [{"in": "query", **one} for one in query]
    if is_open:
        facts["security"] = []
    return facts


def _content(shape: type[Schema] | str) -> dict[str, Any]:
    if isinstance(shape, str):
        return {shape: {"schema": {"type": "string", "format": "binary"}}}
    return {JSON: {"schema": shape}}


def install(app: Flask, prefix: str, *subjects: Routes) -> None:
    """Serve the routes under a prefix, and what describes them."""
    key = {"type": "http", "scheme": "bearer", "description": "The key of a paired device."}
    app.config.update(
        API_TITLE="Witnessmark",
        API_VERSION="v1",
        OPENAPI_VERSION="3.1.0",
        OPENAPI_URL_PREFIX=prefix,
        OPENAPI_JSON_PATH="openapi.json",
        API_SPEC_OPTIONS={
            "security": [{"key": []}],
            "components": {"securitySchemes": {"key": key}},
        },
    )
    api = Api(app)
    api.DEFAULT_ERROR_RESPONSE_NAME = None  # each route says that its errors are problems
    app.extensions["witnessmark-described"] = api.spec
    for subject in subjects:
        api.register_blueprint(subject.blueprint, url_prefix=prefix)


def spec(app: Flask) -> dict[str, Any]:
    """The OpenAPI document as data."""
    return cast("dict[str, Any]", app.extensions["witnessmark-described"].to_dict())


def tell(facts: object, number: int = 200) -> Response:
    """A JSON answer."""
    text = json.dumps(facts, ensure_ascii=False, separators=(",", ":"))
    return Response(text, number, mimetype=JSON)
