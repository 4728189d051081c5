"""What the scanner's tests share: a server for the page's files, and a browser with a camera."""

import functools
import threading
from collections.abc import Callable, Iterator
from contextlib import AbstractContextManager, contextmanager
from http.server import SimpleHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path

import cv2
import numpy as np
import pytest
from playwright.sync_api import Page, sync_playwright
from tools import chromium

HOUSE = Path(__file__).resolve().parents[2]


class PageFiles(SimpleHTTPRequestHandler):
    """Serves pwa/ as the real server does, and the test's own page beside it."""

    def translate_path(self, path: str) -> str:
        """The test's page lies beside this file, everything else in pwa/."""
        name = path.partition("?")[0].lstrip("/")
        own = Path(__file__).parent / name
        return str(own if name.startswith("camera.") else HOUSE / "pwa" / name)

    def log_message(self, *_: object) -> None:
        """Nobody reads it."""


@pytest.fixture(scope="session")
def page_address() -> Iterator[str]:
    """Where the test's page is served."""
    files = {**SimpleHTTPRequestHandler.extensions_map, ".js": "text/javascript"}
    handler = type("Files", (PageFiles,), {"extensions_map": files})
    server = ThreadingHTTPServer(("127.0.0.1", 0), handler)
    thread = threading.Thread(target=server.serve_forever)
    thread.start()
    yield f"http://127.0.0.1:{server.server_port}/camera.html"
    server.shutdown()
    thread.join()
    server.server_close()


Camera = Callable[[list[np.ndarray]], AbstractContextManager[Page]]


@pytest.fixture
def camera(page_address: str, tmp_path: Path) -> Camera:
    """Opens the test's page in a Chromium whose camera shows the given pictures, in a loop."""
    return functools.partial(open_camera, page_address, tmp_path / "film.mjpeg")


@contextmanager
def open_camera(address: str, film: Path, pictures: list[np.ndarray]) -> Iterator[Page]:
    """A film is JPEGs end to end; each picture stays for half a second at 30 pictures a second."""
    quality = [cv2.IMWRITE_JPEG_QUALITY, 88]
    stills = [cv2.imencode(".jpg", picture, quality)[1].tobytes() for picture in pictures]
    film.write_bytes(b"".join(still * 15 for still in stills))
    args = [
        "--use-fake-device-for-media-stream",
        "--use-fake-ui-for-media-stream",
        f"--use-file-for-fake-video-capture={film}",
    ]
    with sync_playwright() as play:
        browser = play.chromium.launch(executable_path=chromium(), args=args)
        page = browser.new_page()
        page.goto(address)
        yield page
        browser.close()
