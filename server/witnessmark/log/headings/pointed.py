"""An arrow that points at something on a photo; the picture itself stays as it was taken."""

from __future__ import annotations

from witnessmark.log.heading import Heading
from witnessmark.log.merge import keep_both
from witnessmark.log.shapes import PictureDigest, Shape, Spot, Text


class PointedSchema(Shape):
    """Shape only. New fields go last and are optional; none is renamed or removed."""

    photo = PictureDigest(required=True)
    from_ = Spot(required=True, data_key="from")
    to = Spot(required=True)
    note = Text(allow_none=True)


HEADING = Heading("pointed", schema=PointedSchema, merge=keep_both)
