"""Which pieces of a kind may be used, what they measure, and which are held off and why."""

from __future__ import annotations

from collections import Counter
from typing import Any

from witnessmark.log.values import Subject
from witnessmark.log.workshop import Workshop, value
from witnessmark.views import how_many, plain, things
from witnessmark.views.away import is_away
from witnessmark.views.measured import measured
from witnessmark.views.own_place import place_of
from witnessmark.views.sizes import measures_of, size_of

_WHY = {"scrap": "scrap", "machine": "machine", "ask": "two-verdicts"}


def pool(workshop: Workshop, kind: str, own: str | None = None) -> dict[str, Any]:
    """The pool of a kind over all donors and the shelf.

    own: the set that is being chosen; its own pieces are not held off.
    """
    found = workshop.subject(kind)
    measures = measures_of(found)
    taken = in_sets(workshop, own)
    lines = [
        _line(workshop, part, measures, taken)
        for part in workshop.all("part")
        if value(part, "kind") == kind and not how_many.emptied(part)
    ]
    lines.sort(key=lambda line: (plain.natural(line["name"]), line["id"]))
    return {
        "kind": kind,
        "name": plain.text(value(found, "name")),
        "plural": plain.text(value(found, "plural")),
        "measures": measures,
        "pieces": [line for line in lines if line["why"] is None],
        "off": [line for line in lines if line["why"] is not None],
    }


def in_sets(workshop: Workshop, own: str | None = None) -> dict[str, list[str]]:
    """Which standing sets a piece is in, by piece; own is a set that is left out.

    Several where two devices chose the same piece; a person must say which of them keeps it.
    """
    taken: dict[str, list[str]] = {}
    for found in workshop.all("set"):
        pieces = plain.mappings(value(found, "pieces")) if found["id"] != own else []
        for part in plain.once(plain.as_id(each.get("part")) for each in pieces):
            taken.setdefault(part, []).append(found["id"])
    return taken


def used_in_sets(workshop: Workshop) -> Counter[str]:
    """How many of each part the standing sets use; a counted part is named as often as it is."""
    return Counter(
        plain.as_id(each.get("part"))
        for found in workshop.all("set")
        for each in plain.mappings(value(found, "pieces"))
    )


def _line(
    workshop: Workshop, part: Subject, measures: list[dict[str, Any]], taken: dict[str, list[str]]
) -> dict[str, Any]:
    found = [size_of(part, measure) for measure in measures]
    sizes = [each and {name: each[name] for name in ("size", "decimals")} for each in found]
    donor, held = plain.text(value(part, "donor")), taken.get(part["id"], [])
    mark = things.mark(part)
    return {
        "id": part["id"],
        "name": plain.text(value(part, "name")),
        "donor": {"id": donor, "name": things.name_of(workshop, donor)} if donor else None,
        "verdict": mark,
        "own_place": place_of(workshop, part["id"]),
        "sizes": sizes,
        "outside": _outside(workshop, part, measures),
        "sets": [{"id": each, "name": things.name_of(workshop, each)} for each in held],
        "why": _why_not(part, mark, held, sizes),
    }


def _outside(
    workshop: Workshop, part: Subject, measures: list[dict[str, Any]]
) -> list[dict[str, Any]]:
    """The measures on which its worst spot lies outside, as its record says."""
    if not any(each["least"] or each["most"] for each in measures):
        return []
    lines = measured(workshop, part["id"])
    return [
        {"id": line["id"], "name": line["name"]} for line in lines if line["verdict"] == "outside"
    ]


def _why_not(part: Subject, mark: str, held: list[str], sizes: list[Any]) -> str | None:
    if mark not in ("use", "spare"):
        return _WHY.get(mark, "not-inspected")
    found = {
        "counted": how_many.quantity(part) != 1,
        "fitted": things.is_fitted(part),
        "in-set": bool(held),
        "away": is_away(part),
        "no-reading": not any(sizes),
    }
    return next((why for why, true in found.items() if true), None)
