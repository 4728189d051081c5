"""Inspecting a bag piece by piece: which one is next?"""

from __future__ import annotations

from typing import Any

from witnessmark.log.values import Subject
from witnessmark.log.workshop import Workshop, value
from witnessmark.views import how_many, plain, things
from witnessmark.views.holder import pieces
from witnessmark.views.kind_of import kind_of


def next_piece(
    workshop: Workshop, holder: str, after: str | None = None, kind: str | None = None
) -> dict[str, Any]:
    """The next piece nobody judged yet, after one of the same kind, wrapping round.

    holder may also be a part, which is then the only piece.
    """
    asked = workshop.subject(holder)
    alone = asked is not None and asked["heading"] == "part"
    found = [asked] if asked and alone else pieces(workshop, holder)
    wanted = kind or _kind(workshop.subject(after or "")) or _first_kind(found)
    full = [each for each in found if alone or not how_many.emptied(each)]
    same = sorted((each for each in full if _kind(each) == wanted), key=_order)
    lines = [
        {"id": each["id"], "name": _name(each), "number": number, "mark": things.mark(each)}
        for number, each in enumerate(same, 1)
    ]
    return {
        "holder": None if alone else holder,
        **kind_of(workshop, next(iter(same), None)),
        "piece": _piece(same, lines, after, alone),
        "pieces": lines,
        "left": sum(1 for each in lines if each["mark"] == "look"),
    }


def _order(part: Subject) -> tuple[int, str, int]:
    """As they come, then the pieces of each counted part by their numbers."""
    bag = plain.text(value(part, "bag"))
    number = plain.whole(value(part, "number"))
    return (1, bag, number or 0) if bag else (0, "", 0)


def _name(subject: Subject) -> str | None:
    return plain.text(value(subject, "name"))


def _kind(subject: Subject | None) -> str | None:
    return plain.text(value(subject, "kind"))


def _first_kind(found: list[Subject]) -> str | None:
    """The kind of the first piece that was not judged, else of the first piece."""
    unjudged = [each for each in found if things.mark(each) == "look"]
    return _kind(next(iter([*unjudged, *found]), None))


def _piece(
    same: list[Subject], lines: list[dict[str, Any]], after: str | None, alone: bool
) -> dict[str, Any] | None:
    at = next((i for i, each in enumerate(lines) if each["id"] == after), -1)
    turned = [*lines[at + 1 :], *lines[: at + 1]]
    wanted = (
        lines
        if alone and after is None
        else [each for each in turned if each["mark"] == "look" and each["id"] != after]
    )
    if not wanted:
        return None
    line = wanted[0]
    part = same[line["number"] - 1]
    return {
        "id": line["id"],
        "name": line["name"],
        "number": line["number"],
        "of": len(lines),
        "quantity": how_many.quantity(part),
        "verdict": things.verdict(part)["word"],
    }
