"""The four merge rules. Each takes lines in order and gives its share of a subject.

All of them are unions: commutative, associative and the same when a line comes twice, because
the fold has put the lines in one order and dropped doubles before.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass, field

from witnessmark.log.values import Claim, Entry, Fact, FieldNow, Strike, Struck


@dataclass(frozen=True, slots=True)
class Line:
    """A readable entry, the order that counts for it, and what strikes it."""

    entry: Entry
    order: str
    struck: Struck | None = None

    @property
    def key(self) -> tuple[str, str, str]:
        """What lines are sorted by; no two lines have the same."""
        return self.order, self.entry["device"], self.entry["id"]


@dataclass(frozen=True, slots=True)
class Share:
    """What one merge rule adds to a subject."""

    fields: dict[str, FieldNow] = field(default_factory=dict)
    facts: list[Fact] = field(default_factory=list)
    strikes: list[Strike] = field(default_factory=list)


Merge = Callable[[Sequence[Line]], Share]


def keep_both(lines: Sequence[Line]) -> Share:
    """Facts side by side: two devices that saw the same give two facts.

    source: definition
    """
    return Share(facts=[_fact(line) for line in lines])


def one_stands(lines: Sequence[Line]) -> Share:
    """Facts of which one is current: one stands until another of its heading names it.

    A struck fact neither stands nor keeps others from standing.
    source: definition
    """
    named = {
        (line.entry["heading"], earlier)
        for line in lines
        if line.struck is None
        for earlier in line.entry.get("after") or ()
    }
    facts = []
    for line in lines:
        fact = _fact(line)
        over = (fact["heading"], fact["id"]) in named
        facts.append(Fact(**fact, stands=line.struck is None and not over))
    return Share(facts=facts)


def latest_per_field(lines: Sequence[Line]) -> Share:
    """Descriptions: for each field the last claim wins, the others stay as its history.

    A null competes like a value; a struck description competes for none of its fields.
    source: definition
    """
    claims: dict[str, list[Claim]] = {}
    for line in lines:
        if line.struck is None:
            for name, value in line.entry["body"]["fields"].items():
                claims.setdefault(name, []).append(_claim(line, value))
    return Share(
        fields={
            name: FieldNow(**said[-1], lost=said[-2::-1]) for name, said in sorted(claims.items())
        }
    )


def strike_out(lines: Sequence[Line]) -> Share:
    """Strike-outs: each voids the entry it is about; which of them count is the fold's to say.

    source: definition
    """
    return Share(strikes=[_strike(line) for line in lines])


def struck_by(lines: Iterable[Line], targets: set[str]) -> dict[str, Struck]:
    """For each struck target its first strike-out; a second one changes nothing.

    targets: ids that may be struck, which those of strike-outs are not.
    source: definition
    """
    struck: dict[str, Struck] = {}
    for line in lines:
        entry = line.entry
        if entry["about"] in targets and entry["about"] not in struck:
            struck[entry["about"]] = Struck(
                id=entry["id"],
                reason=entry["body"]["reason"],
                made=entry["made"],
                device=entry["device"],
            )
    return struck


def _fact(line: Line) -> Fact:
    entry = line.entry
    return Fact(
        id=entry["id"],
        heading=entry["heading"],
        order=line.order,
        stamp=entry["stamp"],
        device=entry["device"],
        made=entry["made"],
        by=entry.get("by"),
        n=entry["n"],
        after=entry.get("after") or [],
        body=entry["body"],
        clock_off=line.order != entry["stamp"],
        struck=line.struck,
    )


def _claim(line: Line, value: object) -> Claim:
    return Claim(value=value, order=line.order, device=line.entry["device"], entry=line.entry["id"])


def _strike(line: Line) -> Strike:
    entry = line.entry
    return Strike(
        id=entry["id"],
        target=entry["about"],
        order=line.order,
        device=entry["device"],
        made=entry["made"],
        by=entry.get("by"),
        n=entry["n"],
        reason=entry["body"]["reason"],
        counts=False,
    )
