"""A kept set tells what became of its pieces: struck readings, another set, sent out."""

from collections.abc import Iterator
from typing import Any

import pytest
from journeys import rods
from journeys.demo_phone import SIZES, DemoPhone, demo_phone, size
from playwright.sync_api import Locator, expect

ONE, OTHER, KEPT = (f"22222222-0000-7000-8000-0000000000{sign}" for sign in ("f1", "f2", "f3"))
LAST_READ = """
const part = (await store.allOf('part')).subject(given);
return part.facts.findLast(({ heading }) => heading === 'inspection').id;
"""


def a_set(about: str, name: str, *numbers: int) -> dict[str, Any]:
    pieces = [{"part": rods.rod(n), "place": str(at)} for at, n in enumerate(numbers, 1)]
    measures = [{"measure": "m1", "weight": "1"}]
    return rods.described("set", about, name=name, kind=rods.KIND, pieces=pieces, measures=measures)


def read(number: int, *spots: tuple[str, str]) -> dict[str, Any]:
    lines = [
        {"measure": "m1", "position": at, "value": {"value": size, "unit": "mm"}}
        for at, size in spots
    ]
    return {"heading": "inspection", "about": rods.rod(number), "body": {"readings": lines}}


@pytest.fixture(scope="module")
def phone(tmp_path_factory: pytest.TempPathFactory) -> Iterator[DemoPhone]:
    with demo_phone(tmp_path_factory.mktemp("changed")) as one:
        one.store(rods.KEEP, [*rods.bag(), *rods.inspected(), read(2, ("top", "187.06"))])
        sets = [a_set(ONE, "First set", 1, 2, 3, 4), a_set(OTHER, "Second set", 1, 5)]
        one.store(rods.KEEP, [*sets, a_set(KEPT, "Third set", 6)])
        one.store(
            rods.KEEP,
            [
                *(
                    {"heading": "strike-out", "about": found, "body": {"reason": "by mistake"}}
                    for found in (one.store(LAST_READ, rods.rod(n)) for n in (2, 3))
                ),
                {"heading": "sent", "about": rods.rod(4), "body": {"to": "machine shop"}},
                {"heading": "place", "about": rods.rod(4), "body": {"in": rods.BAG}},
            ],
        )
        one.sent()
        yield one


def row(phone: DemoPhone, words: str) -> Locator:
    return phone.page.locator("main .row").filter(has_text=words).first


def test_a_set_says_of_each_piece_what_became_of_it(phone: DemoPhone) -> None:
    phone.open(f"/set/{ONE}")
    expect(row(phone, "Pushrod 2")).to_contain_text("struck out, an older one counts")
    expect(row(phone, "Pushrod 3")).to_contain_text("struck out, none is left")
    expect(row(phone, "Pushrod 4")).to_contain_text("away, not back yet")
    expect(phone.page.locator("main")).to_contain_text("3 pieces are no longer as they were")


@pytest.mark.parametrize("at", SIZES)
@pytest.mark.parametrize("screen", [f"/set/{ONE}", "/sets"])
def test_what_changed_holds_at_every_size_and_in_every_theme(
    phone: DemoPhone, screen: str, at: str
) -> None:
    size(phone, at)
    phone.open(screen)
    assert phone.wrong(at, phone.jumps()) == {}


def test_a_piece_two_sets_hold_is_asked_about_on_both_and_in_the_list(phone: DemoPhone) -> None:
    for own, other in ((ONE, "Second set"), (OTHER, "First set")):
        phone.open(f"/set/{own}")
        expect(phone.page.locator("main")).to_contain_text("1 piece is in another set, too.")
        expect(row(phone, other)).to_contain_text("also holds Pushrod 1")
    phone.open("/sets")
    expect(row(phone, "2 pieces")).to_contain_text("1 also in: First set")
    expect(row(phone, "Third set")).not_to_contain_text("also in")
    phone.open(f"/set/new?kind={rods.KIND}")
    held = phone.page.locator(".set-off .row").filter(has_text="Pushrod 1in")
    expect(held).to_contain_text("in a set: First set, Second set")


def test_a_spot_outside_its_limit_is_told_beside_the_piece_to_choose(phone: DemoPhone) -> None:
    length = {"id": "m1", "name": "Length", "quantity": "length", "unit": "mm"}
    limits = {"least": "186.5", "most": "187.5", "positions": ["top", "foot"]}
    phone.store(
        rods.KEEP,
        [
            rods.described("kind", rods.KIND, measures=[{**length, **limits}]),
            read(7, ("top", "187.2"), ("foot", "186.1")),
        ],
    )
    phone.open(f"/set/new?kind={rods.KIND}")
    pieces = phone.page.locator(".set-pieces .row")
    told = pieces.filter(has_text="a spot outside its limit")
    expect(told).to_have_count(1)
    expect(told).to_contain_text("Pushrod 7")
    expect(told).to_contain_text("Length: a spot outside its limit")
