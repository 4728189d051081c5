"""The next pass begun though this one is not whole, with the reason."""

from __future__ import annotations

from witnessmark.log.heading import Heading
from witnessmark.log.merge import keep_both
from witnessmark.log.shapes import Id, Shape, Words


class OnwardSchema(Shape):
    """Shape only. New fields go last and are optional; none is renamed or removed."""

    run = Id(required=True)
    pass_ = Id(required=True, data_key="pass")
    reason = Words(required=True)


HEADING = Heading("onward", schema=OnwardSchema, merge=keep_both)
