"""Writes entries as the devices of the demo would have: ids, stamps and counts without chance."""

import json
from datetime import datetime, timedelta, timezone
from hashlib import sha256
from typing import Any

from witnessmark.log.entry import Taken, seal
from witnessmark.log.ids import uuid7
from witnessmark.log.stamp import Clock, seen, tick
from witnessmark.trade import label

HERE = timezone(timedelta(hours=1))


def moment(text: str) -> datetime:
    """A moment of the demo's year from `day month hour:minute:second`."""
    return datetime.strptime(f"2024 {text}", "%Y %d %b %H:%M:%S").replace(tzinfo=HERE)


def named_id(name: str, when: datetime) -> str:
    """An id that is always the same for the same name."""
    return uuid7(int(when.timestamp() * 1000), sha256(name.encode()).digest()[:10])


def code_for(name: str) -> str:
    """A label code that is always the same for the same name."""
    seed = sha256(f"label {name}".encode()).digest()
    seven = "".join(label.ALPHABET[byte & 31] for byte in seed[:7])
    return seven + label.check(seven)


class Device:
    """One device: its own count and clock, and who stands at it."""

    def __init__(self, name: str, by: str | None, log: "Scribe") -> None:
        self.id = named_id(f"device {name}", moment("1 Mar 09:00:00"))
        self.name, self.by, self.log = name, by, log
        self.n, self.clock = 0, Clock()


class Scribe:
    """The log of the demo as it grows; every device sees each entry at once."""

    def __init__(self) -> None:
        self.now = moment("8 Mar 14:00:00")
        self.entries: list[Taken] = []
        self.phone = Device("bench phone", "the owner", self)
        self.tablet = Device("tablet", None, self)
        self.hand = self.phone
        self.stands: dict[tuple[str, str], list[str]] = {}

    def at(self, text: str) -> None:
        """Go on at this moment."""
        self.now = moment(text)

    def later(self, seconds: float) -> None:
        """Let some time pass."""
        self.now += timedelta(seconds=seconds)

    def fresh(self, name: str) -> str:
        """A new id for a thing."""
        return named_id(name, self.now)

    def write(
        self, heading: str, about: str, body: dict[str, Any], after: list[str] | None = None
    ) -> str:
        """One entry by the device in hand; its id."""
        device, made = self.hand, self.now
        device.n += 1
        reckoned = tick(device.clock, int(made.timestamp() * 1000))
        facts: dict[str, Any] = {
            "id": named_id(f"{device.name} {device.n}", made),
            "heading": heading,
            "about": about,
            "device": device.id,
            "n": device.n,
            "stamp": reckoned.stamp,
            "made": made.isoformat(timespec="seconds"),
            "v": 1,
            "body": body,
        }
        if device.by:
            facts["by"] = device.by
        if after:
            facts["after"] = after
        self.entries.append(seal(facts))
        for other in (self.phone, self.tablet):
            other.clock = seen(other.clock, reckoned.stamp)
        self.later(2)
        return str(facts["id"])

    def describe(self, heading: str, name: str, **said: Any) -> str:
        """Make a thing; its id. A trailing underscore lets a field be called from or for."""
        about = self.fresh(f"{heading} {name}")
        fields = {key.rstrip("_"): value for key, value in said.items()}
        self.write(heading, about, {"fields": {"name": name, "invented": True, **fields}})
        return about

    def stand(self, heading: str, about: str, body: dict[str, Any], *, blind: bool = False) -> str:
        """A fact of which one is current; `blind` when this device did not know of the last."""
        known = self.stands.get((heading, about), [])
        made = self.write(heading, about, body, None if blind else known)
        self.stands[heading, about] = [*known, made] if blind else [made]
        return made

    def lines(self) -> list[str]:
        """The export's lines, numbered from 1."""
        return [
            f'{{"seq":{number},"entry":{taken.text}}}'
            for number, taken in enumerate(self.entries, 1)
        ]


def as_line(facts: dict[str, Any]) -> str:
    """A line for an entry that need not be one the computer takes."""
    text = json.dumps(facts, sort_keys=True, separators=(",", ":"), ensure_ascii=False)
    return f'{{"entry":{text}}}'
