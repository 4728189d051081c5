"""Phones of a history: the page's own store under Node, spoken to by lines of JSON."""

import json
import subprocess
from collections.abc import Callable
from pathlib import Path
from typing import Any

from tools import node

DEVICES = Path(__file__).resolve().parents[1] / "pwa" / "devices.js"

Ask = dict[str, Any]


class PhoneFault(Exception):
    """A phone's store threw."""

    def __init__(self, code: str | None, says: str) -> None:
        super().__init__(says)
        self.code = code


class Phones:
    """One process with any number of phones. `hear` decides what becomes of their requests."""

    def __init__(self) -> None:
        self.process = subprocess.Popen(
            [node(), str(DEVICES)], stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True
        )
        self.hear: Callable[[Ask], None] = lambda ask: None
        self.serial = 0
        self.told: dict[int, dict[str, Any]] = {}
        self.unhandled: list[str] = []

    def write(self, message: dict[str, Any]) -> None:
        """One line to the process."""
        assert self.process.stdin
        self.process.stdin.write(json.dumps(message) + "\n")
        self.process.stdin.flush()

    def read(self) -> None:
        """One line from the process."""
        assert self.process.stdout
        message = json.loads(self.process.stdout.readline())
        if "ask" in message:
            self.hear(message)
        elif "unhandled" in message:
            self.unhandled.append(message["unhandled"])
        else:
            self.told[message["id"]] = message

    def begin(self, does: str, **facts: Any) -> int:
        """Tell a phone to do something, without waiting for it."""
        self.serial += 1
        self.write({"id": self.serial, "does": does, **facts})
        return self.serial

    def do(self, does: str, **facts: Any) -> Any:
        """Tell a phone to do something, and hear requests until it is done."""
        serial = self.begin(does, **facts)
        while serial not in self.told:
            self.read()
        told = self.told.pop(serial)
        if "fault" in told:
            raise PhoneFault(told["fault"]["code"], told["fault"]["says"])
        return told["gives"]

    def answer(self, ask: Ask, said: dict[str, Any] | None) -> None:
        """What the phone hears; None: the line broke."""
        self.write({"answers": ask["ask"], **(said or {"lost": True})})

    def close(self) -> None:
        """End the process."""
        assert self.process.stdin
        assert self.process.stdout
        self.process.stdin.close()
        self.process.wait(10)
        self.process.stdout.close()
