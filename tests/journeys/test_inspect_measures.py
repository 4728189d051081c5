"""Measuring the piece under the lamp: typed large, judged at once, kept with the inspection."""

from collections.abc import Callable
from typing import Any

import pytest
from journeys.bench_scene import BAG, KIND, PUSHRODS, bag, described, kept
from journeys.demo_phone import SIZES
from journeys.hands import Hand, press
from playwright.sync_api import Page, expect

Opener = Callable[..., Page]
LENGTH = {
    "id": "m1", "name": "Length", "quantity": "length", "unit": "mm", "instrument": "caliper",
    "least": "186.90", "most": "187.10", "source": "invented manual, page 4",
}  # fmt: skip
ENDS = {"id": "m2", "name": "Ball", "unit": "mm", "positions": ["rocker end", "lifter end"]}


def measured(*measures: dict[str, Any]) -> list[dict[str, Any]]:
    """The bag of pushrods, whose kind has things to measure."""
    return [*bag(), described("kind", KIND, measures=list(measures))]


@pytest.fixture
def lamp(open_bench: Opener) -> Page:
    page = open_bench(measured(LENGTH, ENDS), path=f"/inspect/{BAG}")
    expect(page.locator("h1")).to_contain_text("Pushrod 1 of 4")
    Hand(page).settle()
    return page


def read(page: Page, digits: str) -> None:
    """Type as a caliper does, and keep."""
    expect(page.locator(".typed .big")).to_have_text("")
    page.keyboard.type(digits)
    expect(page.locator(".typed .big")).to_have_text(digits)
    hand = Hand(page)
    hand.settle()
    hand.press(page.locator(".act"))


def row(page: Page, name: str) -> Any:
    return page.locator(".looks li").filter(has_text=name)


def test_a_reading_is_judged_by_its_limits_and_kept_with_the_inspection(lamp: Page) -> None:
    expect(row(lamp, "Length")).to_contain_text("caliper; 186.90 to 187.10 mm")
    expect(row(lamp, "Length")).to_contain_text("invented manual, page 4")
    press(lamp, "Read Length")
    read(lamp, "187.02")
    expect(row(lamp, "Length")).to_contain_text("187.02 mm; inside")
    press(lamp, "Use")
    Hand(lamp).settle()
    Hand(lamp).press(lamp.locator(".act"))
    expect(lamp.locator("h1")).to_contain_text("Pushrod 2 of 4")
    expect(row(lamp, "Length")).to_contain_text("186.90 to 187.10 mm")
    (inspection,) = kept(lamp, "inspection", PUSHRODS[0])
    value = {"value": "187.02", "unit": "mm"}
    assert inspection["body"]["readings"] == [{"measure": "m1", "value": value}]
    lamp.goto(lamp.url.split("/inspect/")[0] + f"/part/{PUSHRODS[0]}")
    expect(lamp.locator(".look").first).to_contain_text("Length: 187.02 ± 0.0058 mm; inside")


def test_too_close_to_call_wants_another_reading_and_tells_their_mean(lamp: Page) -> None:
    press(lamp, "Read Length")
    read(lamp, "187.1")
    expect(row(lamp, "Length")).to_contain_text("too close to call: measure again")
    press(lamp, "Read Length")
    read(lamp, "187.00")
    expect(row(lamp, "Length")).to_contain_text("187.050 mm, mean of 2")


def test_a_piece_outside_its_limits_is_not_proposed_for_use(lamp: Page) -> None:
    press(lamp, "Read Length")
    read(lamp, "187.31")
    expect(row(lamp, "Length")).to_contain_text("outside")
    Hand(lamp).settle()
    for asked in ("Ends even and round?", "Rolls without a wobble?", "Oil passage clear?"):
        hand = Hand(lamp)
        hand.press(row(lamp, asked).get_by_role("button", name="Yes"))
        hand.pass_time(170)
    expect(lamp.locator(".looks [aria-pressed=true]")).to_have_count(4)
    expect(lamp.locator(".judge [aria-pressed=true]")).to_have_count(0)
    expect(lamp.locator(".act")).to_be_disabled()
    press(lamp, "Take back 187.31 mm")
    expect(row(lamp, "Length")).to_contain_text("186.90 to 187.10 mm")
    expect(lamp.locator(".act")).to_contain_text("Keep: use")


def test_places_come_one_after_another_and_outlive_a_lost_page(lamp: Page) -> None:
    press(lamp, "Read Ball")
    expect(lamp.locator("h1")).to_contain_text("Ball: rocker end")
    lamp.keyboard.type("7.9")
    expect(lamp.locator(".typed .big")).to_have_text("7.9")
    lamp.reload()
    expect(lamp.locator(".typed .big")).to_have_text("7.9")
    Hand(lamp).settle()
    lamp.keyboard.press("Enter")
    expect(lamp.locator("h1")).to_contain_text("Ball: lifter end")
    read(lamp, "7.8")
    expect(row(lamp, "Ball")).to_contain_text("7.85 mm")


def test_the_row_names_the_place_that_is_outside_not_a_mean_that_is_not(
    open_bench: Opener,
) -> None:
    ball = {"id": "m3", "name": "Tube", "unit": "mm", "least": "7.90", "most": "8.00"}
    page = open_bench(
        measured({**ball, "positions": ["rocker end", "lifter end"]}), path=f"/inspect/{BAG}"
    )
    expect(page.locator("h1")).to_contain_text("Pushrod 1 of 4")
    press(page, "Read Tube")
    read(page, "7.99")
    read(page, "7.82")
    expect(row(page, "Tube")).to_contain_text("lifter end: 7.82 mm")
    expect(row(page, "Tube")).to_contain_text("outside")


@pytest.mark.parametrize("height", [420, 600])
def test_the_next_piece_is_shown_from_its_top(lamp: Page, height: int) -> None:
    lamp.set_viewport_size({"width": 390, "height": height})
    press(lamp, "Use")
    lamp.evaluate("for (const at of document.querySelectorAll('html, main')) at.scrollTop = 400")
    expect(lamp.locator("h1")).not_to_be_in_viewport()
    Hand(lamp).settle()
    Hand(lamp).press(lamp.locator(".act"))
    expect(lamp.locator("h1")).to_contain_text("Pushrod 2 of 4")
    expect(lamp.locator("h1")).to_be_in_viewport(ratio=1)


def test_zero_is_a_reading_and_crossed_limits_judge_nothing(open_bench: Opener) -> None:
    crossed = {"id": "m3", "name": "Run-out", "unit": "in", "least": "0.004", "most": "0.002"}
    page = open_bench(measured(crossed), path=f"/inspect/{BAG}")
    expect(page.locator("h1")).to_contain_text("Pushrod 1 of 4")
    press(page, "Read Run-out")
    read(page, "0")
    expect(row(page, "Run-out")).to_contain_text("0 in")
    expect(row(page, "Run-out")).not_to_contain_text("inside")
    expect(row(page, "Run-out")).to_contain_text("the least is above the most")


def test_a_reading_in_a_unit_of_another_kind_is_left_out(open_bench: Opener) -> None:
    page = open_bench(measured(LENGTH), path=f"/inspect/{BAG}")
    expect(page.locator("h1")).to_contain_text("Pushrod 1 of 4")
    press(page, "Read Length")
    read(page, "187.02")
    expect(row(page, "Length")).to_contain_text("inside")
    weighed = {"id": "m1", "name": "Weight", "unit": "g", "least": "60", "most": "64"}
    page.evaluate(
        """async (entry) => {
          const { openStore } = await import('/store/index.js');
          const store = await openStore();
          await store.keep([entry]);
          await store.close();
        }""",
        described("kind", KIND, measures=[weighed]),
    )
    page.reload()
    expect(row(page, "Weight")).to_contain_text("60 to 64 g")


@pytest.mark.parametrize("at", SIZES)
@pytest.mark.parametrize("where", ["piece", "keypad"])
def test_nothing_is_wider_than_the_glass_and_the_act_stays_in_sight(
    lamp: Page, at: str, where: str
) -> None:
    width, height = SIZES[at]
    lamp.set_viewport_size({"width": width, "height": height})
    if where == "keypad":
        press(lamp, "Read Length")
        expect(lamp.locator(".keypad button")).to_have_count(12)
    act = lamp.locator(".act").bounding_box()
    assert act
    assert act["y"] + act["height"] <= height
    assert lamp.evaluate("document.documentElement.scrollWidth") <= width
