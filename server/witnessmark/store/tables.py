"""The tables: the log and what guards it, then the projection that can always be rebuilt.

Every key starts with the workshop, so that one file, one server or many shards hold the same rows.
Sequence numbers come from the workshop's own counter (``head``), never from a database sequence:
sequences commit out of order, and a reader that follows a cursor would then miss rows.
"""

from flask_sqlalchemy import SQLAlchemy
from sqlalchemy import (
    BigInteger,
    Boolean,
    Column,
    Index,
    Integer,
    MetaData,
    Table,
    Text,
    UniqueConstraint,
)

db = SQLAlchemy(metadata=MetaData())


def _table(name: str, *parts: Column[object] | Index | UniqueConstraint) -> Table:
    """One table of the shared metadata, led by its workshop."""
    return Table(name, db.metadata, Column("workshop", Text, primary_key=True), *parts)


def _key(name: str, kind: type[Text] | type[BigInteger] | type[Integer] = Text) -> Column[object]:
    return Column(name, kind, primary_key=True, autoincrement=False)


def _text(name: str, *, empty: bool = True) -> Column[object]:
    return Column(name, Text, nullable=empty)


def _count(name: str) -> Column[object]:
    return Column(name, BigInteger, nullable=False, server_default="0")


# What is kept -----------------------------------------------------------------------------------

workshop = Table(
    "workshop",
    db.metadata,
    Column("id", Text, primary_key=True),
    _text("name", empty=False),
    _count("head"),
    _count("count"),
    _text("digest", empty=False),
    _text("latest"),  # the greatest order of the log: the computer's own stamps go above it
    _count("projected"),
    _text("made", empty=False),
)
device = _table(
    "device",
    _key("id"),
    _text("name", empty=False),
    _text("key_hash"),
    _text("paired", empty=False),
    _text("revoked"),
    _text("last_contact"),
    Column("own", Boolean, nullable=False),
    Index("device_by_key", "key_hash", unique=True),
    Index("device_by_id", "id", unique=True),
)
entry = _table(
    "entry",
    _key("seq", BigInteger),
    _text("id", empty=False),
    _text("order"),  # only where the server set one; else the stamp in the text is the order
    _text("carrier"),
    _text("text", empty=False),
    UniqueConstraint("workshop", "id", name="entry_by_id"),
)
photo = _table("photo", _key("sha"), _text("mime", empty=False), _count("size"), _text("arrived"))
pairing = _table("pairing", _key("id"), _text("salt"), _text("hash"), _text("expires"))
setting = _table("setting", _key("name"), _text("value", empty=False))

# What follows from the log ----------------------------------------------------------------------

numbered = _table(
    "numbered",
    _key("device"),
    _count("highest"),
    _text("runs", empty=False),  # the device's own numbers seen, as JSON [[from, to], …]
    _text("doubles", empty=False),  # numbers seen more than once, as JSON
)
# Which entries an id is to be read from. Kept up here and not by an index on the log: that index
# would more than double the price of a push.
about = _table("about", _key("about"), _key("seq", BigInteger), _text("heading"), _text("entry"))
subject = _table(
    "subject",
    _key("id"),
    _text("heading"),
    _text("name"),
    Column("hidden", Boolean, nullable=False),
    _text("state", empty=False),
    Index("subject_by_heading", "workshop", "heading"),
)
link = _table("link", _key("origin"), _key("role"), _key("target"))
Index("link_by_target", link.c.workshop, link.c.target, link.c.role)
printed = _table("printed", _key("code"), _key("sheet"))
part = _table(
    "part",
    _key("id"),
    _text("name"),
    _text("kind"),
    Column("quantity", BigInteger),
    _text("donor"),
    _text("build"),
    _text("holder"),
    _text("verdict"),
    Column("hidden", Boolean, nullable=False),
)
holder = _table(
    "holder",
    _key("id"),
    _text("name"),
    _text("form"),
    _text("holder"),
    Column("hidden", Boolean, nullable=False),
)
joint = _table(
    "joint",
    _key("id"),
    _text("name"),
    _text("build"),
    _text("lubricant"),
    _text("source"),
    Column("fasteners", Integer, nullable=False),
    Column("hidden", Boolean, nullable=False),
)
label = _table("label", _key("code"), _key("marks"), _text("state"))
pull = _table(
    "pull",
    _key("id"),
    _text("joint", empty=False),
    _text("run"),
    _text("fastener"),
    _text("pass"),
    _text("wrench"),
    _text("target"),
    _text("reading"),
    _text("unit"),
    _text("made"),
    _text("by"),
    _text("device"),
    Column("struck", Boolean, nullable=False),
    Index("pull_by_joint", "workshop", "joint"),
)
inspection = _table(
    "inspection",
    _key("id"),
    _text("part", empty=False),
    _text("verdict"),
    _text("reason"),
    _text("note"),
    _text("made"),
    _text("by"),
    _text("device"),
    Column("struck", Boolean, nullable=False),
    Index("inspection_by_part", "workshop", "part"),
)

PROJECTION = (numbered, about, subject, link, printed, part, holder, joint, label, pull, inspection)
KEPT = (workshop, device, entry, photo, pairing, setting)
