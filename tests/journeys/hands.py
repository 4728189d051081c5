"""Fingers on the glass: presses with a length, drifts, sleeves and drops, through Chromium's own input."""

from typing import Any

from playwright.sync_api import Locator, Page

Point = dict[str, float]

# Everything the page's clock must let pass between two presses of one confirm.
DEAF_MS = 760
SCROLLED_MS = 400


class Hand:
    """A hand over one page; each contact is dispatched as the browser would get it from the glass."""

    def __init__(self, page: Page) -> None:
        self.page = page
        self.glass = page.context.new_cdp_session(page)

    def down(self, *points: Point) -> None:
        """Contacts touch the glass."""
        self._send("touchStart", list(points))

    def up(self) -> None:
        """All contacts leave it."""
        self._send("touchEnd", [])

    def cancel(self) -> None:
        """The system takes the contacts away, as it does with drops."""
        self._send("touchCancel", [])

    def press(self, place: Locator, length: int = 120, drift: float = 0, second: bool = False) -> None:
        """Press a place for a length in ms; slide before the release; with a second contact beside."""
        point = self.middle(place)
        points = [point, {"x": 12, "y": 300, "id": 1}] if second else [point]
        self.down(*points)
        self.pass_time(length)
        if drift:
            self._send("touchMove", [{**point, "x": point["x"] + drift}])
        self.up()

    def middle(self, place: Locator) -> Point:
        """The middle of a place; scrolled to only where it is out of sight, and then waited for."""
        place.wait_for()
        point = self._middle(place)
        height = self.page.evaluate("innerHeight")
        if 0 < point["y"] < height:
            return point
        place.scroll_into_view_if_needed()
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
            const look = () => performance.now() - from >= ms ? done() : setTimeout(look, 4); look(); }) }""",
            ms,
        )

    def settle(self) -> None:
        """Wait until a kept confirm hears again and nothing was scrolled or woken lately."""
        self.pass_time(DEAF_MS)

    def _send(self, kind: str, points: list[Any]) -> None:
        self.glass.send("Input.dispatchTouchEvent", {"type": kind, "touchPoints": points})
