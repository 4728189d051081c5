"""A part sent out to be worked on."""

from __future__ import annotations

from witnessmark.log.heading import Heading
from witnessmark.log.merge import keep_both
from witnessmark.log.shapes import Measured, Shape, Text, nested


class SentSchema(Shape):
    """Shape only. New fields go last and are optional; none is renamed or removed."""

    to = Text(required=True)
    for_ = Text(allow_none=True, data_key="for")
    due = Text(allow_none=True)
    price = nested(Measured, null=True)
    note = Text(allow_none=True)


HEADING = Heading("sent", schema=SentSchema, merge=keep_both)
