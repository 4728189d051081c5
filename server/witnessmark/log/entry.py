"""One entry: its fields, and the check that takes it or says why not."""

from __future__ import annotations

import json
from dataclasses import dataclass
from typing import Any, NamedTuple, cast

from witnessmark.errors import EntryTooLarge, FieldShape, NotAnObject, Refusal, TextNotClean
from witnessmark.log.checker import compiled
from witnessmark.log.clean import Flaw, deepest, parse, written
from witnessmark.log.registry import HEADINGS
from witnessmark.log.shapes import (
    Count,
    EntryId,
    Facts,
    Id,
    Lines,
    Shape,
    StampText,
    Text,
    Words,
)
from witnessmark.log.stamp import is_stamp
from witnessmark.log.trouble import refusal

MOST_BYTES = 64 * 1024
DEEPEST = 16
MOST_AFTER = 8


class EntrySchema(Shape):
    """The fields of every entry; others are kept, for a newer device may know more."""

    id = EntryId(required=True)
    heading = Id(required=True)
    about = Id(required=True)
    device = Id(required=True)
    n = Count(required=True)
    stamp = StampText(required=True)
    made = Words(required=True)
    by = Text(allow_none=True)
    v = Count(required=True)
    after = Lines(Id(), most=MOST_AFTER)
    repairs = Id()
    body = Facts(required=True)


_envelope = compiled(EntrySchema)


@dataclass(frozen=True, slots=True)
class Taken:
    """An entry that may be kept: its facts, and the canonical text that is stored."""

    facts: dict[str, Any]
    text: str


class Sent(NamedTuple):
    """An entry as it came on the wire, with the order it had before a restore.

    A tuple, because a push makes thousands.
    """

    facts: object
    order: str | None


def take(facts: object) -> Taken:
    """Check one entry that parse() gave.

    raises: the Refusal that says what to repair.
    """
    text = checked(facts)
    return Taken(cast("dict[str, Any]", facts), text)


def checked(facts: object) -> str:
    """The canonical text of one entry that parse() gave, which may be kept.

    raises: the Refusal that says what to repair.
    """
    if type(facts) is not dict:
        raise facts.refusal if isinstance(facts, Flaw) else NotAnObject()
    raw = written(facts)
    _bounds(raw)
    if trouble := _envelope(facts):
        raise refusal(trouble, "this entry")
    if unwell := body_refusal(facts):
        raise unwell
    return raw.decode()


def body_refusal(facts: dict[str, Any]) -> Refusal | None:
    """Why the body cannot be read; None for a heading or version not known here."""
    heading = HEADINGS.get(facts["heading"])
    if heading is None or facts["v"] > heading.v:
        return None
    trouble = heading.check(facts["body"])
    return refusal(trouble, heading.spoken(facts["body"])) if trouble else None


def read(raw: bytes) -> Taken:
    """Check the text of one entry.

    raises: the Refusal that says what to repair; NotJson, TooMuch when it cannot be parsed.
    """
    return take(parse(raw))


def seal(facts: dict[str, Any]) -> Taken:
    """Check an entry made in this process, as if it had come on the wire.

    raises: as read() does; a fraction among the facts is a refusal too.
    """
    return read(json.dumps(facts).encode())


def wrapped(item: object) -> bool:
    """Whether an element of `entries` on the wire is an entry with the order it had."""
    return type(item) is dict and "entry" in item and not item.keys() - {"order", "entry"}


def unwrapped(item: Any) -> Sent:
    """An element of `entries` on the wire: an entry, or one with the order it had.

    raises: FieldShape when that order is no stamp.
    """
    if not wrapped(item):
        return Sent(item, None)
    order = item.get("order")
    if order is None or (type(order) is str and is_stamp(order)):
        return Sent(item["entry"], order)
    raise FieldShape(what="The order of this entry", trouble="is no stamp")


def _bounds(raw: bytes) -> None:
    if len(raw) > MOST_BYTES:
        raise EntryTooLarge(size=len(raw))
    if raw.count(b"{") + raw.count(b"[") > DEEPEST and deepest(raw) > DEEPEST:
        raise TextNotClean(trouble=f"it is more than {DEEPEST} levels deep")
