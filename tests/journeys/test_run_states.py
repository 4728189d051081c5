"""The rarer states of a torque run, each driven by touch on a phone."""

from collections.abc import Callable
from typing import Any

import pytest
from journeys.bench_scene import (
    JOINT,
    RUN,
    SMALL_WRENCH,
    begun,
    bench_drafts,
    fasteners,
    half_way,
    joint,
    keep,
    kept,
    programme,
    pulls,
)
from journeys.hands import Hand
from playwright.sync_api import Page, expect

Opener = Callable[..., Page]
HAND = {"id": "p0", "how": "hand"}
ANGLE = {"id": "p2", "how": "angle", "values": [{"value": "90", "unit": "°"}]}
TURNED = (
    "Warning. Do not turn it again. Turning twice can stretch or break it. Loosen and start over, "
    "or replace it, as the manual says."
)


def torque(id_: str, *values: str) -> dict[str, Any]:
    groups = [{"value": value, "unit": "lbf·ft"} for value in values]
    return {"id": id_, "how": "torque", "values": groups}


def press(page: Page, name: str) -> None:
    hand = Hand(page)
    hand.settle()
    hand.press(page.get_by_role("button", name=name).or_(page.get_by_role("link", name=name)).first)


def main(page: Page, says: str) -> None:
    expect(page.locator(".act")).to_contain_text(says)
    hand = Hand(page)
    hand.settle()
    hand.press(page.locator(".act"))


def turning(*more: dict[str, Any]) -> list[dict[str, Any]]:
    """Four bolts in an angle pass, two turned."""
    plan = programme(4, passes=[HAND, torque("p1", "20"), ANGLE])
    target = {"value": "90", "unit": "°"}
    return [
        *bench_drafts(4, programme=plan), begun(), *pulls("p0", range(1, 5), together=True),
        *pulls("p1", range(1, 5)), *pulls("p2", [1, 2], target=target), *more,
    ]  # fmt: skip


def to_turned(page: Page) -> None:
    """Strike out the last turn, so that it is asked about."""
    expect(page.get_by_text("Put no wrench on 2; compare its paint mark.")).to_be_visible()
    main(page, "Go on at 3")
    expect(page.locator(".pull .big")).to_have_text("90°")
    expect(page.locator(".arc")).to_be_visible()
    press(page, "Strike out")
    press(page, "Socket slipped")
    press(page, "Strike out 2")
    expect(page.get_by_role("heading", name="Was 2 turned?")).to_be_visible()


def test_a_turned_bolt_is_warned_of_and_loosened(open_bench: Opener) -> None:
    page = open_bench(turning())
    to_turned(page)
    main(page, "Yes, or not sure")
    expect(page.locator(".caution.warning")).to_have_text(TURNED)
    expect(page.get_by_role("button", name="Replace")).to_be_visible()
    main(page, "Loosen")
    expect(page.get_by_role("heading", name="Was 2 turned?")).to_be_hidden()
    assert kept(page, "loosening")[0]["body"]["fasteners"] == ["f2"]


def test_a_bolt_that_was_not_turned_comes_again(open_bench: Opener) -> None:
    page = open_bench(turning())
    to_turned(page)
    press(page, "No, not turned")
    main(page, "Confirm 3")
    assert kept(page, "touch")[0]["body"]["turned"] is False


def test_all_are_backed_off_before_the_next_value(open_bench: Opener) -> None:
    passes = [torque("p1", "20"), {"id": "p2", "how": "back-off"}, torque("p3", "45")]
    page = open_bench(
        [
            *bench_drafts(4, programme=programme(4, passes=passes)), begun(),
            *pulls("p1", range(1, 5)), *pulls("p2", [1, 2, 3], target=None),
        ]
    )  # fmt: skip
    main(page, "Go on")
    expect(page.locator(".pull .big")).to_have_text("back off")
    main(page, "Confirm 4")
    expect(page.get_by_text("All 4 backed off.")).to_be_visible()
    main(page, "Pass 3: 45 lbf·ft")
    main(page, "Confirm 1")
    last = kept(page, "pull")[-1]["body"]
    assert last["target"] == {"value": "45", "unit": "lbf·ft"}


def test_each_group_shows_its_own_value(open_bench: Opener) -> None:
    heads = fasteners(4)
    for head in heads:
        head["group"] = "long" if head["number"] < 3 else "short"
    values = [
        {"group": "long", "value": "45", "unit": "lbf·ft"},
        {"group": "short", "value": "30", "unit": "lbf·ft"},
    ]
    plan = programme(4, passes=[{"id": "p1", "how": "torque", "values": values}])
    page = open_bench([*bench_drafts(4, programme=plan, fasteners=heads), begun()])
    for number, value, group in ((1, "45", "long"), (2, "45", "long"), (3, "30", "short")):
        expect(page.locator(".pull .big")).to_have_text(value)
        expect(page.locator(".pull .grouped")).to_have_text(group)
        main(page, f"Confirm {number}")


def test_ten_minutes_of_quiet_bring_the_sheet_of_where_it_stopped(open_bench: Opener) -> None:
    page = open_bench(half_way(), path="/more")
    page.clock.install()
    page.goto(page.url.replace("/more", f"/joint/{JOINT}"))
    expect(page.locator(".act")).to_contain_text("Go on at 9")
    page.locator(".act").press("Enter")
    expect(page.locator(".act")).to_contain_text("Confirm 9")
    page.clock.run_for(9 * 60 * 1000)
    expect(page.locator(".act")).to_contain_text("Confirm 9")
    page.clock.run_for(2 * 60 * 1000)
    expect(page.get_by_text("Last: 8. Touch it before you go on.")).to_be_visible()


def test_a_pull_whose_value_changed_leaves_the_pass_open(open_bench: Opener) -> None:
    plan = programme(4, passes=[HAND, torque("p1", "22")])
    page = open_bench(
        [
            *bench_drafts(4), begun(), *pulls("p0", range(1, 5), together=True),
            *pulls("p1", [1, 2, 3]), joint(4, programme=plan),
        ]
    )  # fmt: skip
    main(page, "Go on")
    expect(page.get_by_text("3 was pulled to a value that has changed.")).to_be_visible()
    press(page, "Pull it again")
    main(page, "Confirm 3")


def test_a_wrench_not_made_for_the_value_is_told(open_bench: Opener) -> None:
    page = open_bench([*half_way(), *pulls("p2", [9], wrench=SMALL_WRENCH)])
    main(page, "Go on")
    expect(page.get_by_text("9: this wrench cannot be set for 45 lbf·ft.")).to_be_visible()


def test_it_goes_on_without_a_chosen_wrench(open_bench: Opener) -> None:
    page = open_bench(half_way())
    main(page, "Go on at 9")
    press(page, "Change the wrench")
    press(page, "Without a wrench")
    main(page, "Go on without")
    expect(page.locator(".tool")).to_contain_text("No wrench chosen")
    main(page, "Confirm 9")
    expect(page.locator(".act")).to_contain_text("Confirm 10")
    assert kept(page, "pull")[-1]["body"]["wrench"] is None


def test_another_value_without_source_is_warned_of_again(open_bench: Opener) -> None:
    said = {"run": RUN, "pass": "p2", "target": {"value": "45", "unit": "lbf·ft"}}
    choice = {"heading": "unsourced", "about": JOINT, "body": said}
    passes = [HAND, torque("p1", "20"), torque("p2", "46"), torque("p3", "85")]
    page = open_bench([*half_way(), joint(programme=programme(source=None)), choice])
    main(page, "Go on at 9")
    main(page, "Confirm 9")
    keep(page, [joint(programme=programme(source=None, passes=passes))])
    expect(page.locator(".caution.warning")).to_contain_text("beside 46 lbf·ft")
    press(page, "Go on unsourced")
    expect(page.locator(".pull .big")).to_have_text("46")


def test_of_many_bolts_those_around_the_next_are_drawn_with_a_plan(open_bench: Opener) -> None:
    heads = fasteners(24, 12)
    page = open_bench([*bench_drafts(24, fasteners=heads), begun()])
    expect(page.locator(".drawing .plan")).to_have_count(1)
    expect(page.locator(".drawing .next-h")).to_have_count(1)
    main(page, "Confirm 1")
    expect(page.locator(".act")).to_contain_text("Confirm 2")


def test_keys_confirm_once_and_open_reading_strike_out_and_the_way_back(
    open_bench: Opener,
) -> None:
    page = open_bench(half_way())
    main(page, "Go on at 9")
    expect(page.locator(".act")).to_contain_text("Confirm 9")
    Hand(page).settle()
    page.locator("h1").focus()
    page.keyboard.down("Enter")
    page.keyboard.down("Enter")
    expect(page.locator(".act")).to_contain_text("Confirm 9")
    page.keyboard.up("Enter")
    expect(page.locator(".act")).to_contain_text("Confirm 10")
    page.keyboard.press("r")
    page.wait_for_url("**/reading")
    page.go_back()
    expect(page.locator(".act")).to_contain_text("Confirm 10")
    page.keyboard.press("s")
    page.wait_for_url("**/strike/**")
    page.go_back()
    expect(page.locator(".act")).to_contain_text("Confirm 10")
    page.keyboard.press("Escape")
    expect(page.locator(".act", has_text="Confirm 10")).to_be_hidden()


@pytest.mark.parametrize("width", [320, 390])
@pytest.mark.parametrize("text", ["100%", "200%"])
def test_the_page_of_the_source_is_read_whole_and_the_confirm_stays(
    open_bench: Opener, width: int, text: str
) -> None:
    plan = programme(source="Kelderby workshop manual, page 6-14")
    size = {"width": width, "height": 640 if width == 320 else 844}
    page = open_bench([*half_way(), joint(programme=plan)], viewport=size)
    main(page, "Go on at 9")
    page.evaluate("size => { document.documentElement.style.fontSize = size }", text)
    of_page = page.locator(".source-line > span").last
    expect(of_page).to_have_text("page 6-14")
    expect(page.locator(".act")).to_be_in_viewport(ratio=1)
    cut = of_page.evaluate("span => span.scrollWidth > span.clientWidth + 1")
    wide = page.evaluate(f"document.documentElement.scrollWidth > {width}")
    assert (cut, wide) == (False, False)
