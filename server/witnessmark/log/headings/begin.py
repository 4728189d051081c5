"""The beginning of a run over a joint."""

from __future__ import annotations

from witnessmark.log.heading import Heading
from witnessmark.log.merge import keep_both
from witnessmark.log.shapes import Id, Shape, Text


class BeginSchema(Shape):
    """Shape only. New fields go last and are optional; none is renamed or removed."""

    run = Id(required=True)
    lubricant = Text(required=True)
    wrench = Id(allow_none=True)
    overruled = Text(allow_none=True)


HEADING = Heading("begin", schema=BeginSchema, merge=keep_both)
