"""The programme of a joint as it stands, made whole: every fastener has a place in the sequence."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from witnessmark.log.values import Subject
from witnessmark.log.workshop import value
from witnessmark.trade import sequence, units
from witnessmark.views import plain

TURNED = ("torque", "angle")
"""Passes that want a value and are pulled in the sequence."""


@dataclass(frozen=True, slots=True)
class Fastener:
    """One fastener by its id."""

    id: str
    number: int
    x: int
    y: int
    group: str | None
    note: str | None
    part: str | None


@dataclass(frozen=True, slots=True)
class Pass:
    """One round over the fasteners; number is its place in the programme, from 0."""

    id: str
    number: int
    how: str
    values: tuple[dict[str, Any], ...]

    @property
    def wants_value(self) -> bool:
        """Whether it is tightened to a value, in the sequence."""
        return self.how in TURNED

    def target(self, fastener: Fastener) -> dict[str, str] | None:
        """The value for a fastener: its group's, else the one for all."""
        for group in (fastener.group, None):
            for each in self.values if self.wants_value else ():
                if each["group"] == group:
                    return {"value": each["value"], "unit": each["unit"]}
        return None


@dataclass(frozen=True, slots=True)
class Programme:
    """What is to be done, and since when this is so."""

    fasteners: dict[str, Fastener]
    passes: dict[str, Pass]
    sequence: list[str]
    lubricant: str | None
    source: str | None
    cautions: list[dict[str, Any]]
    retorque: str | None
    invented: bool
    since: str

    def path(self, pass_: Pass) -> list[str]:
        """The fasteners in the order of this pass; backing off goes the other way."""
        return self.sequence[::-1] if pass_.how == "back-off" else self.sequence

    @property
    def whole(self) -> bool:
        """Whether there are fasteners, and each has a value in every pass that wants one."""
        wanting = [each for each in self.passes.values() if each.wants_value]
        return bool(self.fasteners and wanting) and all(
            each.target(fastener) for each in wanting for fastener in self.fasteners.values()
        )


def programme(joint: Subject | None) -> Programme:
    """The programme of a joint, however little of it is known."""
    kept = plain.mapping(value(joint, "programme"))
    fasteners = _fasteners(joint)
    return Programme(
        fasteners=fasteners,
        passes=_passes(kept),
        sequence=_sequence(fasteners, plain.texts(kept.get("sequence")), value(joint, "pattern")),
        lubricant=plain.text(kept.get("lubricant")),
        source=plain.text(kept.get("source")),
        cautions=[
            {"word": plain.text(each.get("word")), "says": plain.text(each.get("says"))}
            for each in plain.mappings(kept.get("cautions"))
        ],
        retorque=plain.text(kept.get("retorque")),
        invented=kept.get("invented") is True or value(joint, "invented") is True,
        since=joint["fields"]["programme"]["order"]
        if joint and "programme" in joint["fields"]
        else "",
    )


def same(one: object, other: object) -> bool:
    """Whether two measured values say the same in the same unit; 45 and 45.0 do."""
    left, right = plain.measured(one), plain.measured(other)
    if left is None or right is None or left["unit"] != right["unit"]:
        return left is None and right is None
    if left["value"] == right["value"]:
        return True
    first, second = plain.quantity(left), plain.quantity(right)
    return first is not None and second is not None and units.compare(first, second) == 0


def _fasteners(joint: Subject | None) -> dict[str, Fastener]:
    found: dict[str, Fastener] = {}
    for place, each in enumerate(plain.mappings(value(joint, "fasteners")), 1):
        id_ = each.get("id")
        if isinstance(id_, str) and id_ not in found:
            number = plain.whole(each.get("number"))
            found[id_] = Fastener(
                id=id_,
                number=place if number is None else number,
                x=plain.whole(each.get("x")) or 0,
                y=plain.whole(each.get("y")) or 0,
                group=plain.text(each.get("group")),
                note=plain.text(each.get("note")),
                part=plain.text(each.get("part")),
            )
    return found


def _passes(kept: dict[str, Any]) -> dict[str, Pass]:
    found: dict[str, Pass] = {}
    for each in plain.mappings(kept.get("passes")):
        id_, how = each.get("id"), each.get("how")
        if isinstance(id_, str) and id_ not in found:
            found[id_] = Pass(
                id=id_,
                number=len(found),
                how=how if isinstance(how, str) else "torque",
                values=tuple(_values(each)),
            )
    return found


def _values(pass_: dict[str, Any]) -> list[dict[str, Any]]:
    return [
        {"group": plain.text(each.get("group")), **kept}
        for each in plain.mappings(pass_.get("values"))
        if (kept := plain.measured(each))
    ]


def _sequence(fasteners: dict[str, Fastener], kept: list[str], pattern: object) -> list[str]:
    """The kept sequence; what it leaves out follows in the pattern's own order."""
    by_number = sorted(fasteners.values(), key=lambda each: each.number)
    order = list(range(1, len(by_number) + 1))
    if pattern in sequence.PATTERNS and 0 < len(by_number) <= sequence.MOST:
        rows = len({each.y for each in by_number})
        order = sequence.order(str(pattern), len(by_number), rows)
    usual = [by_number[place - 1].id for place in order]
    return plain.once([*(each for each in kept if each in fasteners), *usual])
