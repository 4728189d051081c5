"""A tool that measures: its quantity and range, how far it may be off, its calibration."""

from __future__ import annotations

from witnessmark.log.heading import Heading
from witnessmark.log.merge import latest_per_field
from witnessmark.log.shapes import Number, Shape, Text, Truth, nested


class InstrumentFields(Shape):
    """What a description may say; it names only what changed, and null empties a field.

    Unit against quantity, least against most and one date against another are asked by the form
    and told by views.instrument: two devices may each change one of a pair, and both must be read.
    """

    name = Text(allow_none=True)
    sort = Text(allow_none=True)
    quantity = Text(allow_none=True)
    unit = Text(allow_none=True)
    least = Number(allow_none=True)
    most = Number(allow_none=True)
    resolution = Number(allow_none=True)
    deviation = Number(allow_none=True)
    uncertainty = Number(allow_none=True)
    calibrated = Text(allow_none=True)
    due = Text(allow_none=True)
    lies = Text(allow_none=True)
    note = Text(allow_none=True)
    invented = Truth(allow_none=True)


class InstrumentSchema(Shape):
    """Shape only. New fields go last and are optional; none is renamed or removed."""

    described = nested(InstrumentFields, required=True, data_key="fields")


HEADING = Heading("instrument", schema=InstrumentSchema, merge=latest_per_field, names=True)
