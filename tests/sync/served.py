"""The real application behind its real WSGI server, in this process: its store can be asked."""

import threading
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

from cheroot.wsgi import Server
from witnessmark.api import Config, create_app


class Home:
    """The owner's computer: address, store, and the pairing codes it shows."""

    def __init__(self, data: Path) -> None:
        app = create_app(Config(data=data))
        self.store = app.extensions["witnessmark"]
        self.server = Server(("127.0.0.1", 0), app, numthreads=6)
        self.server.prepare()
        self.address = f"http://127.0.0.1:{self.server.bind_addr[1]}"

    def pairing(self) -> dict[str, str]:
        """A fresh one-time code."""
        return {"code": self.store.pairing_code().code}

    def log(self) -> list[tuple[int, str | None, str]]:
        """Number, order and text of every entry."""
        home = self.store.ensure_workshop()
        rows: list[Any] = []
        while page := self.store.log(home, len(rows), 5_000).page.rows:
            rows += page
        return rows

    def differences(self) -> list[str]:
        """What a rebuild of the tables finds; nothing, if they are the log."""
        return list(self.store.rebuild().differences)


@contextmanager
def served(data: Path) -> Iterator[Home]:
    """Serves until the block ends."""
    home = Home(data)
    thread = threading.Thread(target=home.server.serve)
    thread.start()
    try:
        yield home
    finally:
        home.server.stop()
        thread.join()
        home.store.close()
