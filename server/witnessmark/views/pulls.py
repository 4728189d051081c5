"""The pulls of a run, each with what must be said of it: flags are derived, never stored."""

from __future__ import annotations

from dataclasses import dataclass

from witnessmark.log.values import Fact, Subject
from witnessmark.log.workshop import Workshop
from witnessmark.views import plain
from witnessmark.views.course import Course
from witnessmark.views.judging import Fits, against_target, stale
from witnessmark.views.programme import Fastener, Pass, Programme
from witnessmark.views.runs import Run, covers, fastener_of, knew_of, pass_of

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
    left = {pass_of(each): each["order"] for each in reversed(run.of("onward"))}
    course = Course(programme, left)
    fits: Fits = {}
    found = []
    for fact in run.pulls:
        pass_ = programme.passes.get(pass_of(fact))
        fastener = programme.fasteners.get(fastener_of(fact))
        void = _void(fact, loosenings)
        flags: list[str] = ["stale"]
        if pass_ and fastener:
            flags = [
                *course.flags(fact, pass_, fastener),
                *against_target(fact, pass_.target(fastener), joint, workshop, fits),
                *stale(fact, pass_.target(fastener), pass_, programme),
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
            found.setdefault(plain.as_id(fact["body"].get("pull")), []).append(said)
    return found


def _void(fact: Fact, loosenings: list[Fact]) -> str | None:
    """A loosening voids the pulls it names, and those its own device made before it."""
    for each in loosenings:
        named = fact["id"] in plain.listed(each["body"].get("pulls"))
        before = each["device"] == fact["device"] and each["n"] > fact["n"]
        if named or (before and covers(each, fastener_of(fact))):
            return each["order"]
    return None


def _ignored(fact: Fact, loosenings: list[Fact]) -> list[Fact]:
    """Loosenings that whoever pulled did not know of."""
    fastener = fastener_of(fact)
    return [each for each in loosenings if covers(each, fastener) and not knew_of(fact, each)]
