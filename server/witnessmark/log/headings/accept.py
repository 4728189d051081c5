"""A pull in doubt accepted, with the reason."""

from __future__ import annotations

from witnessmark.log.heading import Heading
from witnessmark.log.merge import keep_both
from witnessmark.log.shapes import Id, Shape, Words


class AcceptSchema(Shape):
    """Shape only. New fields go last and are optional; none is renamed or removed."""

    pull = Id(required=True)
    reason = Words(required=True)


HEADING = Heading("accept", schema=AcceptSchema, merge=keep_both)
