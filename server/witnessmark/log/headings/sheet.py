"""Label codes printed together, so that none is printed twice by accident."""

from __future__ import annotations

from witnessmark.log.heading import Heading
from witnessmark.log.merge import keep_both
from witnessmark.log.shapes import Facts, LabelCode, Lines, Shape, Truth


class SheetSchema(Shape):
    """Shape only. New fields go last and are optional; none is renamed or removed."""

    codes = Lines(LabelCode(), required=True)
    layout = Facts(required=True)
    reprint = Truth(allow_none=True)


HEADING = Heading("sheet", schema=SheetSchema, merge=keep_both, names=True)
