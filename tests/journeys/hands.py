"""Fingers on the glass: presses with a length, drifts, sleeves and drops."""

import time
from typing import Any

from playwright.sync_api import Locator, Page

Point = dict[str, float]

# Everything the page's clock must let pass between two presses of one confirm.
DEAF_MS = 760
SCROLLED_MS = 400


class Hand:
    """A hand over one page; its contacts come as the browser gets them from the glass."""

    def __init__(self, page: Page) -> None:
        self.page = page
        self.glass = page.context.new_cdp_session(page)

    def down(self, *points: Point, at: float | None = None) -> None:
        """Contacts touch the glass, at a moment in seconds if one is given."""
        self._send("touchStart", list(points), at)

    def slide(self, *points: Point) -> None:
        """The contacts that lie on the glass are somewhere else now."""
        self._send("touchMove", list(points))

    def up(self, at: float | None = None) -> None:
        """All contacts leave it."""
        self._send("touchEnd", [], at)

    def cancel(self) -> None:
        """The system takes the contacts away, as it does with drops."""
        self._send("touchCancel", [])

    def press(
        self, place: Locator, length: int = 120, drift: float = 0, second: bool = False
    ) -> None:
        """Press a place for a length in ms; slide before the release; a second contact beside."""
        point = self.middle(place)
        points = [point, {"x": 12, "y": 300, "id": 1}] if second else [point]
        # The moments are given with the contacts: a busy computer would lengthen every press.
        start = time.time()
        self.down(*points, at=start)
        self.pass_time(length)
        if drift:
            slid = {**point, "x": point["x"] + drift}
            self._send("touchMove", [slid], start + length / 2000)
        self.up(at=start + length / 1000)

    def middle(self, place: Locator) -> Point:
        """The middle of a place; scrolled to only where it is out of sight, and then waited for."""
        place.wait_for()
        point = self._middle(place)
        seen = "(place, at) => place.contains(document.elementFromPoint(at.x, at.y))"
        if place.evaluate(seen, point):
            return point
        place.evaluate("place => place.scrollIntoView({ block: 'center' })")
        self.pass_time(SCROLLED_MS)
        return self._middle(place)

    def _middle(self, place: Locator) -> Point:
        box = place.bounding_box()
        assert box, "the place is not on the screen"
        return {"x": box["x"] + box["width"] / 2, "y": box["y"] + box["height"] / 2, "id": 0}

    def pass_time(self, ms: int) -> None:
        """Let the page's own clock run, so that a press has the length it is meant to have."""
        self.page.evaluate(
            """ms => { const from = performance.now(); return new Promise(done => {
            const look = () => {
              if (performance.now() - from >= ms) done(); else setTimeout(look, 4);
            };
            look(); }) }""",
            ms,
        )

    def settle(self) -> None:
        """Wait until a kept confirm hears again and nothing was scrolled or woken lately."""
        self.pass_time(DEAF_MS)

    def _send(self, kind: str, points: list[Any], at: float | None = None) -> None:
        moment = {} if at is None else {"timestamp": at}
        self.glass.send("Input.dispatchTouchEvent", {"type": kind, "touchPoints": points, **moment})


def press(page: Page, name: str) -> None:
    """A settled press on the key of exactly this name."""
    hand = Hand(page)
    hand.settle()
    hand.press(page.get_by_role("button", name=name, exact=True))


def press_in(page: Page, place: str, words: str) -> None:
    """A settled press on the first of these places that says so."""
    hand = Hand(page)
    found = page.locator(place).filter(has_text=words).first
    found.wait_for()
    hand.settle()
    hand.press(found)


def act(page: Page) -> None:
    """A settled press on the main action."""
    hand = Hand(page)
    hand.settle()
    hand.press(page.locator(".act"))
