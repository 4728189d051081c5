"""What a thing is said to be is changed from its record; what it was before stays readable."""

import re
from collections.abc import Callable
from typing import Any

from garage import Garage
from journeys.bench_scene import BAG, BOLTS, HEAD, KIND, WRENCH, bag, bench_drafts, keep
from journeys.hands import Hand, act
from journeys.test_two_at_one_joint import pair, synced
from playwright.sync_api import Browser, Page, expect

Opener = Callable[..., Page]
THEIRS = re.compile("bench phone|desk computer")
BENCH = [*bench_drafts(), *bag()]


def press(page: Page, name: str) -> None:
    hand = Hand(page)
    hand.settle()
    hand.press(page.get_by_role("button", name=name).or_(page.get_by_role("link", name=name)).first)


def fields(page: Page, about: str) -> dict[str, Any]:
    found: dict[str, Any] = page.evaluate(
        """async about => { const { openStore } = await import('/store/index.js');
        const store = window.benchStore ?? (window.benchStore = await openStore());
        const { fields } = (await store.partSlice(about)).subject(about);
        return Object.fromEntries(Object.entries(fields).map(([name, one]) => [name, one.value]));
        }""",
        about,
    )
    return found


def test_a_part_is_renamed_and_described_from_its_record(open_bench: Opener) -> None:
    page = open_bench(BENCH, f"/part/{BOLTS}")
    press(page, "Edit")
    expect(page.locator(".act")).to_contain_text("nothing is changed yet")
    expect(page.locator(".act")).to_be_disabled()
    page.get_by_label("Name").fill("Head bolts, long")
    page.get_by_label("Place there, or where bought").fill("bought new")
    page.get_by_label("Place on the engine").fill("cylinder head")
    page.get_by_label("Thread").fill("M11×1.5")
    press(page, "Only once")
    press(page, "One less")
    page.get_by_label("Note").fill("Oil under the heads")
    act(page)
    expect(page.get_by_role("heading", level=1)).to_have_text("Head bolts, long")
    for words in ("bought new", "M11×1.5", "Only once", "Oil under the heads", "13 pieces"):
        expect(page.get_by_text(words).first).to_be_visible()
    page.locator(".fold summary").click()
    expect(page.get_by_text("Name was Head bolts M11")).to_be_visible()
    expect(page.get_by_text("How many was 14")).to_be_visible()


def test_a_half_done_edit_comes_back_and_says_only_what_changed(open_bench: Opener) -> None:
    page = open_bench(BENCH, f"/edit/{HEAD}")
    page.get_by_label("Name").fill("Head, skimmed")
    page.reload()
    expect(page.get_by_label("Name")).to_have_value("Head, skimmed")
    keep(page, [{"heading": "part", "about": HEAD, "body": {"fields": {"note": "0.2 mm off"}}}])
    act(page)
    expect(page.get_by_role("heading", level=1)).to_have_text("Head, skimmed")
    assert fields(page, HEAD)["note"] == "0.2 mm off"


def test_a_word_taken_out_is_empty_from_then_on(open_bench: Opener) -> None:
    noted = {"heading": "part", "about": HEAD, "body": {"fields": {"note": "cracked?"}}}
    page = open_bench([*BENCH, noted], f"/edit/{HEAD}")
    page.get_by_label("Note").fill("")
    act(page)
    expect(page.get_by_role("heading", level=1)).to_be_visible()
    assert fields(page, HEAD)["note"] is None
    page.locator(".fold summary").click()
    expect(page.get_by_text("Note was cracked?")).to_be_visible()


def test_a_holder_changes_name_and_form(open_bench: Opener) -> None:
    page = open_bench(BENCH, f"/holder/{BAG}")
    press(page, "Edit")
    page.get_by_label("Name").fill("Pushrod tray")
    press(page, "Tray")
    act(page)
    expect(page.get_by_role("heading", level=1)).to_have_text("Pushrod tray")
    assert fields(page, BAG)["form"] == "tray"


def test_a_kind_is_renamed_from_one_of_its_parts(open_bench: Opener) -> None:
    of_kind = {"heading": "part", "about": HEAD, "body": {"fields": {"kind": KIND}}}
    page = open_bench([*BENCH, of_kind], f"/edit/{HEAD}")
    press(page, "Edit its kind")
    expect(page.get_by_role("heading", level=1)).to_have_text("Kind")
    page.get_by_label("Name", exact=True).fill("pushrod, hollow")
    act(page)
    expect(page.locator(".act")).to_contain_text("Kept.")
    assert fields(page, KIND)["name"] == "pushrod, hollow"


def test_a_wrench_shows_what_was_written_of_it_before(workshop: Garage, open_bench: Opener) -> None:
    page = open_bench(BENCH, f"/wrench/{WRENCH}/edit")
    page.get_by_label("Name").fill("Long wrench")
    act(page)
    expect(page.get_by_role("heading", level=1)).to_have_text("Long wrench")
    page.goto(f"{workshop.address}/wrench/{WRENCH}/edit")
    page.locator(".fold summary").click()
    expect(page.get_by_text("Name was Long click wrench")).to_be_visible()


def test_who_and_which_device_stand_beside_what_another_phone_said(
    workshop: Garage, chrome: Browser
) -> None:
    mine, theirs = (chrome.new_context() for _ in range(2))
    try:
        second = pair(theirs, workshop)
        first = pair(mine, workshop)
        keep(second, [*BENCH, {"heading": "note", "about": HEAD, "body": {"text": "Skim it"}}])
        second.goto(f"{workshop.address}/part/{HEAD}")
        said = second.locator(".notes li", has_text="Skim it")
        expect(said).to_be_visible()
        expect(said).not_to_contain_text(THEIRS)
        synced(second)
        synced(first)
        first.goto(f"{workshop.address}/part/{HEAD}")
        expect(first.locator(".notes li", has_text="Skim it")).to_contain_text(THEIRS)
    finally:
        mine.close()
        theirs.close()
