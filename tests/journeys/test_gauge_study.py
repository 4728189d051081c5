"""A gauge study is measured blind, offline; a published one comes out as it was published."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from journeys import study_scene as made
from journeys.demo_phone import SIZES, DemoPhone, demo_phone, size, wrong_at
from journeys.hands import Hand, press_in
from playwright.sync_api import Page, expect

SPOKEN = Path(__file__).parent / "spoken"
PLACES = {
    "list": "/studies",
    "plan": "/study/new",
    "result": f"/study/{made.STUDY}",
    "begun": f"/study/{made.BEGUN}",
    "hand": f"/study/{made.BEGUN}?run=1",
    "strike": f"/study/{made.BEGUN}?strike=study",
    "published": f"/study/{made.PUBLISHED}",
}
TRIALS = """
const study = (await store.allOf('study')).subject(given);
return study.facts.filter((one) => one.heading === 'trial' && !one.struck).map((one) => one.body);
"""


@pytest.fixture(scope="module")
def phone(tmp_path_factory: pytest.TempPathFactory) -> Iterator[DemoPhone]:
    with demo_phone(tmp_path_factory.mktemp("studies")) as one:
        yield one


@pytest.fixture(scope="module")
def studied(phone: DemoPhone) -> DemoPhone:
    plans = [
        made.micrometer(),
        made.study(made.STUDY, instrument=made.MICROMETER),
        *made.some_readings(),
        made.study(made.BEGUN, name="Big end bore", least="-0.02", most="0.02", repeats=3),
        made.trial(made.BEGUN, 1, "Ann", 1, "0.005"),
        *made.published(but=1),
    ]
    phone.store(made.KEEP, plans)
    phone.sent()
    return phone


def read(page: Page, piece: int, person: str, value: str) -> None:
    """Type what an instrument shows at the piece that is asked for, and keep it."""
    expect(page.locator("h1")).to_contain_text(f"Piece {piece}")
    expect(page.locator("h1")).to_contain_text(person)
    page.keyboard.type(value)
    Hand(page).settle()
    page.keyboard.press("Enter")


def test_with_no_study_yet_the_list_says_what_one_is_for(phone: DemoPhone) -> None:
    for at in SIZES:
        size(phone, at)
        phone.open("/studies")
        assert phone.wrong(at, phone.jumps()) == {}
    expect(phone.page.locator("main")).to_contain_text("3 pieces that differ")
    expect(phone.page.locator("main")).to_contain_text("about five minutes")


def test_a_study_is_planned_measured_blind_and_judged_offline(phone: DemoPhone) -> None:
    size(phone, "phone")
    page = phone.page
    for path in ("/study/new", "/more"):
        phone.open(path)
    page.context.set_offline(True)
    try:
        press_in(page, ".row", "Gauge studies")
        press_in(page, ".act", "New study")
        page.get_by_label("What is measured").fill("Wrist pin")
        page.get_by_label("Lower limit").fill("19.99")
        page.get_by_label("Upper limit").fill("20,01")
        page.get_by_label("Person 1").fill("Ann")
        page.get_by_label("Person 2").fill("Ben")
        press_in(page, "fieldset:has(legend:text-is('Pieces')) button", "−")
        press_in(page, "fieldset:has(legend:text-is('Times each')) button", "−")
        expect(page.locator(".act")).to_contain_text("8 readings, about 3 min")
        press_in(page, ".act", "Keep the study")
        press_in(page, ".act", "Measure")
        press_in(page, ".act", "Start: piece 1")
        read(page, 1, "Ann", "20.001")
        read(page, 2, "Ann", "19.996")
        press_in(page, ".act", "Start: piece 1")
        read(page, 1, "Ben", "20.002")
        read(page, 2, "Ben", "19.996")
        press_in(page, ".act", "Start: piece 2")
        read(page, 2, "Ann", "19.5")
        expect(page.locator("main")).not_to_contain_text("19.5")
        press_in(page, ".pair .press", "Strike out piece 2")
        press_in(page, ".chips button", "slipped")
        press_in(page, ".act", "Strike out this reading")
        read(page, 2, "Ann", "19.996")
        read(page, 1, "Ann", "20.001")
        press_in(page, ".act", "Start: piece 2")
        read(page, 2, "Ben", "19.997")
        expect(page.locator("h1")).to_contain_text("Piece 1")
        page.keyboard.type("20.0")
        expect(page.locator(".typed")).to_contain_text("20.0")
        page.reload()
        expect(page.locator(".typed")).to_contain_text("20.0")
        page.keyboard.type("02")
        page.keyboard.press("Enter")
        press_in(page, ".act", "What it came to")
        expect(page.locator(".set-says").first).to_contain_text("Doubtful for 19.99 to 20.01 mm.")
        press_in(page, "summary", "Struck out (1)")
        expect(page.locator("main")).to_contain_text("slipped")
    finally:
        page.context.set_offline(False)


@pytest.mark.parametrize("at", SIZES)
@pytest.mark.parametrize("screen", PLACES)
def test_a_screen_of_studies_holds_in_every_theme_and_with_larger_and_longer_words(
    studied: DemoPhone, screen: str, at: str
) -> None:
    assert wrong_at(studied, at, PLACES[screen]) == {}


@pytest.mark.parametrize("screen", ["result", "hand"])
def test_a_screen_of_studies_is_read_aloud_as_kept(studied: DemoPhone, screen: str) -> None:
    size(studied, "phone")
    studied.open(PLACES[screen])
    kept = (SPOKEN / f"study_{screen}.txt").read_text("utf-8")
    assert studied.aloud() == kept


@pytest.mark.parametrize("at", SIZES)
def test_the_keypad_holds_with_a_reading_below_nothing(studied: DemoPhone, at: str) -> None:
    size(studied, at)
    studied.open(PLACES["hand"])
    press_in(studied.page, ".act", "Start: piece 2")
    studied.page.locator(".keypad").wait_for()
    studied.page.keyboard.type("0.012")
    studied.page.keyboard.press("-")
    expect(studied.page.locator(".typed")).to_contain_text("−0.012")
    assert studied.measured(desk=at == "desk", touch=56) == []
    studied.store("await store.setDraft(given, null);", f"study-run:{made.BEGUN}")


def test_the_last_reading_of_a_published_study_brings_out_its_published_figures(
    studied: DemoPhone,
) -> None:
    """Montgomery, from memory: variances as below, and a share of the width of 0.20."""
    size(studied, "phone")
    page = studied.page
    studied.open(f"/study/{made.PUBLISHED}")
    expect(page.locator(".set-says").first).to_have_text("89 of 90 are measured.")
    press_in(page, ".act", "Go on measuring")
    press_in(page, ".act", "Start: piece 2")
    read(page, 2, "C", "43")
    press_in(page, ".act", "What it came to")
    expect(page.locator(".set-says").first).to_have_text(
        "Doubtful for 18 to 58 mm. Its own scatter takes 20.1 % of the width between the limits."
    )
    shown = {
        "Same person again": 0.51, "From person to person": 0.56, "People and pieces": 0.73,
        "The gauge in all": 1.80, "The pieces": 48.29,
    }  # fmt: skip
    for name, variance in shown.items():
        row = page.locator(".set-spread .row").filter(has=page.locator(f"b:text-is('{name}')"))
        figure, unit = row.locator(".fig").inner_text().split()
        assert unit == "mm"
        assert float(figure) ** 2 == pytest.approx(variance, rel=0.012)


def test_two_readings_of_one_cell_are_asked_about_and_neither_is_chosen_silently(
    studied: DemoPhone,
) -> None:
    studied.store(made.KEEP, [made.trial(made.STUDY, 2, "Ben", 2, "39.95")])
    page = studied.page
    studied.open(f"/study/{made.STUDY}")
    expect(page.locator("main")).to_contain_text("Two readings are kept for Ben, piece 2, time 2.")
    expect(page.locator(".set-spread")).to_have_count(0)
    press_in(page, ".asks button", "39.98 mm")
    expect(page.locator(".asks")).to_have_count(0)
    expect(page.locator(".set-spread").first).to_be_visible()
    kept = [one for one in studied.store(TRIALS, made.STUDY) if one["piece"] == 2]
    assert [one["value"]["value"] for one in kept if one["repeat"] == 2] == ["39.99", "39.98"]


def test_a_study_is_begun_from_the_instrument_it_is_about(studied: DemoPhone) -> None:
    page = studied.page
    studied.open(f"/instrument/{made.MICROMETER}")
    press_in(page, ".second-act", "Is it good enough?")
    expect(page.locator("h1")).to_have_text("New study")
    chosen = page.locator("fieldset:has(legend:text-is('Instrument')) [aria-pressed=true]")
    expect(chosen).to_have_text(made.micrometer()["body"]["fields"]["name"])
    expect(page.locator("fieldset:has(legend:text-is('Unit')) [aria-pressed=true]")).to_have_text(
        "mm"
    )


def test_a_struck_out_study_stays_readable(studied: DemoPhone) -> None:
    page = studied.page
    studied.open(f"/study/{made.BEGUN}")
    press_in(page, "a", "Strike out")
    press_in(page, ".chips button", "by mistake")
    press_in(page, ".act", "Strike out")
    expect(page.locator("main")).to_contain_text("This study was struck out")
    expect(page.locator(".act")).to_have_count(0)
    studied.open("/studies")
    expect(page.locator("main")).not_to_contain_text("Big end bore")
