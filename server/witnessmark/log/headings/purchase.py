"""One line bought."""

from __future__ import annotations

from witnessmark.log.heading import Heading
from witnessmark.log.merge import keep_both
from witnessmark.log.shapes import Measured, Shape, Text, nested


class PurchaseSchema(Shape):
    """Shape only. New fields go last and are optional; none is renamed or removed."""

    price = nested(Measured, null=True)
    seller = Text(allow_none=True)
    says = Text(allow_none=True)


HEADING = Heading("purchase", schema=PurchaseSchema, merge=keep_both)
