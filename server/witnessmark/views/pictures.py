"""The photos of a thing: what names them, what was pointed at on them, what its kind shows."""

from __future__ import annotations

from typing import Any

from witnessmark.log.values import Fact, Subject
from witnessmark.log.workshop import Workshop, value
from witnessmark.views import plain
from witnessmark.views.joint_lines import made_by, photos


def pictures(workshop: Workshop, about: str) -> dict[str, Any]:
    """Every photo that a fact about it names, newest first, and the examples of its kind.

    A photo named twice stands once, with the newest fact that names it and is not struck out.
    """
    subject = workshop.subject(about)
    kind = subject if _is_kind(subject) else workshop.subject(_kind(subject))
    return {
        "id": about,
        "heading": subject["heading"] if subject else None,
        "name": plain.text(value(subject, "name")),
        "photos": _photos(subject),
        "examples": examples(kind),
    }


def examples(kind: Subject | None) -> list[dict[str, Any]]:
    """The owner's photos of what is good and what is not, in the order of the criteria."""
    if kind is None:
        return []
    return [
        {
            "photo": photo,
            "about": kind["id"],
            "criterion": plain.text(each.get("id")),
            "asks": plain.text(each.get("asks")),
            "side": side,
            "says": plain.text(each.get(side)),
        }
        for each in plain.mappings(value(kind, "criteria"))
        for side in ("good", "bad")
        if (photo := plain.text(each.get(f"{side}_photo")))
    ]


def pointed(workshop: Workshop, about: str, photo: str) -> list[dict[str, Any]]:
    """What was pointed at on a photo, oldest first; those that stand are numbered."""
    facts = [
        each
        for each in _facts(workshop.subject(about))
        if each["heading"] == "pointed" and each["body"].get("photo") == photo
    ]
    standing = [each["id"] for each in facts if each["struck"] is None]
    return [
        {
            "id": each["id"],
            "number": standing.index(each["id"]) + 1 if each["id"] in standing else None,
            "from": plain.texts(each["body"].get("from")),
            "to": plain.texts(each["body"].get("to")),
            "note": plain.text(each["body"].get("note")),
            **made_by(each),
        }
        for each in facts
    ]


def _photos(subject: Subject | None) -> list[dict[str, Any]]:
    lines: dict[str, dict[str, Any]] = {}
    facts = [each for each in _facts(subject) if each["heading"] != "pointed"]
    for fact in reversed(facts):
        for named in photos(fact["body"]):
            had = lines.get(named["photo"])
            if had is None or (had["struck"] and not fact["struck"]):
                lines[named["photo"]] = _line(fact, named)
    return list(lines.values())


def _line(fact: Fact, named: dict[str, Any]) -> dict[str, Any]:
    return {
        "photo": named["photo"],
        "says": named["says"] or plain.text(fact["body"].get("text")),
        "heading": fact["heading"],
        "verdict": plain.text(fact["body"].get("verdict")),
        **made_by(fact),
    }


def _facts(subject: Subject | None) -> list[Fact]:
    return list(subject["facts"]) if subject else []


def _is_kind(subject: Subject | None) -> bool:
    return subject is not None and subject["heading"] == "kind"


def _kind(subject: Subject | None) -> str:
    return plain.text(value(subject, "kind")) or ""
