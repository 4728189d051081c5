"""The pulls of a run, each with what must be said of it: flags are derived, never stored."""

from __future__ import annotations

from dataclasses import dataclass

from witnessmark.errors import TradeError
from witnessmark.log.values import Fact, Subject
from witnessmark.log.workshop import Workshop, value
from witnessmark.trade import torque, wrench
from witnessmark.trade.units import Measured
from witnessmark.views import plain
from witnessmark.views.course import Course
from witnessmark.views.programme import Fastener, Pass, Programme, same
from witnessmark.views.runs import Run, covers, knew_of

IN_DOUBT = ("short", "too-far", "wrong-range", "stale", "loosened-meanwhile")
"""Flags that leave a pass open until pulled again or accepted; the others count."""


@dataclass(frozen=True, slots=True)
class Pull:
    """One pull and all that follows about it from the rest of the log."""

    fact: Fact
    fastener: Fastener | None
    pass_: Pass | None
    void: str | None
    """The order of the loosening that voided it."""
    flags: list[str]
    accepted: str | None

    @property
    def live(self) -> bool:
        """Neither struck out nor loosened since."""
        return self.fact["struck"] is None and self.void is None

    @property
    def mark(self) -> str:
        """done, flagged, doubt, out or void."""
        if self.fact["struck"] is not None:
            return "out"
        if self.void is not None:
            return "void"
        if self.accepted is None and any(flag in IN_DOUBT for flag in self.flags):
            return "doubt"
        return "flagged" if self.flags else "done"

    @property
    def counts(self) -> bool:
        """Whether the pass is done for its fastener by this pull."""
        return self.mark in ("done", "flagged")


def pulls(joint: Subject, run: Run, programme: Programme, workshop: Workshop) -> list[Pull]:
    """The pulls of a run by order, with their flags."""
    accepted = _accepted(joint)
    loosenings = run.of("loosening")
    left = {each["body"].get("pass"): each["order"] for each in reversed(run.of("onward"))}
    course = Course(programme, left)
    found = []
    for fact in run.pulls:
        body = fact["body"]
        pass_ = programme.passes.get(str(body.get("pass")))
        fastener = programme.fasteners.get(str(body.get("fastener")))
        void = _void(fact, loosenings)
        flags: list[str] = ["stale"]
        if pass_ and fastener:
            flags = [
                *course.flags(fact, pass_, fastener),
                *_against_target(fact, pass_.target(fastener), joint, workshop),
                *_stale(fact, pass_.target(fastener), pass_, programme),
            ]
            course.remember(fact, pass_, fastener, void)
        ignored = [] if void else _ignored(fact, loosenings)
        flags += ["loosened-meanwhile"] if ignored else []
        since = max([programme.since if "stale" in flags else "", *(i["order"] for i in ignored)])
        reason = next((said for order, said in accepted.get(fact["id"], []) if order > since), None)
        found.append(Pull(fact, fastener, pass_, void, flags, reason))
    return found


def _accepted(joint: Subject) -> dict[str, list[tuple[str, str]]]:
    """Pull → the reasons it was accepted for, latest first, each with its order."""
    found: dict[str, list[tuple[str, str]]] = {}
    for fact in reversed(joint["facts"]):
        if fact["heading"] == "accept" and fact["struck"] is None:
            said = (fact["order"], plain.text(fact["body"].get("reason")) or "")
            found.setdefault(str(fact["body"].get("pull")), []).append(said)
    return found


def _void(fact: Fact, loosenings: list[Fact]) -> str | None:
    """A loosening voids the pulls it names, and those its own device made before it."""
    for each in loosenings:
        named = fact["id"] in plain.listed(each["body"].get("pulls"))
        before = each["device"] == fact["device"] and each["n"] > fact["n"]
        if named or (before and covers(each, fact["body"].get("fastener"))):
            return each["order"]
    return None


def _ignored(fact: Fact, loosenings: list[Fact]) -> list[Fact]:
    """Loosenings that whoever pulled did not know of."""
    fastener = fact["body"].get("fastener")
    return [each for each in loosenings if covers(each, fastener) and not knew_of(fact, each)]


def _against_target(
    fact: Fact, target_now: dict[str, str] | None, joint: Subject, workshop: Workshop
) -> list[str]:
    """Flags about what was read and which wrench was used; what cannot be read is not judged."""
    body = fact["body"]
    target = plain.quantity(body.get("target")) or plain.quantity(target_now)
    if target is None or target_now is None:
        return []
    tool = workshop.subject(str(body.get("wrench")))
    flags = []
    reading = plain.quantity(body.get("reading"))
    at_the_wrench = body.get("read_at") == "set" and plain.text(value(joint, "adapter"))
    if reading is not None and not at_the_wrench:
        try:
            said = torque.against(reading, target, permitted(tool))
            flags += [] if said == "within" else [said]
        except TradeError:
            pass
    return flags + (["wrong-range"] if range_fit(tool, target) not in (None, "takes") else [])


def permitted(tool: Subject | None) -> float | None:
    """The wrench's permitted deviation as a share, or None where it is not known."""
    try:
        return wrench.permitted(_end(tool, "most"), plain.text(value(tool, "deviation")))
    except TradeError:
        return None


def range_fit(tool: Subject | None, target: Measured | None) -> str | None:
    """takes, starts-at or ends-at; None where the range is not known or measures another thing."""
    least, most = _end(tool, "least"), _end(tool, "most")
    if target is None or (least is None and most is None):
        return None
    try:
        return wrench.fit(target, least, most)
    except TradeError:
        return None


def _end(tool: Subject | None, name: str) -> Measured | None:
    return plain.quantity({"value": value(tool, name), "unit": value(tool, "unit")})


def _stale(
    fact: Fact, target_now: dict[str, str] | None, pass_: Pass, programme: Programme
) -> list[str]:
    """Whether value, unit or lubricant are no longer those of the programme."""
    if not pass_.wants_value:
        return []
    body = fact["body"]
    lubricant = plain.text(body.get("lubricant"))
    changed = lubricant is not None and lubricant != programme.lubricant
    return ["stale"] if changed or not same(body.get("target"), target_now) else []
