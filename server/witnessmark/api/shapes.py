"""What goes over the wire, as marshmallow schemas: they check and they document."""

from marshmallow import Schema, fields


class Refused(Schema):
    """Why one entry was not taken."""

    code = fields.String(required=True)
    says = fields.String(required=True)
    next = fields.String(required=True)


class Problem(Schema):
    """A problem document (RFC 9457)."""

    type = fields.String(required=True)
    title = fields.String(required=True)
    status = fields.Integer(required=True)
    code = fields.String(required=True)
    next = fields.String(required=True)


class SyncRequest(Schema):
    """What a device sends."""

    cursor = fields.String(allow_none=True)
    entries = fields.List(fields.Raw())
    room = fields.Integer()


class NumberedEntry(Schema):
    """An entry with its number, and its order where the server set one."""

    seq = fields.Integer(required=True)
    order = fields.String()
    entry = fields.Dict(required=True)


class SyncAnswer(Schema):
    """What the server answers."""

    answers = fields.List(fields.Raw(), required=True)
    entries = fields.List(fields.Nested(NumberedEntry), required=True)
    cursor = fields.String(required=True, allow_none=True)
    head = fields.Integer(required=True)
    count = fields.Integer(required=True)
    digest = fields.String(required=True)
    now = fields.String(required=True)


class PairRequest(Schema):
    """A pairing code and what the device is to be called."""

    code = fields.String(required=True)
    name = fields.String(required=True)


class Paired(Schema):
    """The new device's id and key, told once."""

    device = fields.String(required=True)
    key = fields.String(required=True)
    workshop = fields.String(required=True)
    now = fields.String(required=True)


class PairingCode(Schema):
    """A code for the next device, and the address that holds it."""

    url = fields.String(required=True)
    code = fields.String(required=True)
    expires = fields.String(required=True)


class Health(Schema):
    """That the server is up."""

    ok = fields.Boolean(required=True)
