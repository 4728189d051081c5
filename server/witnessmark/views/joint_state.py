"""The state of a joint: may it begin, is it running, what keeps it open?"""

from __future__ import annotations

from typing import Any

from witnessmark.views.held import JointPart
from witnessmark.views.programme import Fastener, Pass, Programme, same
from witnessmark.views.progress import Progress
from witnessmark.views.runs import pass_of


def state_of(plan: Programme, now: Progress | None, parts: list[JointPart]) -> str:
    """no-value, not-begun, running, not-whole or done."""
    if now is None or now.undone or not plan.fasteners:
        return "not-begun" if plan.whole else "no-value"
    current = now.current
    if current is not None:
        coming = now.coming
        if not coming:
            return "not-whole"
        wanting = current.wants_value and current.target(coming[0]) is None
        return "no-value" if wanting else "running"
    if not plan.passes:
        return "no-value"
    last = now.last.fact["order"] if now.last else ""
    held = now.run.overruled is None and any(each.held and each.since <= last for each in parts)
    return "done" if now.complete and not held else "not-whole"


def pass_shown(plan: Programme, now: Progress | None, state: str) -> Pass | None:
    """The pass whose marks the drawing wears."""
    passes = list(plan.passes.values())
    if now is None or state == "not-begun" or not passes:
        return next(iter(passes), None)
    return now.current or passes[-1]


def open_lines(
    now: Progress | None, shown: Pass | None, coming: list[Fastener], state: str
) -> dict[str, Any]:
    """What keeps the pass open, which one comes back, and which must not be turned again."""
    if now is None or shown is None or state in ("not-begun", "done"):
        return {"open": [], "struck_note": None, "struck_after": None} | _turned([])
    turned = [each.id for each in now.open_in(shown) if (shown.id, each.id) in now.turned]
    back = [each for each in coming if now.cell(shown, each.id).mark == "out"]
    todo = coming[: len(coming) - len(back)]
    waits = bool(back and todo)
    return {
        "open": [each.number for each in now.open_in(shown)],
        "struck_note": back[0].number if waits else None,
        "struck_after": todo[-1].number if waits else None,
        **_turned(turned),
    }


def _turned(fasteners: list[str]) -> dict[str, Any]:
    return {"turned_ask": fasteners[0] if fasteners else None, "turned": fasteners}


def unsourced_due(plan: Programme, now: Progress | None, following: list[dict[str, Any]]) -> bool:
    """Once for each pass and value of a run, and again when the value changes."""
    target = following[0]["target"] if following else None
    if plan.source or now is None or now.current is None or target is None:
        return False
    return not any(
        pass_of(each) == now.current.id and same(each["body"].get("target"), target)
        for each in now.run.of("unsourced")
    )
