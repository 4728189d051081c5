"""Real Chromium for the page's own modules."""

from collections.abc import Iterator

import pytest
from garage import QUIET
from playwright.sync_api import Browser, BrowserContext, Page, Playwright, sync_playwright
from pwa.bare import bare_page
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
def context(chrome: Browser) -> Iterator[BrowserContext]:
    found = chrome.new_context()
    yield found
    found.close()


@pytest.fixture
def page(context: BrowserContext) -> Page:
    return bare_page(context)
