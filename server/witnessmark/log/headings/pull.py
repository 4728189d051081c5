"""One fastener confirmed at one pass."""

from __future__ import annotations

from witnessmark.log.heading import Heading, fastener
from witnessmark.log.merge import keep_both
from witnessmark.log.shapes import Id, Measured, Shape, Text, Truth, Word, nested


class PullSchema(Shape):
    """Shape only. New fields go last and are optional; none is renamed or removed."""

    run = Id(required=True)
    fastener = Id(required=True)
    pass_ = Id(required=True, data_key="pass")
    wrench = Id(allow_none=True)
    target = nested(Measured, null=True)
    reading = nested(Measured, null=True)
    read_at = Word("bolt", "set", allow_none=True)
    lubricant = Text(allow_none=True)
    together = Truth(allow_none=True)


HEADING = Heading("pull", schema=PullSchema, merge=keep_both, whose=fastener)
