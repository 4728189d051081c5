"""Devices of a workshop: their keys, who may still write, and what they have counted."""

import hmac
import json
from dataclasses import dataclass

from sqlalchemy import Connection, insert, select, update

from witnessmark.errors import DeviceRevoked, DeviceUnknown
from witnessmark.store import tables
from witnessmark.store.errors import DeviceMissing
from witnessmark.store.ids import device_key, fresh_id, key_hash, moment
from witnessmark.store.numbers import holes

OWN_NAME = "computer"


@dataclass(frozen=True, slots=True)
class Bearer:
    """Whose key a request carries: every row it reaches belongs to this workshop."""

    device: str
    workshop: str
    last_contact: str | None


@dataclass(frozen=True, slots=True)
class Device:
    """A paired phone, tablet or computer, and how its own count stands."""

    id: str
    name: str
    paired: str
    revoked: str | None
    last_contact: str | None
    highest: int
    holes: list[list[int]]
    doubles: list[int]
    own: bool


@dataclass(frozen=True, slots=True)
class NewDevice:
    """A device just paired; its key is told once and kept only as a hash."""

    device: str
    key: str
    workshop: str


def bearer(connection: Connection, key: str) -> Bearer:
    """Who holds this key.

    raises: DeviceUnknown, DeviceRevoked
    """
    hashed = key_hash(key)
    table = tables.device.c
    query = select(table.id, table.workshop, table.key_hash, table.revoked, table.last_contact)
    row = connection.execute(query.where(table.key_hash == hashed)).first()
    if row is None or not hmac.compare_digest(row.key_hash, hashed):
        raise DeviceUnknown
    if row.revoked is not None:
        raise DeviceRevoked
    return Bearer(row.id, row.workshop, row.last_contact)


def add_device(connection: Connection, workshop: str, name: str, now_ms: int) -> NewDevice:
    """A new row for a device, with a key of its own."""
    made = NewDevice(fresh_id(now_ms), device_key(), workshop)
    row = {
        "workshop": workshop,
        "id": made.device,
        "name": name,
        "key_hash": key_hash(made.key),
        "paired": moment(now_ms),
        "own": False,
    }
    connection.execute(insert(tables.device).values(row))
    return made


def own_device(connection: Connection, workshop: str, now_ms: int) -> str:
    """The id of the computer itself as a device; it has no key, nobody can send as it."""
    table = tables.device.c
    query = select(table.id).where(table.workshop == workshop, table.own.is_(True))
    found = connection.execute(query.order_by(table.paired, table.id)).scalars().first()
    if found is not None:
        return str(found)
    made = fresh_id(now_ms)
    row = {"workshop": workshop, "id": made, "name": OWN_NAME, "paired": moment(now_ms)}
    connection.execute(insert(tables.device).values({**row, "own": True}))
    return made


def name_device(
    connection: Connection, workshop: str, device: str, name: str, *, now_ms: int
) -> None:
    """Give a name to a device that was never paired here; without a key nobody can send as it."""
    table = tables.device.c
    if connection.execute(select(table.id).where(table.id == device)).first() is None:
        row = {"workshop": workshop, "id": device, "name": name, "paired": moment(now_ms)}
        connection.execute(insert(tables.device).values({**row, "own": False}))


def list_devices(connection: Connection, workshop: str) -> list[Device]:
    """Every device of the workshop, in the order of pairing."""
    device, counted = tables.device, tables.numbered
    both = (device.c.workshop == counted.c.workshop) & (device.c.id == counted.c.device)
    query = select(device, counted.c.highest, counted.c.runs, counted.c.doubles)
    query = query.select_from(device.outerjoin(counted, both))
    query = query.where(device.c.workshop == workshop)
    query = query.order_by(device.c.paired, device.c.own.desc(), device.c.id)
    return [
        Device(
            id=row.id,
            name=row.name,
            paired=row.paired,
            revoked=row.revoked,
            last_contact=row.last_contact,
            highest=row.highest or 0,
            holes=holes(json.loads(row.runs or "[]")),
            doubles=json.loads(row.doubles or "[]"),
            own=row.own,
        )
        for row in connection.execute(query)
    ]


def change_device(connection: Connection, workshop: str, device: str, **change: str) -> Device:
    """Give a device another name, or end its pairing.

    raises: DeviceMissing
    """
    table = tables.device.c
    where = (table.workshop == workshop, table.id == device)
    changed = connection.execute(update(tables.device).where(*where).values(**change))
    if not changed.rowcount:
        raise DeviceMissing(device=device)
    return next(d for d in list_devices(connection, workshop) if d.id == device)


def note_contact(connection: Connection, one: Bearer, now_ms: int) -> None:
    """Remember when the device was last heard of."""
    table = tables.device.c
    where = (table.workshop == one.workshop, table.id == one.device)
    change = update(tables.device).where(*where).values(last_contact=moment(now_ms))
    connection.execute(change)
