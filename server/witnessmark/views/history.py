"""The history of a part, of all parts of a kind, and of all that came from a donor."""

from __future__ import annotations

from typing import Any

from witnessmark.log.values import Subject
from witnessmark.log.workshop import Workshop, value
from witnessmark.views import how_many, plain, things
from witnessmark.views.history_counts import counts_of, reasons_of
from witnessmark.views.history_lines import lines_of
from witnessmark.views.history_points import plots_of

MOST = 40
"""So many lines are told at first; older ones when they are asked for."""


def of_part(workshop: Workshop, id_: str) -> dict[str, Any]:
    """Every inspection, verdict and reading of a part, newest first, and its sizes over time."""
    subject = workshop.subject(id_)
    kind = workshop.subject(plain.as_id(value(subject, "kind")))
    lines, of = lines_of(workshop, [subject] if subject else [])
    return {
        **_head(subject, id_),
        "kind": _named(kind),
        "donor": _named(workshop.subject(plain.as_id(value(subject, "donor")))),
        "from": plain.text(value(subject, "from")),
        "mark": things.mark(subject),
        "measures": plots_of(workshop, kind, [subject] if subject else []),
        "lines": lines,
        "of": of,
    }


def of_kind(workshop: Workshop, id_: str, most: int | None = None) -> dict[str, Any]:
    """All pieces of a kind: by verdict, by donor, why not, their sizes over time, the last lines.

    most: how many lines are wanted.
    """
    subject = workshop.subject(id_)
    parts = _whole(workshop.linked(id_, "of-kind"))
    return {
        **_head(subject, id_),
        "plural": plain.text(value(subject, "plural")),
        **_summed(workshop, parts, most),
        "donors": _grouped(workshop, parts, "donor"),
        "measures": plots_of(workshop, subject, parts),
    }


def of_donor(workshop: Workshop, id_: str, most: int | None = None) -> dict[str, Any]:
    """All that came from a donor: by verdict, by kind, why not, the last lines.

    most: how many lines are wanted.
    """
    parts = _whole(workshop.linked(id_, "from-donor"))
    return {
        **_head(workshop.subject(id_), id_),
        **_summed(workshop, parts, most),
        "kinds": _grouped(workshop, parts, "kind"),
    }


def _head(subject: Subject | None, id_: str) -> dict[str, Any]:
    return {
        "id": id_,
        "heading": subject["heading"] if subject else None,
        **things.described(subject),
        "name": plain.text(value(subject, "name")),
        "invented": value(subject, "invented") is True,
    }


def _named(subject: Subject | None) -> dict[str, Any] | None:
    return {"id": subject["id"], "name": plain.text(value(subject, "name"))} if subject else None


def _whole(found: list[Subject]) -> list[Subject]:
    """Parts as people count them: one whose pieces are all single is told by those."""
    parts = [each for each in found if each["heading"] == "part" and not each["hidden"]]
    return [each for each in parts if not how_many.emptied(each)]


def _summed(workshop: Workshop, parts: list[Subject], most: int | None) -> dict[str, Any]:
    lines, of = lines_of(workshop, parts, MOST if most is None else most)
    return {**counts_of(parts), "reasons": reasons_of(parts), "lines": lines, "of": of}


def _grouped(workshop: Workshop, parts: list[Subject], field: str) -> list[dict[str, Any]]:
    """The same counts for each donor or kind; what names none comes last."""
    groups: dict[str | None, list[Subject]] = {}
    for part in parts:
        groups.setdefault(plain.text(value(part, field)), []).append(part)
    rows = [
        {
            "id": id_,
            "name": things.name_of(workshop, id_),
            "plural": plain.text(value(workshop.subject(id_), "plural")) if id_ else None,
            **counts_of(group),
        }
        for id_, group in groups.items()
    ]
    rows.sort(key=lambda row: (row["id"] is None, plain.natural(row["name"]), row["id"] or ""))
    return rows
