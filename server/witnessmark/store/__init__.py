"""The log on disk and the tables that follow from it; the only package that knows SQLAlchemy.

Here belong tables and migrations, append and read, devices and pairing codes, photos, copies.
No HTTP, no screen text, no rule of the trade: what an entry means is for ``log`` to say.
"""

from witnessmark.store.devices import Bearer, Device, NewDevice
from witnessmark.store.log_append import Head, Taken
from witnessmark.store.log_read import Cursor, Page
from witnessmark.store.offering import Offered, offered
from witnessmark.store.opened import Store
from witnessmark.store.opening import adopted, open_store
from witnessmark.store.pairing import PairingCode
from witnessmark.store.restoring import Restored, restore
from witnessmark.store.sync import Synced
from witnessmark.store.tables import db

__all__ = [
    "Bearer",
    "Cursor",
    "Device",
    "Head",
    "NewDevice",
    "Offered",
    "Page",
    "PairingCode",
    "Restored",
    "Store",
    "Synced",
    "Taken",
    "adopted",
    "db",
    "offered",
    "open_store",
    "restore",
]
