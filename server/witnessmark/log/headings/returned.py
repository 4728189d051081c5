"""A part that came back from where it was sent."""

from __future__ import annotations

from witnessmark.log.heading import Heading
from witnessmark.log.merge import keep_both
from witnessmark.log.shapes import Facts, Id, Lines, Shape, Text, Word


class ReturnedSchema(Shape):
    """Shape only. New fields go last and are optional; none is renamed or removed."""

    sent = Id(required=True)
    note = Text(allow_none=True)
    readings = Lines(Facts(), allow_none=True)
    verdict = Word("use", "spare", "machine", "scrap", allow_none=True)


HEADING = Heading("returned", schema=ReturnedSchema, merge=keep_both)
