"""A gauge study: which instrument, what it measures, how many pieces, who measures, how often."""

from __future__ import annotations

from witnessmark.log.heading import Heading
from witnessmark.log.merge import latest_per_field
from witnessmark.log.shapes import Id, Lines, Number, Shape, Text, Truth, Whole, nested


class StudyFields(Shape):
    """What a description may say; it names only what changed, and null empties a field."""

    name = Text(allow_none=True)
    instrument = Id(allow_none=True)
    quantity = Text(allow_none=True)
    unit = Text(allow_none=True)
    least = Number(allow_none=True)
    most = Number(allow_none=True)
    pieces = Whole(allow_none=True)
    people = Lines(Text(), allow_none=True)
    repeats = Whole(allow_none=True)
    build = Id(allow_none=True)
    invented = Truth(allow_none=True)


class StudySchema(Shape):
    """Shape only. New fields go last and are optional; none is renamed or removed."""

    described = nested(StudyFields, required=True, data_key="fields")


HEADING = Heading("study", schema=StudySchema, merge=latest_per_field, names=True)
