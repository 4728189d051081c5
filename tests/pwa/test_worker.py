"""The page without a network, new versions of it, and what may be installed."""

import json
import re
import shutil
import threading
from collections.abc import Iterator
from functools import partial
from http.server import SimpleHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path
from typing import Any

import pytest
from PIL import Image
from playwright.sync_api import BrowserContext, Page
from pwa.bare import PWA, shell
from pwa.list_page_files import written

FILES = {**SimpleHTTPRequestHandler.extensions_map, ".js": "text/javascript"}


class Pages(SimpleHTTPRequestHandler):
    """A small site with the real service worker; /api answers with a count."""

    extensions_map = FILES
    asked = 0

    def do_GET(self) -> None:
        if self.path.startswith("/api/"):
            type(self).asked += 1
            body = str(type(self).asked).encode()
            self.send_response(200)
            self.send_header("Content-Length", str(len(body)))
            self.end_headers()
            self.wfile.write(body)
            return
        super().do_GET()

    def log_message(self, *_: Any) -> None:
        """Nobody reads it."""


class Server(ThreadingHTTPServer):
    """A tab that closes in the middle of a file is no fault."""

    daemon_threads = True

    def handle_error(self, *_: Any) -> None:
        """Nobody reads it."""


class Site:
    """A folder that is served, and the version of the page that lies in it."""

    def __init__(self, folder: Path) -> None:
        self.folder = folder
        shutil.copytree(PWA / "store", folder / "store")
        shutil.copytree(PWA / "log", folder / "log")
        shutil.copytree(PWA / "vendor", folder / "vendor")
        shutil.copy(PWA / "errors.js", folder)
        (folder / "index.html").write_text(shell(), encoding="utf-8")
        self.publish("one")

    def publish(self, version: str, *more: str) -> None:
        """A new version of the page; `more` are further files that it lists."""
        (self.folder / "version.txt").write_text(version)
        files = ["/", "/version.txt", "/errors.js", *more]
        files += [
            f"/{path.relative_to(self.folder).as_posix()}" for path in self.folder.rglob("*/*.js")
        ]
        text = (PWA / "sw.js").read_text(encoding="utf-8")
        text = re.sub(r"const VERSION = '[^']*'", f"const VERSION = '{version}'", text)
        lists = {"SHELL": json.dumps(files), "SCREEN": "[]", "DECODER": "[]"}
        for name, rows in lists.items():
            listing = f"const {name}_FILES = {rows}"
            text = re.sub(rf"const {name}_FILES = \[[^\]]*\]", listing, text)
        (self.folder / "sw.js").write_text(text, encoding="utf-8")


@pytest.fixture
def site(tmp_path: Path) -> Iterator[Site]:
    found = Site(tmp_path / "site")
    server = Server(("127.0.0.1", 0), partial(Pages, directory=str(found.folder)))
    thread = threading.Thread(target=server.serve_forever)
    thread.start()
    found.address = f"http://127.0.0.1:{server.server_port}"  # type: ignore[attr-defined]
    yield found
    server.shutdown()
    server.server_close()
    thread.join()


def opened(context: BrowserContext, site: Any) -> Page:
    """A tab whose worker has taken it."""
    page = context.new_page()
    page.goto(f"{site.address}/L/0000001J")
    page.wait_for_function("window.isReady")
    page.evaluate("() => window.begin()")
    page.evaluate("() => window.update.watchUpdates(window.store)")
    page.wait_for_function("navigator.serviceWorker.controller !== null")
    page.wait_for_function(WHOLE)
    return page


@pytest.fixture
def tab(context: BrowserContext, site: Site) -> Page:
    # The first page of all comes from the network, whatever its path.
    context.route(
        "**/L/0000001J", lambda route: route.fulfill(content_type="text/html", body=shell())
    )
    page = opened(context, site)
    context.unroute("**/L/0000001J")
    return page


# A version that is not whole gives way to a new one at once.
WHOLE = "async () => Boolean(await caches.match('/whole', { cacheName: 'screens one' }))"
VERSION = "async () => (await fetch('/version.txt')).text()"
VERSIONS_KEPT = """async (wanted) =>
  (await caches.keys()).filter((one) => one.startsWith('shell')).join() === wanted"""


def test_any_label_opens_without_a_network_and_the_computer_is_never_cached(
    context: BrowserContext, site: Site, tab: Page
) -> None:
    ask = "async () => (await fetch('/api/v1/count')).text()"
    assert tab.evaluate(ask) != tab.evaluate(ask)
    context.set_offline(True)
    tab.goto(f"{site.address}/L/7K3MQ2RJ")  # type: ignore[attr-defined]
    tab.wait_for_function("window.isReady")
    assert tab.evaluate(VERSION) == "one"
    gone = "() => fetch('/api/v1/count').then(() => false, () => true)"
    assert tab.evaluate(gone) is True


def test_a_new_version_waits_until_nothing_is_unsaved_in_any_tab(
    context: BrowserContext, site: Site, tab: Page
) -> None:
    tab.evaluate("() => window.store.keep([window.pull('f1')])")
    other = context.new_page()
    other.goto(f"{site.address}/L/7K3MQ2RJ")  # type: ignore[attr-defined]
    other.wait_for_function("window.isReady")
    other.evaluate("() => window.begin()")
    other.evaluate("() => window.update.watchUpdates(window.store)")
    site.publish("two")
    tab.evaluate("async () => (await navigator.serviceWorker.getRegistration()).update()")
    tab.wait_for_function("() => window.state().update")
    assert tab.evaluate(VERSION) == "one"
    other.evaluate("() => window.update.holdPage('form', true)")
    assert tab.evaluate("() => window.update.takeUpdate()") == "unsaved"
    other.evaluate("() => window.update.holdPage('form', false)")
    other.wait_for_function("() => window.state().update")
    with tab.expect_navigation():
        assert tab.evaluate("() => window.update.takeUpdate()") == "going"
    tab.wait_for_function("window.isReady")
    assert tab.evaluate(VERSION) == "two"
    tab.wait_for_function(VERSIONS_KEPT, arg="shell two")
    tab.evaluate("() => window.begin()")
    assert tab.evaluate("() => window.state().waiting") == 1


def test_a_version_with_a_file_missing_is_dropped_and_leaves_nothing_behind(
    site: Site, tab: Page
) -> None:
    site.publish("broken", "/not-there.js")
    tab.evaluate(
        """async () => {
          const found = await navigator.serviceWorker.getRegistration();
          const dropped = new Promise((resolve) => {
            found.addEventListener('updatefound', () => {
              const worker = found.installing;
              worker.addEventListener('statechange', () => {
                if (worker.state === 'redundant') resolve();
              });
            });
          });
          await Promise.all([found.update().catch(() => undefined), dropped]);
        }"""
    )
    tab.wait_for_function(VERSIONS_KEPT, arg="shell one")
    assert tab.evaluate(VERSION) == "one"


def test_the_list_of_the_worker_is_the_folder_as_it_is() -> None:
    assert (PWA / "sw.js").read_text(encoding="utf-8") == written(), (
        "run: python tests/pwa/list_page_files.py"
    )


def test_the_decoder_is_on_the_list() -> None:
    assert "'/vendor/zxing-wasm/reader/zxing_reader.wasm'," in written()


def test_the_page_can_be_installed_and_its_icons_have_the_sizes_they_say() -> None:
    manifest = json.loads((PWA / "manifest.webmanifest").read_text(encoding="utf-8"))
    assert (manifest["id"], manifest["display"]) == ("/", "standalone")
    purposes = set()
    for icon in manifest["icons"]:
        with Image.open(PWA / icon["src"].lstrip("/")) as picture:
            assert f"{picture.width}x{picture.height}" == icon["sizes"]
        purposes.add((icon["sizes"], icon["purpose"]))
    assert purposes >= {("192x192", "any"), ("512x512", "any"), ("512x512", "maskable")}
    with Image.open(PWA / "icons" / "touch-180.png") as picture:
        assert picture.size == (180, 180)
