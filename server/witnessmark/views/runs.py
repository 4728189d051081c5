"""The runs of a joint: who began each, what it names, and which one is looked at."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from witnessmark.log.values import Fact, Subject
from witnessmark.views import plain

NAMING = ("begin", "pull", "touch", "onward", "unsourced", "loosening")
"""Headings whose facts name a run."""


@dataclass(frozen=True, slots=True)
class Run:
    """One going at a joint. Every fact that names it is here, struck ones too, by order."""

    id: str
    facts: list[Fact]

    def of(self, heading: str) -> list[Fact]:
        """Its facts of a heading that are not struck out."""
        return [
            each for each in self.facts if each["heading"] == heading and each["struck"] is None
        ]

    @property
    def pulls(self) -> list[Fact]:
        """Every pull, struck ones too."""
        return [each for each in self.facts if each["heading"] == "pull"]

    @property
    def begun(self) -> Fact | None:
        """The entry that began it, unless it is struck or has not arrived."""
        return next(iter(self.of("begin")), None)

    @property
    def since(self) -> str:
        """The order it began at; where its begin has not arrived, that of its first fact."""
        return (self.begun or self.facts[0])["order"]

    @property
    def overruled(self) -> str | None:
        """The reason for going on with a part that should not be used, the latest one."""
        return _latest_text(self.of("begin"), "overruled")

    @property
    def lubricant(self) -> str | None:
        """What was used, as said when it began."""
        return _latest_text(self.of("begin"), "lubricant")

    @property
    def stands(self) -> bool:
        """Whether it counts: a begin that is not struck, or none at all but pulls."""
        began = any(each["heading"] == "begin" for each in self.facts)
        return self.begun is not None or (not began and bool(self.of("pull")))


def runs(joint: Subject | None) -> list[Run]:
    """All runs of a joint, by the order they began at."""
    named: dict[str, list[Fact]] = {}
    for fact in joint["facts"] if joint else []:
        id_ = plain.text(fact["body"].get("run"))
        if id_ and fact["heading"] in NAMING:
            named.setdefault(id_, []).append(fact)
    return sorted(
        (Run(id_, facts) for id_, facts in named.items()), key=lambda run: (run.since, run.id)
    )


def chosen(found: list[Run], wanted: str | None) -> Run | None:
    """The run asked for, else the latest that stands."""
    asked = [run for run in found if run.id == wanted]
    standing = [run for run in found if run.stands]
    return next(iter(asked), standing[-1] if standing else None)


def fastener_of(fact: Fact) -> str:
    """The fastener a fact names."""
    return plain.as_id(fact["body"].get("fastener"))


def pass_of(fact: Fact) -> str:
    """The pass a fact names."""
    return plain.as_id(fact["body"].get("pass"))


def covers(loosening: Fact, fastener: str) -> bool:
    """Whether a loosening is about this fastener; without a list it is about all."""
    fasteners = loosening["body"].get("fasteners")
    return fasteners is None or fastener in plain.listed(fasteners)


def knew_of(fact: Fact, other: Fact) -> bool:
    """Whether the maker of a fact knew of another one: it names it, or the device made both."""
    return other["id"] in fact["after"] or (
        fact["device"] == other["device"] and fact["n"] > other["n"]
    )


def _latest_text(facts: Iterable[Fact], name: str) -> str | None:
    said = [plain.text(each["body"].get(name)) for each in facts]
    return next((each for each in reversed(said) if each), None)
