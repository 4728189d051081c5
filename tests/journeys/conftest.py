"""One server and one browser for all journeys at the bench; a fresh phone for each."""

from collections.abc import Callable, Iterator
from typing import Any

import pytest
from garage import DESK, PHONE, QUIET, Garage, garage
from journeys.bench_scene import JOINT, bag, bench_drafts, keep
from journeys.hands import Hand
from playwright.sync_api import Browser, Page, sync_playwright
from tools import chromium

# Every answer of the page comes from the phone itself; what takes longer is a fault.
PATIENCE_MS = 8000
SPIES = """
globalThis.felt = { buzzes: [], tones: 0 };
navigator.vibrate = pattern => { felt.buzzes.push(JSON.stringify(pattern)); return true; };
const tone = AudioContext.prototype.createOscillator;
AudioContext.prototype.createOscillator = function () { felt.tones += 1; return tone.call(this); };
"""


@pytest.fixture(scope="module")
def workshop(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Garage]:
    with garage(tmp_path_factory.mktemp("garage") / "data") as here:
        yield here
        if here.process and here.process.stdout:
            here.process.stdout.close()


@pytest.fixture(scope="module")
def chrome() -> Iterator[Browser]:
    with sync_playwright() as player:
        browser = player.chromium.launch(executable_path=chromium(), args=[*QUIET])
        yield browser
        browser.close()


@pytest.fixture
def open_bench(workshop: Garage, chrome: Browser) -> Iterator[Callable[..., Page]]:
    """Opens phones or desks on which drafts are kept already; none may report a fault."""
    contexts, faults = [], []

    def open_(drafts: list[dict[str, Any]], path: str = f"/joint/{JOINT}", **options: Any) -> Page:
        kind = DESK if options.get("viewport", {"width": 0})["width"] > 900 else PHONE
        context = chrome.new_context(**{**kind, **options})
        contexts.append(context)
        context.add_init_script(SPIES)
        context.set_default_timeout(PATIENCE_MS)
        page = context.new_page()
        page.on("pageerror", lambda fault: faults.append(str(fault)))
        page.goto(f"{workshop.address}/more")
        page.locator("h1").first.wait_for()
        keep(page, drafts)
        page.goto(f"{workshop.address}{path}")
        return page

    yield open_
    for context in contexts:
        context.close()
    assert faults == []


@pytest.fixture
def bench(open_bench: Callable[..., Page]) -> Page:
    """A phone before the first pass of the head bolts."""
    page = open_bench(bench_drafts() + bag())
    page.locator(".run .act").wait_for()
    return page


@pytest.fixture
def hand(bench: Page) -> Hand:
    return Hand(bench)
