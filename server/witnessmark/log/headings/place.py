"""Where a part or holder lies, or where it has gone."""

from __future__ import annotations

from witnessmark.log.heading import Heading
from witnessmark.log.merge import one_stands
from witnessmark.log.shapes import Id, Shape, Text


class PlaceSchema(Shape):
    """Shape only. New fields go last and are optional; none is renamed or removed."""

    in_ = Id(required=True, allow_none=True, data_key="in")
    where = Text(allow_none=True)
    gone = Text(allow_none=True)


HEADING = Heading("place", schema=PlaceSchema, merge=one_stands)
