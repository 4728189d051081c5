"""A torque run from Begin to Done: every tap an entry, every doubt told, nothing lost."""

from collections.abc import Callable
from typing import Any

import pytest
from journeys.bench_scene import (
    BOLTS,
    HEAD,
    JOINT,
    bench_drafts,
    half_way,
    judged,
    keep,
    kept,
    programme,
    pulls,
)
from journeys.hands import Hand
from playwright.sync_api import Page, expect

Opener = Callable[..., Page]
ONE_PASS = [
    {"id": "p0", "how": "hand"},
    {"id": "p1", "how": "torque", "values": [{"value": "45", "unit": "lbf·ft"}]},
]
UNSOURCED = (
    "Warning. No source is written beside 45 lbf·ft. A wrong torque can break a fastener or ruin "
    "the engine. Compare it with the service manual."
)


def press(page: Page, hand: Hand, name: str) -> None:
    hand.settle()
    hand.press(page.get_by_role("button", name=name).or_(page.get_by_role("link", name=name)).first)


def confirm(page: Page, hand: Hand, number: int) -> None:
    expect(page.locator(".act")).to_contain_text(f"Confirm {number}")
    hand.settle()
    hand.press(page.locator(".act"))


def go_on(page: Page, hand: Hand) -> None:
    expect(page.locator(".act")).to_contain_text("Go on at 9")
    hand.settle()
    hand.press(page.locator(".act"))
    expect(page.locator(".act")).to_contain_text("Confirm 9")


def test_a_joint_goes_from_begin_to_done(open_bench: Opener) -> None:
    page = open_bench(bench_drafts(4, programme=programme(4, passes=ONE_PASS)))
    hand = Hand(page)
    press(page, hand, "Begin")
    for number in (1, 2, 3):
        confirm(page, hand, number)
    press(page, hand, "All the rest")
    expect(page.get_by_text("All 4 turned in by hand.")).to_be_visible()
    assert kept(page, "pull")[-1]["body"]["together"] is True
    press(page, hand, "Pass 1: 45 lbf·ft")
    for number in (1, 2, 3, 4):
        hand.pass_time(2000)
        confirm(page, hand, number)
    expect(page.get_by_text("All 4 done.")).to_be_visible()
    expect(page.locator(".paint-edge")).to_have_count(4)
    last = kept(page, "pull")[-1]["body"]
    assert last["target"] == {"value": "45", "unit": "lbf·ft"}
    assert last["lubricant"] == "oiled"
    press(page, hand, "Done")
    expect(page.get_by_text("All 4 done.")).to_be_hidden()


def test_it_says_where_it_stopped_and_goes_on_there(open_bench: Opener) -> None:
    page = open_bench(half_way())
    hand = Hand(page)
    expect(page.get_by_text("Last: 8. Touch it before you go on.")).to_be_visible()
    press(page, hand, "Touched 8")
    expect(page.get_by_text("8 is checked")).to_be_visible()
    assert [fact["body"]["fastener"] for fact in kept(page, "touch")] == ["f8"]
    go_on(page, hand)
    expect(page.locator(".pull .big")).to_have_text("45")
    expect(page.locator(".pull .other")).to_have_text("61.0 N·m")
    page.reload()
    go_on(page, hand)


def test_a_struck_out_pull_comes_back_after_the_last_or_now(open_bench: Opener) -> None:
    page = open_bench(half_way())
    hand = Hand(page)
    go_on(page, hand)
    press(page, hand, "Strike out")
    press(page, hand, "Socket slipped")
    press(page, hand, "Strike out 8")
    expect(page.get_by_text("8 is struck out. It comes back after 14.")).to_be_visible()
    expect(page.locator(".out-h")).to_have_count(1)
    struck = [fact["struck"] for fact in kept(page, "pull") if fact["struck"]]
    assert [strike["reason"] for strike in struck] == ["Socket slipped"]
    press(page, hand, "Now")
    confirm(page, hand, 8)
    confirm(page, hand, 9)


def test_another_fastener_is_told_to_be_out_of_order_and_kept_if_wanted(
    open_bench: Opener,
) -> None:
    page = open_bench(half_way())
    hand = Hand(page)
    go_on(page, hand)
    page.locator("a.drawing-door").click()
    press(page, hand, "Bolt 12, to do")
    expect(page.get_by_text("Out of order: 9 comes first.")).to_be_visible()
    press(page, hand, "Go to 12")
    expect(page.get_by_text("Out of order: 12 before 9.")).to_be_visible()
    confirm(page, hand, 12)
    expect(page.locator(".caption")).to_have_text("Bolt 12: out of order. It counts.")
    assert page.evaluate("felt.buzzes.at(-1)") == "[80,80,80]"
    confirm(page, hand, 9)


def test_a_pass_in_doubt_stays_open_until_it_is_accepted_with_a_reason(open_bench: Opener) -> None:
    reading = {"value": "60", "unit": "lbf·ft"}
    page = open_bench(
        [*half_way(), *pulls("p2", range(9, 14)), *pulls("p2", [14], reading=reading)]
    )
    hand = Hand(page)
    press(page, hand, "Go on")
    expect(page.get_by_role("heading", name="14 is open")).to_be_visible()
    press(page, hand, "Accept")
    expect(page.locator(".act")).to_be_disabled()
    press(page, hand, "Checked with another wrench")
    press(page, hand, "Accept 14")
    expect(page.get_by_text("Pass 2 done. 14 of 14.")).to_be_visible()
    expect(page.locator(".next-value")).to_contain_text("85")
    assert kept(page, "accept")[0]["body"]["reason"] == "Checked with another wrench"


def test_the_next_pass_wants_a_reason_while_this_one_is_not_whole(open_bench: Opener) -> None:
    reading = {"value": "60", "unit": "lbf·ft"}
    page = open_bench(
        [*half_way(), *pulls("p2", range(9, 14)), *pulls("p2", [14], reading=reading)]
    )
    hand = Hand(page)
    press(page, hand, "Go on")
    press(page, hand, "Next pass")
    press(page, hand, "Comes later, by plan")
    press(page, hand, "Next pass")
    expect(page.locator(".passes .now")).to_contain_text("85")
    assert kept(page, "onward")[0]["body"] | {"run": ""} == {
        "run": "", "pass": "p2", "reason": "Comes later, by plan",
    }  # fmt: skip


def test_a_value_without_source_is_warned_of_once_for_each_pass_and_value(
    open_bench: Opener,
) -> None:
    page = open_bench([*half_way(), *bench_drafts(14, programme=programme(14, source=None))[-1:]])
    hand = Hand(page)
    press(page, hand, "Go on at 9")
    expect(page.locator(".caution.warning")).to_have_text(UNSOURCED)
    press(page, hand, "Go on unsourced")
    expect(page.locator(".pull .quiet-head")).to_have_text("unsourced")
    confirm(page, hand, 9)
    confirm(page, hand, 10)
    assert len(kept(page, "unsourced")) == 1


@pytest.mark.parametrize("part", [HEAD, BOLTS])
def test_a_scrapped_part_holds_the_joint_back_until_overruled(
    open_bench: Opener, part: str
) -> None:
    drafts = [one for one in bench_drafts() if one["about"] != part or one["heading"] != "verdict"]
    page = open_bench([*drafts, judged(part, "scrap")])
    hand = Hand(page)
    expect(page.locator(".caution.danger")).to_contain_text("Danger.")
    press(page, hand, "Held back")
    assert kept(page, "begin") == []
    page.locator("#overrule").fill("only a trial fit")
    press(page, hand, "Begin")
    expect(page.locator(".act")).to_contain_text("Confirm 1")
    assert kept(page, "begin")[0]["body"]["overruled"] == "only a trial fit"


def test_a_part_scrapped_meanwhile_holds_a_running_joint_back(open_bench: Opener) -> None:
    page = open_bench(half_way())
    hand = Hand(page)
    go_on(page, hand)
    standing = kept(page, "verdict", HEAD)[0]["id"]
    keep(page, [{**judged(HEAD, "scrap"), "after": [standing]}])
    expect(
        page.get_by_text("Cylinder head is scrap. Put another one in its place.")
    ).to_be_visible()
    expect(page.locator(".act")).to_be_disabled()


def test_nothing_counts_as_kept_while_the_phone_is_full(open_bench: Opener) -> None:
    page = open_bench(half_way())
    hand = Hand(page)
    go_on(page, hand)
    full: dict[str, Any] = {"pulls": len(kept(page, "pull"))}
    page.evaluate(
        """() => { globalThis.put = IDBObjectStore.prototype.put;
        IDBObjectStore.prototype.put = () => {
          throw new DOMException('full', 'QuotaExceededError') } }"""
    )
    confirm(page, hand, 9)
    panel = page.get_by_role("alertdialog")
    expect(panel).to_contain_text("Not kept: the phone is full. Free some room, then press again.")
    expect(page.locator("[aria-live=assertive]")).to_contain_text("Not kept")
    page.evaluate("() => { IDBObjectStore.prototype.put = globalThis.put }")
    assert len(kept(page, "pull")) == full["pulls"]
    hand.settle()
    hand.press(panel.get_by_role("button", name="Try again"))
    expect(panel).to_be_hidden()
    expect(page.locator(".act")).to_contain_text("Confirm 10")
    assert len(kept(page, "pull")) == full["pulls"] + 1


def test_loosening_all_voids_the_pulls_and_begins_again(open_bench: Opener) -> None:
    page = open_bench(half_way(), path=f"/joint/{JOINT}/strike/all?how=loosen")
    hand = Hand(page)
    press(page, hand, "Gasket must come out")
    press(page, hand, "Loosen all")
    expect(page.locator(".tell")).to_contain_text("Gasket must come out")
    expect(page.locator(".act")).to_contain_text("Begin")
    assert len(kept(page, "loosening")[0]["body"]["pulls"]) == 36
