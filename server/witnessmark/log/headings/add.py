"""Pieces that came to a counted handful."""

from __future__ import annotations

from witnessmark.log.heading import Heading
from witnessmark.log.merge import keep_both
from witnessmark.log.shapes import Id, Lines, Shape, Text, Whole


class AddSchema(Shape):
    """Shape only. New fields go last and are optional; none is renamed or removed."""

    count = Whole(required=True)
    says = Text(allow_none=True)
    pieces = Lines(Id(), allow_none=True)


HEADING = Heading("add", schema=AddSchema, merge=keep_both)
