"""Shared cases of a gauge study: the table, what comes next, what asks, what it came to."""

from collections.abc import Callable
from typing import Any

from vector_rules.story import picked, workshop
from witnessmark.views.study import study

Given = dict[str, Any]


def told(given: Given) -> Given:
    """The readings of a table stand as piece, person, repeat, digits; the story makes facts."""
    spoken = [reading(each, given["id"]) for each in given.get("trials", [])]
    return {**given, "facts": [*given.get("facts", []), *spoken, *given.get("then", [])]}


def reading(line: list[Any], about: str) -> dict[str, Any]:
    piece, person, repeat, digits = line
    value = {"value": digits, "unit": "mm"}
    body = {"piece": piece, "person": person, "repeat": repeat, "value": value}
    id_ = f"{person}-{piece}-{repeat}"
    return {"heading": "trial", "about": about, "id": id_, "body": body}


RULES: dict[str, Callable[[Given], Any]] = {
    "study": lambda g: picked(study(workshop(told(g)), g["id"]), g.get("pick")),
}
