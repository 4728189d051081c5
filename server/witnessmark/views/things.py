"""What parts and holders have alike: labels, where they lie, verdict, count, history."""

from __future__ import annotations

from typing import Any

from witnessmark.log.values import Subject
from witnessmark.log.workshop import Workshop, standing, value
from witnessmark.views import how_many, plain
from witnessmark.views.joint_lines import made_by

VERDICTS = ("use", "spare", "machine", "scrap")
DEEPEST = 20


def name_of(workshop: Workshop, id_: object) -> str | None:
    """The name of a thing by its id, or None."""
    return plain.text(value(workshop.subject(id_), "name")) if isinstance(id_, str) else None


def described(subject: Subject | None) -> dict[str, Any]:
    """Whether it is here, and whether what made it was struck out."""
    return {
        "here": subject is not None and subject["heading"] is not None,
        "hidden": bool(subject and subject["hidden"]),
    }


def labels(workshop: Workshop, id_: str) -> dict[str, Any]:
    """The codes that mark a thing, and those of them that mark another thing too."""
    marking = workshop.linked(id_, "marks")
    asks = []
    for label in marking:
        things = plain.once(
            marked
            for each in standing(label, "label")
            if (marked := plain.text(each["body"].get("marks")))
        )
        if len(things) > 1:
            asks.append({"code": label["id"], "things": things})
    return {"codes": [each["id"] for each in marking], "codes_ask": asks}


def lies(workshop: Workshop, subject: Subject | None) -> dict[str, Any]:
    """Where it lies; several where two were kept and a person must say."""
    lines = []
    for fact in standing(subject, "place"):
        holder = plain.text(fact["body"].get("in"))
        lines.append(
            {
                "id": fact["id"],
                "holder": holder,
                "name": name_of(workshop, holder),
                "where": plain.text(fact["body"].get("where")),
                "gone": plain.text(fact["body"].get("gone")),
                "chain": chain(workshop, holder),
                **made_by(fact),
            }
        )
    places = plain.once((line["holder"], line["where"], line["gone"]) for line in lines)
    return {"lies": lines, "lies_ask": len(places) > 1}


def chain(workshop: Workshop, id_: str | None) -> list[dict[str, Any]]:
    """The holders around a holder, nearest first, without itself."""
    around: list[dict[str, Any]] = []
    seen = {id_}
    at = workshop.subject(id_) if id_ else None
    while at is not None and len(around) < DEEPEST:
        outer = next(
            (
                found
                for each in standing(at, "place")
                if (found := plain.text(each["body"].get("in")))
            ),
            None,
        )
        if outer is None or outer in seen:
            break
        seen.add(outer)
        at = workshop.subject(outer)
        around.append({"id": outer, "name": plain.text(value(at, "name"))})
    return around


def verdict(subject: Subject | None) -> dict[str, Any]:
    """The verdict that stands; word is None when there is none, or two that differ."""
    lines = [
        {
            "id": each["id"],
            "verdict": plain.text(each["body"].get("verdict")),
            "reason": plain.text(each["body"].get("reason")),
            "inspection": plain.text(each["body"].get("inspection")),
            **made_by(each),
        }
        for each in standing(subject, "verdict")
    ]
    words = plain.once(str(each["verdict"] or "") for each in lines)
    return {
        "word": (words[0] or None) if len(words) == 1 else None,
        "ask": len(words) > 1,
        "standing": lines,
    }


def mark(subject: Subject | None) -> str:
    """use, spare, machine, scrap; look where nobody judged it yet, ask where two differ.

    empty where all of a counted part are single pieces now.
    """
    if how_many.emptied(subject):
        return "empty"
    said = verdict(subject)
    if said["ask"]:
        return "ask"
    return said["word"] if said["word"] in VERDICTS else "look"


def is_fitted(part: Subject | None) -> bool:
    """Whether it is fitted to a build."""
    return _says(part, "fitted", "build")


def is_gone(part: Subject | None) -> bool:
    """Whether it has gone somewhere else for now."""
    return _says(part, "place", "gone")


def _says(part: Subject | None, heading: str, name: str) -> bool:
    return any(plain.text(each["body"].get(name)) for each in standing(part, heading))


def strikes(subject: Subject | None) -> list[dict[str, Any]]:
    """What was struck out of it, newest first."""
    if subject is None:
        return []
    headings = {each["id"]: each["heading"] for each in subject["facts"]}
    return [
        {
            "id": each["id"],
            "about": each["target"],
            "heading": headings.get(each["target"], subject["heading"]),
            "reason": each["reason"],
            "made": each["made"],
            "by": each["by"],
            "device": each["device"],
        }
        for each in reversed(subject["strikes"])
        if each["counts"]
    ]


def lost(subject: Subject | None) -> list[dict[str, Any]]:
    """What its description said before, newest first: "was 'tray 4', changed on the tablet"."""
    lines = [
        {
            "field": name,
            "value": claim["value"],
            "device": claim["device"],
            "order": claim["order"],
            "entry": claim["entry"],
        }
        for name, said in (subject["fields"].items() if subject else ())
        for claim in said["lost"]
        if not plain.alike(claim["value"], said["value"])
    ]
    lines.sort(key=lambda line: (line["order"], line["field"], line["entry"]), reverse=True)
    return lines
