"""A real computer, a line that may break, and real Chromium."""

from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from garage import QUIET
from playwright.sync_api import Browser, Page, Playwright, sync_playwright
from pwa.bare import bare_page
from sync.evening import pair
from sync.proxy import Line, line_to
from sync.served import Home, served
from tools import chromium


@pytest.fixture(scope="module")
def player() -> Iterator[Playwright]:
    with sync_playwright() as found:
        yield found


@pytest.fixture(scope="module")
def chrome(player: Playwright) -> Iterator[Browser]:
    browser = player.chromium.launch(executable_path=chromium(), args=list(QUIET))
    yield browser
    browser.close()


@pytest.fixture
def home(tmp_path: Path) -> Iterator[Home]:
    with served(tmp_path / "data") as found:
        yield found


@pytest.fixture
def line(home: Home) -> Iterator[Line]:
    with line_to(home.address) as (found, address):
        found.address = address
        yield found


Phone = Callable[..., Page]


@pytest.fixture
def phone(chrome: Browser, home: Home, line: Line) -> Iterator[Phone]:
    """Makes phones, each with storage of its own, paired unless told otherwise."""
    contexts = []

    def make(*, script: str = "", paired: bool = True, name: str = "phone") -> Page:
        context = chrome.new_context()
        contexts.append(context)
        if script:
            context.add_init_script(script)
        page = bare_page(context, line.address)
        if paired:
            pair(page, home, name)
        return page

    yield make
    for context in contexts:
        context.close()
