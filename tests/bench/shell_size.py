"""What a phone fetches to have the page offline: each byte the server sends at a first visit.

python tests/bench/shell_size.py [br|gzip]

A fresh Chromium visits once, until its worker holds the whole page. The server runs in this
process behind a gate that counts what leaves: bodies as coded, and the lines of the headers. The
second figure is the visit in the other coding: browsers ask for Brotli over HTTPS and on
localhost, gzip is what the goal is stated in.
"""

import sys
import tempfile
import threading
from collections import Counter
from collections.abc import Callable, Iterable
from pathlib import Path
from typing import Any

sys.path.insert(0, str(Path(__file__).resolve().parents[2] / "server"))
sys.path.insert(0, str(Path(__file__).resolve().parents[1]))

from cheroot.wsgi import Server
from garage import QUIET
from playwright.sync_api import sync_playwright
from tools import chromium
from witnessmark.api import Config, create_app

WHOLE = """async () => {
  if (!navigator.serviceWorker.controller) return false;
  const names = await caches.keys();
  const whole = await Promise.all(names.map((cacheName) => caches.match('/whole', { cacheName })));
  return names.length === 2 && whole.every(Boolean);
}"""
GROUPS = (
    ("decoder", ("/decoder",)),
    ("modules, texts and shell, packed", ("/page",)),
    ("sheets, joined", (".css",)),
    ("fonts", (".woff2",)),
    ("icons, by the system", (".png", ".webmanifest")),
    ("the worker and its lists", ("/sw.js",)),
)


class Gate:
    """Counts what leaves, by address."""

    def __init__(self, app: Any, codings: str) -> None:
        self.app, self.codings = app, codings
        self.bodies: Counter[str] = Counter()
        self.heads: Counter[str] = Counter()
        self.times: Counter[str] = Counter()

    def __call__(self, asked: dict[str, Any], start: Callable[..., Any]) -> Iterable[bytes]:
        path = asked["PATH_INFO"]
        asked["HTTP_ACCEPT_ENCODING"] = self.codings

        def started(status: str, headers: list[tuple[str, str]], *more: Any) -> Any:
            self.heads[path] += len(status) + sum(len(a) + len(b) + 4 for a, b in headers) + 13
            return start(status, headers, *more)

        body = b"".join(self.app(asked, started))
        self.bodies[path] += len(body)
        self.times[path] += 1
        return [body]


def visit(codings: str) -> Gate:
    """One first visit of a fresh browser."""
    with tempfile.TemporaryDirectory() as folder, sync_playwright() as player:
        app = create_app(Config(data=Path(folder)))
        packs = app.extensions["witnessmark-packs"]
        packs.pack("page")
        packs.pack("decoder")
        gate = Gate(app, codings)
        server = Server(("127.0.0.1", 0), gate, numthreads=8)
        server.prepare()
        thread = threading.Thread(target=server.serve)
        thread.start()
        browser = player.chromium.launch(executable_path=chromium(), args=list(QUIET))
        page = browser.new_page()
        page.goto(f"http://localhost:{server.bind_addr[1]}/")
        page.locator("h1").first.wait_for()
        page.wait_for_function(WHOLE)
        browser.close()
        server.stop()
        thread.join()
        app.extensions["witnessmark"].close()
    return gate


def group(path: str) -> str:
    """What an address belongs to."""
    found = [name for name, endings in GROUPS if path.endswith(endings)]
    return found[0] if found else "the first shell, start and the rest"


def tell(codings: str) -> None:
    """One visit, group by group."""
    gate = visit(codings)
    sums: Counter[str] = Counter()
    for path, size in gate.bodies.items():
        sums[group(path)] += size
    shell = sum(sums.values()) - sums["decoder"]
    heads = sum(size for path, size in gate.heads.items() if group(path) != "decoder")
    asked = sum(gate.times.values())
    print(f"{codings}: page {shell:,} bytes + {heads:,} of headers, decoder {sums['decoder']:,}")
    print(f"  in {asked} requests; more than once: {[k for k, n in gate.times.items() if n > 1]}")
    for name, size in sums.most_common():
        print(f"  {size:>9,}  {name}")


if __name__ == "__main__":
    for wanted in sys.argv[1:] or ["br, gzip", "gzip"]:
        tell(wanted)
