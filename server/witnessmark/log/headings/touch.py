"""A fastener checked with the wrench, not turned."""

from __future__ import annotations

from witnessmark.log.heading import Heading, fastener
from witnessmark.log.merge import keep_both
from witnessmark.log.shapes import Id, Shape


class TouchSchema(Shape):
    """Shape only. New fields go last and are optional; none is renamed or removed."""

    run = Id(required=True)
    fastener = Id(required=True)


HEADING = Heading("touch", schema=TouchSchema, merge=keep_both, whose=fastener)
