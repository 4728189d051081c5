"""What a part measures, on the screens that show it: every size, every theme, longer words."""

from collections.abc import Callable, Iterator

import pytest
from journeys import measured_scene as scene
from journeys.demo_phone import SIZES, DemoPhone, demo_phone, size
from journeys.hands import act, press, press_in
from journeys.rods import KEEP
from playwright.sync_api import expect

RECORD = f"/part/{scene.rod(1)}"


@pytest.fixture(scope="module")
def phone(tmp_path_factory: pytest.TempPathFactory) -> Iterator[DemoPhone]:
    with demo_phone(tmp_path_factory.mktemp("measured")) as one:
        one.store(KEEP, [*scene.pushrods(), *scene.read_already()])
        one.sent()
        yield one


def test_the_record_tells_each_spot_its_verdict_and_instrument_and_what_was_struck(
    phone: DemoPhone,
) -> None:
    size(phone, "phone")
    phone.open(RECORD)
    found = phone.page.locator(".look")
    expect(found).to_have_count(2)
    for words in (
        "Length: 187.02 ± 0.036 mm; inside; Caliper 150",
        "Tube, rocker end, along: 7.952 ± 0.0020 mm; inside; Micrometer 25",
        "Tube, lifter end, across: 7.899 ± 0.0020 mm; too close to call; Micrometer 25",
        "Tube: out-of-round 0.062 mm; taper 0.041 mm",
        "No longer measured: 3.1 mm",
    ):
        expect(found.first).to_contain_text(words)
    expect(found.nth(1).locator("s")).to_contain_text("Length: 178.02 ± 0.0058 mm; outside")
    expect(found.nth(1)).to_contain_text("the jaw slipped")
    expect(phone.page.locator(".look .off-limit")).to_have_count(0)
    phone.open(f"/part/{scene.rod(5)}")
    outside = phone.page.locator(".look .off-limit")
    expect(outside).to_have_text("Length: 186.20 ± 0.036 mm; outside; Caliper 150")
    expect(outside.locator(".sign")).to_be_visible()


def take(phone: DemoPhone, name: str) -> None:
    """Name the instrument."""
    press_in(phone.page, ".read-with", "")
    press_in(phone.page, "dialog .row", name)
    expect(phone.page.locator("dialog")).to_have_count(0)


def begin(phone: DemoPhone, piece: int) -> None:
    """The inspection of a piece with nothing in the hand yet."""
    phone.open("/more")
    phone.store("await store.setDraft(given, null);", f"inspect:{scene.rod(piece)}")
    phone.open(f"/inspect/{scene.rod(piece)}")


def lamp_with_readings(phone: DemoPhone) -> None:
    begin(phone, 2)
    press(phone.page, "Read Length")
    take(phone, "Caliper 150")
    phone.page.keyboard.type("187.02")
    act(phone.page)
    press(phone.page, "Scrap")


def keypad(phone: DemoPhone) -> None:
    begin(phone, 3)
    press(phone.page, "Read Tube")
    take(phone, "Micrometer 25")
    phone.page.keyboard.type("7.952")
    expect(phone.page.locator(".read-with b")).to_have_text("inside")


def choice(phone: DemoPhone) -> None:
    begin(phone, 4)
    press(phone.page, "Read Length")
    press_in(phone.page, ".read-with", "")
    expect(phone.page.locator("dialog .row")).to_have_count(3)


def outside(phone: DemoPhone) -> None:
    begin(phone, 6)
    press(phone.page, "Read Length")
    phone.page.keyboard.type("186.20")
    act(phone.page)
    press(phone.page, "Use")
    expect(phone.page.locator(".off-limit")).to_have_count(2)


PLACES: dict[str, Callable[[DemoPhone], None]] = {
    "bag": lambda phone: phone.open(f"/inspect/{scene.BAG}"),
    "record": lambda phone: phone.open(RECORD),
    "record outside": lambda phone: phone.open(f"/part/{scene.rod(5)}"),
    "lamp": lamp_with_readings,
    "outside": outside,
    "keypad": keypad,
    "choice": choice,
}


@pytest.mark.parametrize("at", SIZES)
@pytest.mark.parametrize("place", PLACES)
def test_what_measures_holds_in_every_theme_and_with_larger_and_longer_words(
    phone: DemoPhone, place: str, at: str
) -> None:
    size(phone, at)
    PLACES[place](phone)
    jumps = phone.jumps() if place in ("bag", "record") else []
    assert phone.wrong(at, jumps) == {}
