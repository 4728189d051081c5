"""An opened store: the database, the data folder and the clock, and what may be asked of them."""

import time
from collections.abc import Callable, Iterable, Sequence
from contextlib import suppress
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from sqlalchemy import Connection, Engine, insert, select
from sqlalchemy.exc import OperationalError

from witnessmark.errors import NoRoom, Refusal, RequestProblem, StoreBusy
from witnessmark.log.workshop import Workshop
from witnessmark.store import copying, devices, own, pairing, photos, settings, tables
from witnessmark.store.copying import Copied
from witnessmark.store.devices import Bearer, Device, NewDevice
from witnessmark.store.engine import reading, writing
from witnessmark.store.ids import fresh_id, moment
from witnessmark.store.importing import Imported
from witnessmark.store.log_append import read_head
from witnessmark.store.log_read import Cursor, LogPage, log_page
from witnessmark.store.offering import Offered
from witnessmark.store.pairing import PairingCode
from witnessmark.store.photos import Photo
from witnessmark.store.projecting import catch_up
from witnessmark.store.rebuilding import Rebuilt, rebuild
from witnessmark.store.sync import Synced, rehearse, sync
from witnessmark.store.taking_in import Into, take_in

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
        if not any(isinstance(offer, Offered) for offer in offers):
            self._note_contact(one)
        return done

    def rehearse(self) -> None:
        """Have the first push of a phone find everything prepared; nothing is kept."""
        home = self.ensure_workshop()
        with suppress(StoreBusy, NoRoom):
            rehearse(self.engine, home, self.now_ms())

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

    def head(self, workshop: str) -> int:
        """The last number of the log."""
        with reading(self.engine) as connection:
            return read_head(connection, workshop).head

    def log(self, workshop: str, after: int, limit: int) -> LogPage:
        """The log after a number, for other programs."""
        with reading(self.engine) as connection:
            return log_page(connection, workshop, after, limit)

    def append_own(
        self, heading: str, about: str | None, body: dict[str, Any], workshop: str | None = None
    ) -> int:
        """Take an entry the computer itself makes; its number. Without about it makes a thing.

        raises: the Refusal that says what is wrong with it.
        """
        home, now = workshop or self.ensure_workshop(), self.now_ms()
        with writing(self.engine) as connection:
            thing = about or fresh_id(now)
            return own.append_own(connection, home, heading, thing, body, now_ms=now).seq

    # Labels

    def fresh_codes(self, count: int, workshop: str | None = None) -> list[str]:
        """Label codes that were never printed and mark nothing."""
        home = workshop or self.ensure_workshop()
        catch_up(self.engine, home)
        with reading(self.engine) as connection:
            return own.fresh_codes(connection, home, count)

    def record_sheet(
        self,
        codes: Sequence[str],
        layout: dict[str, Any],
        *,
        reprint: bool = False,
        workshop: str | None = None,
    ) -> str:
        """Remember that these codes were printed; the id of the sheet."""
        sheet = fresh_id(self.now_ms())
        body = {"codes": list(codes), "layout": layout, "reprint": reprint}
        self.append_own("sheet", sheet, body, workshop)
        return sheet

    # What follows from the log

    def slice(self, workshop: str, about: Callable[[Connection, str], Workshop]) -> Workshop:
        """The Workshop for one question, from tables that have caught up with the log."""
        catch_up(self.engine, workshop)
        with reading(self.engine) as connection:
            return about(connection, workshop)

    def rebuild(self, workshop: str | None = None) -> Rebuilt:
        """Make every table anew from the log, and tell what was different."""
        home = workshop or self.ensure_workshop()
        with writing(self.engine) as connection:
            return rebuild(connection, home)

    # Photos

    def keep_photo(self, workshop: str, sha: str, raw: bytes) -> bool:
        """Keep a photo under its digest; whether it is news.

        raises: WrongType, PhotoDiffers, NoRoom
        """
        mime, now = photos.keep_file(self.data, sha, raw), self.now_ms()
        with writing(self.engine) as connection:
            return photos.note_photo(connection, workshop, sha, mime, size=len(raw), now_ms=now)

    def photo(self, workshop: str, sha: str) -> Photo:
        """A photo of this workshop.

        raises: PhotoUnknown
        """
        with reading(self.engine) as connection:
            return photos.find_photo(connection, workshop, self.data, sha)

    def missing_photos(self, workshop: str, shas: Iterable[str]) -> list[str]:
        """Those of the photos that the workshop does not have, in the order asked."""
        asked = list(dict.fromkeys(shas))
        with reading(self.engine) as connection:
            had = photos.had(connection, workshop, asked)
        return [s for s in asked if s not in had or not photos.photo_file(self.data, s).is_file()]

    # Copies

    def export_(self, file: Path) -> Copied:
        """Write log and photos to a file while the server goes on.

        raises: FileNotWritten, NoRoom
        """
        home = self.ensure_workshop()
        with reading(self.engine) as connection:
            return copying.export(connection, home, self.data, file)

    def backup(self, file: Path) -> Copied:
        """Write all that a new computer needs to a file while the server goes on.

        raises: FileNotWritten, NoRoom
        """
        home = self.ensure_workshop()
        with reading(self.engine) as connection:
            return copying.back_up(connection, home, self.data, file)

    def import_(self, file: Path, *, demo: bool = False) -> Imported:
        """Take the entries and photos of a file; invented ones stay out of a real workshop.

        raises: FileUnreadable, NoRoom, StoreBusy
        """
        home = self.ensure_workshop()
        return take_in(Into(self.engine, self.data, home, self.now_ms), file, demo=demo)
