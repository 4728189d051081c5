"""Inspection through a bag, and a blank label given to a new part: few taps, everything kept."""

from collections.abc import Callable
from pathlib import Path

import pytest
from garage import Garage
from journeys.bench_scene import BAG, PUSHRODS, bag, bench_drafts, judged, kept
from journeys.hands import Hand, press
from PIL import Image
from playwright.sync_api import Page, expect

Opener = Callable[..., Page]
BLANK = "7K3MQ2RJ"


@pytest.fixture
def lamp(open_bench: Opener) -> Page:
    """The first pushrod of the bag under the lamp."""
    page = open_bench(bag(), path=f"/inspect/{BAG}")
    expect(page.locator("h1")).to_contain_text("Pushrod 1 of 4")
    Hand(page).settle()
    return page


def answer(page: Page, *words: str) -> None:
    hand = Hand(page)
    for row, word in enumerate(words):
        hand.press(page.locator(".looks li").nth(row).get_by_role("button", name=word))
        hand.pass_time(170)


def chosen(page: Page) -> list[str]:
    return page.locator(".judge [aria-pressed=true]").all_inner_texts()


def test_nothing_is_preselected_unless_all_looks_are_good(lamp: Page) -> None:
    assert chosen(lamp) == []
    expect(lamp.locator(".act")).to_be_disabled()
    answer(lamp, "Yes", "Yes")
    assert chosen(lamp) == []
    answer(lamp, "Yes", "Yes", "Yes")
    expect(lamp.locator(".act")).to_contain_text("Keep: use")
    answer(lamp, "Yes", "No")
    expect(lamp.locator(".act")).to_be_disabled()
    assert chosen(lamp) == []


def test_good_pieces_go_by_with_their_looks_and_one_tap(lamp: Page) -> None:
    hand = Hand(lamp)
    answer(lamp, "Yes", "Yes", "Yes")
    expect(lamp.locator(".act")).to_contain_text("then pushrod 2")
    hand.settle()
    hand.press(lamp.locator(".act"))
    expect(lamp.locator("h1")).to_contain_text("Pushrod 2 of 4")
    assert chosen(lamp) == []
    (inspection,) = kept(lamp, "inspection", PUSHRODS[0])
    (verdict,) = kept(lamp, "verdict", PUSHRODS[0])
    assert inspection["body"]["looks"] == [{"criterion": f"c{n}", "good": True} for n in (1, 2, 3)]
    assert verdict["body"] == {"verdict": "use", "inspection": inspection["id"]}
    expect(lamp.locator(".pieces")).to_have_attribute(
        "aria-label", "1 use, 1 looked at, this is number 2, 2 to come"
    )


def test_a_verdict_takes_two_taps_and_its_reason_one_more(lamp: Page) -> None:
    press(lamp, "Scrap")
    press(lamp, "ball end flat")
    Hand(lamp).settle()
    Hand(lamp).press(lamp.locator(".act"))
    expect(lamp.locator("h1")).to_contain_text("Pushrod 2 of 4")
    (verdict,) = kept(lamp, "verdict", PUSHRODS[0])
    assert verdict["body"]["verdict"] == "scrap"
    assert verdict["body"]["reason"] == "ball end flat"
    press(lamp, "Back to the piece before")
    expect(lamp.locator(".tell")).to_have_text("Kept before: scrap, ball end flat.")
    press(lamp, "Use")
    Hand(lamp).settle()
    Hand(lamp).press(lamp.locator(".act"))
    expect(lamp.locator("h1")).to_contain_text("Pushrod 2 of 4")
    former, latter = kept(lamp, "verdict", PUSHRODS[0])
    assert latter["after"] == [former["id"]]
    assert (former["stands"], latter["stands"]) == (False, True)


def test_an_inspection_is_struck_out_with_the_verdict_it_gave(lamp: Page, workshop: Garage) -> None:
    answer(lamp, "Yes", "Yes", "Yes")
    Hand(lamp).settle()
    Hand(lamp).press(lamp.locator(".act"))
    expect(lamp.locator("h1")).to_contain_text("Pushrod 2 of 4")
    lamp.goto(f"{workshop.address}/part/{PUSHRODS[0]}")
    expect(lamp.locator(".id .verdict")).to_contain_text("Use")
    lamp.locator(".look .strike").click()
    expect(lamp.locator("main")).to_contain_text("Its verdict is struck out with it: Use.")
    press(lamp, "Wrong part")
    Hand(lamp).settle()
    Hand(lamp).press(lamp.locator(".act"))
    expect(lamp.locator(".id .verdict")).to_contain_text("No verdict yet")
    expect(lamp.locator(".act")).to_contain_text("Inspect")
    for heading in ("inspection", "verdict"):
        (fact,) = kept(lamp, heading, PUSHRODS[0])
        assert fact["struck"]["reason"] == "Wrong part"


def test_what_was_answered_is_still_there_after_the_page_was_lost(lamp: Page) -> None:
    answer(lamp, "Yes", "No")
    press(lamp, "Spare")
    lamp.reload()
    expect(lamp.locator(".act")).to_contain_text("Keep: spare")
    expect(lamp.locator(".looks [aria-pressed=true]")).to_have_count(2)
    assert kept(lamp, "inspection", PUSHRODS[0]) == []


def test_a_photo_is_turned_upright_and_reduced_and_kept_with_the_inspection(
    lamp: Page, tmp_path: Path
) -> None:
    turned = Image.Exif()
    turned[0x0112] = 6
    picture = tmp_path / "big.jpg"
    Image.effect_noise((3000, 2200), 90).convert("RGB").save(picture, quality=95, exif=turned)
    assert picture.stat().st_size > 2 * 1024 * 1024
    lamp.locator(".extras input").set_input_files(picture, timeout=30_000)
    expect(lamp.locator(".shots img")).to_be_visible(timeout=20_000)
    press(lamp, "Machine")
    expect(lamp.locator(".act")).to_be_disabled()
    press(lamp, "wants polish")
    Hand(lamp).settle()
    Hand(lamp).press(lamp.locator(".act"))
    expect(lamp.locator("h1")).to_contain_text("Pushrod 2 of 4")
    (inspection,) = kept(lamp, "inspection", PUSHRODS[0])
    size = lamp.evaluate(
        """async sha => { const { openStore } = await import('/store/index.js');
        const photo = await (await openStore()).photo(sha);
        const { width, height } = await createImageBitmap(photo);
        return [photo.size <= 2 * 1024 * 1024, photo.type, width < height] }""",
        inspection["body"]["photos"][0]["photo"],
    )
    assert size == [True, "image/jpeg", True]


def test_the_last_piece_closes_the_bag_with_what_was_found(open_bench: Opener) -> None:
    verdicts = [judged(rod, "use") for rod in PUSHRODS[1:]]
    page = open_bench([*bag(), *verdicts], path=f"/inspect/{BAG}")
    press(page, "Spare")
    Hand(page).settle()
    Hand(page).press(page.locator(".act"))
    expect(page.locator("h1")).to_have_text("All looked at.")
    expect(page.locator(".summary")).to_contain_text("Use3")


def test_a_blank_label_becomes_a_part_in_five_taps_and_its_name(open_bench: Opener) -> None:
    page = open_bench(bench_drafts() + bag(), path=f"/new/{BLANK}")
    hand = Hand(page)
    taps = 0
    for name in ("Pushrod", "One more", "Bag of pushrods"):
        press(page, name)
        taps += 1
    page.get_by_label("Name").fill("Spare pushrods")
    hand.settle()
    hand.press(page.locator(".act"))
    taps += 1
    expect(page.locator("h1")).to_have_text("Spare pushrods")
    assert taps <= 5
    part = page.url.rsplit("/", 1)[1]
    assert [fact["body"]["in"] for fact in kept(page, "place", part)] == [BAG]
    expect(page.get_by_text("7K3M Q2RJ")).to_be_visible()


def test_a_part_moves_to_a_holder_chosen_by_name(open_bench: Opener) -> None:
    page = open_bench(bag() + bench_drafts(), path=f"/move/{PUSHRODS[0]}")
    press(page, "Choose a holder")
    page.get_by_label("Name of the holder").fill("bag")
    press(page, "Bag of pushrods")
    press(page, "Put here: Bag of pushrods")
    expect(page.locator("h1")).to_have_text("Pushrod 1")
    former, latter = kept(page, "place", PUSHRODS[0])
    assert latter["after"] == [former["id"]]
