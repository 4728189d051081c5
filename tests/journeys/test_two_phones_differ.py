"""Two paired phones at one joint that do not know of each other, and what a person then decides."""

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Any

import pytest
from garage import PHONE, Garage, garage
from journeys.bench_scene import (
    BOLTS,
    HEAD,
    JOINT,
    RUN,
    begun,
    bench_drafts,
    half_way,
    judged,
    keep,
    kept,
    pulls,
)
from journeys.hands import Hand
from journeys.test_run_states import main, press, to_turned, turning
from journeys.test_two_at_one_joint import pair, synced
from playwright.sync_api import Browser, Page, expect

OTHER_RUN = "11111111-0000-7000-8000-0000000000a2"


@dataclass
class Bench:
    """Two phones in one house; each holds only its own until it syncs."""

    mine: Page
    theirs: Page
    house: Garage

    def meet(self) -> None:
        """Both sync until each has what the other had."""
        for page in (self.theirs, self.mine, self.theirs):
            synced(page)

    def joint(self, page: Page) -> None:
        page.goto(f"{self.house.address}/joint/{JOINT}")


@pytest.fixture
def bench(chrome: Browser, tmp_path: Any) -> Iterator[Bench]:
    """A house of its own, because two phones of another test would know its joint."""
    contexts = [chrome.new_context(**PHONE) for _ in range(2)]
    with garage(tmp_path / "data") as house:
        mine, theirs = (pair(context, house) for context in contexts)
        yield Bench(mine, theirs, house)
        for context in contexts:
            context.close()


def loosening(*fasteners: str, pulled: list[str], reason: str) -> dict[str, Any]:
    body = {"run": RUN, "pulls": pulled, "fasteners": list(fasteners), "reason": reason}
    return {"heading": "loosening", "about": JOINT, "body": body}


def reasoned(page: Page, chip: str, act: str) -> None:
    """Choose a reason and keep it."""
    press(page, chip)
    main(page, act)


def test_of_two_runs_begun_apart_a_person_chooses_the_one_that_goes_on(bench: Bench) -> None:
    keep(bench.mine, [*bench_drafts(4), begun(), *pulls("p0", [1, 2])])
    synced(bench.mine)
    other = {**begun(), "body": {**begun()["body"], "run": OTHER_RUN}}
    keep(bench.theirs, [other, *pulls("p0", [3], run=OTHER_RUN)])
    bench.meet()
    bench.joint(bench.mine)
    ask = bench.mine.get_by_role("heading", name="Two devices began this joint.")
    expect(ask).to_be_visible()
    runs = bench.mine.locator(".asked button")
    expect(runs).to_have_count(2)
    expect(runs.filter(has_text="bench phone").or_(runs.filter(has_text="computer"))).to_have_count(
        1
    )
    first = kept(bench.mine, "begin")[0]["body"]["run"]
    hand = Hand(bench.mine)
    hand.settle()
    hand.press(runs.first)
    expect(ask).to_be_hidden()
    bench.meet()
    bench.joint(bench.theirs)
    expect(bench.theirs.get_by_text("Two devices began")).to_be_hidden()
    main(bench.theirs, "Go on")
    for page in (bench.mine, bench.theirs):
        struck = {one["body"]["run"]: bool(one["struck"]) for one in kept(page, "begin")}
        assert struck == {RUN: first != RUN, OTHER_RUN: first != OTHER_RUN}


@pytest.mark.parametrize("answer", ["It is tight", "It is loose"])
def test_a_pull_of_a_bolt_that_was_loosened_meanwhile_is_asked_about(
    bench: Bench, answer: str
) -> None:
    shared = keep(bench.mine, half_way())
    bench.meet()
    ninth = pulls("p2", [9])
    keep(bench.mine, ninth)
    before = [one["id"] for one in shared if one["body"].get("fastener") == "f9"]
    keep(bench.theirs, [loosening("f9", pulled=before, reason="Gasket slipped")])
    bench.meet()
    bench.joint(bench.mine)
    title = bench.mine.get_by_role("heading", name="9 was pulled on one device and loosened")
    expect(title).to_be_visible()
    press(bench.mine, answer)
    expect(title).to_be_hidden()
    bench.meet()
    bench.joint(bench.theirs)
    expect(bench.theirs.locator(".act")).to_be_visible()
    expect(bench.theirs.get_by_text("loosened on another")).to_be_hidden()
    counts = [[len(kept(one, what)) for what in ("accept", "loosening")]
              for one in (bench.mine, bench.theirs)]  # fmt: skip
    expected = [1, 1] if answer == "It is tight" else [0, 2]
    assert counts == [expected, expected]


def test_a_turned_bolt_is_replaced_through_its_own_inspection(bench: Bench) -> None:
    keep(bench.mine, turning())
    bench.joint(bench.mine)
    to_turned(bench.mine)
    main(bench.mine, "Yes, or not sure")
    press(bench.mine, "Replace")
    bench.mine.wait_for_url(f"**/inspect/{BOLTS}")
    press(bench.mine, "Scrap")
    press(bench.mine, "cracked")
    main(bench.mine, "Keep: scrap")
    bench.meet()
    assert kept(bench.theirs, "loosening")[0]["body"]["fasteners"] == ["f2"]
    assert kept(bench.theirs, "verdict", BOLTS)[-1]["body"]["verdict"] == "scrap"
    bench.joint(bench.theirs)
    expect(bench.theirs.locator(".caution.danger")).to_contain_text("Head bolts M11 is scrap")


def test_a_short_pull_is_accepted_with_a_reason_and_counts_on_both(bench: Bench) -> None:
    reading = {"value": "38", "unit": "lbf·ft"}
    keep(bench.mine, [*half_way(), *pulls("p2", [9], reading=reading)])
    bench.joint(bench.mine)
    main(bench.mine, "Go on")
    expect(bench.mine.get_by_text("9 is short: 38 lbf·ft.")).to_be_visible()
    press(bench.mine, "Accept")
    expect(bench.mine.locator(".act")).to_be_disabled()
    reasoned(bench.mine, "Checked with another wrench", "Accept 9")
    expect(bench.mine.get_by_text("9 is accepted: Checked with another wrench")).to_be_visible()
    bench.meet()
    bench.joint(bench.theirs)
    main(bench.theirs, "Go on at 10")


def test_the_next_pass_begins_with_a_reason_though_one_is_open(bench: Bench) -> None:
    short = {"value": "38", "unit": "lbf·ft"}
    keep(bench.mine, [*half_way(), *pulls("p2", [9], reading=short), *pulls("p2", range(10, 15))])
    bench.joint(bench.mine)
    main(bench.mine, "Go on")
    expect(bench.mine.get_by_role("heading", name="9 is open")).to_be_visible()
    press(bench.mine, "Next pass")
    reasoned(bench.mine, "No reach now", "Next pass")
    expect(bench.mine.locator(".act")).to_contain_text("Pass 3: 85 lbf·ft")
    bench.meet()
    assert kept(bench.theirs, "onward")[0]["body"]["reason"] == "No reach now"
    bench.joint(bench.theirs)
    main(bench.theirs, "Go on at 1")


def test_an_overruled_begin_says_so_to_the_end(bench: Bench) -> None:
    used = judged(HEAD, "use")
    keep(bench.mine, [judged(HEAD, "scrap"), *(one for one in bench_drafts(4) if one != used)])
    bench.joint(bench.mine)
    danger = bench.mine.locator(".caution.danger")
    expect(danger).to_contain_text("Cylinder head is scrap")
    main(bench.mine, "Held back")
    bench.mine.get_by_label("Why it may be bolted down").fill("Trial fit only")
    main(bench.mine, "Begin")
    expect(bench.mine.locator(".pull .big")).to_have_text("by hand")
    assert kept(bench.mine, "begin")[0]["body"]["overruled"] == "Trial fit only"
    every = range(1, 5)
    run = kept(bench.mine, "begin")[0]["body"]["run"]
    keep(bench.mine, pulls("p0", every, run=run, together=True))
    for pass_ in ("p1", "p2", "p3"):
        keep(bench.mine, pulls(pass_, every, run=run))
    bench.meet()
    bench.joint(bench.theirs)
    expect(bench.theirs.get_by_text("Done, overruled: Trial fit only")).to_be_visible()


def test_a_part_scrapped_by_the_other_phone_stops_the_run_when_the_word_arrives(
    bench: Bench,
) -> None:
    keep(bench.mine, half_way())
    bench.meet()
    bench.joint(bench.mine)
    main(bench.mine, "Go on at 9")
    expect(bench.mine.locator(".act")).to_contain_text("Confirm 9")
    standing = [one["id"] for one in kept(bench.theirs, "verdict", HEAD)]
    keep(bench.theirs, [{**judged(HEAD, "scrap"), "after": standing}])
    bench.meet()
    danger = bench.mine.locator(".caution.danger")
    expect(danger).to_contain_text("Cylinder head is scrap")
    expect(bench.mine.locator(".act", has_text="Confirm")).to_be_hidden()
    bench.mine.get_by_label("Why it may be bolted down").fill("The other head was meant")
    main(bench.mine, "Overrule")
    main(bench.mine, "Confirm 9")
    expect(bench.mine.locator(".act")).to_contain_text("Confirm 10")
