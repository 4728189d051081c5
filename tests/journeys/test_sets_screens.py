"""The screens of sets with 32 invented pushrods: at every size, in every theme."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from journeys import rods
from journeys.demo_phone import SIZES, DemoPhone, demo_phone, size
from journeys.hands import press_in
from playwright.sync_api import expect

SPOKEN = Path(__file__).parent / "spoken"
SET = "22222222-0000-7000-8000-0000000000ff"
PLACES = {
    "sets": "/sets",
    "more": "/sets?more=1",
    "choose": f"/set/new?kind={rods.KIND}",
    "set": f"/set/{SET}",
}
MADE = {
    "heading": "set",
    "about": SET,
    "body": {
        "fields": {
            "name": "2 pushrods",
            "kind": rods.KIND,
            "pieces": [{"part": rods.rod(n), "place": str(n)} for n in (1, 2)],
            "spares": [rods.rod(3)],
            "measures": [{"measure": "m1", "weight": "1"}],
            "says": "These 2 span 0.01 mm.",
            "invented": True,
        }
    },
}


@pytest.fixture(scope="module")
def phone(tmp_path_factory: pytest.TempPathFactory) -> Iterator[DemoPhone]:
    with demo_phone(tmp_path_factory.mktemp("sets")) as one:
        one.store(rods.KEEP, [*rods.bag(), *rods.inspected(), MADE])
        one.sent()
        yield one


@pytest.mark.parametrize("at", SIZES)
@pytest.mark.parametrize("screen", PLACES)
def test_a_screen_of_sets_holds_in_every_theme_and_with_larger_and_longer_words(
    phone: DemoPhone, screen: str, at: str
) -> None:
    size(phone, at)
    phone.open(PLACES[screen])
    jumps = phone.jumps()
    if screen == "choose":
        phone.page.locator(".set-pieces .row").nth(1).click()
        phone.page.locator(".set-wish").wait_for()
    assert phone.wrong(at, jumps) == {}


def test_kinds_that_no_set_can_be_chosen_from_lie_behind_one_row(phone: DemoPhone) -> None:
    size(phone, "phone")
    empty = {"name": "Ring without pieces", "plural": "rings without pieces"}
    about = "22222222-0000-7000-8000-0000000000fe"
    phone.store(rods.KEEP, [{"heading": "kind", "about": about, "body": {"fields": empty}}])
    phone.open(PLACES["sets"])
    rows = phone.page.locator("main .row")
    expect(rows.filter(has_text="More kinds")).to_be_visible()
    expect(rows.filter(has_text="pushrod")).not_to_have_count(0)
    expect(rows.filter(has_text="Ring without pieces")).to_have_count(0)
    expect(rows.filter(has_text="no piece of it yet")).to_have_count(0)
    press_in(phone.page, ".row", "More kinds")
    expect(rows.filter(has_text="Ring without pieces")).to_be_visible()
    expect(phone.page.get_by_role("heading", level=1)).to_have_text("More kinds")


@pytest.mark.parametrize("screen", ["choose", "set"])
def test_a_screen_of_sets_is_read_aloud_as_kept(phone: DemoPhone, screen: str) -> None:
    size(phone, "phone")
    phone.open(PLACES[screen])
    kept = (SPOKEN / f"sets_{screen}.txt").read_text("utf-8")
    assert phone.aloud() == kept


def says(phone: DemoPhone) -> str:
    return phone.page.locator(".set-says").inner_text()


def test_a_piece_left_out_or_pinned_is_counted_at_once_and_says_what_it_costs(
    phone: DemoPhone,
) -> None:
    size(phone, "phone")
    phone.open(PLACES["choose"])
    free = says(phone)
    press_in(phone.page, ".set-pieces .row", "spare 6")
    expect(phone.page.locator(".set-wish")).to_contain_text("With it in they span")
    press_in(phone.page, ".set-wish button", "Must be in")
    expect(phone.page.locator(".set-says")).not_to_have_text(free)
    expect(phone.page.locator("main")).to_contain_text("What you asked for costs")
    press_in(phone.page, ".set-wish button", "Let it be chosen")
    expect(phone.page.locator(".set-says")).to_have_text(free)


def test_two_measures_are_weighed_and_drawn_against_each_other(phone: DemoPhone) -> None:
    phone.open(PLACES["choose"])
    press_in(phone.page, "fieldset:has(legend:text-is('Weight')) button", "Counts")
    expect(phone.page.locator(".set-says")).to_contain_text("mm on Length and")
    drawn = phone.page.get_by_role("img", name="pieces by Length and Weight")
    expect(drawn).to_be_visible()
    press_in(phone.page, "fieldset:has(legend:text-is('Weight')) button", "Leave out")
    expect(phone.page.locator(".set-says")).not_to_contain_text("Weight")


def test_a_piece_goes_to_another_place_by_two_taps(phone: DemoPhone) -> None:
    phone.open(PLACES["choose"])
    seats = phone.page.locator(".set-places .says b")
    first, third = seats.nth(0).inner_text(), seats.nth(2).inner_text()
    press_in(phone.page, ".set-places .row", first)
    press_in(phone.page, ".set-places .row", third)
    expect(seats.nth(2)).to_have_text(first)
    expect(seats.nth(0)).to_have_text(third)


def test_another_place_than_its_own_is_held_back_until_somebody_says_why(
    phone: DemoPhone,
) -> None:
    own = [
        {"heading": "kind", "about": rods.KIND, "body": {"fields": {"own_place": True}}},
        {"heading": "part", "about": rods.rod(9), "body": {"fields": {"from": "Lobe 7"}}},
    ]
    phone.store(rods.KEEP, own)
    phone.open(PLACES["choose"])
    seat = phone.page.locator(".set-places .row").filter(has_text="Pushrod 9").first
    expect(seat).to_contain_text("Lobe 7")
    expect(seat).to_contain_text("its own place")
    press_in(phone.page, ".set-places .row", "Pushrod 9")
    press_in(phone.page, ".set-places .row", "Pushrod 10")
    expect(phone.page.locator(".act")).to_be_disabled()
    phone.page.get_by_label("Why elsewhere").fill("new camshaft")
    expect(phone.page.locator(".act")).to_be_enabled()


def test_a_spare_left_as_it_is_lies_on_the_shelf_under_its_own_verdict(phone: DemoPhone) -> None:
    phone.open(f"/shelf?kind={rods.KIND}")
    row = phone.page.locator("main .row").filter(has_text="Pushrod 3").first
    expect(row).to_contain_text("use · next best after the set “2 pushrods”, number 1")
    expect(row).not_to_contain_text("spare")


VERDICT = """
const part = (await store.allOf('part')).subject(given);
const stands = (one) => one.heading === 'verdict' && one.stands;
return part.facts.filter(stands).map((one) => one.body.verdict);
"""


def test_a_set_struck_out_frees_its_pieces(phone: DemoPhone) -> None:
    spare = {"verdict": "spare", "reason": "spare 1 of the set 2 pushrods"}
    after = phone.store(VERDICT.replace("one.body.verdict", "one.id"), rods.rod(3))
    ranked = {"heading": "verdict", "about": rods.rod(3), "after": after, "body": spare}
    phone.store(rods.KEEP, [ranked])
    assert phone.store(VERDICT, rods.rod(3)) == ["spare"]
    phone.open(PLACES["choose"])
    expect(phone.page.locator(".set-off")).to_contain_text("in a set: 2 pushrods")
    phone.open(PLACES["set"])
    press_in(phone.page, "a", "Strike out the set")
    press_in(phone.page, ".chips button", "by mistake")
    press_in(phone.page, ".act", "Strike out the set")
    expect(phone.page.locator("main")).to_contain_text("This set was struck out")
    phone.open(PLACES["choose"])
    expect(phone.page.locator(".set-off")).not_to_contain_text("in a set")
    assert phone.store(VERDICT, rods.rod(3)) == ["use"]
