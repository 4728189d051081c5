"""The spares of all builds and donors by kind, and the scrap with its reasons."""

from __future__ import annotations

from typing import Any

from witnessmark.log.values import Subject
from witnessmark.log.workshop import Workshop, value
from witnessmark.views import how_many, plain, things
from witnessmark.views.away import is_away
from witnessmark.views.pool import used_in_sets
from witnessmark.views.sizes import measures_of, size_of

_LAST = 10_000


def shelf(workshop: Workshop) -> dict[str, Any]:
    """What lies on the shelf."""
    ranks = _ranks(workshop)
    used = used_in_sets(workshop)
    parts = [part for part in workshop.all("part") if not how_many.emptied(part)]
    rows = [
        _row(workshop, part, ranks.get(part["id"]), left)
        for part in parts
        if _is_spare(part, ranked=part["id"] in ranks)
        and ((left := how_many.left(part, used[part["id"]])) != 0 or part["id"] not in used)
    ]
    scrap = [_scrapped(workshop, part) for part in parts if things.mark(part) == "scrap"]
    scrap.sort(key=lambda line: (plain.natural(line["name"]), line["id"]))
    return {
        "groups": _groups(rows),
        "free": sum(1 for each in rows if each["build"] is None),
        "scrap": scrap,
    }


def _ranks(workshop: Workshop) -> dict[str, dict[str, Any]]:
    """The rank of each spare of a standing set."""
    return {
        part: {"set": {"id": found["id"], "name": plain.text(value(found, "name"))}, "rank": rank}
        for found in workshop.all("set")
        for rank, part in enumerate(plain.texts(value(found, "spares")), 1)
    }


def _is_spare(part: Subject, *, ranked: bool) -> bool:
    """Judged spare, or left over from a set; neither fitted nor away."""
    mark = things.mark(part)
    if mark != "spare" and not (ranked and mark == "use"):
        return False
    return not things.is_fitted(part) and not is_away(part)


def _row(
    workshop: Workshop, part: Subject, ranked: dict[str, Any] | None, left: int | None
) -> dict[str, Any]:
    kind = plain.text(value(part, "kind"))
    found = workshop.subject(kind) if kind else None
    said = things.verdict(part)["standing"]
    seen = [each for each in part["facts"] if each["heading"] == "inspection"]
    made = [each["made"] for each in seen if each["struck"] is None]
    return {
        "id": part["id"],
        "name": plain.text(value(part, "name")),
        "kind": {"id": kind, "name": plain.text(value(found, "name"))} if kind else None,
        "plural": plain.text(value(found, "plural")),
        "quantity": left,
        "verdict": things.mark(part),
        "reason": said[-1]["reason"] if said else None,
        "set": ranked["set"] if ranked else None,
        "rank": ranked["rank"] if ranked else None,
        "sizes": _sizes(part, found),
        "lies": [
            {
                "name": each["name"],
                "where": each["where"],
                "chain": [around["name"] for around in each["chain"]],
            }
            for each in things.lies(workshop, part)["lies"]
        ],
        "donor": things.name_of(workshop, value(part, "donor")),
        "from": plain.text(value(part, "from")),
        "build": plain.text(value(part, "build")),
        "build_name": things.name_of(workshop, value(part, "build")),
        "for": plain.text(value(part, "for")),
        "inspected": made[-1] if made else None,
    }


def _sizes(part: Subject, kind: Subject | None) -> list[dict[str, Any]]:
    return [
        {
            "name": measure["name"],
            "unit": measure["unit"],
            "size": size["size"],
            "decimals": size["decimals"],
        }
        for measure in measures_of(kind)
        if (size := size_of(part, measure))
    ]


def _groups(rows: list[dict[str, Any]]) -> list[dict[str, Any]]:
    """By kind, ranked ones first."""
    groups: dict[str, list[dict[str, Any]]] = {}
    for each in rows:
        groups.setdefault(each["kind"]["id"] if each["kind"] else "", []).append(each)
    lines = [
        {
            "kind": group[0]["kind"],
            "name": group[0]["plural"] or (group[0]["kind"] or {}).get("name"),
            "count": sum(each["quantity"] or 0 for each in group),
            "rows": sorted(group, key=_by_rank),
        }
        for group in groups.values()
    ]
    lines.sort(
        key=lambda line: (
            0 if line["kind"] else 1,
            plain.natural(line["name"]),
            line["kind"]["id"] if line["kind"] else "",
        )
    )
    return lines


def _by_rank(each: dict[str, Any]) -> tuple[Any, ...]:
    return (each["rank"] or _LAST, plain.natural(each["name"]), each["id"])


def _scrapped(workshop: Workshop, part: Subject) -> dict[str, Any]:
    said = things.verdict(part)["standing"]
    return {
        "id": part["id"],
        "name": plain.text(value(part, "name")),
        "kind": things.name_of(workshop, value(part, "kind")),
        "quantity": how_many.quantity(part),
        "reason": said[-1]["reason"] if said else None,
        "made": said[-1]["made"] if said else None,
    }
