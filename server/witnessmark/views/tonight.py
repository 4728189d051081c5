"""What can be gone on with, looked at and put away with what is here."""

from __future__ import annotations

from typing import Any

from witnessmark.log.values import Subject
from witnessmark.log.workshop import Workshop, standing, value
from witnessmark.views import plain, things
from witnessmark.views.away import away, came_back
from witnessmark.views.joint import joint
from witnessmark.views.summary import latest_first, summary

MOST = 100


def tonight(workshop: Workshop, today: str | None = None) -> dict[str, Any]:
    """Joints that were left, joints ready to begin, parts to look at, parts without a place.

    And parts that should be back from the machine shop by `today`, a date such as 2031-03-07.
    """
    lines = [summary(workshop, each["id"]) for each in workshop.all("joint")]
    lines.sort(key=lambda line: (plain.natural(line["name"]), line["id"]))
    fresh = [each for each in lines if each["state"] == "not-begun"]
    held = [each for each in fresh if each["held_back"]]
    parts = [each for each in workshop.all("part") if each["heading"] == "part"]
    return {
        "go_on": latest_first([e for e in lines if e["state"] in ("running", "not-whole")]),
        "begin": [each for each in fresh if not each["held_back"]],
        "look": _look(workshop, parts),
        "put": _put(parts),
        "late": [line for line in away(workshop, today)["out"] if (line["days"] or 0) > 0],
        "no_value": [
            {"id": each["id"], "name": each["name"]}
            for each in lines
            if each["state"] == "no-value"
        ],
        "held": [
            {
                "id": each["id"],
                "name": each["name"],
                "held": joint(workshop, each["id"])["held"],
            }
            for each in held
        ],
        "asks": sum(each["asks"] for each in lines),
    }


def _look(workshop: Workshop, parts: list[Subject]) -> list[dict[str, Any]]:
    """Parts nobody judged yet, or not since they came back, by holder and kind, most first."""
    groups: dict[tuple[str, str], list[Subject]] = {}
    for each in parts:
        mark = things.mark(each)
        if mark == "look" or (mark != "empty" and came_back(each)):
            places = [plain.text(fact["body"].get("in")) for fact in standing(each, "place")]
            holder = next((place for place in places if place), "")
            kind = plain.text(value(each, "kind")) or ""
            groups.setdefault((holder, kind), []).append(each)
    lines = [
        {
            "holder": holder or None,
            "name": things.name_of(workshop, holder),
            "kind": kind or None,
            "kind_name": things.name_of(workshop, kind) or plain.text(value(group[0], "name")),
            "part": min(group, key=_by_name)["id"],
            "left": len(group),
        }
        for (holder, kind), group in sorted(groups.items())
    ]
    lines.sort(key=lambda line: int(str(line["left"])), reverse=True)
    return lines[:MOST]


def _by_name(part: Subject) -> tuple[Any, str]:
    return plain.natural(plain.text(value(part, "name"))), part["id"]


def _put(parts: list[Subject]) -> list[dict[str, Any]]:
    """Parts that lie nowhere and are fitted nowhere."""
    lost = [each for each in parts if not standing(each, "place") and not standing(each, "fitted")]
    lost.sort(key=_by_name)
    return [
        {"id": each["id"], "name": plain.text(value(each, "name")), "heading": "part"}
        for each in lost[:MOST]
    ]
