"""The real page behind the real server, from a copy of the folder that a test may change."""

import re
import shutil
import threading
from collections.abc import Callable, Iterable, Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

from cheroot.wsgi import Server
from pwa.list_page_files import PWA, written
from witnessmark.api import Config, create_app


class WholeSite:
    """Serves the folder; remembers what was asked for, and breaks off answers when told to."""

    def __init__(self, home: Path) -> None:
        self.folder = home / "pages"
        shutil.copytree(PWA, self.folder)
        self.list()
        self.app = create_app(Config(data=home / "data", pages=self.folder))
        self.server = Server(("127.0.0.1", 0), self, numthreads=8)
        self.server.error_log = lambda *_, **__: None
        self.server.prepare()
        self.address = f"http://localhost:{self.server.bind_addr[1]}"
        self.asked: list[str] = []
        self.breaks_off = ""
        self.when_asked: Callable[[str], None] = lambda _: None

    def __call__(self, asked: dict[str, Any], start: Callable[..., Any]) -> Iterable[bytes]:
        path = asked["PATH_INFO"]
        self.asked.append(path)
        self.when_asked(path)
        answer = self.app(asked, start)
        if not self.breaks_off or not re.search(self.breaks_off, path):
            return answer
        return self.half(b"".join(answer))

    def half(self, body: bytes) -> Iterator[bytes]:
        """The first half; then the line is cut."""
        yield body[: len(body) // 2]
        raise ConnectionAbortedError

    def list(self) -> None:
        """Renew the lists of the worker, as for a new version."""
        (self.folder / "sw.js").write_text(written(self.folder), encoding="utf-8")

    def version(self) -> str:
        """The mark of the shell and the screens."""
        worker = (self.folder / "sw.js").read_text(encoding="utf-8")
        return re.findall(r"const VERSION = '([^']*)'", worker)[0]

    def ready(self) -> None:
        """Make the packs before anyone comes."""
        packs = self.app.extensions["witnessmark-packs"]
        assert packs.pack("shell")
        assert packs.pack("screens")
        assert packs.pack("decoder")


@contextmanager
def whole_site(home: Path) -> Iterator[WholeSite]:
    """Serves until the block ends."""
    site = WholeSite(home)
    thread = threading.Thread(target=site.server.serve)
    thread.start()
    try:
        yield site
    finally:
        site.server.stop()
        thread.join()
        site.app.extensions["witnessmark"].close()
