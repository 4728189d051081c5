"""A joint and the run on it: which fastener, how much, where did I stop?"""

from __future__ import annotations

from typing import Any

from witnessmark.log.values import Fact, Subject
from witnessmark.log.workshop import Workshop, value
from witnessmark.views import plain, setting
from witnessmark.views.applied import applied
from witnessmark.views.held import JointPart, joint_parts
from witnessmark.views.joint_asks import after, asks
from witnessmark.views.joint_lines import fastener_line, note_lines, pass_line, pull_line
from witnessmark.views.joint_state import open_lines, pass_shown, state_of, unsourced_due
from witnessmark.views.programme import Fastener, Pass, Programme, programme
from witnessmark.views.progress import Progress, progress
from witnessmark.views.pulls import Pull
from witnessmark.views.runs import Run, chosen, fastener_of, runs
from witnessmark.views.wrenches import wanted_of_wrench, wrench_in_hand, wrenches

RECENT = 20


def joint(workshop: Workshop, id_: str, run: str | None = None) -> dict[str, Any]:
    """All that a screen of a joint needs; run names one of its runs, else the latest counts."""
    subject = workshop.subject(id_)
    plan = programme(subject)
    found = runs(subject)
    picked = chosen(found, run)
    now = progress(subject, picked, plan, workshop) if subject and picked else None
    parts = joint_parts(subject, picked, workshop) if subject else []
    state = state_of(plan, now, parts)
    shown = pass_shown(plan, now, state)
    coming = now.coming if now and state == "running" else []
    following = [_next(each, shown) for each in coming]
    return {
        **_described(id_, subject, plan, workshop),
        **_parts(parts, picked),
        **_passes(plan, now, shown, coming, state),
        **_run(picked, found, now, state),
        "state": state,
        "next": next(iter(following), None),
        "after_next": next(iter(following[1:]), None),
        **_pulls(now),
        **open_lines(now, shown, coming, state),
        "asks": asks(subject, found, now, parts, workshop) if subject else [],
        "unsourced_due": unsourced_due(plan, now, following),
        "wrenches": wrenches(subject, wanted_of_wrench(following, plan), workshop),
        "wrench": wrench_in_hand(subject, now),
        "applied": applied(subject, now if state == "done" else None, workshop),
        "after": after(found, picked),
        "notes": note_lines(subject, ("note", "photo")),
    }


def _described(
    id_: str, subject: Subject | None, plan: Programme, workshop: Workshop
) -> dict[str, Any]:
    build = plain.text(value(subject, "build"))
    texts = {
        name: plain.text(value(subject, name))
        for name in ("name", "noun", "plural", "thread", "strength_class", "pattern", "casting")
    }
    return {
        "id": id_,
        "here": subject is not None and subject["heading"] is not None,
        "hidden": bool(subject and subject["hidden"]),
        **texts,
        "adapter": setting.adapter(subject),
        "count": len(plan.fasteners),
        "build": build,
        "build_name": plain.text(value(workshop.subject(build or ""), "name")),
        "programme": {
            "lubricant": plan.lubricant,
            "source": plan.source,
            "cautions": plan.cautions,
            "invented": plan.invented,
            "sequence": plan.sequence,
            "retorque": plan.retorque,
        },
        "invented": plan.invented,
    }


def _parts(parts: list[JointPart], run: Run | None) -> dict[str, Any]:
    held = [
        {"part": each.id, "name": each.name, "why": each.held, "danger": True}
        for each in parts
        if each.held
    ]
    return {
        "parts": [
            {
                "id": each.id,
                "name": each.name,
                "verdict": each.verdicts,
                "held": each.held,
                "role": each.role,
            }
            for each in parts
        ],
        "held": held,
        "held_back": bool(held) and (run is None or run.overruled is None),
    }


def _passes(
    plan: Programme, now: Progress | None, shown: Pass | None, coming: list[Fastener], state: str
) -> dict[str, Any]:
    next_one = coming[0].id if coming else None
    at = now.current if now and state in ("running", "not-whole", "no-value") else None
    at = at or (shown if state == "not-whole" else None)
    return {
        "passes": [pass_line(each, plan, now, at, next_one) for each in plan.passes.values()],
        "pass": at.id if at else None,
        "pass_number": at.number if at else None,
        "fasteners": [
            fastener_line(each, shown, now, next_one) for each in plan.fasteners.values()
        ],
    }


def _run(run: Run | None, found: list[Run], now: Progress | None, state: str) -> dict[str, Any]:
    standing = [each.id for each in found if each.stands]
    loosened = now.loosened if now else None
    if run is None or state == "not-begun":
        return {"run": None, "runs": standing, "loosened": _loosened(loosened, now)}
    begun = run.begun
    line = {
        "id": run.id,
        "begun": begun["made"] if begun else None,
        "by": begun["by"] if begun else None,
        "device": begun["device"] if begun else None,
        "lubricant": run.lubricant,
        "wrench": plain.text(begun["body"].get("wrench")) if begun else None,
        "overruled": run.overruled,
    }
    return {"run": line, "runs": standing, "loosened": _loosened(loosened, now)}


def _loosened(fact: Fact | None, now: Progress | None) -> dict[str, Any] | None:
    if fact is None or now is None:
        return None
    named = fact["body"].get("fasteners")
    fasteners = now.programme.fasteners.values()
    return {
        "id": fact["id"],
        "reason": plain.text(fact["body"].get("reason")),
        "made": fact["made"],
        "by": fact["by"],
        "device": fact["device"],
        "all": named is None,
        "numbers": [
            each.number for each in fasteners if named is None or each.id in plain.listed(named)
        ],
    }


def _next(fastener: Fastener, pass_: Pass | None) -> dict[str, Any]:
    return {
        "fastener": fastener.id,
        "number": fastener.number,
        "group": fastener.group,
        "target": pass_.target(fastener) if pass_ else None,
        "how": pass_.how if pass_ else None,
        "note": fastener.note,
        "part": fastener.part,
    }


def _pulls(now: Progress | None) -> dict[str, Any]:
    found = now.pulls if now else []
    last = now.last if now else None
    return {
        "recent": [pull_line(each) for each in reversed(found[-RECENT:])],
        "last": {**pull_line(last), "touched": _touched(last, now)} if last and now else None,
    }


def _touched(last: Pull, now: Progress) -> bool:
    return any(
        each["order"] > last.fact["order"] and fastener_of(each) == fastener_of(last.fact)
        for each in now.run.of("touch")
    )
