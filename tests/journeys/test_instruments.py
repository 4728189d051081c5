"""Wrenches and instruments: made, labelled, scanned, found, calibrated offline; at each size."""

from collections.abc import Iterator

import pytest
from journeys import tools_scene as made
from journeys.demo_phone import SIZES, DemoPhone, demo_phone, size, wrong_at
from journeys.hands import act, press, press_in
from playwright.sync_api import expect

CODES: list[str] = []
PLACES = {
    "list": "/wrenches",
    "instrument": f"/instrument/{made.GAUGE}",
    "odd one": f"/instrument/{made.ODD}",
    "wrench": f"/wrench/{made.WRENCH}",
    "calibrate": f"/calibrate/{made.GAUGE}",
    "edit": f"/instrument/{made.ODD}/edit",
    "new instrument": "/instrument/new",
    "new wrench": "/wrench/new",
    "labels of it": f"/label/{made.GAUGE}",
}


@pytest.fixture(scope="module")
def phone(tmp_path_factory: pytest.TempPathFactory) -> Iterator[DemoPhone]:
    with demo_phone(tmp_path_factory.mktemp("instruments")) as one:
        one.store(made.KEEP, made.scene())
        CODES[:] = one.store(made.LABEL, [made.WRENCH, made.GAUGE, None])
        one.sent()
        yield one


@pytest.mark.parametrize("at", SIZES)
@pytest.mark.parametrize("screen", PLACES)
def test_a_screen_of_the_instruments_holds_in_every_theme_and_with_larger_and_longer_words(
    phone: DemoPhone, screen: str, at: str
) -> None:
    assert wrong_at(phone, at, PLACES[screen]) == {}


def test_the_list_tells_two_groups_with_range_and_age(phone: DemoPhone) -> None:
    size(phone, "phone")
    phone.page.clock.set_fixed_time("2026-11-26T12:00:00Z")
    phone.open("/wrenches")
    row = phone.page.locator(".row", has_text="Half-inch click wrench")
    expect(row).to_contain_text("40 to 200\u00a0N·m · ±\u00a04\u00a0%")
    expect(row).to_contain_text("Last calibrated 2 years 9 months ago.")
    gauge = phone.page.locator(".row", has_text="Micrometer 50 to 75")
    expect(gauge).to_contain_text("±\u00a00.003\u00a0mm · Calibration was due 12 Feb 2026.")
    expect(phone.page.locator(".row", has_text="Balance")).to_contain_text("no calibration written")


def test_a_record_tells_the_rule_the_age_and_what_does_not_go_together(phone: DemoPhone) -> None:
    phone.page.clock.set_fixed_time("2026-11-26T12:00:00Z")
    phone.open(f"/wrench/{made.WRENCH}")
    main = phone.page.locator("main")
    expect(main).to_contain_text("setting tools above 10 N·m, ISO 6789 (2003)")
    expect(main).to_contain_text("2 years 9 months ago (12 Feb 2024)")
    phone.open(f"/instrument/{made.GAUGE}")
    expect(main).to_contain_text(
        "Calibration was due 12 Feb 2026. A reading is only as good as the instrument."
    )
    expect(main).to_contain_text("before that 12 Feb 2024")
    phone.open(f"/instrument/{made.ODD}")
    expect(main).to_contain_text("The unit bar does not measure length. Choose one that does.")
    expect(main).to_contain_text("The least is above the most. Change one of them.")


def test_a_form_holds_back_what_does_not_go_together_and_says_what_to_do(phone: DemoPhone) -> None:
    phone.open("/instrument/new")
    page = phone.page
    page.get_by_label("Name").fill("Gauge")
    expect(page.locator("main")).to_contain_text("The smallest and the largest it reads.")
    page.get_by_label("Least, mm").fill("75")
    page.get_by_label("Most").fill("50")
    expect(page.locator(".act")).to_contain_text("The least is above the most.")
    expect(page.locator(".act")).to_be_disabled()
    page.get_by_label("Most").fill("abc")
    expect(page.locator(".act")).to_contain_text("One of the numbers cannot be read.")
    expect(page.locator(".act")).to_be_disabled()
    page.get_by_label("Least").fill("-5")
    page.get_by_label("Most").fill("5")
    expect(page.locator(".act")).to_be_enabled()
    press(page, "pressure")
    expect(page.get_by_role("button", name="kPa", exact=True)).to_be_visible()
    expect(page.get_by_role("button", name="mm", exact=True)).to_have_count(0)


def test_an_instrument_is_made_labelled_scanned_found_and_calibrated_offline(
    phone: DemoPhone,
) -> None:
    size(phone, "phone")
    page = phone.page
    phone.open("/wrenches")
    page.context.set_offline(True)
    try:
        page.get_by_role("link", name="Add an instrument").click()
        press(page, "Bore gauge")
        page.get_by_label("Name").fill("Bore gauge 50 to 160")
        page.get_by_label("Least").fill("50")
        page.get_by_label("Most").fill("160")
        page.get_by_label("Reads to").fill("0.01")
        page.get_by_label("Where it lies").fill("felt box")
        act(page)
        expect(page.get_by_role("heading", level=1)).to_have_text("Bore gauge 50 to 160")
        expect(page.locator("main")).to_contain_text("no calibration written")
        page.goto(f"{phone.house.address}/scan?type=1")
        page.locator(".typed-code input").fill(CODES[2])
        act(page)
        page.get_by_role("link", name="Give it to something that is here").click()
        page.get_by_label("Name or word").fill("felt box")
        press_in(page, ".row", "Bore gauge 50 to 160")
        act(page)
        expect(page.locator(".code")).to_have_text(f"{CODES[2][:4]} {CODES[2][4:]}")
        page.goto(f"{phone.house.address}/L/{CODES[2]}")
        expect(page.get_by_role("heading", level=1)).to_have_text("Bore gauge 50 to 160")
        page.goto(f"{phone.house.address}/find")
        page.locator("#find-words").fill("bore gauge felt")
        page.get_by_role("link", name="Bore gauge 50 to 160").first.click()
        page.get_by_role("link", name="Write a calibration").click()
        page.get_by_label("Calibrated on").fill("2026-11-20")
        page.get_by_label("Calibration due on").fill("2027-11-20")
        act(page)
        expect(page.locator("main")).to_contain_text("20 Nov 2027")
    finally:
        page.context.set_offline(False)
    phone.sent()


def test_a_calibration_is_struck_out_and_the_one_before_stands(phone: DemoPhone) -> None:
    size(phone, "phone")
    phone.open(f"/instrument/{made.GAUGE}")
    page = phone.page
    page.locator("summary", has_text="later change").click()
    page.locator(".fold .strike").first.click()
    press(page, "Typed wrong")
    act(page)
    expect(page.locator("main")).to_contain_text("(12 Feb 2024)")


def test_an_empty_list_teaches(phone: DemoPhone) -> None:
    phone.store(made.WIPE)
    phone.open("/wrenches")
    expect(phone.page.locator(".empty")).to_contain_text("No wrench and no instrument yet")
    for at in SIZES:
        size(phone, at)
        assert phone.wrong(at, []) == {}
