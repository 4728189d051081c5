"""The work that makes one engine."""

from __future__ import annotations

from witnessmark.log.heading import Heading
from witnessmark.log.merge import latest_per_field
from witnessmark.log.shapes import Shape, Text, Truth, nested


class BuildFields(Shape):
    """What a description may say; it names only what changed, and null empties a field."""

    name = Text(allow_none=True)
    engine = Text(allow_none=True)
    note = Text(allow_none=True)
    bought = Text(allow_none=True)
    invented = Truth(allow_none=True)


class BuildSchema(Shape):
    """Shape only. New fields go last and are optional; none is renamed or removed."""

    described = nested(BuildFields, required=True, data_key="fields")


HEADING = Heading("build", schema=BuildSchema, merge=latest_per_field, names=True)
