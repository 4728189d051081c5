"""GET /docs: the description of the routes as a page to read, with nothing from elsewhere."""

from collections.abc import Iterator
from html import escape
from typing import Any

from flask import Response, current_app, url_for

from witnessmark.api.routing import Routes, spec
from witnessmark.errors import Refusal, RequestProblem, WitnessmarkError

_LOOK = """
:root { color-scheme: light dark; font: 16px/1.5 system-ui, sans-serif; }
body { max-width: 60rem; margin: 0 auto; padding: 1rem; }
h2 { margin: 2rem 0 .25rem; font-size: 1.1rem; }
code { font-family: ui-monospace, monospace; }
table { border-collapse: collapse; width: 100%; }
td, th { text-align: start; padding: .25rem .5rem; border-bottom: 1px solid; vertical-align: top; }
.open { font-weight: 600; }
"""
_PAGE = """<!doctype html>
<html lang="en"><head><meta charset="utf-8"><title>Witnessmark: the routes</title>
<meta name="viewport" content="width=device-width"><link rel="stylesheet" href="{look}"></head>
<body><main><h1>The routes of this workshop's computer</h1>
<p>For programs. All take and give JSON, gzip both ways; send <code>Authorization: Bearer KEY</code>
with the key of a paired device. The same as data: <a href="{data}">openapi.json</a>.</p>
{routes}<h1 id="codes">Codes</h1>
<table><thead><tr><th>Code</th><th>Number</th><th>Means</th><th>Then</th></tr></thead>
<tbody>{codes}</tbody></table></main></body></html>
"""

routes = Routes("docs", "These pages.")


@routes.get("/docs", told="text/html", is_open=True)
def docs() -> Response:
    """Describe the routes for a reader."""
    described = spec(current_app)
    page = _PAGE.format(
        look=url_for("docs.look"),
        data=url_for("api-docs.openapi_json"),
        routes="".join(_routes(described)),
        codes="".join(_codes()),
    )
    return Response(page, mimetype="text/html")


@routes.get("/docs/docs.css", told="text/css", is_open=True)
def look() -> Response:
    """Give the look of the page of routes."""
    return Response(_LOOK, mimetype="text/css")


def _routes(described: dict[str, Any]) -> Iterator[str]:
    for path, methods in described["paths"].items():
        for method, facts in methods.items():
            if method == "parameters":
                continue
            yield f"<h2><code>{method.upper()} {escape(path)}</code></h2>"
            yield f"<p>{escape(facts.get('summary', ''))}"
            yield " <span class='open'>Open to all.</span></p>" if _is_open(facts) else "</p>"
            yield _fields("Takes", facts.get("requestBody", {}), described)
            for number, told in sorted(facts["responses"].items()):
                if number != "default":
                    yield _fields(f"Gives {number}", told, described)


def _is_open(facts: dict[str, Any]) -> bool:
    return facts.get("security") == []


def _fields(title: str, told: dict[str, Any], described: dict[str, Any]) -> str:
    """The fields of a body, or its type when it is a file."""
    content = told.get("content", {})
    if not content:
        return ""
    mime, facts = next(iter(content.items()))
    named = facts["schema"].get("$ref", "").rsplit("/", 1)[-1]
    shape = described["components"]["schemas"].get(named, {})
    needed = set(shape.get("required", ()))
    fields = ", ".join(
        f"<code>{escape(name)}</code>" + ("" if name in needed else " (may be left out)")
        for name in shape.get("properties", {})
    )
    return f"<p>{title}: {fields or escape(mime)}</p>"


def _codes() -> Iterator[str]:
    for kind in sorted({*_below(RequestProblem), *_below(Refusal)}, key=lambda kind: kind.code):
        number = kind.status if issubclass(kind, RequestProblem) else "in an answer"
        cells = (
            f"<code>{kind.code}</code>",
            str(number),
            escape(kind.says),
            escape(kind.next_step),
        )
        yield f"<tr id='{kind.code}'>{''.join(f'<td>{cell}</td>' for cell in cells)}</tr>"


def _below(kind: type[WitnessmarkError]) -> Iterator[type[WitnessmarkError]]:
    for below in kind.__subclasses__():
        yield below
        yield from _below(below)
