"""The fold: entries about one id become a subject, and subjects together a workshop.

subject() never stops: what it cannot read is listed as unread and the rest goes on.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field, replace
from typing import Any

from witnessmark.log.links import links
from witnessmark.log.merge import (
    Line,
    keep_both,
    latest_per_field,
    one_stands,
    strike_out,
    struck_by,
)
from witnessmark.log.registry import HEADINGS
from witnessmark.log.values import Entry, Fact, Ordered, Strike, Subject, Unread

__all__ = ["Workshop", "links", "standing", "subject", "value"]


def subject(about: str, entries: Iterable[Ordered]) -> Subject:
    """Everything about one id, from its entries and the strike-outs of these.

    The order in which entries come, and how often, makes no difference.
    source: definition
    """
    lines = _in_order(entries)
    unread = _unread(lines)
    closed = {found["id"] for found in unread}
    read = [line for line in lines if line.entry["id"] not in closed]
    strikes = _of(read, strike_out)
    may_be_struck = {line.entry["id"] for line in lines} - {line.entry["id"] for line in strikes}
    struck = struck_by(strikes, may_be_struck)
    read = [replace(line, struck=struck.get(line.entry["id"])) for line in read]
    first = _first_named(read)
    made = first.entry["id"] if first and _merge(first) is not one_stands else None
    return Subject(
        id=about,
        heading=first.entry["heading"] if first else None,
        hidden=made in struck,
        made=made,
        fields=latest_per_field(_of(read, latest_per_field)).fields,
        facts=_facts(read),
        strikes=_strikes(strikes, {found["id"] for found in struck.values()}),
        unread=unread,
    )


def value(subject: Subject | None, name: str) -> Any:
    """What a subject's description says now, or None.

    source: definition
    """
    said = subject["fields"].get(name) if subject else None
    return said["value"] if said else None


def standing(subject: Subject | None, heading: str) -> list[Fact]:
    """The facts of a heading that stand: none, one, or more, and then a person must say.

    source: definition
    """
    facts = subject["facts"] if subject else []
    return [fact for fact in facts if fact["heading"] == heading and fact.get("stands")]


@dataclass(frozen=True, slots=True)
class Workshop:
    """The subjects that one question needs."""

    subjects: Sequence[Subject]
    _by_id: dict[str, Subject] = field(init=False, repr=False)
    _by_link: dict[tuple[str, str], list[Subject]] = field(init=False, repr=False)

    def __post_init__(self) -> None:
        """Indexes are made once; each subject is there once, the last given."""
        by_id = {subject["id"]: subject for subject in self.subjects}
        by_link: dict[tuple[str, str], list[Subject]] = {}
        for _, found in sorted(by_id.items()):
            for link in links(found):
                by_link.setdefault((link["to"], link["role"]), []).append(found)
        object.__setattr__(self, "_by_id", by_id)
        object.__setattr__(self, "_by_link", by_link)

    def subject(self, id_: str) -> Subject | None:
        """The subject of this id, hidden or not, or None."""
        return self._by_id.get(id_)

    def all(self, heading: str) -> list[Subject]:
        """The subjects of a heading that are not hidden, by id."""
        return [
            found
            for _, found in sorted(self._by_id.items())
            if found["heading"] == heading and not found["hidden"]
        ]

    def linked(self, to: str, role: str) -> list[Subject]:
        """The subjects that point to this id in this role, by id."""
        return self._by_link.get((to, role), [])


def _in_order(entries: Iterable[Ordered]) -> list[Line]:
    once: dict[str, Line] = {}
    for given in entries:
        line = Line(given["entry"], given["order"])
        held = once.setdefault(line.entry["id"], line)
        if line.key < held.key:  # before the server's answer an entry has a later order
            once[line.entry["id"]] = line
    return sorted(once.values(), key=lambda line: line.key)


def _unread_why(entry: Entry) -> str | None:
    heading = HEADINGS.get(entry["heading"])
    if heading is None:
        return "heading-unknown"
    if entry["v"] > heading.v:
        return "newer"
    return "shape" if heading.check(entry["body"]) else None


def _unread(lines: Iterable[Line]) -> list[Unread]:
    return [
        Unread(id=line.entry["id"], heading=line.entry["heading"], why=why)
        for line in lines
        if (why := _unread_why(line.entry))
    ]


def _merge(line: Line) -> object:
    return HEADINGS[line.entry["heading"]].merge


def _of(lines: Iterable[Line], merge: object) -> list[Line]:
    return [line for line in lines if _merge(line) is merge]


def _first_named(lines: Iterable[Line]) -> Line | None:
    return next((line for line in lines if HEADINGS[line.entry["heading"]].names), None)


def _facts(lines: list[Line]) -> list[Fact]:
    both = keep_both(_of(lines, keep_both)).facts + one_stands(_of(lines, one_stands)).facts
    return sorted(both, key=lambda fact: (fact["order"], fact["device"], fact["id"]))


def _strikes(lines: list[Line], counting: set[str]) -> list[Strike]:
    return [
        Strike(**{**strike, "counts": strike["id"] in counting})
        for strike in strike_out(lines).strikes
    ]
