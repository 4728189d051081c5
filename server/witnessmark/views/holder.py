"""One holder: what is in here, where does it stand, what left it?"""

from __future__ import annotations

from typing import Any

from witnessmark.log.values import Subject
from witnessmark.log.workshop import Workshop, standing, value
from witnessmark.views import plain, things
from witnessmark.views.holder_rows import counts_of, holder_row, part_row
from witnessmark.views.joint_lines import note_lines

LATELY = 10


def holder(workshop: Workshop, id_: str) -> dict[str, Any]:
    """The record of a holder."""
    subject = workshop.subject(id_)
    rows = _rows(workshop, id_)
    lies = things.lies(workshop, subject)
    return {
        "id": id_,
        "heading": subject["heading"] if subject else None,
        **things.described(subject),
        "name": plain.text(value(subject, "name")),
        "form": plain.text(value(subject, "form")),
        "note": plain.text(value(subject, "note")),
        **things.labels(workshop, id_),
        **lies,
        "chain": things.chain(workshop, id_),
        "rows": rows,
        "counts": counts_of(rows),
        "next": _next(rows),
        "lately": _lately(workshop, id_),
        "after": {"place": [each["id"] for each in standing(subject, "place")]},
        "strikes": things.strikes(subject),
        "lost": things.lost(subject),
        "notes": note_lines(subject, ("note", "photo")),
        "unread": list(subject["unread"]) if subject else [],
    }


def pieces(workshop: Workshop, id_: str) -> list[Subject]:
    """The parts that lie in a holder, as people count them: by name, then by id."""
    found = [
        each
        for each in workshop.linked(id_, "lies-in")
        if each["heading"] == "part" and not each["hidden"]
    ]
    return sorted(found, key=lambda each: (plain.natural(_name(each)), each["id"]))


def _name(subject: Subject) -> str | None:
    return plain.text(value(subject, "name"))


def _rows(workshop: Workshop, id_: str) -> list[dict[str, Any]]:
    """One row for each kind of part, then the holders inside."""
    groups: dict[str, list[Subject]] = {}
    for each in pieces(workshop, id_):
        kind = plain.text(value(each, "kind"))
        groups.setdefault(f"kind {kind}" if kind else f"part {each['id']}", []).append(each)
    rows = [part_row(workshop, id_, group) for group in groups.values()]
    rows.sort(key=lambda row: (plain.natural(row["name"]), row["kind"] or "", row["id"] or ""))
    inner = [
        each
        for each in workshop.linked(id_, "lies-in")
        if each["heading"] == "holder" and not each["hidden"]
    ]
    inner.sort(key=lambda each: (plain.natural(_name(each)), each["id"]))
    return rows + [holder_row(each) for each in inner]


def _next(rows: list[dict[str, Any]]) -> dict[str, Any]:
    """Inspect the first kind that was not judged yet, or open the only thing in it."""
    for row in rows:
        left = [each for each in row["parts"] if each["mark"] == "look" and not each["gone"]]
        if left:
            whole = [each for each in row["parts"] if each["mark"] != "empty"]
            return _do("inspect", row, left[0]["id"], len(left), len(whole))
    if len(rows) == 1 and rows[0]["id"]:
        return _do("open", rows[0], None, 0, 1)
    return _do("none", None, None, 0, 0)


def _do(
    what: str, row: dict[str, Any] | None, part: str | None, left: int, of: int
) -> dict[str, Any]:
    return {
        "do": what,
        "id": row["id"] if row else None,
        "heading": row["heading"] if row else None,
        "kind": row["kind"] if row else None,
        "name": row["name"] if row else None,
        "part": part,
        "left": left,
        "of": of,
    }


def _lately(workshop: Workshop, id_: str) -> list[dict[str, Any]]:
    """What left it: the newest first, with where it went."""
    inside = {each["id"] for each in workshop.linked(id_, "lies-in")}
    lines = []
    for each in workshop.linked(id_, "lay-in"):
        now = standing(each, "place")
        if each["id"] in inside or each["hidden"] or not now:
            continue
        body = now[-1]["body"]
        to = plain.text(body.get("in"))
        line = {
            "id": each["id"],
            "heading": each["heading"],
            "name": _name(each),
            "to": to,
            "to_name": things.name_of(workshop, to),
            "where": plain.text(body.get("where")),
            "gone": plain.text(body.get("gone")),
            "made": now[-1]["made"],
        }
        lines.append((now[-1]["order"], each["id"], line))
    lines.sort(key=lambda each: each[:2], reverse=True)
    return [line for _, _, line in lines[:LATELY]]
