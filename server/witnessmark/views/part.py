"""One part: what is it, may I use it, how is it tightened, what has been done to it?"""

from __future__ import annotations

from typing import Any

from witnessmark.log.values import Subject
from witnessmark.log.workshop import Workshop, standing, value
from witnessmark.views import how_many, plain, things
from witnessmark.views.away import came_back, out
from witnessmark.views.held import is_single_use
from witnessmark.views.joint_lines import made_by, note_lines, photos
from witnessmark.views.kind_of import kind_of
from witnessmark.views.own_place import place_of
from witnessmark.views.summary import latest_first, summary

NOTED = ("note", "photo", "purchase", "add", "take", "reading")


def part(workshop: Workshop, id_: str) -> dict[str, Any]:
    """The record of a part."""
    subject = workshop.subject(id_)
    joints = _joints(workshop, id_)
    verdict = things.verdict(subject)
    lies = things.lies(workshop, subject)
    return {
        "id": id_,
        "heading": subject["heading"] if subject else None,
        **things.described(subject),
        "name": plain.text(value(subject, "name")),
        **kind_of(workshop, subject),
        **_counts(subject),
        "own_place": place_of(workshop, id_),
        "single_use": is_single_use(subject, workshop),
        "thread": plain.text(value(subject, "thread")),
        "note": plain.text(value(subject, "note")),
        **things.labels(workshop, id_),
        "from": _origin(workshop, subject),
        **lies,
        "for": _for(workshop, subject),
        **_fitted(workshop, subject),
        "away": out(subject),
        "verdict": verdict,
        "joints": joints,
        "inspections": _inspections(subject),
        "notes": note_lines(subject, NOTED),
        "strikes": things.strikes(subject),
        "lost": things.lost(subject),
        "unread": list(subject["unread"]) if subject else [],
        "next": _next(joints, _word(subject), lies["lies"]),
        "after": {
            heading: [each["id"] for each in standing(subject, heading)]
            for heading in ("place", "verdict", "fitted")
        },
        "invented": value(subject, "invented") is True or any(each["invented"] for each in joints),
    }


def _counts(subject: Subject | None) -> dict[str, Any]:
    """How many, how many of them are single now, and which number it has itself."""
    return {
        "quantity": how_many.quantity(subject),
        "single": len(how_many.single(subject)),
        "bag": plain.text(value(subject, "bag")),
        "number": plain.whole(value(subject, "number")),
    }


def _joints(workshop: Workshop, id_: str) -> list[dict[str, Any]]:
    """The joints it is clamped by, then those it holds; each once, by name."""
    roles: dict[str, str] = {}
    for role in ("clamps", "holds-with"):
        for each in workshop.linked(id_, role):
            if not each["hidden"]:
                roles.setdefault(each["id"], role)
    lines = [summary(workshop, joint, role) for joint, role in roles.items()]
    lines.sort(key=lambda line: (plain.natural(line["name"]), line["id"]))
    return lines


def _origin(workshop: Workshop, subject: Subject | None) -> dict[str, Any]:
    donor = plain.text(value(subject, "donor"))
    return {
        "donor": donor,
        "name": things.name_of(workshop, donor),
        "text": plain.text(value(subject, "from")),
    }


def _for(workshop: Workshop, subject: Subject | None) -> dict[str, Any]:
    build = plain.text(value(subject, "build"))
    return {
        "build": build,
        "name": things.name_of(workshop, build),
        "place": plain.text(value(subject, "for")),
    }


def _fitted(workshop: Workshop, subject: Subject | None) -> dict[str, Any]:
    lines = []
    for fact in standing(subject, "fitted"):
        build = plain.text(fact["body"].get("build"))
        lines.append(
            {
                "id": fact["id"],
                "build": build,
                "name": things.name_of(workshop, build),
                "place": plain.text(fact["body"].get("place")),
                "reason": plain.text(fact["body"].get("reason")),
                **made_by(fact),
            }
        )
    places = plain.once((line["build"], line["place"]) for line in lines)
    return {"fitted": lines, "fitted_ask": len(places) > 1}


def _inspections(subject: Subject | None) -> list[dict[str, Any]]:
    facts = subject["facts"] if subject else []
    return [
        {
            "id": each["id"],
            "verdict": plain.text(each["body"].get("verdict")),
            "reason": plain.text(each["body"].get("reason")),
            "note": plain.text(each["body"].get("note")),
            "looks": [
                {"criterion": plain.text(look.get("criterion")), "good": look.get("good") is True}
                for look in plain.mappings(each["body"].get("looks"))
            ],
            "readings": plain.listed(each["body"].get("readings")),
            "photos": photos(each["body"]),
            **made_by(each),
        }
        for each in reversed(facts)
        if each["heading"] == "inspection"
    ]


def _word(subject: Subject | None) -> str | None:
    """The verdict that decides what is next; nothing is asked of what is single now.

    What came back from the machine shop is not what was judged before.
    """
    if how_many.emptied(subject):
        return "empty"
    return None if came_back(subject) else things.verdict(subject)["word"]


def _next(
    joints: list[dict[str, Any]], word: str | None, lies: list[dict[str, Any]]
) -> dict[str, Any]:
    """The one thing to do: go on, inspect, begin, put away, in this order."""
    running = latest_first([each for each in joints if each["state"] in ("running", "not-whole")])
    if running:
        return _do("go-on", running[0])
    if word is None:
        return _do("inspect", None)
    ready = [each for each in joints if each["state"] == "not-begun"]
    if word in ("use", "spare") and ready:
        return _do("begin", ready[0])
    return _do("none" if lies else "put-away", None)


def _do(what: str, joint: dict[str, Any] | None) -> dict[str, Any]:
    return {
        "do": what,
        "joint": joint["id"] if joint else None,
        "name": joint["name"] if joint else None,
        "pass_number": joint["pass_number"] if joint else None,
        "number": joint["next"] if joint else None,
    }
