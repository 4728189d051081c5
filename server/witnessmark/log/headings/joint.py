"""Fasteners tightened together, the parts they clamp, and the programme."""

from __future__ import annotations

from marshmallow import INCLUDE

from witnessmark.log.heading import Heading
from witnessmark.log.merge import latest_per_field
from witnessmark.log.shapes import (
    Id,
    Lines,
    Measured,
    Shape,
    Text,
    TextOr,
    Truth,
    Whole,
    Word,
    Words,
    nested,
)


class Fastener(Shape):
    """One fastener by its id, with its number and its place in the drawing."""

    id = Id(required=True)
    number = Whole(required=True)
    x = Whole(required=True)
    y = Whole(required=True)
    group = Text(allow_none=True)
    note = Text(allow_none=True)
    part = Id(allow_none=True)


class Target(Measured):
    """The value of a pass, for one group of fasteners or for all."""

    group = Text(allow_none=True)


class Pass(Shape):
    """One round over the fasteners."""

    id = Id(required=True)
    how = Word("hand", "torque", "angle", "back-off", required=True)
    values = Lines(nested(Target), allow_none=True)


class Caution(Shape):
    """A signal word and what it warns of."""

    word = Word("danger", "warning", "caution", "notice", required=True)
    says = Words(required=True)


class Programme(Shape):
    """The ordered passes, lubricant state, sequence and source; one field as a whole."""

    passes = Lines(nested(Pass), required=True)
    lubricant = Text(allow_none=True)
    sequence = Lines(Id(), allow_none=True)
    source = Text(allow_none=True)
    cautions = Lines(nested(Caution), allow_none=True)
    retorque = Text(allow_none=True)
    invented = Truth(allow_none=True)


class Adapter(Shape):
    """What the wrench pulls through: its length, the wrench's, and the angle between them."""

    name = Text(allow_none=True)
    adapter_length = nested(Measured, required=True)
    wrench_length = nested(Measured, required=True)
    angle = nested(Measured, required=True)


class JointFields(Shape):
    """What a description may say; it names only what changed, and null empties a field."""

    name = Text(allow_none=True)
    build = Id(allow_none=True)
    parts = Lines(Id(), allow_none=True)
    noun = Text(allow_none=True)
    plural = Text(allow_none=True)
    thread = Text(allow_none=True)
    fastener_part = Id(allow_none=True)
    fasteners = Lines(nested(Fastener), allow_none=True)
    pattern = Word("circle", "rows", "line", "points", allow_none=True)
    programme = nested(Programme, null=True)
    wrench = Id(allow_none=True)
    adapter = TextOr(Adapter, allow_none=True, unknown=INCLUDE)
    note = Text(allow_none=True)
    invented = Truth(allow_none=True)
    casting = Word("plain", "ring", "head", allow_none=True)
    strength_class = Text(allow_none=True)


class JointSchema(Shape):
    """Shape only. New fields go last and are optional; none is renamed or removed."""

    described = nested(JointFields, required=True, data_key="fields")


HEADING = Heading("joint", schema=JointSchema, merge=latest_per_field, names=True)
