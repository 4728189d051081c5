"""Which thing a label marks; nothing marked is blank, spoilt or free again."""

from __future__ import annotations

from witnessmark.log.heading import Heading
from witnessmark.log.merge import one_stands
from witnessmark.log.shapes import Id, Shape, Word


class LabelSchema(Shape):
    """Shape only. New fields go last and are optional; none is renamed or removed."""

    marks = Id(required=True, allow_none=True)
    state = Word("retired", "free", allow_none=True)


HEADING = Heading("label", schema=LabelSchema, merge=one_stands, names=True)
