"""What a part is: criteria, what to measure, reasons, companions."""

from __future__ import annotations

from witnessmark.log.heading import Heading
from witnessmark.log.merge import latest_per_field
from witnessmark.log.shapes import (
    Id,
    Lines,
    Number,
    PictureDigest,
    Shape,
    Text,
    Truth,
    Words,
    nested,
)


class Criterion(Shape):
    """One thing to look at for a kind, and what good and bad look like."""

    id = Id(required=True)
    asks = Words(required=True)
    hint = Text(allow_none=True)
    good = Text(allow_none=True)
    bad = Text(allow_none=True)
    drawing = Text(allow_none=True)
    good_photo = PictureDigest(allow_none=True)
    bad_photo = PictureDigest(allow_none=True)


class Measure(Shape):
    """One thing to measure for a kind: with what, where, and between which limits."""

    id = Id(required=True)
    name = Words(required=True)
    quantity = Text(allow_none=True)
    unit = Text(allow_none=True)
    instrument = Text(allow_none=True)
    positions = Lines(Text(), allow_none=True)
    directions = Lines(Text(), allow_none=True)
    least = Number(allow_none=True)
    most = Number(allow_none=True)
    source = Text(allow_none=True)


class Reasons(Shape):
    """Short reasons a person may choose, for each verdict that wants one."""

    spare = Lines(Text(), allow_none=True)
    machine = Lines(Text(), allow_none=True)
    scrap = Lines(Text(), allow_none=True)


class KindFields(Shape):
    """What a description may say; it names only what changed, and null empties a field."""

    name = Text(allow_none=True)
    plural = Text(allow_none=True)
    criteria = Lines(nested(Criterion), allow_none=True)
    reasons = nested(Reasons, null=True)
    fastener = Truth(allow_none=True)
    single_use = Truth(allow_none=True)
    companions = Lines(Id(), allow_none=True)
    drawing = Text(allow_none=True)
    invented = Truth(allow_none=True)
    measures = Lines(nested(Measure), allow_none=True)
    own_place = Truth(allow_none=True)
    source = Text(allow_none=True)


class KindSchema(Shape):
    """Shape only. New fields go last and are optional; none is renamed or removed."""

    described = nested(KindFields, required=True, data_key="fields")


HEADING = Heading("kind", schema=KindSchema, merge=latest_per_field, names=True)
