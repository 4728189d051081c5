"""An entry voided, with the reason; both stay readable."""

from __future__ import annotations

from witnessmark.log.heading import Heading
from witnessmark.log.merge import strike_out
from witnessmark.log.shapes import Shape, Words


class StrikeOutSchema(Shape):
    """Shape only. New fields go last and are optional; none is renamed or removed."""

    reason = Words(required=True)


HEADING = Heading("strike-out", schema=StrikeOutSchema, merge=strike_out)
