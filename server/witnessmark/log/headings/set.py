"""Pieces of one kind chosen to be used together, each with its place, and the ranked spares."""

from __future__ import annotations

from witnessmark.log.heading import Heading
from witnessmark.log.merge import latest_per_field
from witnessmark.log.shapes import Id, Lines, Shape, Text, Truth, Whole, nested


class Piece(Shape):
    """A chosen piece and its place on the engine."""

    part = Id(required=True)
    place = Text(allow_none=True)


class Compared(Shape):
    """One measure the pieces were compared by; its weight as typed."""

    measure = Id(required=True)
    weight = Text(allow_none=True)


class SetFields(Shape):
    """What a description may say; it names only what changed, and null empties a field."""

    name = Text(allow_none=True)
    kind = Id(allow_none=True)
    build = Id(allow_none=True)
    count = Whole(allow_none=True)
    pieces = Lines(nested(Piece), allow_none=True)
    spares = Lines(Id(), allow_none=True)
    measures = Lines(nested(Compared), allow_none=True)
    excluded = Lines(Id(), allow_none=True)
    pinned = Lines(Id(), allow_none=True)
    says = Text(allow_none=True)
    invented = Truth(allow_none=True)


class SetSchema(Shape):
    """Shape only. New fields go last and are optional; none is renamed or removed."""

    described = nested(SetFields, required=True, data_key="fields")


HEADING = Heading("set", schema=SetSchema, merge=latest_per_field, names=True)
