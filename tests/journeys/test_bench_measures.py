"""Targets of the bench screens, measured: size, gaps, edges, reach, nothing cut off, type."""

from collections.abc import Callable
from itertools import combinations
from typing import Any

import pytest
from journeys.bench_scene import BAG, JOINT, bag, half_way
from playwright.sync_api import Page, expect

Opener = Callable[..., Page]
Box = dict[str, Any]
SIZES = [(390, 844), (320, 640), (1280, 800)]
THEMES = ["light", "dark", "sunlight"]
SCREENS = {
    "run": (f"/joint/{JOINT}", 64),
    "reading": (f"/joint/{JOINT}/reading", 56),
    "choose": (f"/joint/{JOINT}/choose", 56),
    "inspect": (f"/inspect/{BAG}", 56),
}
TARGETS = """() => [...document.querySelectorAll('a[href], button, input, textarea')].map(one => {
  const { x, y, width, height } = one.getBoundingClientRect();
  const name = one.getAttribute('aria-label') ?? one.textContent;
  return { x, y, width, height, row: !!one.closest('.pick, .passes'), name: name.slice(0, 30),
    quiet: one.matches('.gone, .sync'), dock: one.matches('.act'),
    deck: !!one.closest('.deck') };
}).filter(one => one.width > 1 && !one.quiet)"""
CUT_OFF = """() => [document.documentElement, ...document.querySelectorAll('.run *')]
  .filter(box => box.scrollWidth > box.clientWidth + 1 && box.clientWidth > 1)
  .filter(box => !box.closest('svg, .gone') && getComputedStyle(box).display !== 'inline')
  .map(box => box.className + ' ' + box.textContent.slice(0, 30))"""
SMALL_TYPE = """() => [...document.querySelectorAll('.run *')]
  .filter(box => [...box.childNodes].some(node => node.nodeType === 3 && node.data.trim()))
  .filter(box => !box.closest('.gone') && parseFloat(getComputedStyle(box).fontSize) < 16)
  .map(box => box.textContent.slice(0, 30))"""


def open_phone(open_bench: Opener, size: tuple[int, int], theme: str = "light") -> Page:
    width, height = size
    narrow = {"has_touch": True, "is_mobile": True} if width < 900 else {}
    page = open_bench(
        half_way() + bag(),
        path="/tonight",
        viewport={"width": width, "height": height},
        **narrow,
    )
    page.evaluate(
        "theme => import('/app/settings.js').then(s => s.setSetting('theme', theme))", theme
    )
    return page


def show(page: Page, screen: str) -> None:
    page.evaluate(
        "path => import('/app/router.js').then(router => router.go(path))", SCREENS[screen][0]
    )
    page.locator(".run .act").wait_for()
    if screen == "run":
        page.locator(".act").click()
        expect(page.locator(".act")).to_contain_text("Confirm 9")


def open_screen(
    open_bench: Opener, screen: str, size: tuple[int, int], theme: str = "light"
) -> Page:
    page = open_phone(open_bench, size, theme)
    show(page, screen)
    return page


def apart(one: Box, other: Box) -> float:
    """The gap between two boxes; 0 when they touch or lie over each other."""
    across = max(one["x"] - other["x"] - other["width"], other["x"] - one["x"] - one["width"])
    down = max(one["y"] - other["y"] - other["height"], other["y"] - one["y"] - one["height"])
    return max(across, down, 0.0)


def small(targets: list[Box], least: int) -> list[str]:
    return [t["name"] for t in targets if t["width"] < 56 or t["height"] < least - 0.5]


def at_an_edge(targets: list[Box], width: int) -> list[str]:
    return [t["name"] for t in targets if t["x"] < 15.5 or t["x"] + t["width"] > width - 15.5]


def too_near(targets: list[Box]) -> list[tuple[str, str]]:
    """Pairs nearer than 12 px; what lies under the dock or the deck is scrolled out first."""
    loose = [t for t in targets if not t["row"] and not t["dock"]]
    pairs = [(a, b) for a, b in combinations(loose, 2) if a["deck"] == b["deck"]]
    return [(a["name"], b["name"]) for a, b in pairs if apart(a, b) < 11.5]


@pytest.mark.parametrize("size", SIZES)
def test_targets_are_large_and_apart_and_clear_of_the_edges(
    open_bench: Opener, size: tuple[int, int]
) -> None:
    page = open_phone(open_bench, size)
    for screen, (_, least) in SCREENS.items():
        show(page, screen)
        targets = page.evaluate(TARGETS)
        assert (screen, small(targets, least)) == (screen, [])
        assert (screen, at_an_edge(targets, size[0])) == (screen, [])
        assert (screen, too_near(targets)) == (screen, [])


@pytest.mark.parametrize("size", SIZES)
def test_one_main_action_lies_in_reach_and_nothing_is_cut_off(
    open_bench: Opener, size: tuple[int, int]
) -> None:
    page = open_phone(open_bench, size)
    for screen in SCREENS:
        show(page, screen)
        expect(page.locator(".act")).to_have_count(1)
        box = page.locator(".act").bounding_box()
        assert box
        assert box["height"] >= (104 if screen == "run" else 88)
        assert size[1] * 2 / 3 <= box["y"] + box["height"] / 2 <= size[1]
        assert (screen, page.evaluate(CUT_OFF)) == (screen, [])
        assert (screen, page.evaluate(SMALL_TYPE)) == (screen, [])


@pytest.mark.parametrize("theme", THEMES)
def test_the_figure_being_tightened_is_read_from_a_metre_in_every_theme(
    open_bench: Opener, theme: str
) -> None:
    page = open_screen(open_bench, "run", (390, 844), theme)
    expect(page.locator("html")).to_have_attribute("data-theme", theme)
    size = page.locator(".pull .big").evaluate("big => parseFloat(getComputedStyle(big).fontSize)")
    assert size >= 96
    assert page.evaluate("document.documentElement.scrollHeight") <= 845


def test_gloves_enlarge_the_keys_and_the_figure_stays(open_bench: Opener) -> None:
    page = open_screen(open_bench, "run", (390, 844))
    figure = "document.querySelector('.pull .big').getBoundingClientRect().height"
    before = page.evaluate(figure)
    page.evaluate("import('/app/settings.js').then(s => s.setSetting('gloves', true))")
    expect(page.locator("html")).to_have_attribute("data-gloves", "yes")
    assert page.evaluate("document.querySelector('.act').offsetHeight") >= 128
    assert page.evaluate("document.querySelector('.pair .press').offsetHeight") >= 72
    assert page.evaluate(figure) == before


def test_a_left_hand_mirrors_pairs_and_the_keypads_last_row(open_bench: Opener) -> None:
    page = open_screen(open_bench, "run", (390, 844))
    page.evaluate("import('/app/settings.js').then(s => s.setSetting('hand', 'left'))")
    strike, reading = (page.locator(f"#{name}").bounding_box() for name in ("strike", "reading"))
    assert strike
    assert reading
    assert reading["x"] < strike["x"]
    page.locator("#reading").click()
    expect(page.locator(".keypad .press").nth(9)).to_have_attribute("aria-label", "Erase")


def test_a_run_at_390_by_700_does_not_scroll(open_bench: Opener) -> None:
    page = open_screen(open_bench, "run", (390, 700))
    assert page.evaluate("document.documentElement.scrollHeight") <= 701


IN_SIGHT = """places => {
  const act = document.querySelector('.act').getBoundingClientRect();
  return places.filter(place => {
    const box = document.querySelector(place)?.getBoundingClientRect();
    return !box || box.top < 0 || box.bottom > act.top || box.right > innerWidth;
  }).concat(act.bottom > innerHeight ? ['.act'] : []);
}"""
# The room for the demo line follows its height, a frame later.
ROOM_KEPT = """() => {
  const kept = getComputedStyle(document.documentElement).getPropertyValue('--demo');
  const line = document.querySelector('.demo').getBoundingClientRect();
  return Math.abs(Number.parseFloat(kept) - line.height) < 0.5;
}"""
WHOLE = [".pull .big", ".pull .unit", ".source-line"]
KEYS = ["#strike", "#reading"]
LARGE = [".pull .big", ".pull .unit"]


@pytest.mark.parametrize("text", [100, 200])
@pytest.mark.parametrize("size", [(390, 844), (390, 700), (320, 640)])
def test_the_figure_its_unit_and_the_confirm_are_in_sight_without_scrolling(
    open_bench: Opener, size: tuple[int, int], text: int
) -> None:
    page = open_phone(open_bench, size)
    show(page, "run")
    page.evaluate("text => { document.documentElement.style.fontSize = `${text}%`; }", text)
    page.wait_for_function(ROOM_KEPT)
    # On the smallest glass the line of a flag takes the room of the keys; they are a scroll away.
    whole = WHOLE + (KEYS if size[0] > 320 else [])
    assert page.evaluate(IN_SIGHT, whole if text == 100 else LARGE) == []
    assert page.evaluate("document.documentElement.scrollWidth") == size[0]


@pytest.mark.parametrize("screen", ["run", "inspect"])
def test_the_main_action_stays_docked_above_the_home_bar_however_far_it_is_scrolled(
    open_bench: Opener, screen: str
) -> None:
    page = open_phone(open_bench, (390, 844))
    insets = {"top": 47, "topMax": 47, "bottom": 34, "bottomMax": 34}
    glass = page.context.new_cdp_session(page)
    glass.send("Emulation.setSafeAreaInsetsOverride", {"insets": insets})
    show(page, screen)
    page.evaluate("document.documentElement.style.fontSize = '200%'")
    for scrolled in (0, 300, 3000):
        page.evaluate("to => document.querySelector('.run').scrollTo(0, to)", scrolled)
        box = page.locator(".act").bounding_box()
        assert box
        assert box["y"] + box["height"] <= 844 - 34
        assert box["y"] > 844 * 2 / 3 - 1
