"""A part goes to the machine shop and comes back, offline."""

from collections.abc import Iterator

import pytest
from journeys import shelf_scene as made
from journeys.demo_phone import SIZES, DemoPhone, demo_phone, size
from journeys.hands import press_in
from playwright.sync_api import expect

FACTS = """
const part = (await store.allOf('part')).subject(given);
return part.facts.filter((one) => ['sent', 'returned', 'place'].includes(one.heading))
  .map((one) => ({ heading: one.heading, body: one.body, stands: one.stands ?? null }));
"""


@pytest.fixture(scope="module")
def phone(tmp_path_factory: pytest.TempPathFactory) -> Iterator[DemoPhone]:
    with demo_phone(tmp_path_factory.mktemp("shop")) as one:
        one.store(made.KEEP, made.scene())
        one.sent()
        yield one


def test_a_part_is_sent_out_and_comes_back_offline(phone: DemoPhone) -> None:
    page = phone.page
    for path in (f"/inspect/{made.HEAD}", f"/back/{made.HEAD}", "/away", "/send"):
        phone.open(path)
    page.context.set_offline(True)
    try:
        press_in(phone.page, ".chips button", "Rear head")
        page.get_by_label("To whom").fill("Grinder by the river")
        press_in(phone.page, ".chips button", "deck")
        page.get_by_label("Due back").fill("2020-03-09")
        page.get_by_label("Price agreed").fill("85,50")
        press_in(phone.page, ".act", "Keep: 1 part sent")
        row = page.locator(".row").filter(has_text="Rear head")
        expect(row).to_contain_text("with Grinder by the river · deck · since")
        expect(row).to_contain_text("days late")
        expect(row).to_contain_text("85.50 EUR")
        kept = phone.store(FACTS, made.HEAD)
        assert [one["heading"] for one in kept] == ["sent", "place"]
        assert kept[1]["body"] == {"in": None, "gone": "at Grinder by the river"}
        phone.open("/tonight")
        late = page.locator(".right .row").filter(has_text="Rear head")
        expect(late).to_contain_text("days late")
        expect(page.locator("main")).to_contain_text("Late from the machine shop")
        phone.open(f"/part/{made.HEAD}")
        press_in(phone.page, ".second-act", "It is back")
        page.get_by_label("What was done").fill("0.05 off")
        press_in(phone.page, ".act", "Keep: it is back")
        page.wait_for_url(f"**/inspect/{made.HEAD}")
    finally:
        page.context.set_offline(False)
    kept = phone.store(FACTS, made.HEAD)
    assert kept[2]["body"]["note"] == "0.05 off"
    assert [one["stands"] for one in kept if one["heading"] == "place"] == [False, True]
    phone.open("/away")
    expect(page.locator("main")).to_contain_text("from Grinder by the river")
    phone.open("/tonight")
    expect(page.locator("h1")).to_have_text("Tonight")
    expect(page.locator("main")).not_to_contain_text("Late from the machine shop")


def test_what_it_measures_on_coming_back_stands_in_its_record(phone: DemoPhone) -> None:
    page = phone.page
    out = {"heading": "sent", "about": made.OTHER, "body": {"to": "Grinder", "for": "polish"}}
    phone.store(made.KEEP, [out])
    phone.open(f"/back/{made.OTHER}")
    press_in(page, ".looks button", "Read")
    page.get_by_text("Type what it showed").wait_for()
    for sign in "41.96":
        page.keyboard.press(sign)
    press_in(page, ".act", "Keep")
    expect(page.locator(".looks")).to_contain_text("41.96")
    press_in(page, ".act", "Keep: it is back")
    page.wait_for_url(f"**/inspect/{made.OTHER}")
    [kept] = [one for one in phone.store(FACTS, made.OTHER) if one["heading"] == "returned"]
    assert kept["body"]["readings"][0]["value"] == {"value": "41.96", "unit": "mm"}
    phone.open(f"/part/{made.OTHER}")
    expect(page.locator("main")).to_contain_text("from Grinder")
    expect(page.locator("main")).to_contain_text("Length: 41.96")


def test_what_was_sent_together_comes_back_together_but_for_what_is_still_there(
    phone: DemoPhone,
) -> None:
    page = phone.page
    names = {made.SCRAP: "Tappet 5", made.OTHER: "Tappet 6", made.SPARE: "Tappet 4"}
    what = {"to": "Polisher", "for": "polish", "due": "2031-05-06"}
    phone.store(made.KEEP, [{"heading": "sent", "about": one, "body": what} for one in names])
    phone.open("/away")
    press_in(page, ".together .row", "Are all 3 back?")
    expect(page.locator("h1")).to_have_text("3 parts sent together")
    press_in(page, ".chips button", "Tappet 5")
    page.get_by_label("What was done").fill("0.02 off")
    press_in(page, ".act", "Keep: 2 parts are back")
    page.wait_for_url("**/away")
    for about, name in names.items():
        [sent] = [one for one in phone.store(FACTS, about) if one["body"].get("to") == "Polisher"]
        came = [one["body"] for one in phone.store(FACTS, about) if one["heading"] == "returned"]
        assert ({"note": "0.02 off"}.items() <= came[-1].items() if came else False) is (
            name != "Tappet 5"
        ), (name, sent)
        row = page.locator(".row[href^='/back/']").filter(has_text=name)
        expect(row.filter(has_text="Polisher")).to_have_count(int(name == "Tappet 5"))
    expect(page.locator(".together .row")).to_have_count(0)
    here = page.locator(".row[href^='/inspect/']").filter(has_text="Tappet")
    expect(here).to_have_count(2)
    phone.open("/tonight")
    look = page.locator(".row[href^='/inspect/']").filter(has_text="tappets")
    expect(look).to_contain_text("2 not looked at")


def test_a_build_is_begun_from_the_list_of_builds(phone: DemoPhone) -> None:
    page = phone.page
    phone.open("/builds")
    page.get_by_label("Name").fill("Engine for the shed")
    press_in(page, ".act", "Begin this build")
    expect(page.locator(".sheet")).to_contain_text("Engine for the shed")


@pytest.mark.parametrize("at", SIZES)
@pytest.mark.parametrize("path", ["/builds", f"/back/{made.SPARE}", "/tonight", "/away"])
def test_builds_and_what_is_away_hold_at_every_size(phone: DemoPhone, path: str, at: str) -> None:
    what = {"to": "Grinder", "for": "polish", "due": "2020-03-09"}
    out = {"heading": "sent", "about": made.SPARE, "body": what}
    phone.store(made.KEEP, [out])
    phone.sent()
    size(phone, at)
    phone.open(path)
    assert phone.wrong(at, phone.jumps()) == {}


@pytest.mark.parametrize("at", SIZES)
def test_what_comes_back_together_holds_at_every_size(phone: DemoPhone, at: str) -> None:
    what = {"to": "Honer", "for": "hone", "due": "2031-05-06"}
    two = (made.HEAD, made.OTHER)
    phone.store(made.KEEP, [{"heading": "sent", "about": one, "body": what} for one in two])
    phone.sent()
    size(phone, at)
    phone.open("/away")
    phone.open(phone.page.locator(".together .row").first.get_attribute("href") or "")
    expect(phone.page.locator("legend")).to_have_text("Which are back")
    assert phone.wrong(at, phone.jumps()) == {}
    phone.open("/back?of=nothing")
    expect(phone.page.locator("main")).to_contain_text("These parts are not out.")
