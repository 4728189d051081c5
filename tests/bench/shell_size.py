"""What a phone fetches to have the page offline: each byte the server sends at a first visit.

python tests/bench/shell_size.py [br|gzip]

A fresh Chromium visits once, until its worker holds all three packs. The server runs in this
process behind a gate that counts what leaves: bodies as coded, and the lines of the headers. The
second figure is the visit in the other coding: browsers ask for Brotli over HTTPS and on
localhost, gzip is what the goal is stated in. Then fresh browsers come VISITS times each, and the
time from asking for the page to the first screen that is drawn is told, on this computer and
without a network between: it says what the page does, not what a radio does.
"""

import sys
import tempfile
import threading
import time
from collections import Counter
from collections.abc import Callable, Iterable, Iterator
from contextlib import contextmanager
from pathlib import Path
from statistics import median
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
  return names.length === 3 && whole.every(Boolean);
}"""
VISITS = 7
GROUPS = (
    ("decoder", ("/decoder",)),
    ("screens", ("/screens",)),
    ("modules, texts and shell, packed", ("/shell",)),
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

    def copy(self) -> "Gate":
        """What was counted until now."""
        told = Gate(self.app, self.codings)
        told.bodies, told.heads = self.bodies.copy(), self.heads.copy()
        told.times = self.times.copy()
        return told

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


@contextmanager
def served(codings: str) -> Iterator[tuple[Gate, str]]:
    """The page with its packs made, behind a gate, and its address."""
    with tempfile.TemporaryDirectory() as folder:
        app = create_app(Config(data=Path(folder)))
        for part in ("shell", "screens", "decoder"):
            app.extensions["witnessmark-packs"].pack(part)
        gate = Gate(app, codings)
        server = Server(("127.0.0.1", 0), gate, numthreads=8)
        server.prepare()
        thread = threading.Thread(target=server.serve)
        thread.start()
        yield gate, f"http://localhost:{server.bind_addr[1]}/"
        server.stop()
        thread.join()
        app.extensions["witnessmark"].close()


def visit(codings: str) -> tuple[Gate, list[float]]:
    """What one first visit fetches; the milliseconds of several to the first screen."""
    times = []
    with served(codings) as (gate, address), sync_playwright() as player:
        browser = player.chromium.launch(executable_path=chromium(), args=list(QUIET))
        for count in range(VISITS):
            context = browser.new_context()
            page = context.new_page()
            begun = time.perf_counter()
            page.goto(address, wait_until="commit")
            page.locator("h1").first.wait_for()
            times.append((time.perf_counter() - begun) * 1000)
            page.wait_for_function(WHOLE)
            context.close()
            if count == 0:
                first = gate.copy()
        browser.close()
    return first, times


def group(path: str) -> str:
    """What an address belongs to."""
    found = [name for name, endings in GROUPS if path.endswith(endings)]
    return found[0] if found else "the first shell, start and the rest"


def tell(codings: str) -> None:
    """One visit, group by group."""
    gate, times = visit(codings)
    sums: Counter[str] = Counter()
    for path, size in gate.bodies.items():
        sums[group(path)] += size
    shell = sum(sums.values()) - sums["decoder"] - sums["screens"]
    heads = sum(gate.heads.values())
    asked = sum(gate.times.values())
    print(f"{codings}: shell {shell:,} bytes, {heads:,} of headers of all answers")
    print(f"  screens {sums['screens']:,}, decoder {sums['decoder']:,}")
    print(f"  in {asked} requests; more than once: {[k for k, n in gate.times.items() if n > 1]}")
    for name, size in sums.most_common():
        print(f"  {size:>9,}  {name}")
    spread = f"{min(times):.0f} to {max(times):.0f}"
    print(f"  first screen after {median(times):.0f} ms, {spread} ({len(times)} first visits)")


if __name__ == "__main__":
    for wanted in sys.argv[1:] or ["br, gzip", "gzip"]:
        tell(wanted)
