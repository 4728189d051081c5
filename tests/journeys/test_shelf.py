"""The spare shelf, the loud scrap scan and the machine shop, offline and at every size."""

from collections.abc import Iterator

import pytest
from journeys import shelf_scene as made
from journeys.demo_phone import SIZES, DemoPhone, demo_phone, size
from journeys.hands import press_in
from playwright.sync_api import expect

CODES: list[str] = []
PLACES = {
    "shelf": "/shelf",
    "kind": f"/shelf?kind={made.KIND}",
    "scrapped": "/shelf?scrap=1",
    "away": "/away",
    "send": "/send",
    "scrap": "/L/{0}",
}


@pytest.fixture(scope="module")
def phone(tmp_path_factory: pytest.TempPathFactory) -> Iterator[DemoPhone]:
    with demo_phone(tmp_path_factory.mktemp("shelf")) as one:
        one.store(made.KEEP, made.scene())
        CODES[:] = one.store(made.LABEL, [made.SCRAP, made.HEAD])
        one.sent()
        yield one


def seen(phone: DemoPhone, screen: str) -> None:
    phone.open(PLACES[screen].format(*CODES))


@pytest.mark.parametrize("at", SIZES)
@pytest.mark.parametrize("screen", PLACES)
def test_a_screen_of_the_shelf_holds_in_every_theme_and_with_larger_and_longer_words(
    phone: DemoPhone, screen: str, at: str
) -> None:
    size(phone, at)
    seen(phone, screen)
    jumps = phone.jumps()
    assert phone.wrong(at, jumps) == {}


def test_a_spare_tells_its_readings_and_is_used_for_a_build_offline(phone: DemoPhone) -> None:
    size(phone, "phone")
    phone.open(f"/kind/{made.KIND}")
    expect(phone.page.locator("main")).to_contain_text("2 on the shelf", timeout=20_000)
    seen(phone, "shelf")
    phone.page.context.set_offline(True)
    try:
        phone.page.get_by_label("Search the shelf").fill("tappet 4")
        expect(phone.page.locator("main")).not_to_contain_text("Tappet 6")
        press_in(phone.page, ".row", "Tappet 4")
        expect(phone.page.locator("main")).to_contain_text("Length 41.97 mm")
        expect(phone.page.locator("main")).to_contain_text("Spare shelf 2")
        press_in(phone.page, ".chips button", "Use it for Kelderby for the boat")
        expect(phone.page.locator(".row").first).to_contain_text("for Kelderby for the boat")
    finally:
        phone.page.context.set_offline(False)
