"""Histories of parts, kinds and donors, offline: 32 invented pushrods, eight thrown out."""

from collections.abc import Iterator
from typing import Any

import pytest
from journeys import rods
from journeys.demo_phone import SIZES, DemoPhone, demo_phone, size, wrong_at
from journeys.hands import press
from playwright.sync_api import expect

EMPTY_KIND = "22222222-0000-7000-8000-0000000000e1"
NEW_KIND = "22222222-0000-7000-8000-0000000000e2"
NEW_ROD = "22222222-0000-7000-8000-0000000000e3"
WORN = rods.rod(12)
PLACES = {
    "part": f"/history/part/{WORN}",
    "new part": f"/history/part/{NEW_ROD}",
    "kind": f"/history/kind/{rods.KIND}",
    "new kind": f"/history/kind/{NEW_KIND}",
    "empty kind": f"/history/kind/{EMPTY_KIND}",
    "donor": f"/history/donor/{rods.DONORS[0]}",
}
BAND = "8 of 32 rejected: 25 %, between 13 and 42 % with 95 % credibility."


def looked(turn: int, size_mm: str, verdict: str, reason: str = "") -> list[dict[str, Any]]:
    """A look at the worn one with its verdict, as the screen keeps them."""
    look, given = (f"22222222-0000-7000-8000-0000000002{each}{turn}" for each in "ab")
    said = {"verdict": verdict, **({"reason": reason} if reason else {})}
    reading = {"measure": "m1", "value": {"value": size_mm, "unit": "mm"}, "instrument": None}
    looks = [{"criterion": "c1", "good": verdict != "scrap"}]
    body = {**said, "readings": [reading], "looks": looks}
    after = [f"22222222-0000-7000-8000-0000000002b{turn - 1}"] if turn else []
    return [
        {"heading": "inspection", "about": WORN, "id": look, "body": body},
        {"heading": "verdict", "about": WORN, "id": given, "after": after,
         "body": {**said, "inspection": look}},
    ]  # fmt: skip


def told() -> list[dict[str, Any]]:
    """Limits for the rods, three looks at one, the second struck out, and three new things."""
    length = {
        "id": "m1", "name": "Length", "quantity": "length", "unit": "mm",
        "least": "186.85", "most": "187.12", "source": "invented page 7",
    }  # fmt: skip
    weight = {"id": "m2", "name": "Weight", "quantity": "mass", "unit": "g"}
    return [
        rods.described("kind", rods.KIND, measures=[length, weight]),
        *(each for each in rods.inspected() if each["about"] != WORN),
        *looked(0, "186.90", "use"),
        *looked(1, "178.60", "machine", "too short"),
        *looked(2, "186.80", "scrap", "worn ends"),
        rods.described("kind", EMPTY_KIND, name="oil pump", plural="oil pumps"),
        rods.described("kind", NEW_KIND, name="lifter", plural="lifters"),
        rods.described("part", NEW_ROD, name="Lifter 1", kind=NEW_KIND),
        {
            "heading": "strike-out",
            "about": "22222222-0000-7000-8000-0000000002a1",
            "body": {"reason": "read on the wrong scale"},
        },
    ]


@pytest.fixture(scope="module")
def phone(tmp_path_factory: pytest.TempPathFactory) -> Iterator[DemoPhone]:
    with demo_phone(tmp_path_factory.mktemp("history")) as one:
        one.store(rods.KEEP, [*rods.bag(), *told()])
        one.sent()
        yield one


@pytest.mark.parametrize("at", SIZES)
@pytest.mark.parametrize("screen", PLACES)
def test_a_history_holds_in_every_theme_and_with_larger_and_longer_words(
    phone: DemoPhone, screen: str, at: str
) -> None:
    assert wrong_at(phone, at, PLACES[screen]) == {}


def test_a_part_tells_each_look_newest_first_and_the_struck_one_stays(phone: DemoPhone) -> None:
    size(phone, "phone")
    phone.open(f"/part/{WORN}")
    phone.page.get_by_role("link", name="History").click()
    lines = phone.page.locator("article.look")
    expect(lines).to_have_count(4)
    expect(lines.first).to_contain_text("Worn ends. Not good: Ends round and smooth")
    expect(lines.first).to_contain_text("stands now")
    expect(lines.nth(2)).to_contain_text("read on the wrong scale")
    plot = phone.page.get_by_role("img", name="Length over time")
    expect(plot).to_be_visible()
    expect(phone.page.locator("figcaption").first).to_contain_text("Last 186.80 mm, outside.")
    expect(phone.page.locator("figcaption").first).to_contain_text(
        "Limits 186.85 to 187.12 mm, invented page 7."
    )


def test_a_kind_tells_the_share_thrown_out_and_how_many_to_bring(phone: DemoPhone) -> None:
    size(phone, "phone")
    phone.page.context.set_offline(True)
    try:
        phone.open(f"/kind/{rods.KIND}")
        phone.page.get_by_role("link", name="History").click()
        main = phone.page.locator("main")
        expect(main).to_contain_text(BAND)
        expect(main).to_contain_text("Bring 21 home: then 12 or more are kept")
        for _ in range(4):
            press(phone.page, "One more")
        expect(main).to_contain_text("Bring 27 home: then 16 or more are kept")
        press(phone.page, "95 %")
        expect(main).to_contain_text("Bring 29 home")
        phone.open(PLACES["kind"])
        expect(phone.page.locator("main")).to_contain_text("Bring 29 home")
        rows = phone.page.locator("ul.sheet a.row[href^='/history/part/']")
        expect(rows).to_have_count(40)
        press(phone.page, "Show 26 older lines")
        expect(rows).to_have_count(66)
    finally:
        phone.page.context.set_offline(False)


def test_a_donor_tells_what_came_of_its_parts(phone: DemoPhone) -> None:
    size(phone, "phone")
    phone.open(f"/donor/{rods.DONORS[0]}")
    phone.page.get_by_role("link", name="History").click()
    kinds = phone.page.locator("ul.sheet a.row[href^='/history/kind/']")
    expect(kinds).to_have_count(1)
    expect(kinds.first).to_contain_text("long pushrods")
    kinds.first.click()
    expect(phone.page.locator("main")).to_contain_text(BAND)


def test_what_has_no_history_yet_says_how_it_begins(phone: DemoPhone) -> None:
    phone.open(PLACES["new part"])
    phone.page.get_by_role("link", name="Inspect it").wait_for()
    phone.open(PLACES["new kind"])
    expect(phone.page.locator("main")).to_contain_text("common practice, no source")
    phone.open(PLACES["empty kind"])
    expect(phone.page.locator("main")).to_contain_text("No piece of this kind yet.")
