"""One reading of a gauge study: which piece, by whom, for the how manieth time, what was read."""

from __future__ import annotations

from witnessmark.log.heading import Heading
from witnessmark.log.merge import keep_both
from witnessmark.log.shapes import Measured, Shape, Whole, Words, nested


class TrialSchema(Shape):
    """Shape only. New fields go last and are optional; none is renamed or removed."""

    piece = Whole(required=True)
    person = Words(required=True)
    repeat = Whole(required=True)
    value = nested(Measured, required=True)


HEADING = Heading("trial", schema=TrialSchema, merge=keep_both)
