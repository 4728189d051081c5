"""The lines a joint is made of: one pass, one fastener, one pull, one note."""

from __future__ import annotations

from collections.abc import Collection
from typing import Any

from witnessmark.log.values import Fact, Subject
from witnessmark.views import plain
from witnessmark.views.programme import Fastener, Pass, Programme
from witnessmark.views.progress import Progress
from witnessmark.views.pulls import Pull


def pass_line(
    pass_: Pass, plan: Programme, now: Progress | None, at: Pass | None, next_one: str | None
) -> dict[str, Any]:
    """One pass with its marks."""
    fasteners = plan.fasteners
    is_now = at is not None and at.id == pass_.id
    marks = {each: _mark(now, pass_, each, next_one if is_now else None) for each in fasteners}
    behind = now is not None and (pass_.id in now.left or not now.open_in(pass_))
    return {
        "id": pass_.id,
        "how": pass_.how,
        "number": pass_.number,
        "values": list(pass_.values),
        "done": sum(1 for each in fasteners if now and now.cell(pass_, each).counts),
        "of": len(fasteners),
        "state": "now" if is_now else "done" if behind else "todo",
        "whole": now is not None and bool(fasteners) and now.whole_in(pass_),
        "left": now.left.get(pass_.id) if now else None,
        "marks": marks,
        "open": [each.number for each in now.open_in(pass_)] if now else [],
    }


def fastener_line(
    fastener: Fastener, shown: Pass | None, now: Progress | None, next_one: str | None
) -> dict[str, Any]:
    """One fastener as it stands in the pass that is shown."""
    latest = now.cell(shown, fastener.id).latest if now and shown else None
    of_it = [each for each in now.pulls if each.fastener == fastener] if now else []
    mark = _mark(now, shown, fastener.id, next_one)
    if now and now.undone and of_it:
        mark = "void"
    return {
        "id": fastener.id,
        "number": fastener.number,
        "x": fastener.x,
        "y": fastener.y,
        "group": fastener.group,
        "note": fastener.note,
        "part": fastener.part,
        "target": shown.target(fastener) if shown else None,
        "mark": mark,
        "flags": list(latest.flags) if latest else [],
        "pull": latest.fact["id"] if latest else None,
        "reading": plain.measured(latest.fact["body"].get("reading")) if latest else None,
        "live": [each.fact["id"] for each in of_it if each.live],
    }


def _mark(now: Progress | None, pass_: Pass | None, fastener: str, next_one: str | None) -> str:
    if fastener == next_one:
        return "next"
    return now.cell(pass_, fastener).mark if now and pass_ else "todo"


def pull_line(pull: Pull) -> dict[str, Any]:
    """One pull, with what must be said of it."""
    body = pull.fact["body"]
    return {
        "id": pull.fact["id"],
        "number": pull.fastener.number if pull.fastener else None,
        "fastener": plain.text(body.get("fastener")),
        "pass": plain.text(body.get("pass")),
        "how": pull.pass_.how if pull.pass_ else None,
        "target": plain.measured(body.get("target")),
        "reading": plain.measured(body.get("reading")),
        "read_at": plain.text(body.get("read_at")),
        "wrench": plain.text(body.get("wrench")),
        "mark": pull.mark,
        "flags": list(pull.flags),
        "accepted": pull.accepted,
        "together": body.get("together") is True,
        **made_by(pull.fact),
    }


def made_by(fact: Fact) -> dict[str, Any]:
    """When, by whom, on which device, and whether it is struck out."""
    struck = fact["struck"]
    return {
        "made": fact["made"],
        "by": fact["by"],
        "device": fact["device"],
        "clock_off": fact["clock_off"],
        "struck": {name: struck[name] for name in ("id", "reason", "made", "device")}
        if struck
        else None,
    }


def note_lines(subject: Subject | None, headings: Collection[str]) -> list[dict[str, Any]]:
    """What was noted about a thing, newest first, struck ones too."""
    facts = [each for each in subject["facts"] if each["heading"] in headings] if subject else []
    return [
        {
            "id": each["id"],
            "heading": each["heading"],
            "text": plain.text(each["body"].get("text")) or plain.text(each["body"].get("says")),
            "photos": photos(each["body"]),
            "body": each["body"],
            **made_by(each),
        }
        for each in reversed(facts)
    ]


def photos(body: dict[str, Any]) -> list[dict[str, Any]]:
    """The photos a body names, in a list or alone."""
    named = [*plain.mappings(body.get("photos")), body]
    return [
        {"photo": each["photo"], "says": plain.text(each.get("says"))}
        for each in named
        if isinstance(each.get("photo"), str)
    ]
