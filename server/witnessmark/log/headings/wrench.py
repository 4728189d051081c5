"""A tool that tightens: its range, graduation, deviation and calibration."""

from __future__ import annotations

from witnessmark.log.heading import Heading
from witnessmark.log.merge import latest_per_field
from witnessmark.log.shapes import Number, Shape, Text, Truth, Word, nested


class WrenchFields(Shape):
    """What a description may say; it names only what changed, and null empties a field."""

    name = Text(allow_none=True)
    sort = Word("click", "beam", "dial", "display", "angle", allow_none=True)
    unit = Text(allow_none=True)
    least = Number(allow_none=True)
    most = Number(allow_none=True)
    graduation = Number(allow_none=True)
    deviation = Number(allow_none=True)
    calibrated = Text(allow_none=True)
    lies = Text(allow_none=True)
    note = Text(allow_none=True)
    invented = Truth(allow_none=True)
    due = Text(allow_none=True)


class WrenchSchema(Shape):
    """Shape only. New fields go last and are optional; none is renamed or removed."""

    described = nested(WrenchFields, required=True, data_key="fields")


HEADING = Heading("wrench", schema=WrenchSchema, merge=latest_per_field, names=True)
