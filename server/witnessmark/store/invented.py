"""Which entries of a file are of the demo: they stay out of a real workshop."""

from collections.abc import Iterable
from typing import Any


def invented_things(entries: Iterable[dict[str, Any]]) -> set[str]:
    """The ids of things whose description says that they are invented."""
    return {facts["about"] for facts in entries if facts and _says_invented(facts["body"])}


def belongs_to(facts: dict[str, Any], things: set[str]) -> bool:
    """Whether an entry is about such a thing, or says where one lies or what label marks it."""
    body = facts["body"]
    return facts["about"] in things or any(
        isinstance(body.get(name), str) and body[name] in things for name in ("marks", "in")
    )


def _says_invented(body: dict[str, Any]) -> bool:
    fields = body.get("fields")
    fields = fields if isinstance(fields, dict) else {}
    programme = fields.get("programme")
    specs = [body, fields, programme if isinstance(programme, dict) else {}]
    return any(spec.get("invented") is True for spec in specs)
