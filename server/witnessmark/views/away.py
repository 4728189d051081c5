"""Parts sent out to be worked on: what is out, with whom, since when, due when; what came back."""

from __future__ import annotations

import re
from datetime import date
from typing import Any

from witnessmark.log.values import Fact, Subject
from witnessmark.log.workshop import Workshop, standing, value
from witnessmark.views import how_many, plain, things
from witnessmark.views.joint_lines import made_by


def away(workshop: Workshop, today: str | None = None) -> dict[str, Any]:
    """What is out, what came back, and what is judged for the machine shop and still here.

    today: the date, for how late something is.
    """
    parts = [part for part in workshop.all("part") if not how_many.emptied(part)]
    gone = [{**_about(workshop, part), **line} for part in parts for line in out(part, today)]
    gone.sort(
        key=lambda line: (
            line["due"] or "~",
            line["to"],
            plain.natural(line["name"]),
            line["part"],
            line["id"],
        )
    )
    back = [
        {**_about(workshop, part), **_coming(part, fact)}
        for part in parts
        for fact in _said(part, "returned")
    ]
    back.sort(key=lambda line: (line["order"], line["id"]), reverse=True)
    here = [part for part in parts if not _open(part) and not came_back(part)]
    ready = [part for part in here if things.mark(part) == "machine"]
    look = [part for part in parts if came_back(part)]
    for found in (look, ready):
        found.sort(key=lambda part: (plain.natural(plain.text(value(part, "name"))), part["id"]))
    return {
        "out": gone,
        "back": back,
        "look": [_about(workshop, part) for part in look],
        "ready": [_about(workshop, part) for part in ready],
    }


def out(part: Subject | None, today: str | None = None) -> list[dict[str, Any]]:
    """Where a part is now, as far as it was sent out and has not come back."""
    return [
        {
            "to": plain.text(fact["body"].get("to")) or "",
            "for": plain.text(fact["body"].get("for")),
            "due": plain.text(fact["body"].get("due")),
            "price": plain.measured(fact["body"].get("price")),
            "note": plain.text(fact["body"].get("note")),
            "id": fact["id"],
            **made_by(fact),
            "days": days(fact["body"].get("due"), today),
        }
        for fact in _open(part)
    ]


def is_away(part: Subject | None) -> bool:
    """Whether it is not in the workshop: said to be gone, or sent out and moved meanwhile."""
    return things.is_gone(part) or bool(_open(part))


def came_back(part: Subject | None) -> bool:
    """Whether it is here again and was not judged since: the verdict before is of what it was."""
    if _open(part):
        return False
    judged = max((each["order"] for each in standing(part, "verdict")), default="")
    return any(each["order"] > judged for each in _said(part, "returned"))


def days(due: object, today: object) -> int | None:
    """How many days a date is past; less than nothing when it is still to come."""
    then, now = _date(due), _date(today)
    return None if then is None or now is None else (now - then).days


def _date(kept: object) -> date | None:
    text = plain.text(kept) or ""
    if not re.fullmatch(r"[1-9][0-9]{3}-[0-9]{2}-[0-9]{2}", text):
        return None
    try:
        return date.fromisoformat(text)
    except ValueError:
        return None


def _said(part: Subject | None, heading: str) -> list[Fact]:
    facts = part["facts"] if part else []
    return [fact for fact in facts if fact["heading"] == heading and fact["struck"] is None]


def _open(part: Subject | None) -> list[Fact]:
    """Sendings that nothing came back of."""
    ended = {plain.text(fact["body"].get("sent")) for fact in _said(part, "returned")}
    return [fact for fact in _said(part, "sent") if fact["id"] not in ended]


def _coming(part: Subject, fact: Fact) -> dict[str, Any]:
    body = fact["body"]
    sent = next((each["body"] for each in part["facts"] if each["id"] == body.get("sent")), {})
    readings = [plain.measured(each.get("value")) for each in plain.mappings(body.get("readings"))]
    return {
        "sent": plain.text(body.get("sent")),
        "to": plain.text(sent.get("to")),
        "for": plain.text(sent.get("for")),
        "note": plain.text(body.get("note")),
        "readings": [read for read in readings if read],
        "order": fact["order"],
        "id": fact["id"],
        **made_by(fact),
    }


def _about(workshop: Workshop, part: Subject) -> dict[str, Any]:
    return {
        "part": part["id"],
        "name": plain.text(value(part, "name")),
        "kind": things.name_of(workshop, value(part, "kind")),
        "quantity": how_many.quantity(part),
        "codes": things.labels(workshop, part["id"])["codes"],
    }
