"""An opened store: the database, the data folder and the clock, and what may be asked of them."""

import time
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from sqlalchemy import Connection, Engine, insert, select
from sqlalchemy.exc import OperationalError

from witnessmark.errors import Refusal, RequestProblem, StoreBusy
from witnessmark.store import devices, pairing, settings, tables
from witnessmark.store.devices import Bearer, Device, NewDevice
from witnessmark.store.engine import reading, writing
from witnessmark.store.ids import fresh_id, moment
from witnessmark.store.log_append import Offered
from witnessmark.store.log_read import Cursor
from witnessmark.store.pairing import PairingCode
from witnessmark.store.sync import Synced, sync

_CONTACT_EVERY_MS = 60_000


def clock_ms() -> int:
    """This computer's clock in milliseconds."""
    return time.time_ns() // 1_000_000


@dataclass(frozen=True, slots=True)
class Store:
    """The workshops of one data folder; commands mean the folder's first one."""

    engine: Engine
    data: Path
    now_ms: Callable[[], int] = clock_ms

    def close(self) -> None:
        """Let go of the database."""
        self.engine.dispose()

    # Workshop and settings

    def ensure_workshop(self, name: str = "Workshop") -> str:
        """The id of the folder's workshop, made when there is none yet."""
        with reading(self.engine) as connection:
            found = self._first(connection)
        if found is not None:
            return found
        with writing(self.engine) as connection:
            return self._first(connection) or self.add_workshop(connection, name)

    def add_workshop(self, connection: Connection, name: str) -> str:
        """One more workshop, empty, with the computer as its first device."""
        made = fresh_id(self.now_ms())
        row = {"id": made, "name": name, "digest": "0" * 64, "made": moment(self.now_ms())}
        connection.execute(insert(tables.workshop).values(row))
        devices.own_device(connection, made, self.now_ms())
        return made

    def _first(self, connection: Connection) -> str | None:
        table = tables.workshop.c
        return connection.execute(select(table.id).order_by(table.made, table.id)).scalars().first()

    def setting(self, name: str) -> Any:
        """A value kept for the whole computer, or None."""
        with reading(self.engine) as connection:
            return settings.read_setting(connection, settings.COMPUTER, name)

    def set_setting(self, name: str, value: object) -> None:
        """Keep a value for the whole computer."""
        with writing(self.engine) as connection:
            settings.write_setting(connection, settings.COMPUTER, name, value)

    # Devices

    def pairing_code(self, workshop: str | None = None) -> PairingCode:
        """A fresh code for one more device."""
        home = workshop or self.ensure_workshop()
        with writing(self.engine) as connection:
            return pairing.make_code(connection, home, self.now_ms())

    def pair(self, code: str, name: str) -> NewDevice:
        """The device this code pairs.

        raises: PairingCodeUnknown, PairingPaused
        """
        with writing(self.engine) as connection:
            made = pairing.pair(connection, code, name, self.now_ms())
        if isinstance(made, RequestProblem):
            raise made
        return made

    def bearer(self, key: str) -> Bearer:
        """Whose key this is.

        raises: DeviceUnknown, DeviceRevoked
        """
        with reading(self.engine) as connection:
            return devices.bearer(connection, key)

    def devices(self, workshop: str | None = None) -> list[Device]:
        """Every device of the workshop."""
        home = workshop or self.ensure_workshop()
        with reading(self.engine) as connection:
            return devices.list_devices(connection, home)

    def rename(self, device: str, name: str, workshop: str | None = None) -> Device:
        """Give a device another name."""
        home = workshop or self.ensure_workshop()
        with writing(self.engine) as connection:
            return devices.change_device(connection, home, device, name=name)

    def revoke(self, device: str, workshop: str | None = None) -> Device:
        """End a device's pairing; what it sent stays."""
        home = workshop or self.ensure_workshop()
        with writing(self.engine) as connection:
            return devices.change_device(connection, home, device, revoked=moment(self.now_ms()))

    # The log

    def sync(
        self, one: Bearer, cursor: Cursor | None, offers: Sequence[Offered | Refusal], room: int
    ) -> Synced:
        """One round trip of a device.

        raises: LogForked
        """
        done = sync(self.engine, one, cursor, offers, room, now_ms=self.now_ms())
        self._note_contact(one)
        return done

    def _note_contact(self, one: Bearer) -> None:
        """At most once a minute, and never at the price of the answer."""
        now = self.now_ms()
        if one.last_contact is not None and one.last_contact > moment(now - _CONTACT_EVERY_MS):
            return
        try:
            with writing(self.engine) as connection:
                devices.note_contact(connection, one, now)
        except (StoreBusy, OperationalError):
            return
