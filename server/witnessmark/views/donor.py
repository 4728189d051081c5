"""A donor: what came from it, what is known of that, and what was paid."""

from __future__ import annotations

from typing import Any

from witnessmark.log.values import Subject
from witnessmark.log.workshop import Workshop, value
from witnessmark.views import how_many, plain, things
from witnessmark.views.holder_rows import counts_of, part_row
from witnessmark.views.joint_lines import note_lines


def donor(workshop: Workshop, id_: str) -> dict[str, Any]:
    """The record of a donor."""
    subject = workshop.subject(id_)
    parts = _parts(workshop, id_)
    rows = _rows(workshop, id_, parts)
    return {
        "id": id_,
        "heading": subject["heading"] if subject else None,
        **things.described(subject),
        "name": plain.text(value(subject, "name")),
        "engine": plain.text(value(subject, "engine")),
        "note": plain.text(value(subject, "note")),
        "bought": plain.text(value(subject, "bought")),
        "rows": rows,
        "counts": counts_of(rows),
        "paid": [line for each in (subject, *parts) for line in _paid(each)],
        "notes": note_lines(subject, ("note", "photo")),
        "lost": things.lost(subject),
    }


def _parts(workshop: Workshop, id_: str) -> list[Subject]:
    """The parts that came from it, as people count them.

    A counted part whose pieces are all single is told by those.
    """
    found = [
        each
        for each in workshop.linked(id_, "from-donor")
        if each["heading"] == "part" and not each["hidden"] and not how_many.emptied(each)
    ]
    return sorted(
        found, key=lambda each: (plain.natural(plain.text(value(each, "name"))), each["id"])
    )


def _rows(workshop: Workshop, id_: str, parts: list[Subject]) -> list[dict[str, Any]]:
    """One row for each kind, with where each part of it was."""
    groups: dict[str, list[Subject]] = {}
    for each in parts:
        kind = plain.text(value(each, "kind"))
        groups.setdefault(f"kind {kind}" if kind else f"part {each['id']}", []).append(each)
    rows = [
        {
            **part_row(workshop, id_, group),
            "from": [plain.text(value(each, "from")) for each in group],
        }
        for group in groups.values()
    ]
    rows.sort(key=lambda row: (plain.natural(row["name"]), row["kind"] or "", row["id"] or ""))
    return rows


def _paid(subject: Subject | None) -> list[dict[str, Any]]:
    """What was paid for it or for a part of it."""
    return [
        {
            "id": each["id"],
            "name": plain.text(value(subject, "name")),
            "price": plain.measured(each["body"].get("price")),
            "seller": plain.text(each["body"].get("seller")),
        }
        for each in (subject["facts"] if subject else ())
        if each["heading"] == "purchase" and each["struck"] is None
    ]
