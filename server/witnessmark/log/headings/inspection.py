"""What somebody saw and measured on a part."""

from __future__ import annotations

from witnessmark.log.heading import Heading
from witnessmark.log.merge import keep_both
from witnessmark.log.shapes import Facts, Id, Lines, Shape, Text, Truth, Word, nested, photos


class Look(Shape):
    """One criterion looked at."""

    criterion = Id(required=True)
    good = Truth(required=True)


class InspectionSchema(Shape):
    """Shape only. New fields go last and are optional; none is renamed or removed."""

    verdict = Word("use", "spare", "machine", "scrap", allow_none=True)
    reason = Text(allow_none=True)
    looks = Lines(nested(Look), allow_none=True)
    readings = Lines(Facts(), allow_none=True)
    note = Text(allow_none=True)
    photos = photos()


HEADING = Heading("inspection", schema=InspectionSchema, merge=keep_both)
