"""A bag, bin, tray, box or shelf."""

from __future__ import annotations

from witnessmark.log.heading import Heading
from witnessmark.log.merge import latest_per_field
from witnessmark.log.shapes import Id, Shape, Text, Truth, Word, nested


class HolderFields(Shape):
    """What a description may say; it names only what changed, and null empties a field."""

    name = Text(allow_none=True)
    form = Word("bag", "bin", "tray", "box", "shelf", "other", allow_none=True)
    note = Text(allow_none=True)
    build = Id(allow_none=True)
    invented = Truth(allow_none=True)


class HolderSchema(Shape):
    """Shape only. New fields go last and are optional; none is renamed or removed."""

    described = nested(HolderFields, required=True, data_key="fields")


HEADING = Heading("holder", schema=HolderSchema, merge=latest_per_field, names=True)
