"""A piece, or a counted handful nobody tells apart."""

from __future__ import annotations

from witnessmark.log.heading import Heading
from witnessmark.log.merge import latest_per_field
from witnessmark.log.shapes import Id, Shape, Text, Truth, Whole, nested


class PartFields(Shape):
    """What a description may say; it names only what changed, and null empties a field."""

    name = Text(allow_none=True)
    kind = Id(allow_none=True)
    quantity = Whole(allow_none=True)
    donor = Id(allow_none=True)
    from_ = Text(allow_none=True, data_key="from")
    build = Id(allow_none=True)
    for_ = Text(allow_none=True, data_key="for")
    single_use = Truth(allow_none=True)
    thread = Text(allow_none=True)
    note = Text(allow_none=True)
    invented = Truth(allow_none=True)
    bag = Id(allow_none=True)
    number = Whole(allow_none=True)


class PartSchema(Shape):
    """Shape only. New fields go last and are optional; none is renamed or removed."""

    described = nested(PartFields, required=True, data_key="fields")


HEADING = Heading("part", schema=PartSchema, merge=latest_per_field, names=True)
