"""Where a subject points: label to thing, part to holder, joint to the parts it clamps."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

from witnessmark.log.values import Fact, Link, Subject

FIELD_ROLES = {
    "part": (("kind", "of-kind"), ("donor", "from-donor"), ("build", "for-build")),
    "holder": (("build", "for-build"),),
    "joint": (("build", "for-build"), ("fastener_part", "holds-with"), ("wrench", "uses")),
    "step": (("build", "for-build"),),
}
FACT_ROLES = (
    ("label", "marks", "marks"),
    ("place", "in", "lies-in"),
    ("fitted", "build", "fitted-in"),
)


def links(subject: Subject) -> list[Link]:
    """Links of what stands, each once, by role and id; a hidden thing points nowhere.

    source: definition
    """
    if subject["hidden"]:
        return []
    pairs = {*_described(subject), *_standing(subject["facts"]), *_clamped(subject)}
    return [Link(role=role, to=to) for role, to in sorted(pairs)]


def _described(subject: Subject) -> Iterator[tuple[str, str]]:
    for name, role in FIELD_ROLES.get(subject["heading"] or "", ()):
        yield from _to(role, _said(subject, name))


def _standing(facts: list[Fact]) -> Iterator[tuple[str, str]]:
    for heading, key, role in FACT_ROLES:
        for fact in facts:
            if fact["heading"] == heading and fact.get("stands"):
                yield from _to(role, fact["body"].get(key))
    for fact in facts:
        if fact["heading"] == "place" and not fact.get("stands") and fact["struck"] is None:
            yield from _to("lay-in", fact["body"].get("in"))
        if fact["heading"] == "take" and fact["struck"] is None:
            for piece in fact["body"].get("pieces") or ():
                yield from _to("piece", piece)


def _clamped(subject: Subject) -> Iterator[tuple[str, str]]:
    if subject["heading"] == "joint":
        for part in _said(subject, "parts") or ():
            yield from _to("clamps", part)
        for fastener in _said(subject, "fasteners") or ():
            yield from _to("holds-with", fastener.get("part"))


def _said(subject: Subject, name: str) -> Any:
    field = subject["fields"].get(name)
    return field["value"] if field else None


def _to(role: str, to: object) -> Iterator[tuple[str, str]]:
    if isinstance(to, str) and to:
        yield role, to
