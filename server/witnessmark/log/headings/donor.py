"""The engine, vehicle or job lot that used parts came from."""

from __future__ import annotations

from witnessmark.log.heading import Heading
from witnessmark.log.merge import latest_per_field
from witnessmark.log.shapes import Shape, Text, Truth, nested


class DonorFields(Shape):
    """What a description may say; it names only what changed, and null empties a field."""

    name = Text(allow_none=True)
    engine = Text(allow_none=True)
    note = Text(allow_none=True)
    bought = Text(allow_none=True)
    invented = Truth(allow_none=True)


class DonorSchema(Shape):
    """Shape only. New fields go last and are optional; none is renamed or removed."""

    described = nested(DonorFields, required=True, data_key="fields")


HEADING = Heading("donor", schema=DonorSchema, merge=latest_per_field, names=True)
