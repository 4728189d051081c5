"""A photo on the glass: closer, pointed at, beside another one, offline and at every size."""

import re
from collections.abc import Iterator
from pathlib import Path

import pytest
from journeys.demo_phone import SIZES, DemoPhone, demo_phone, size
from journeys.hands import Hand, Point, act, press
from journeys.photo_scene import AWAY, BARE, KIND, PART, facts, photographed, picture
from playwright.sync_api import Locator, Page, expect

PHOTOS: list[str] = []
PLACES = {
    "photo": "/photo/{0}?about={part}",
    "two": "/photo/{1}?about={part}&with={2}",
    "coming": "/photo/{away}?about={part}",
    "example": "/photo/{3}?about={kind}",
    "inspect": "/inspect/{part}",
    "edit": "/edit/{bare}",
}
SHARE = re.compile(r"0\.[0-9]{4}|1\.0000")


@pytest.fixture(scope="module")
def phone(tmp_path_factory: pytest.TempPathFactory) -> Iterator[DemoPhone]:
    with demo_phone(tmp_path_factory.mktemp("photos")) as one:
        PHOTOS[:] = photographed(one)
        one.sent()
        yield one


def seen(phone: DemoPhone, screen: str) -> Page:
    path = PLACES[screen].format(*PHOTOS, part=PART, kind=KIND, away=AWAY, bare=BARE)
    phone.open(path)
    return phone.page


def times(page: Page) -> float:
    """How many times as large the photo is drawn."""
    return float(page.locator(".zoom .fig").inner_text().removesuffix("×"))


def middle(place: Locator, across: float = 0, down: float = 0, id_: int = 0) -> Point:
    """A point so many px from the middle of a place."""
    box = place.bounding_box()
    assert box
    x, y = box["x"] + box["width"] / 2 + across, box["y"] + box["height"] / 2 + down
    return {"x": x, "y": y, "id": id_}


@pytest.mark.parametrize("at", SIZES)
@pytest.mark.parametrize("screen", PLACES)
def test_a_screen_of_photos_holds_in_every_theme_and_with_larger_and_longer_words(
    phone: DemoPhone, screen: str, at: str
) -> None:
    size(phone, at)
    seen(phone, screen)
    jumps = phone.jumps()
    assert phone.wrong(at, jumps) == {}


@pytest.mark.parametrize("at", SIZES)
def test_drawing_an_arrow_holds_at_every_size(phone: DemoPhone, at: str) -> None:
    size(phone, at)
    page = seen(phone, "photo")
    page.get_by_role("button", name="Mark with an arrow").click()
    page.get_by_label("What it points at").wait_for()
    assert phone.wrong(at, []) == {}
    page.get_by_role("button", name="Leave it").click()


@pytest.mark.parametrize("at", SIZES)
def test_photos_of_good_and_not_good_hold_in_the_form_of_a_kind(phone: DemoPhone, at: str) -> None:
    size(phone, at)
    phone.open(f"/kind/{KIND}")
    phone.page.locator(".kind-rows summary").first.click()
    phone.page.locator(".example img").nth(1).wait_for()
    assert phone.wrong(at, []) == {}


def test_a_photo_opens_from_its_record_and_back_closes_it(phone: DemoPhone) -> None:
    size(phone, "phone")
    phone.open(f"/part/{PART}")
    phone.page.context.set_offline(True)
    try:
        phone.page.get_by_role("link", name="Open large: ball end under the lamp").click()
        expect(phone.page.get_by_role("img", name="Photo of Pushrod 3.")).to_be_visible()
        expect(phone.page.locator(".where")).to_contain_text("ball end under the lamp")
        phone.page.keyboard.press("Escape")
        expect(phone.page.get_by_role("heading", name="What has been found")).to_be_visible()
    finally:
        phone.page.context.set_offline(False)


def test_one_thumb_and_a_keyboard_zoom_move_and_show_the_whole_picture(phone: DemoPhone) -> None:
    size(phone, "phone")
    page = seen(phone, "photo")
    press(page, "Closer")
    press(page, "Closer")
    assert times(page) > 2
    page.keyboard.press("+")
    assert times(page) > 3
    before = page.locator(".pane img").bounding_box()
    page.keyboard.press("ArrowRight")
    expect(page.locator(".pane img")).not_to_have_attribute("style", re.compile("translate\\(0px"))
    after = page.locator(".pane img").bounding_box()
    assert before
    assert after
    assert after["x"] < before["x"]
    page.keyboard.press("0")
    assert times(page) == 1
    page.keyboard.press("-")
    assert times(page) == 1


def test_two_fingers_pinch_and_a_double_tap_go_closer_and_no_finger_is_a_drop(
    phone: DemoPhone,
) -> None:
    size(phone, "phone")
    page = seen(phone, "photo")
    hand, pane = Hand(page), page.locator(".pane")
    for _ in range(3):
        hand.down(middle(pane, -30), middle(pane, 30, id_=1))
        hand.slide(middle(pane, -90), middle(pane, 90, id_=1))
        hand.up()
    assert times(page) == 8
    wet = "async () => (await import('/app/glass.js')).glass.troubles.length"
    assert page.evaluate(wet) == 0
    press(page, "Whole picture 8 ×")
    for _ in range(2):
        hand.down(middle(pane))
        hand.up()
    assert times(page) > 2


def test_an_arrow_is_dragged_from_tail_to_head_kept_offline_and_struck_out(
    phone: DemoPhone,
) -> None:
    size(phone, "phone")
    page = seen(phone, "photo")
    page.context.set_offline(True)
    try:
        press(page, "Mark with an arrow")
        pane, hand = page.locator(".pane"), Hand(page)
        hand.down(middle(pane, -80, 60))
        hand.slide(middle(pane, -40, 30))
        hand.slide(middle(pane))
        hand.up()
        page.get_by_label("What it points at").fill("crack at the root")
        act(page)
        expect(page.locator(".notes")).to_contain_text("crack at the root")
    finally:
        page.context.set_offline(False)
    (arrow,) = facts(phone, PART, "pointed")
    body = arrow["body"]
    assert body["photo"] == PHOTOS[0]
    assert body["to"] == ["0.5000", "0.5000"]
    assert all(SHARE.fullmatch(share) for share in body["from"])
    assert float(body["from"][0]) < 0.5 < float(body["from"][1])
    assert body["note"] == "crack at the root"
    expect(page.get_by_role("img", name="1 arrow: 1 crack at the root")).to_be_visible()
    page.get_by_role("link", name="Strike out: Arrow 1 crack at the root").click()
    press(page, "Not so any more")
    act(page)
    expect(page.locator(".notes .out")).to_contain_text("crack at the root")
    expect(page.locator(".arrows circle")).to_have_count(0)


def test_two_taps_or_the_arrow_keys_draw_an_arrow_too(phone: DemoPhone) -> None:
    size(phone, "phone")
    page = seen(phone, "example")
    press(page, "Mark with an arrow")
    pane, hand = page.locator(".pane"), Hand(page)
    for across in (-60, 40):
        hand.down(middle(pane, across))
        hand.up()
    act(page)
    expect(page.locator(".arrows .core")).to_have_count(1)
    page.get_by_role("button", name="Mark with an arrow").focus()
    page.keyboard.press("Enter")
    page.keyboard.press("ArrowRight")
    page.keyboard.press("Shift+ArrowUp")
    act(page)
    expect(page.locator(".arrows .core")).to_have_count(2)
    tapped, typed = (one["body"] for one in facts(phone, KIND, "pointed"))
    assert tapped["from"][1] == tapped["to"][1] == "0.5000"
    assert typed["to"] == ["0.5200", "0.5000"]
    assert typed["from"] == ["0.3800", "0.6000"]


def test_a_half_drawn_arrow_is_still_there_after_the_page_was_lost(phone: DemoPhone) -> None:
    size(phone, "phone")
    page = seen(phone, "photo")
    page.get_by_role("button", name="Mark with an arrow").click()
    page.keyboard.press("ArrowRight")
    page.get_by_label("What it points at").fill("scratch")
    phone.page.reload()
    phone.settle()
    expect(page.locator(".arrows .core")).to_have_count(1)
    expect(page.get_by_label("What it points at")).to_have_value("scratch")
    page.locator("h1").focus()
    page.keyboard.press("Escape")
    expect(page.get_by_role("button", name="Mark with an arrow")).to_be_visible()


def test_a_photo_that_is_not_here_yet_says_so_and_blocks_nothing(phone: DemoPhone) -> None:
    size(phone, "phone")
    page = seen(phone, "coming")
    expect(page.locator(".pane")).to_contain_text("Still on its way")
    press(page, "Compare")
    expect(page.get_by_role("dialog")).to_contain_text("Good: Ends even and round?")
    page.keyboard.press("Escape")


def test_two_photos_are_looked_at_by_one_zoom_or_each_by_its_own(phone: DemoPhone) -> None:
    size(phone, "phone")
    page = seen(phone, "photo")
    press(page, "Compare")
    Hand(page).settle()
    page.get_by_role("dialog").get_by_role(
        "button", name="Good: Ends even and round?", exact=True
    ).click()
    expect(page.locator(".two .pane img")).to_have_count(2)
    one, other = (page.locator(".two .pane").nth(n).bounding_box() for n in range(2))
    assert one
    assert other
    assert other["y"] > one["y"] + one["height"]
    press(page, "Closer")
    assert scales(page) == ["1.5", "1.5"]
    press(page, "Zoom both")
    page.locator(".two .pane").nth(1).focus()
    page.keyboard.press("+")
    assert scales(page) == ["1.5", "2.25"]
    size(phone, "desk")
    one, other = (page.locator(".two .pane").nth(n).bounding_box() for n in range(2))
    assert one
    assert other
    assert other["x"] > one["x"] + one["width"]
    size(phone, "phone")
    press(page, "Only one")
    expect(page.locator(".pane img")).to_have_count(1)


def scales(page: Page) -> list[str]:
    style = "all => all.map(one => /scale\\(([0-9.]+)\\)/.exec(one.style.transform)[1])"
    found: list[str] = page.locator(".pane img").evaluate_all(style)
    return found


def test_a_kind_is_given_a_photo_of_its_own_and_the_inspection_shows_it(
    phone: DemoPhone, tmp_path: Path
) -> None:
    size(phone, "phone")
    file = tmp_path / "bent.jpg"
    file.write_bytes(picture(7, 3000, 2000))
    phone.open(f"/kind/{KIND}")
    phone.page.locator(".kind-rows summary").filter(has_text="Straight?").click()
    phone.page.get_by_label("Not good: Straight?").set_input_files(file)
    phone.page.get_by_role("link", name="Open large: Not good: Straight?").wait_for()
    act(phone.page)
    expect(phone.page.locator(".act")).to_contain_text("Kept.")
    page = seen(phone, "inspect")
    for side in ("Good", "Not good"):
        page.get_by_role("link", name=f"Open large: {side}: Ends even and round?").wait_for()
    ends = page.get_by_role("group", name="Ends even and round?")
    Hand(page).press(ends.get_by_role("button", name="Yes"))
    page.get_by_role("link", name="Open large: Not good: Straight?").click()
    expect(page.locator(".where")).to_have_text("Not good: Straight?")
    expect(page.locator(".pane img")).to_be_visible()
    rows = "return (await store.allOf('kind')).subject(given).fields.criteria.value"
    straight = phone.store(rows, KIND)[1]
    assert re.fullmatch("[0-9a-f]{64}", straight["bad_photo"])
    assert "good_photo" not in straight


def test_a_part_without_a_kind_takes_a_ready_one_where_it_is_edited(phone: DemoPhone) -> None:
    size(phone, "phone")
    page = seen(phone, "edit")
    press(page, "Start from: Flywheel")
    act(page)
    expect(page.get_by_role("link", name="Kind: Flywheel")).to_be_visible()
    kind = phone.store("return (await store.partSlice(given)).subject(given).fields.kind", BARE)
    criteria = "return (await store.allOf('kind')).subject(given).fields.criteria.value.length"
    assert phone.store(criteria, kind["value"]) > 1
