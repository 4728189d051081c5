"""Where on which build a part is fitted."""

from __future__ import annotations

from witnessmark.log.heading import Heading
from witnessmark.log.merge import one_stands
from witnessmark.log.shapes import Id, Shape, Text


class FittedSchema(Shape):
    """Shape only. New fields go last and are optional; none is renamed or removed."""

    build = Id(required=True, allow_none=True)
    place = Text(allow_none=True)
    reason = Text(allow_none=True)


HEADING = Heading("fitted", schema=FittedSchema, merge=one_stands)
