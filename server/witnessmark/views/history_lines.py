"""What was found on a part, line by line: inspections, verdicts, readings, the machine shop."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

from witnessmark.log.values import Fact, Subject
from witnessmark.log.workshop import Workshop, value
from witnessmark.views import plain
from witnessmark.views.joint_lines import made_by, photos

HEADINGS = ("inspection", "verdict", "reading", "sent", "returned")


def lines_of(
    workshop: Workshop, parts: Iterable[Subject], most: int | None = None
) -> tuple[list[dict[str, Any]], int]:
    """The lines of these parts, newest first and at most so many, and how many there are."""
    all_ = [(part, *each) for part in parts for each in _told(part)]
    all_.sort(key=lambda each: (each[1]["order"], each[1]["device"], each[1]["id"]), reverse=True)
    shown = all_ if most is None else all_[: max(0, most)]
    return [_line(workshop, *each) for each in shown], len(all_)


def _told(part: Subject) -> list[tuple[Fact, Fact | None]]:
    """Each fact, an inspection with the verdict that was given with it."""
    facts = [fact for fact in part["facts"] if fact["heading"] in HEADINGS]
    looks = {fact["id"]: fact for fact in facts if fact["heading"] == "inspection"}
    given: dict[str, Fact] = {}
    for fact in facts:
        look = looks.get(plain.as_id(fact["body"].get("inspection")))
        if fact["heading"] == "verdict" and look and look["id"] not in given and _same(fact, look):
            given[look["id"]] = fact
    joined = {fact["id"] for fact in given.values()}
    return [(fact, given.get(fact["id"])) for fact in facts if fact["id"] not in joined]


def _same(verdict: Fact, look: Fact) -> bool:
    """Whether both say the same, and both stand or are both struck out."""
    words = [plain.text(fact["body"].get("verdict")) for fact in (verdict, look)]
    return words[0] == words[1] and (verdict["struck"] is None) == (look["struck"] is None)


def _line(workshop: Workshop, part: Subject, fact: Fact, given: Fact | None) -> dict[str, Any]:
    body = fact["body"]
    kind = workshop.subject(plain.as_id(value(part, "kind")))
    verdict = given or fact
    return {
        "id": fact["id"],
        "heading": fact["heading"],
        "part": part["id"],
        "name": plain.text(value(part, "name")),
        "verdict": plain.text(body.get("verdict")),
        "reason": plain.text(body.get("reason")),
        "stands": bool(verdict.get("stands")) if verdict["heading"] == "verdict" else None,
        "note": plain.text(body.get("note")),
        "to": plain.text(body.get("to")),
        "for": plain.text(body.get("for")),
        "bad": _bad(kind, body),
        "readings": _single(body) if fact["heading"] == "reading" else _readings(kind, body),
        "photos": photos(body),
        **made_by(fact),
    }


def _bad(kind: Subject | None, body: dict[str, Any]) -> list[str]:
    """What was not good, in the words of the kind."""
    asked = {
        plain.text(each.get("id")): plain.text(each.get("asks"))
        for each in plain.mappings(value(kind, "criteria"))
    }
    looked = [each for each in plain.mappings(body.get("looks")) if each.get("good") is not True]
    ids = [id_ for each in looked if (id_ := plain.text(each.get("criterion")))]
    return [asked.get(id_) or id_ for id_ in ids]


def _readings(kind: Subject | None, body: dict[str, Any]) -> list[dict[str, Any]]:
    names = {
        plain.text(each.get("id")): plain.text(each.get("name"))
        for each in plain.mappings(value(kind, "measures"))
    }
    return [
        {
            "name": names.get(plain.text(each.get("measure"))),
            "position": plain.text(each.get("position")),
            "direction": plain.text(each.get("direction")),
            **kept,
        }
        for each in plain.mappings(body.get("readings"))
        if (kept := plain.measured(each.get("value")))
    ]


def _single(body: dict[str, Any]) -> list[dict[str, Any]]:
    """A reading kept by itself."""
    kept = plain.measured(body.get("value"))
    of = plain.text(body.get("of"))
    return [{"name": of, "position": None, "direction": None, **kept}] if kept else []
