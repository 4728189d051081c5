"""A joint in short, as a part's record and Tonight list it."""

from __future__ import annotations

from typing import Any

from witnessmark.log.workshop import Workshop
from witnessmark.views.joint import joint

KEPT = (
    "id", "name", "noun", "plural", "count", "thread", "pattern", "invented", "state",
    "pass_number", "held_back", "open",
)  # fmt: skip


def summary(workshop: Workshop, id_: str, role: str | None = None) -> dict[str, Any]:
    """A joint in short; role says what the part asking is to it."""
    full = joint(workshop, id_)
    passes = [
        {name: each[name] for name in ("id", "how", "number", "values", "done", "of", "state")}
        for each in full["passes"]
    ]
    at = next((each for each in passes if each["id"] == full["pass"]), None)
    shown = at or (passes[-1] if passes else {"done": 0, "of": full["count"]})
    numbers = {each["id"]: each["number"] for each in full["fasteners"]}
    plan = full["programme"]
    return {
        **{name: full[name] for name in KEPT},
        "role": role,
        "lubricant": plan["lubricant"],
        "source": plan["source"],
        "cautions": plan["cautions"],
        "retorque": plan["retorque"],
        "sequence": [numbers[each] for each in plan["sequence"]],
        "passes": passes,
        "next": full["next"]["number"] if full["next"] else None,
        "done": shown["done"],
        "of": shown["of"],
        "last": full["last"]["made"] if full["last"] else None,
        "overruled": full["run"]["overruled"] if full["run"] else None,
        "fastener_notes": [
            {"number": each["number"], "note": each["note"]}
            for each in full["fasteners"]
            if each["note"]
        ],
        "asks": len(full["asks"]),
    }


def latest_first(lines: list[dict[str, Any]]) -> list[dict[str, Any]]:
    """Joints by their last pull, the latest first; those never pulled by id, last."""
    by_id = sorted(lines, key=lambda line: str(line["id"]))
    return sorted(by_id, key=lambda line: str(line["last"] or ""), reverse=True)
