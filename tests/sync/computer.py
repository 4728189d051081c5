"""The computer of a history: the real application in this process, by a clock that is told."""

import base64
import shutil
from pathlib import Path
from typing import Any

from witnessmark.api import Config, create_app
from witnessmark.store import restore

START_MS = 1_930_000_000_000


class Computer:
    """One data folder at a time, answered by the Flask application without a socket."""

    def __init__(self, folder: Path) -> None:
        self.folder = folder
        self.clock = START_MS
        self.lives = 0
        self.data = folder / "life-0"
        self.backups: list[tuple[str, Path]] = []
        self.open()

    def open(self) -> None:
        """Start the application on the present folder."""
        self.app = create_app(Config(data=self.data, now_ms=lambda: self.clock))
        self.store = self.app.extensions["witnessmark"]
        self.client = self.app.test_client()

    def answer(self, ask: dict[str, Any]) -> dict[str, Any]:
        """What the application says to a request that a phone made."""
        self.clock += 7
        body = None if ask["body"] is None else base64.b64decode(ask["body"])
        with self.client.open(
            ask["path"], method=ask["method"], data=body, headers=ask["headers"]
        ) as said:
            headers = {"Content-Type": said.headers.get("Content-Type", "")}
            if "Retry-After" in said.headers:
                headers["Retry-After"] = said.headers["Retry-After"]
            text = base64.b64encode(said.get_data()).decode()
            return {"status": said.status_code, "headers": headers, "body": text}

    def backup(self, how: str) -> None:
        """By the command, or by copying the folder as a careful owner does (server stopped)."""
        place = self.folder / f"backup-{len(self.backups)}"
        if how == "command":
            self.store.backup(place)
        else:
            self.store.close()
            shutil.copytree(self.data, place)
            self.open()
        self.backups.append((how, place))

    def bring_back(self) -> None:
        """The oldest backup becomes the present."""
        how, place = self.backups[0]
        self.store.close()
        self.lives += 1
        self.data = self.folder / f"life-{self.lives}"
        if how == "command":
            restore(place, self.data)
        else:
            shutil.copytree(place, self.data)
        self.open()

    def code(self) -> str:
        """A fresh pairing code."""
        return str(self.store.pairing_code().code)

    def log(self) -> list[tuple[int, str | None, str]]:
        """Number, order and text of every entry."""
        home = self.store.ensure_workshop()
        rows: list[tuple[int, str | None, str]] = []
        while True:
            page = self.store.log(home, len(rows), 5_000).page
            rows += page.rows
            if not page.rows:
                return rows
