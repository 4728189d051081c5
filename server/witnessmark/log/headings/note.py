"""Something written down about anything."""

from __future__ import annotations

from witnessmark.log.heading import Heading
from witnessmark.log.merge import keep_both
from witnessmark.log.shapes import Shape, Words, photos


class NoteSchema(Shape):
    """Shape only. New fields go last and are optional; none is renamed or removed."""

    text = Words(required=True)
    photos = photos()


HEADING = Heading("note", schema=NoteSchema, merge=keep_both)
