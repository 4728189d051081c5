"""A reading on the page's own keys: what it is asked, and what is kept."""

from collections.abc import Callable

import pytest
from journeys.bench_scene import JOINT, half_way, kept
from journeys.hands import Hand
from playwright.sync_api import Page, expect


@pytest.fixture
def reading(open_bench: Callable[..., Page]) -> Page:
    page = open_bench(half_way(), path=f"/joint/{JOINT}/reading")
    page.locator(".keypad").wait_for()
    Hand(page).settle()
    return page


def type_(page: Page, keys: str) -> None:
    for key in keys:
        page.get_by_role("group", name="Keypad").get_by_text(key, exact=True).click()


def last_pull(page: Page) -> dict[str, object]:
    body: dict[str, object] = kept(page, "pull")[-1]["body"]
    return body


def test_the_typed_figure_stands_beside_its_other_unit_and_the_target(reading: Page) -> None:
    type_(reading, "45.5")
    expect(reading.locator(".typed .big")).to_have_text("45.5")
    expect(reading.locator(".same")).to_contain_text("61.7 N·m")
    expect(reading.locator(".same")).to_contain_text("1.1 % over the target")
    Hand(reading).press(reading.locator(".act"))
    expect(reading.locator(".typed")).to_be_hidden()
    assert last_pull(reading)["reading"] == {"value": "45.5", "unit": "lbf·ft"}
    assert last_pull(reading)["target"] == {"value": "45", "unit": "lbf·ft"}


def test_a_number_of_another_unit_is_asked_about_and_the_unit_keys_relabel_it(
    reading: Page,
) -> None:
    reading.get_by_role("button", name="newton-metres").click()
    type_(reading, "45")
    reading.locator(".act").click()
    question = "45 N·m is 33.2 lbf·ft. The target is 45 lbf·ft. Which scale did you read?"
    expect(reading.locator(".asked")).to_have_text(question)
    assert len(kept(reading, "pull")) == 36
    reading.get_by_role("button", name="45 lbf·ft").last.click()
    expect(reading.locator(".typed")).to_contain_text("45lbf·ft")
    reading.locator(".act").click()
    expect(reading.locator(".typed")).to_be_hidden()
    assert last_pull(reading)["reading"] == {"value": "45", "unit": "lbf·ft"}


def test_a_reading_out_of_reason_is_kept_only_when_insisted(reading: Page) -> None:
    type_(reading, "450")
    reading.locator(".act").click()
    expect(reading.get_by_role("heading", name="450? The target is 45 lbf·ft")).to_be_visible()
    reading.get_by_role("button", name="Change it").click()
    expect(reading.locator(".typed .big")).to_have_text("450")
    reading.locator(".act").click()
    reading.get_by_role("button", name="Keep 450").click()
    expect(reading.locator(".typed")).to_be_hidden()
    assert last_pull(reading)["reading"] == {"value": "450", "unit": "lbf·ft"}


def test_hardware_keys_and_both_decimal_signs_work_and_enter_keeps_once(reading: Page) -> None:
    for key in ["4", "4", ",", "5", "6", "7", "Backspace"]:
        reading.keyboard.press(key)
    expect(reading.locator(".typed .big")).to_have_text("44.5")
    reading.keyboard.down("Enter")
    reading.keyboard.down("Enter")
    reading.keyboard.up("Enter")
    expect(reading.locator(".typed")).to_be_hidden()
    assert last_pull(reading)["reading"] == {"value": "44.5", "unit": "lbf·ft"}
    assert len(kept(reading, "pull")) == 37


def test_a_half_typed_reading_is_still_there_after_the_page_was_lost(reading: Page) -> None:
    type_(reading, "46")
    expect(reading.locator(".typed .big")).to_have_text("46")
    reading.reload()
    expect(reading.locator(".typed .big")).to_have_text("46")
    assert len(kept(reading, "pull")) == 36
