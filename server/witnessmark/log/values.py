"""The values that entries fold into: plain JSON on both sides, so that vectors can compare them."""

from __future__ import annotations

from typing import Any, NotRequired, TypedDict

Entry = dict[str, Any]


class Ordered(TypedDict):
    """An entry as it comes to the fold, with the order that counts: the server's, or its stamp."""

    entry: Entry
    order: str


class Claim(TypedDict):
    """What one description said about one field."""

    value: Any
    order: str
    device: str
    entry: str


class FieldNow(Claim):
    """The claim that won, and those that lost, newest first."""

    lost: list[Claim]


class Struck(TypedDict):
    """The strike-out that voids an entry."""

    id: str
    reason: str
    made: str
    device: str


class Fact(TypedDict):
    """One fact about a thing; `stands` only where one of several is current."""

    id: str
    heading: str
    order: str
    stamp: str
    device: str
    made: str
    by: str | None
    n: int
    after: list[str]
    body: dict[str, Any]
    clock_off: bool
    struck: Struck | None
    stands: NotRequired[bool]


class Strike(TypedDict):
    """One strike-out; it counts when it is the first of a target that can be struck."""

    id: str
    target: str
    order: str
    device: str
    made: str
    by: str | None
    n: int
    reason: str
    counts: bool


class Unread(TypedDict):
    """An entry that is kept and not understood: heading-unknown, newer or shape."""

    id: str
    heading: str
    why: str


class Subject(TypedDict):
    """Everything about one id."""

    id: str
    heading: str | None
    hidden: bool
    made: str | None
    fields: dict[str, FieldNow]
    facts: list[Fact]
    strikes: list[Strike]
    unread: list[Unread]


class Link(TypedDict):
    """From a subject to another, by what the other is to it."""

    role: str
    to: str
