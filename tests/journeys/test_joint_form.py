"""The specification of a joint: thread, class, adapter, and what a slip of the keypad shows."""

from collections.abc import Callable
from typing import Any

import pytest
from journeys.bench_scene import (
    JOINT,
    WRENCH,
    begun,
    bench_drafts,
    described,
    kept,
    programme,
    pulls,
)
from journeys.demo_phone import CONTRAST, LONGER, SIZES, THEMES, DemoPhone
from journeys.hands import Hand, act
from journeys.test_bench_measures import CUT_OFF, SMALL_TYPE, TARGETS, at_an_edge, too_near
from journeys.test_edit import fields, press
from journeys.test_torque_run import ONE_PASS, confirm
from playwright.sync_api import Page, expect

Opener = Callable[..., Page]
FORM = f"/joint/{JOINT}/edit"
CROWFOOT = {
    "name": "crowfoot 17", "adapter_length": {"value": "50", "unit": "mm"},
    "wrench_length": {"value": "400", "unit": "mm"}, "angle": {"value": "0", "unit": "°"},
}  # fmt: skip


def scene(**changes: Any) -> list[dict[str, Any]]:
    """Four bolts, by hand and then to 45 lbf·ft."""
    return bench_drafts(4, programme=programme(4, passes=ONE_PASS), **changes)


def by_hand(page: Page, hand: Hand) -> None:
    press(page, "Begin")
    for number in (1, 2, 3):
        confirm(page, hand, number)
    press(page, "All the rest")


def test_thread_class_and_adapter_are_written_and_kept(open_bench: Opener) -> None:
    page = open_bench(scene(), FORM)
    page.get_by_label("Thread").fill("m11 x 1.5")
    expect(page.locator("#thread-hint")).to_have_text("M11: pitch 1.5 mm, stress area 72.3 mm²")
    press(page, "10.9")
    expect(page.get_by_text("53 % of the proof load")).to_be_visible()
    press(page, "Adapter or crowfoot")
    expect(page.locator(".act")).to_contain_text("The adapter wants its lengths")
    page.get_by_label("What it is called").fill("crowfoot 17")
    page.get_by_label("Adapter length").fill("50")
    page.get_by_label("Wrench length").fill("400")
    expect(page.get_by_text("Set 40.0 lbf·ft. At the bolt 45 lbf·ft.")).to_be_visible()
    expect(page.locator(".work-drawing svg")).to_be_visible()
    act(page)
    expect(page.locator(".run .act")).to_contain_text("Begin")
    now = fields(page, JOINT)
    assert (now["thread"], now["strength_class"]) == ("m11 x 1.5", "10.9")
    assert now["adapter"] == CROWFOOT


def test_a_value_out_by_ten_is_cautioned_and_kept_all_the_same(open_bench: Opener) -> None:
    page = open_bench(scene(thread="M11×1.5", strength_class="10.9"), FORM)
    page.get_by_label("Value").fill("450")
    caution = "Out by ten? 450 lbf·ft would be 528 % of the proof load, 45.0 lbf·ft would be 53 %."
    expect(page.get_by_text(caution)).to_be_visible()
    expect(page.get_by_text("Rule of thumb; the manual decides.")).to_be_visible()
    act(page)
    expect(page.locator(".run .act")).to_contain_text("Begin")
    assert fields(page, JOINT)["programme"]["passes"][1]["values"][0]["value"] == "450"


def test_a_dry_value_on_an_oiled_thread_is_told(open_bench: Opener) -> None:
    page = open_bench(scene(thread="M10", strength_class="8.8"), FORM)
    page.get_by_label("Value").fill("72")
    press(page, "N·m")
    expect(page.get_by_text("A value for dry threads?")).to_be_visible()
    press(page, "dry")
    expect(page.get_by_text("A value for dry threads?")).to_be_hidden()


def test_a_thread_that_cannot_be_read_is_told_and_stays_as_typed(open_bench: Opener) -> None:
    page = open_bench(scene(), FORM)
    page.get_by_label("Thread").fill("left hand, odd")
    expect(page.locator("#thread-hint.wrong")).to_be_visible()
    act(page)
    expect(page.locator(".run .act")).to_contain_text("Begin")
    assert fields(page, JOINT)["thread"] == "left hand, odd"


def test_wrenches_that_take_the_value_stand_first_with_their_nearest_mark(
    open_bench: Opener,
) -> None:
    marked = described("wrench", WRENCH, graduation="2")
    page = open_bench([*scene(adapter=CROWFOOT), marked], FORM)
    rows = page.get_by_role("group", name="Usual wrench").locator(".row")
    expect(rows.nth(0)).to_contain_text("set 41 lbf·ft, at the bolt 46.1 lbf·ft")
    expect(rows.nth(1)).to_contain_text("ends at 20 N·m")


def test_an_adapter_of_an_older_page_stays_as_it_was_written(open_bench: Opener) -> None:
    page = open_bench(scene(adapter="crowfoot 17"), FORM)
    expect(page.get_by_label("What it is called")).to_have_value("crowfoot 17")
    page.get_by_label("Re-torque").fill("after the first heat")
    act(page)
    expect(page.get_by_text("without its lengths the setting is not known")).to_be_visible()
    assert fields(page, JOINT)["adapter"] == "crowfoot 17"


def test_with_an_adapter_the_run_says_what_to_set_and_readings_are_of_the_wrench(
    open_bench: Opener,
) -> None:
    page = open_bench(scene(adapter=CROWFOOT))
    hand = Hand(page)
    by_hand(page, hand)
    expect(page.locator(".pass-done")).to_contain_text("at the bolt 45 lbf·ft")
    press(page, "Pass 1: 45 lbf·ft")
    figure = page.locator(".pull")
    expect(figure.locator(".quiet-head")).to_have_text("set")
    expect(figure.locator(".big")).to_have_text("40.0")
    expect(figure).to_contain_text("at the bolt 45 lbf·ft")
    expect(page.locator(".tool")).to_contain_text("crowfoot 17")
    spoken = "Confirm bolt 1, wrench set to 40.0 pound-feet, at the bolt 45 pound-feet"
    expect(page.locator(".act")).to_have_attribute("aria-label", spoken)
    press(page, "Reading")
    page.locator(".keypad").wait_for()
    page.keyboard.type("40")
    expect(page.get_by_text("At the bolt 45.0")).to_be_visible()
    act(page)
    expect(page.locator(".act")).to_contain_text("Confirm 2")
    last = kept(page, "pull")[-1]["body"]
    assert (last["read_at"], last["reading"]["value"], last["target"]["value"]) == (
        "set",
        "40",
        "45",
    )
    press(page, "Reading")
    page.locator(".keypad").wait_for()
    page.keyboard.type("45")
    act(page)
    expect(page.locator(".caption.flagged")).to_contain_text("2 is too far: set 45 lbf·ft.")


def test_a_wrench_that_cannot_be_set_so_is_told_before_the_pull(open_bench: Opener) -> None:
    long = {**CROWFOOT, "adapter_length": {"value": "1200", "unit": "mm"}}
    page = open_bench(scene(adapter=long))
    hand = Hand(page)
    by_hand(page, hand)
    press(page, "Pass 1: 45 lbf·ft")
    expect(
        page.get_by_text("This wrench starts at 15 lbf·ft. It cannot be set to 11.3")
    ).to_be_visible()


def test_what_was_really_applied_stands_quietly_on_a_joint_that_is_done(
    open_bench: Opener,
) -> None:
    every = range(1, 5)
    target = {"value": "45", "unit": "lbf·ft"}
    page = open_bench([*scene(), begun(), *pulls("p0", every), *pulls("p1", every, target=target)])
    expect(page.get_by_text("At the bolt 43.3 to 46.9 lbf·ft")).to_be_visible()


def test_the_words_beside_confirm_are_those_of_the_wrench(open_bench: Opener) -> None:
    for sort, words in (("click", "when it clicks"), ("dial", "when it shows 45 lbf·ft")):
        page = open_bench([*scene(), described("wrench", WRENCH, sort=sort)])
        hand = Hand(page)
        by_hand(page, hand)
        press(page, "Pass 1: 45 lbf·ft")
        expect(page.locator(".act")).to_contain_text(words)


SLIP = [{"id": "p1", "how": "torque", "values": [{"value": "450", "unit": "lbf·ft"}]}]
PASSES = {"form": SLIP, "run": ONE_PASS[1:], "reading": ONE_PASS[1:]}
PATHS = {"form": FORM, "run": f"/joint/{JOINT}", "reading": f"/joint/{JOINT}/reading"}
SIGNS = {"form": "#thread", "run": ".pull .big", "reading": ".keypad"}


def opened(open_bench: Opener, screen: str) -> Page:
    spec = {"thread": "M11", "strength_class": "10.9", "adapter": CROWFOOT}
    drafts = bench_drafts(14, programme=programme(14, passes=PASSES[screen]), **spec)
    calm = {"bypass_csp": True, "reduced_motion": "reduce"}
    return open_bench([*drafts, begun()], PATHS[screen], **calm)


@pytest.mark.parametrize("screen", PATHS)
def test_the_screens_hold_at_every_size_and_in_every_theme(open_bench: Opener, screen: str) -> None:
    page = opened(open_bench, screen)
    phone = DemoPhone(page, None)  # type: ignore[arg-type]
    findings: dict[str, Any] = {}
    for at, (width, height) in SIZES.items():
        page.set_viewport_size({"width": width, "height": height})
        page.locator(SIGNS[screen]).wait_for()
        for theme in THEMES:
            phone.wear(theme)
            findings[f"axe, {at}, {theme}"] = phone.axe(*([] if at == "phone" else CONTRAST))
        if screen == "form":
            findings[f"measured, {at}"] = phone.measured(desk=at == "desk")
            continue
        targets = page.evaluate(TARGETS)
        findings[f"edges, {at}"] = at_an_edge(targets, width)
        findings[f"near, {at}"] = too_near(targets)
        findings[f"cut off, {at}"] = page.evaluate(CUT_OFF)
        findings[f"type, {at}"] = page.evaluate(SMALL_TYPE)
    assert {name: found for name, found in findings.items() if found} == {}


def test_with_an_adapter_the_run_still_stands_without_scrolling(open_bench: Opener) -> None:
    page = opened(open_bench, "run")
    page.set_viewport_size({"width": 390, "height": 844})
    page.locator(SIGNS["run"]).wait_for()
    assert page.evaluate("document.documentElement.scrollHeight") <= 845
    page.locator("#reading").click()
    page.locator(SIGNS["reading"]).wait_for()
    assert page.evaluate("document.documentElement.scrollHeight") <= 845


def test_the_form_holds_with_larger_and_longer_words(open_bench: Opener) -> None:
    page = opened(open_bench, "form")
    phone = DemoPhone(page, None)  # type: ignore[arg-type]
    page.locator(SIGNS["form"]).wait_for()
    assert phone.cut_off("document.documentElement.style.fontSize = '200%'") == []
    page.evaluate("document.documentElement.style.fontSize = ''")
    assert phone.cut_off(LONGER) == []
