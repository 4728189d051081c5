"""Thirty-two pushrods are measured: instruments, verdicts while typing, reasons, thumbs."""

from collections.abc import Callable

import pytest
from journeys import measured_scene as scene
from journeys.bench_scene import kept
from journeys.demo_phone import SIZES
from journeys.hands import Hand, act, press, press_in
from playwright.sync_api import Locator, Page, expect

Opener = Callable[..., Page]
SLOW = 20_000
LAMP = f"/inspect/{scene.BAG}"
SEEN = """(place) => {
  const { left, top, width, height } = place.getBoundingClientRect();
  return place.contains(document.elementFromPoint(left + width / 2, top + height / 2));
}"""


@pytest.fixture
def lamp(open_bench: Opener) -> Page:
    page = open_bench(scene.pushrods(), path=LAMP)
    expect(page.locator("h1")).to_contain_text("Long pushrod 1 of 32", timeout=SLOW)
    Hand(page).settle()
    return page


def row(page: Page, name: str) -> Locator:
    return page.locator(".looks li").filter(has_text=name)


def type_in(page: Page, digits: str) -> None:
    """Type as a caliper does; nothing is kept yet."""
    expect(page.locator(".typed .big")).to_have_text("")
    page.keyboard.type(digits)
    expect(page.locator(".typed .big")).to_have_text(digits)


def read(page: Page, *values: str) -> None:
    for value in values:
        type_in(page, value)
        act(page)


def take(page: Page, name: str) -> None:
    """Name the instrument."""
    press_in(page, ".read-with", "")
    press_in(page, "dialog .row", name)
    expect(page.locator("dialog")).to_have_count(0)


@pytest.mark.parametrize("at", SIZES)
def test_verdicts_lie_under_the_thumb_and_measures_are_reached_above_them(
    lamp: Page, at: str
) -> None:
    width, height = SIZES[at]
    lamp.set_viewport_size({"width": width, "height": height})
    for key in [*lamp.locator(".judge .press").all(), lamp.locator(".act")]:
        box = key.bounding_box()
        assert box
        assert box["y"] > height * 0.55
        assert box["y"] + box["height"] <= height
        assert key.evaluate(SEEN)
    for name in ("Ends even", "Length", "Weight"):
        button = row(lamp, name).locator("button").first
        button.evaluate("(place) => place.scrollIntoView({ block: 'center' })")
        assert button.evaluate(SEEN)


def test_a_good_piece_takes_two_taps(lamp: Page) -> None:
    press(lamp, "Use")
    act(lamp)
    expect(lamp.locator("h1")).to_contain_text("Long pushrod 2 of 32")
    (verdict,) = kept(lamp, "verdict", scene.rod(1))
    assert verdict["body"]["verdict"] == "use"


def test_a_reading_is_judged_while_it_is_typed(lamp: Page) -> None:
    says = lamp.locator(".read-with b")
    press(lamp, "Read Length")
    expect(says).to_contain_text("186.90 to 187.10 mm")
    type_in(lamp, "187.02")
    expect(says).to_have_text("inside")
    expect(says.locator(".sign")).to_have_count(0)
    expect(lamp.locator(".read-with")).to_contain_text("± 0.0058 mm by the last digit")
    for _ in "02":
        lamp.keyboard.press("Backspace")
    lamp.keyboard.type("10")
    expect(says).to_have_text("too close to call: measure again")
    lamp.keyboard.press("Backspace")
    lamp.keyboard.press("Backspace")
    lamp.keyboard.type("3")
    expect(says).to_have_text("outside")
    expect(says.locator(".sign")).to_be_visible()


def test_an_instrument_is_named_once_and_remembered_for_its_measure(lamp: Page) -> None:
    press(lamp, "Read Length")
    press_in(lamp, ".read-with", "With what?")
    rows = lamp.locator("dialog .row")
    expect(rows).to_have_count(3)
    expect(rows.filter(has_text="Caliper 150")).to_contain_text("Notice. Calibration was due")
    expect(rows.filter(has_text="Caliper 150")).to_contain_text("± 0.03 mm by its deviation")
    expect(rows.filter(has_text="Micrometer 25")).to_contain_text("± 0.002 mm by its certificate")
    press_in(lamp, "dialog .row", "Caliper 150")
    expect(lamp.locator(".read-with")).to_contain_text("Notice. Calibration was due")
    read(lamp, "187.08")
    expect(row(lamp, "Length")).to_contain_text("too close to call: measure again")
    press(lamp, "Use")
    act(lamp)
    expect(lamp.locator("h1")).to_contain_text("Long pushrod 2 of 32")
    (inspection,) = kept(lamp, "inspection", scene.rod(1))
    assert [each["instrument"] for each in inspection["body"]["readings"]] == [scene.CALIPER]
    press(lamp, "Read Length")
    remembered = lamp.get_by_role("button", name="Read with Caliper 150. Change")
    expect(remembered).to_be_visible()
    take(lamp, "No instrument named")
    read(lamp, "187.08")
    expect(row(lamp, "Length")).to_contain_text("inside")


def test_out_of_round_and_taper_are_told_as_soon_as_they_stand(lamp: Page) -> None:
    press(lamp, "Read Tube")
    expect(lamp.locator("h1")).to_contain_text("Tube: rocker end, along")
    take(lamp, "Micrometer 25")
    read(lamp, "7.952")
    expect(lamp.locator("h1")).to_contain_text("Tube: rocker end, across")
    read(lamp, "7.940")
    expect(lamp.locator(".read-with b")).to_contain_text("out-of-round 0.012 mm")
    read(lamp, "7.961", "7.899")
    expect(row(lamp, "Tube")).to_contain_text("too close to call")
    expect(row(lamp, "Tube")).to_contain_text("out-of-round 0.062 mm; taper 0.041 mm")


def test_scrap_waits_for_its_reason_and_takes_own_words(lamp: Page) -> None:
    press(lamp, "Scrap")
    expect(lamp.locator(".act")).to_be_disabled()
    expect(lamp.locator(".act")).to_contain_text("Say why first")
    press(lamp, "rust pits")
    expect(lamp.locator(".act")).to_be_enabled()
    press(lamp, "Machine")
    expect(lamp.locator(".act")).to_be_disabled()
    press(lamp, "Other words")
    lamp.get_by_label("Other words").last.fill("both ends to be ground")
    act(lamp)
    expect(lamp.locator("h1")).to_contain_text("Long pushrod 2 of 32")
    (verdict,) = kept(lamp, "verdict", scene.rod(1))
    assert verdict["body"]["verdict"] == "machine"
    assert verdict["body"]["reason"] == "both ends to be ground"


def test_use_of_what_lies_outside_or_was_answered_no_waits_for_its_reason(lamp: Page) -> None:
    press(lamp, "Read Length")
    read(lamp, "186.20")
    expect(row(lamp, "Length").locator(".off-limit")).to_have_text("186.20 mm; outside")
    expect(row(lamp, "Length").locator(".off-limit .sign")).to_be_visible()
    expect(lamp.locator(".reasons")).to_have_count(0)
    press(lamp, "Use")
    expect(lamp.locator(".act")).to_be_disabled()
    expect(lamp.locator(".act")).to_contain_text("Say why first")
    says = lamp.locator(".reasons .off-limit")
    expect(says).to_have_text("Length 186.20 mm is below the least 186.90. Say why it may be used.")
    press_in(lamp, ".looks li:first-child .press", "No")
    expect(says).to_have_text(
        "Ends even and round? No. Length 186.20 mm is below the least 186.90. "
        "Say why it may be used."
    )
    press(lamp, "the manual allows it")
    act(lamp)
    expect(lamp.locator("h1")).to_contain_text("Long pushrod 2 of 32")
    for heading in ("inspection", "verdict"):
        (fact,) = kept(lamp, heading, scene.rod(1))
        assert (fact["body"]["verdict"], fact["body"]["reason"]) == ("use", "the manual allows it")


def test_a_reason_to_use_goes_with_what_it_was_asked_for(lamp: Page) -> None:
    press(lamp, "Use")
    press(lamp, "Read Length")
    read(lamp, "187.31")
    expect(lamp.locator(".act")).to_be_disabled()
    expect(lamp.locator(".reasons")).to_contain_text("Length 187.31 mm is above the most 187.10.")
    press(lamp, "it fits")
    expect(lamp.locator(".act")).to_be_enabled()
    press(lamp, "Take back 187.31 mm")
    expect(lamp.locator(".reasons")).to_have_count(0)
    act(lamp)
    expect(lamp.locator("h1")).to_contain_text("Long pushrod 2 of 32")
    (verdict,) = kept(lamp, "verdict", scene.rod(1))
    assert set(verdict["body"]) == {"verdict", "inspection"}
