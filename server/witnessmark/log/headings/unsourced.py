"""The choice to go on at a value without a source."""

from __future__ import annotations

from witnessmark.log.heading import Heading
from witnessmark.log.merge import keep_both
from witnessmark.log.shapes import Id, Measured, Shape, nested


class UnsourcedSchema(Shape):
    """Shape only. New fields go last and are optional; none is renamed or removed."""

    run = Id(required=True)
    pass_ = Id(required=True, data_key="pass")
    target = nested(Measured, required=True)


HEADING = Heading("unsourced", schema=UnsourcedSchema, merge=keep_both)
