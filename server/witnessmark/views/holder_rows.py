"""The rows of a holder: how many of a kind, and what is known of them."""

from __future__ import annotations

from typing import Any

from witnessmark.log.values import Subject
from witnessmark.log.workshop import Workshop, standing, value
from witnessmark.views import how_many, plain, things
from witnessmark.views.own_place import place_of

MARKS = (*things.VERDICTS, "look", "ask")


def part_row(workshop: Workshop, id_: str, group: list[Subject]) -> dict[str, Any]:
    """One row for the parts of one kind."""
    parts = [_piece(workshop, id_, each) for each in group]
    verdicts = dict.fromkeys(MARKS, 0)
    for each in parts:
        if each["mark"] != "empty":
            verdicts[each["mark"]] += each["quantity"]
    full = [each for each in parts if each["mark"] != "empty"] or parts
    marks = plain.once(each["mark"] for each in full)
    kind = plain.text(value(group[0], "kind"))
    several = len(parts) > 1
    of_kind = workshop.subject(kind) if kind else None
    plural = plain.text(value(of_kind, "plural")) or things.name_of(workshop, kind)
    return {
        "id": None if several else parts[0]["id"],
        "heading": "part",
        "kind": kind,
        "name": (plural if several else None) or parts[0]["name"] or plural,
        "quantity": sum(each["quantity"] for each in parts),
        "verdicts": verdicts,
        "gone": sum(1 for each in parts if each["gone"]),
        "mark": marks[0] if len(marks) == 1 else "mixed",
        "parts": parts,
    }


def _piece(workshop: Workshop, id_: str, part: Subject) -> dict[str, Any]:
    places = [plain.text(each["body"].get("in")) for each in standing(part, "place")]
    gone = [
        plain.text(each["body"].get("gone"))
        for each in standing(part, "place")
        if each["body"].get("in") == id_
    ]
    count = how_many.quantity(part)
    return {
        "id": part["id"],
        "name": plain.text(value(part, "name")),
        "quantity": 0 if count is None else count,
        "mark": things.mark(part),
        "own_place": place_of(workshop, part["id"]),
        "gone": next((each for each in gone if each), None),
        "lies_ask": len(plain.once(str(each) for each in places)) > 1,
    }


def holder_row(inner: Subject) -> dict[str, Any]:
    """A holder in a holder."""
    return {
        "id": inner["id"],
        "heading": "holder",
        "kind": None,
        "name": plain.text(value(inner, "name")),
        "quantity": 1,
        "verdicts": dict.fromkeys(MARKS, 0),
        "gone": 0,
        "mark": "holder",
        "parts": [],
    }


def counts_of(rows: list[dict[str, Any]]) -> dict[str, int]:
    """All rows together."""
    parts = [row for row in rows if row["heading"] == "part"]
    return {
        "parts": sum(row["quantity"] for row in parts),
        "holders": len(rows) - len(parts),
        **{mark: sum(row["verdicts"][mark] for row in parts) for mark in MARKS},
        "gone": sum(row["gone"] for row in parts),
    }
