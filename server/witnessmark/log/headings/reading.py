"""One measured value of a part."""

from __future__ import annotations

from witnessmark.log.heading import Heading
from witnessmark.log.merge import keep_both
from witnessmark.log.shapes import Id, Measured, Shape, Words, nested


class ReadingSchema(Shape):
    """Shape only. New fields go last and are optional; none is renamed or removed."""

    of = Words(required=True)
    value = nested(Measured, required=True)
    wrench = Id(allow_none=True)


HEADING = Heading("reading", schema=ReadingSchema, merge=keep_both)
