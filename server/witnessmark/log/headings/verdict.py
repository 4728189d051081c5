"""What may be done with a part."""

from __future__ import annotations

from witnessmark.log.heading import Heading
from witnessmark.log.merge import one_stands
from witnessmark.log.shapes import Id, Shape, Text, Word


class VerdictSchema(Shape):
    """Shape only. New fields go last and are optional; none is renamed or removed."""

    verdict = Word("use", "spare", "machine", "scrap", required=True)
    reason = Text(allow_none=True)
    inspection = Id(allow_none=True)


HEADING = Heading("verdict", schema=VerdictSchema, merge=one_stands)
