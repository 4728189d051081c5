"""A label that was read: what does it mark?"""

from __future__ import annotations

from typing import Any

from witnessmark.errors import TradeError
from witnessmark.log.values import Fact
from witnessmark.log.workshop import Workshop, standing, value
from witnessmark.trade import label
from witnessmark.views import plain, things
from witnessmark.views.away import out


def code(workshop: Workshop, typed: str) -> dict[str, Any]:
    """thing, blank, retired, scrapped, ask or wrong, with what the label marks."""
    try:
        read = label.parse(typed if isinstance(typed, str) else "")
    except TradeError:
        return {"code": typed, "says": "wrong", "things": [], "after": []}
    facts = standing(workshop.subject(read), "label")
    marked = plain.once(id_ for each in facts if (id_ := plain.text(each["body"].get("marks"))))
    found = [thing for each in marked if not (thing := _thing(workshop, each))["hidden"]]
    return {
        "code": read,
        "says": _says(facts, found),
        "things": found,
        "after": [each["id"] for each in facts],
    }


def _says(facts: list[Fact], found: list[dict[str, Any]]) -> str:
    """Facts that differ are asked about: one thing and another, or a thing and "spoilt"."""
    nothing = plain.once(
        plain.text(each["body"].get("state")) or "free"
        for each in facts
        if plain.text(each["body"].get("marks")) is None
    )
    if len(found) + len(nothing) > 1:
        return "ask"
    if found:
        return "scrapped" if found[0]["verdict"] == "scrap" else "thing"
    return "retired" if nothing == ["retired"] else "blank"


def _thing(workshop: Workshop, id_: str) -> dict[str, Any]:
    subject = workshop.subject(id_)
    said = things.verdict(subject)
    latest = said["standing"][-1] if said["standing"] else None
    return {
        "heading": subject["heading"] if subject else None,
        "id": id_,
        "name": plain.text(value(subject, "name")),
        **things.described(subject),
        "verdict": said["word"],
        "reason": latest["reason"] if latest else None,
        "made": latest["made"] if latest else None,
        "away": out(subject),
    }
