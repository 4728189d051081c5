"""One holder: what is in here, where does it stand, what left it?"""

from __future__ import annotations

from typing import Any

from witnessmark.log.values import Subject
from witnessmark.log.workshop import Workshop, standing, value
from witnessmark.views import plain, things
from witnessmark.views.joint_lines import note_lines

MARKS = (*things.VERDICTS, "look", "ask")
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
        "counts": _counts(rows),
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
    rows = [_part_row(workshop, id_, group) for group in groups.values()]
    rows.sort(key=lambda row: (plain.natural(row["name"]), str(row["kind"]), str(row["id"])))
    inner = [
        each
        for each in workshop.linked(id_, "lies-in")
        if each["heading"] == "holder" and not each["hidden"]
    ]
    inner.sort(key=lambda each: (plain.natural(_name(each)), each["id"]))
    return rows + [_holder_row(each) for each in inner]


def _part_row(workshop: Workshop, id_: str, group: list[Subject]) -> dict[str, Any]:
    parts = [_piece(id_, each) for each in group]
    verdicts = dict.fromkeys(MARKS, 0)
    for each in parts:
        verdicts[each["mark"]] += each["quantity"]
    marks = plain.once(each["mark"] for each in parts)
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


def _piece(id_: str, part: Subject) -> dict[str, Any]:
    gone = [
        plain.text(each["body"].get("gone"))
        for each in standing(part, "place")
        if each["body"].get("in") == id_
    ]
    count = things.quantity(part)
    return {
        "id": part["id"],
        "name": _name(part),
        "quantity": 0 if count is None else count,
        "mark": things.mark(part),
        "gone": next((each for each in gone if each), None),
        "lies_ask": len(standing(part, "place")) > 1,
    }


def _holder_row(inner: Subject) -> dict[str, Any]:
    return {
        "id": inner["id"],
        "heading": "holder",
        "kind": None,
        "name": _name(inner),
        "quantity": 1,
        "verdicts": dict.fromkeys(MARKS, 0),
        "gone": 0,
        "mark": "holder",
        "parts": [],
    }


def _counts(rows: list[dict[str, Any]]) -> dict[str, int]:
    parts = [row for row in rows if row["heading"] == "part"]
    return {
        "parts": sum(row["quantity"] for row in parts),
        "holders": len(rows) - len(parts),
        **{mark: sum(row["verdicts"][mark] for row in parts) for mark in MARKS},
        "gone": sum(row["gone"] for row in parts),
    }


def _next(rows: list[dict[str, Any]]) -> dict[str, Any]:
    """Inspect the first kind that was not judged yet, or open the only thing in it."""
    for row in rows:
        left = [each for each in row["parts"] if each["mark"] == "look" and not each["gone"]]
        if left:
            return _do("inspect", row, left[0]["id"], len(left), len(row["parts"]))
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
