"""A run on a phone that is killed, and a run that two phones go at together."""

import re
from pathlib import Path

from garage import Garage, kill_browser, phone
from journeys.bench_scene import JOINT, half_way, keep, kept
from journeys.hands import Hand
from playwright.sync_api import Browser, BrowserContext, Page, expect

# The name is known from the first contact after the other device was met.
OTHERS = re.compile(r"(Another device|Bench phone|Desk computer) confirmed 9\.")


def pair(context: BrowserContext, workshop: Garage) -> Page:
    """A paired phone that has synced once."""
    page = context.new_page()
    page.goto(workshop.pairing()["url"])
    expect(page.locator(".sync")).to_contain_text("all home", timeout=20_000)
    return page


def synced(page: Page) -> None:
    page.evaluate(
        """async () => { const { openStore } = await import('/store/index.js');
        const store = window.benchStore ?? (window.benchStore = await openStore());
        await store.syncNow() }"""
    )


def go_on(page: Page) -> None:
    hand = Hand(page)
    expect(page.locator(".act")).to_contain_text("Go on at")
    hand.settle()
    hand.press(page.locator(".act"))


def test_two_phones_at_one_joint_see_each_others_stripes(workshop: Garage, chrome: Browser) -> None:
    mine, theirs = (chrome.new_context() for _ in range(2))
    try:
        first, second = pair(mine, workshop), pair(theirs, workshop)
        keep(first, half_way())
        synced(first)
        synced(second)
        for page in (first, second):
            page.goto(f"{workshop.address}/joint/{JOINT}")
            go_on(page)
            expect(page.locator(".act")).to_contain_text("Confirm 9")
        second.locator(".act").click()
        expect(second.locator(".act")).to_contain_text("Confirm 10")
        synced(second)
        synced(first)
        expect(first.locator(".act")).to_contain_text("Confirm 10")
        expect(first.locator(".caption")).to_have_text(OTHERS)
        assert [len(kept(page, "pull")) for page in (first, second)] == [37, 37]
    finally:
        mine.close()
        theirs.close()


def test_killed_after_kept_and_in_the_middle_of_a_press_it_returns_to_the_same_place(
    workshop: Garage, chrome: Browser, tmp_path: Path
) -> None:
    player = chrome.browser_type
    profile = tmp_path / "profile"
    context = phone(PlayerOf(player), profile)  # type: ignore[arg-type]
    page = context.new_page()
    page.goto(f"{workshop.address}/more")
    page.locator("h1").first.wait_for()
    keep(page, half_way())
    page.goto(f"{workshop.address}/joint/{JOINT}")
    go_on(page)
    expect(page.locator(".act")).to_contain_text("Confirm 9")
    hand = Hand(page)
    hand.settle()
    hand.press(page.locator(".act"))
    expect(page.locator(".act")).to_contain_text("Confirm 10")
    hand.settle()
    hand.down(hand.middle(page.locator(".act")))
    kill_browser(profile)
    context = phone(PlayerOf(player), profile)  # type: ignore[arg-type]
    page = context.new_page()
    page.goto(f"{workshop.address}/joint/{JOINT}")
    expect(page.get_by_text("Last: 9. Touch it before you go on.")).to_be_visible()
    assert len(kept(page, "pull")) == 37
    go_on(page)
    expect(page.locator(".act")).to_contain_text("Confirm 10")
    context.close()


class PlayerOf:
    """What `phone` asks of Playwright, from a browser that is open already."""

    def __init__(self, chromium: object) -> None:
        self.chromium = chromium
