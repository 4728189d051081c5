"""A label of a scrapped part, and of one that is away, says so before the record."""

from collections.abc import Iterator

import pytest
from journeys import shelf_scene as made
from journeys.demo_phone import DemoPhone, demo_phone
from playwright.sync_api import expect

CODES: list[str] = []
BUZZED = """() => { window.buzzed = []; navigator.vibrate = (how) => window.buzzed.push(how); }"""


@pytest.fixture(scope="module")
def phone(tmp_path_factory: pytest.TempPathFactory) -> Iterator[DemoPhone]:
    with demo_phone(tmp_path_factory.mktemp("scrap")) as one:
        one.store(made.KEEP, made.scene())
        CODES[:] = one.store(made.LABEL, [made.SCRAP, made.HEAD])
        one.page.add_init_script(f"({BUZZED})()")
        yield one


def test_scrap_says_so_loudly_before_anything_else_of_its_record(phone: DemoPhone) -> None:
    phone.open(f"/L/{CODES[0]}")
    expect(phone.page.locator(".panel")).to_contain_text("Scrap: face pitted")
    expect(phone.page.locator(".panel")).to_contain_text("Tappet 5 is scrap")
    assert [200] in phone.page.evaluate("window.buzzed")
    assert phone.page.url.endswith(f"/L/{CODES[0]}")
    again = phone.page.get_by_role("link", name="Look again")
    expect(again).to_have_attribute("href", f"/inspect/{made.SCRAP}")
    record = phone.page.get_by_role("link", name="See the record")
    expect(record).to_have_attribute("href", f"/part/{made.SCRAP}")


def test_a_part_that_is_away_asks_whether_it_is_back(phone: DemoPhone) -> None:
    body = {"to": "Grinder by the river", "for": "deck", "due": "2031-03-09"}
    phone.store(made.KEEP, [{"heading": "sent", "about": made.HEAD, "body": body}])
    phone.open(f"/L/{CODES[1]}")
    expect(phone.page.locator(".panel")).to_contain_text("It is with Grinder by the river")
    expect(phone.page.locator(".panel")).to_contain_text("due 9 Mar")
    back = phone.page.get_by_role("link", name="It is back")
    expect(back).to_have_attribute("href", f"/back/{made.HEAD}")


@pytest.mark.parametrize("path", ["/L/{1}", "/away", f"/back/{made.HEAD}"])
def test_a_screen_of_what_is_away_holds_in_every_theme(phone: DemoPhone, path: str) -> None:
    body = {"to": "Polisher", "for": "polish"}
    phone.store(made.KEEP, [{"heading": "sent", "about": made.HEAD, "body": body}])
    phone.sent()
    phone.open(path.format(*CODES))
    assert phone.wrong("phone", phone.jumps()) == {}
