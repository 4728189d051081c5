"""The course of a run: what was pulled before a pull, and what must be said about when it came."""

from __future__ import annotations

from dataclasses import dataclass, field

from witnessmark.log.values import Fact
from witnessmark.views.moments import closer
from witnessmark.views.programme import Fastener, Pass, Programme

FASTEST = {"torque": 2500, "angle": 2500}
FASTEST_BY_HAND = 1000
NEVER = "~"
"""Sorts after every order."""


@dataclass(slots=True)
class Course:
    """What lies before the pull being looked at; pulls are remembered in their order."""

    programme: Programme
    left: dict[str, str]
    """Pass → the order it was left at with a reason."""
    _until: dict[tuple[str, str], str] = field(default_factory=dict)
    """(pass, fastener) → the order until which a pull of it was on the fastener."""
    _last: dict[tuple[str, str], Fact] = field(default_factory=dict)
    """(pass, device) → its latest pull."""
    _reached: dict[str, int] = field(default_factory=dict)
    """Fastener → the farthest pass it was pulled in."""

    def flags(self, fact: Fact, pass_: Pass, fastener: Fastener) -> list[str]:
        """Flags about when it was pulled: they are said, and the pass counts."""
        found = {
            "out-of-order": self._out_of_order(fact, pass_, fastener),
            "pass-skipped": self._pass_skipped(fact, pass_, fastener),
            "too-fast": self._too_fast(fact, pass_),
        }
        return [flag for flag, so in found.items() if so]

    def remember(self, fact: Fact, pass_: Pass, fastener: Fastener, void: str | None) -> None:
        """Take a pull in, struck or not: when it was made, it was on the fastener."""
        key = (pass_.id, fastener.id)
        self._until[key] = max(self._until.get(key, ""), void or NEVER)
        self._reached[fastener.id] = max(self._reached.get(fastener.id, -1), pass_.number)
        self._last[(pass_.id, fact["device"])] = fact

    def _there(self, pass_: Pass, fastener: str, order: str) -> bool:
        return self._until.get((pass_.id, fastener), "") > order

    def _out_of_order(self, fact: Fact, pass_: Pass, fastener: Fastener) -> bool:
        if not pass_.wants_value or self._there(pass_, fastener.id, fact["order"]):
            return False
        path = self.programme.sequence
        before = path[: path.index(fastener.id)]
        return any(not self._there(pass_, each, fact["order"]) for each in before)

    def _pass_skipped(self, fact: Fact, pass_: Pass, fastener: Fastener) -> bool:
        """Whether an earlier pass was not gone through, and not left with a reason."""
        order = fact["order"]
        passes = list(self.programme.passes.values())[: pass_.number]
        owed = [each for each in passes if self.left.get(each.id, NEVER) > order]
        if not owed:
            return False
        since = passes[owed[-1].number :]
        if not any(self._there(each, fastener.id, order) for each in since):
            return True
        others = self.programme.fasteners
        return any(self._reached.get(each, -1) < owed[-1].number for each in others)

    def _too_fast(self, fact: Fact, pass_: Pass) -> bool:
        before = self._last.get((pass_.id, fact["device"]))
        if before is None or any(each["body"].get("together") is True for each in (before, fact)):
            return False
        return closer(before, fact, FASTEST.get(pass_.how, FASTEST_BY_HAND))
