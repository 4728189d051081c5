"""A set: its pieces and their places, ranked spares, what they span, what changed since."""

from __future__ import annotations

from typing import Any

from witnessmark.log.values import Subject
from witnessmark.log.workshop import Workshop, standing, value
from witnessmark.views import plain, things
from witnessmark.views.sizes import measures_of, size_of

Line = dict[str, Any]


def chosen(workshop: Workshop, id_: str) -> Line:
    """A set as it stands now."""
    found = workshop.subject(id_)
    kind, build = plain.text(value(found, "kind")), plain.text(value(found, "build"))
    measures = _compared(found, measures_of(workshop.subject(kind) if kind else None))
    since = found["fields"]["pieces"]["order"] if found and "pieces" in found["fields"] else ""
    pieces = [
        {
            **_line(workshop, plain.as_id(each.get("part")), measures, since, build),
            "place": plain.text(each.get("place")),
        }
        for each in plain.mappings(value(found, "pieces"))
    ]
    spares = [
        {**_line(workshop, part, measures, since, build), "rank": rank}
        for rank, part in enumerate(plain.texts(value(found, "spares")), 1)
    ]
    return {
        "id": id_,
        **things.described(found),
        "name": plain.text(value(found, "name")),
        "kind": {"id": kind, "name": things.name_of(workshop, kind)} if kind else None,
        "build": {"id": build, "name": things.name_of(workshop, build)} if build else None,
        "count": plain.whole(value(found, "count")),
        "says": plain.text(value(found, "says")),
        "pieces": pieces,
        "spares": spares,
        "spread": [{**each, **_spread(pieces, at)} for at, each in enumerate(measures)],
        "changed": [each["id"] for each in pieces if each["changes"]],
        "invented": value(found, "invented") is True,
    }


def _compared(found: Subject | None, measures: list[Line]) -> list[Line]:
    """The measures the set was compared by, with their weights."""
    known = {each["id"]: each for each in measures}
    return [
        {**known[measure], "weight": plain.text(each.get("weight"))}
        for each in plain.mappings(value(found, "measures"))
        if (measure := plain.as_id(each.get("measure"))) in known
    ]


def _line(
    workshop: Workshop, id_: str, measures: list[Line], since: str, build: str | None
) -> Line:
    part = workshop.subject(id_)
    sizes = [size_of(part, measure) for measure in measures]
    return {
        "id": id_,
        "name": plain.text(value(part, "name")),
        "verdict": things.mark(part),
        "sizes": [each and {name: each[name] for name in ("size", "decimals")} for each in sizes],
        "changes": _changes(part, sizes, since, build),
    }


def _changes(
    part: Subject | None, sizes: list[Line | None], since: str, build: str | None
) -> list[str]:
    """What became of a piece since it was chosen."""
    if part is None or part["heading"] != "part" or part["hidden"]:
        return ["missing"]
    mark = things.mark(part)
    fitted = [plain.text(each["body"].get("build")) for each in standing(part, "fitted")]
    changes = [] if mark in ("use", "spare") else [mark]
    if any(each and each["order"] > since for each in sizes):
        changes.append("measured-again")
    if any(each is not None and each != build for each in fitted):
        changes.append("fitted-elsewhere")
    return changes


def _spread(pieces: list[Line], at: int) -> Line:
    found = [each["sizes"][at] for each in pieces if each["sizes"][at]]
    if not found:
        return {"low": None, "high": None, "spread": None, "decimals": None}
    low, high = min(each["size"] for each in found), max(each["size"] for each in found)
    decimals = max(each["decimals"] for each in found)
    return {"low": low, "high": high, "spread": high - low, "decimals": decimals}
