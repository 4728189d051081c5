"""A picture of anything."""

from __future__ import annotations

from witnessmark.log.heading import Heading
from witnessmark.log.merge import keep_both
from witnessmark.log.shapes import PictureDigest, Shape, Text


class PhotoSchema(Shape):
    """Shape only. New fields go last and are optional; none is renamed or removed."""

    photo = PictureDigest(required=True)
    says = Text(allow_none=True)


HEADING = Heading("photo", schema=PhotoSchema, merge=keep_both)
