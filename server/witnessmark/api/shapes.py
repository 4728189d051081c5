"""What goes over the wire, as marshmallow schemas: they check and they document."""

from marshmallow import INCLUDE, Schema, fields


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
    about = fields.String()


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
    qr = fields.List(fields.String(), required=True)


class Health(Schema):
    """That the server is up."""

    ok = fields.Boolean(required=True)


class DeviceShape(Schema):
    """A device of the workshop, and how its own count stands."""

    id = fields.String(required=True)
    name = fields.String(required=True)
    paired = fields.String(required=True)
    revoked = fields.String(required=True, allow_none=True)
    last_contact = fields.String(required=True, allow_none=True)
    highest = fields.Integer(required=True)
    holes = fields.List(fields.List(fields.Integer()), required=True)
    doubles = fields.List(fields.Integer(), required=True)
    own = fields.Boolean(required=True)
    this = fields.Boolean(required=True)


class DeviceList(Schema):
    """Every device of the workshop."""

    devices = fields.List(fields.Nested(DeviceShape), required=True)


class DeviceName(Schema):
    """What a device is to be called."""

    name = fields.String(required=True)


class PhotoList(Schema):
    """Digests of photos."""

    photos = fields.List(fields.String(), required=True)


class PhotosMissing(Schema):
    """Those of the photos asked for that are not here."""

    missing = fields.List(fields.String(), required=True)


class PhotoKept(Schema):
    """The digest of the photo that is kept."""

    photo = fields.String(required=True)


class LogPageShape(Schema):
    """A page of the log."""

    entries = fields.List(fields.Nested(NumberedEntry), required=True)
    cursor = fields.String(required=True, allow_none=True)
    head = fields.Integer(required=True)


class Answer(Schema):
    """What a view tells; the fields stand in DEVELOPERS.md."""

    class Meta:
        """A view's own fields."""

        unknown = INCLUDE


class SheetRequest(Schema):
    """How many labels are wanted, on which grid, from which place on."""

    layout = fields.Raw(required=True)
    count = fields.Integer()
    start = fields.Integer()
    cut_marks = fields.Boolean()
    reprint = fields.List(fields.String())


class SheetMade(Schema):
    """A sheet and its codes."""

    id = fields.String(required=True)
    codes = fields.List(fields.String(), required=True)


class AskShape(Schema):
    """One value a working asks for."""

    name = fields.String(required=True)
    quantity = fields.String(required=True)
    unit = fields.String(required=True, allow_none=True)
    units = fields.List(fields.String(), required=True)
    choices = fields.List(fields.String(), required=True)
    many = fields.Boolean(required=True)
    optional = fields.Boolean(required=True)
    default = fields.String(required=True, allow_none=True)
    signed = fields.Boolean(required=True)
    row = fields.String(required=True, allow_none=True)
    follows = fields.String(required=True, allow_none=True)


class WorkingShape(Schema):
    """A working: what it asks, its formula and its source."""

    name = fields.String(required=True)
    says = fields.String(required=True)
    formula = fields.String(required=True)
    source = fields.String(required=True)
    asks = fields.List(fields.Nested(AskShape), required=True)


class WorkingList(Schema):
    """Every working."""

    workings = fields.List(fields.Nested(WorkingShape), required=True)


class WorkingRequest(Schema):
    """What is given to a working, by the names it asks for."""

    given = fields.Dict(keys=fields.String(), required=True)


class LineShape(Schema):
    """One line of a result; `shown` has the digits it is worth."""

    name = fields.String(required=True)
    value = fields.Raw(required=True)
    unit = fields.String(required=True, allow_none=True)
    low = fields.Float(required=True, allow_none=True)
    high = fields.Float(required=True, allow_none=True)
    shown = fields.String(required=True)
    between = fields.List(fields.String(), required=True, allow_none=True)
    other = fields.String(required=True, allow_none=True)
    mark = fields.String(required=True, allow_none=True)


class CautionShape(Schema):
    """A caution about a result."""

    word = fields.String(required=True)
    code = fields.String(required=True)
    facts = fields.Dict(keys=fields.String(), values=fields.String(), required=True)
    says = fields.String(required=True)


class WorkingAnswer(Schema):
    """What a working found."""

    working = fields.String(required=True)
    formula = fields.String(required=True)
    source = fields.String(required=True)
    given = fields.Dict(keys=fields.String(), required=True)
    lines = fields.List(fields.Nested(LineShape), required=True)
    cautions = fields.List(fields.Nested(CautionShape), required=True)
