"""Pistons, pins and rods put together offline so that the totals agree, and seen as sets."""

import itertools
from collections.abc import Iterator

import pytest
from journeys import crank_scene, rods
from journeys.demo_phone import SIZES, DemoPhone, demo_phone, size
from journeys.hands import act, press_in
from playwright.sync_api import expect

KINDS = ["pistons", "piston pins", "connecting rods"]


@pytest.fixture(scope="module")
def phone(tmp_path_factory: pytest.TempPathFactory) -> Iterator[DemoPhone]:
    with demo_phone(tmp_path_factory.mktemp("even")) as one:
        one.store(rods.KEEP, crank_scene.weighed())
        one.sent()
        one.page.evaluate("navigator.serviceWorker.ready")
        one.page.get_by_text("Ready for the garage").wait_for(timeout=60_000)
        one.open("/even")
        for kind in KINDS:
            press_in(one.page, ".chips button", kind)
        expect(one.page.locator(".even > li")).to_have_count(6)
        yield one


@pytest.fixture(scope="module")
def offline(phone: DemoPhone) -> DemoPhone:
    """The same phone, its computer switched off."""
    phone.house.kill()
    return phone


def least_span(forced: tuple[int, int] | None = None) -> float:
    """By trying every arrangement of pistons, pins and the six rods closest in weight."""
    pistons, pins, rods_ = (
        [float(each) for each in crank_scene.WEIGHTS[kind]][:6] for kind in crank_scene.KINDS
    )
    spans = []
    for order in itertools.permutations(range(6)):
        if forced and order[forced[0] - 1] != forced[1] - 1:
            continue
        halves = [piston + rods_[at] for piston, at in zip(pistons, order, strict=True)]
        for pinned in itertools.permutations(pins):
            totals = [one + pin for one, pin in zip(halves, pinned, strict=True)]
            spans.append(max(totals) - min(totals))
    return min(spans)


@pytest.mark.parametrize("at", SIZES)
def test_even_weights_hold_in_every_theme_and_with_larger_and_longer_words(
    phone: DemoPhone, at: str
) -> None:
    size(phone, at)
    phone.open("/even")
    jumps = phone.jumps()
    phone.page.locator(".even > li > .row").nth(1).click()
    phone.page.locator(".even .piece").first.wait_for()
    assert phone.wrong(at, jumps) == {}


def test_the_totals_are_as_even_as_trying_every_arrangement_makes_them(offline: DemoPhone) -> None:
    phone = offline
    size(phone, "phone")
    phone.open("/even")
    says = phone.page.locator(".set-says")
    expect(says).to_contain_text(f"The totals span {least_span():.1f} g")
    expect(phone.page.locator("main")).to_contain_text("No other arrangement is more even.")
    expect(phone.page.locator("main")).to_contain_text(
        "Taken: the 6 of 7 connecting rods closest in weight."
    )
    expect(phone.page.locator(".even")).to_contain_text("take off 0.1 g")


def test_a_pair_that_must_stay_together_does_and_the_span_tells_what_it_costs(
    offline: DemoPhone,
) -> None:
    phone = offline
    size(phone, "phone")
    phone.open("/even")
    for name in ("piston 2", "connecting rod 2"):
        place = phone.page.locator(".even > li").filter(has_text=name).first
        place.locator("> .row").click()
        press_in(phone.page, ".even .piece", name)
    bound = phone.page.locator(".even > li").filter(has_text="piston 2 ").first
    expect(bound).to_contain_text("connecting rod 2")
    costs = f"The totals span {least_span((2, 2)):.1f} g"
    expect(phone.page.locator(".set-says")).to_contain_text(costs)
    if not bound.locator(".piece").count():
        bound.locator("> .row").click()
    expect(bound).to_contain_text("stays with connecting rod 2")


READ = """
const sets = (await store.allOf('set')).all('set');
const parts = await store.allOf('part');
return sets.map(({ fields }) => ({
  name: fields.name.value,
  says: fields.says.value,
  places: fields.pieces.value.map(({ place }) => place),
  told: fields.pieces.value.map(({ part }) => parts.subject(part).fields.for?.value ?? null),
}));
"""

HOLDS = """
const sets = (await store.allOf('set')).all('set');
return sets.map(({ fields }) => ({
  count: fields.count.value, parts: fields.pieces.value.map(({ part }) => part),
}));
"""


def test_accepted_each_kind_is_a_set_with_its_places(offline: DemoPhone) -> None:
    phone = offline
    size(phone, "phone")
    phone.open("/even")
    expect(phone.page.locator(".even > li")).to_have_count(6)
    act(phone.page)
    phone.page.wait_for_url("**/sets")
    for kind in KINDS:
        expect(phone.page.locator(".sheet").first).to_contain_text(f"6 {kind}")
    kept = phone.store(READ)
    assert sorted(one["name"] for one in kept) == sorted(f"6 {kind}" for kind in KINDS)
    for one in kept:
        assert one["places"] == one["told"] == [str(n) for n in range(1, 7)]
        assert "The totals span" in one["says"]


def test_chosen_again_the_sets_themselves_get_new_places(offline: DemoPhone) -> None:
    phone = offline
    size(phone, "phone")
    phone.open("/even")
    for kind in KINDS:
        press_in(phone.page, ".chips button", kind)
    expect(phone.page.locator(".even > li")).to_have_count(6)
    act(phone.page)
    phone.page.wait_for_url("**/sets")
    assert len(phone.store(READ)) == len(KINDS)


def test_a_set_used_in_part_gives_up_what_moves_and_says_so_before(offline: DemoPhone) -> None:
    phone = offline
    size(phone, "phone")
    phone.open("/even")
    for kind in KINDS[:2]:
        press_in(phone.page, ".chips button", kind)
    expect(phone.page.locator(".even > li")).to_have_count(6)
    for _ in range(2):
        press_in(phone.page, ".count button", "−")
    expect(phone.page.locator(".even > li")).to_have_count(4)
    says = phone.page.locator("main")
    expect(says).to_contain_text("The set 6 pistons keeps its other 2")
    expect(says).to_contain_text("The set 6 piston pins keeps its other 2")
    act(phone.page)
    phone.page.wait_for_url("**/sets")
    kept = phone.store(HOLDS)
    counts = sorted(len(one["parts"]) for one in kept)
    assert counts == sorted(one["count"] for one in kept) == [2, 2, 4, 4, 6]
    held = [part for one in kept for part in one["parts"]]
    assert len(held) == len(set(held))
