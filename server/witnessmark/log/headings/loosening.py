"""Done fasteners undone, and the pulls that are void from then on."""

from __future__ import annotations

from witnessmark.log.heading import Heading
from witnessmark.log.merge import one_stands
from witnessmark.log.shapes import Id, Lines, Shape, Words


class LooseningSchema(Shape):
    """Shape only. New fields go last and are optional; none is renamed or removed."""

    run = Id(required=True)
    pulls = Lines(Id(), required=True)
    fasteners = Lines(Id(), allow_none=True)
    reason = Words(required=True)


HEADING = Heading("loosening", schema=LooseningSchema, merge=one_stands)
