"""Entries as a phone writes them, for the tests of store and api."""

import hashlib
import json
from dataclasses import dataclass, field
from itertools import count
from typing import Any

from witnessmark.log.clean import canonical
from witnessmark.log.entry import take
from witnessmark.log.ids import uuid7
from witnessmark.log.stamp import write_stamp
from witnessmark.store import Offered, offered

START_MS = 1_930_000_000_000  # 2031-02-27


@dataclass
class Clock:
    """The server's clock, moved by hand."""

    ms: int = START_MS

    def __call__(self) -> int:
        """The time now."""
        return self.ms

    def on(self, seconds: float) -> None:
        """Let time pass."""
        self.ms += int(seconds * 1000)


@dataclass
class Writer:
    """A device that numbers its own entries; ids are counted, so a run can be repeated."""

    device: str = "01c18537-0000-7000-8000-00000000d001"
    ms: int = START_MS
    numbers: Any = field(default_factory=lambda: count(1))

    def entry(self, heading: str = "note", about: str | None = None, **more: Any) -> dict[str, Any]:
        """The next entry; keyword arguments beyond body replace fields of the envelope."""
        n = next(self.numbers)
        body = more.pop("body", {"text": f"line {n}"} if heading == "note" else {})
        return {
            "id": more.pop("id", self.id(n)),
            "heading": heading,
            "about": about or self.id(10_000 + n),
            "device": self.device,
            "n": n,
            "stamp": write_stamp(self.ms, n % 0x10000),
            "made": "2031-02-27T05:33:20+01:00",
            "v": 1,
            "body": body,
            **more,
        }

    def entries(self, number: int) -> list[dict[str, Any]]:
        """So many notes."""
        return [self.entry() for _ in range(number)]

    def id(self, number: int) -> str:
        """An id that only this device makes."""
        random = hashlib.sha256(f"{self.device} {number}".encode()).digest()
        return uuid7(self.ms, random[:10])

    def part(self, name: str, about: str | None = None, **fields: Any) -> dict[str, Any]:
        """A part of this name."""
        return self.entry("part", about, body={"fields": {"name": name, **fields}})

    def strike(self, target: str, reason: str = "slipped") -> dict[str, Any]:
        """A strike-out of an entry."""
        return self.entry("strike-out", target, body={"reason": reason})


def offers(*entries: dict[str, Any]) -> list[Offered]:
    """Entries as the store is offered them."""
    return [offered(take(entry), None) for entry in entries]


def digest_of(entries: list[tuple[dict[str, Any], str | None]]) -> str:
    """The digest of a set, made here from its definition and not by the house's own code."""
    total = 0
    for entry, order in entries:
        text = json.dumps(entry, sort_keys=True, separators=(",", ":"), ensure_ascii=False)
        assert text == canonical(entry)
        total += int(hashlib.sha256(f"{text}\n{order or ''}".encode()).hexdigest(), 16)
    return f"{total % 2**256:064x}"
