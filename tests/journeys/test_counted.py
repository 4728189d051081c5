"""A counted part becomes single pieces with one press, and is counted together again."""

from collections.abc import Callable
from typing import Any

from journeys.bench_scene import BAG, described, keep, kept
from journeys.hands import press
from playwright.sync_api import Page, expect

Opener = Callable[..., Page]
RODS = "11111111-0000-7000-8000-000000000301"
ROD = "11111111-0000-7000-8000-000000000302"
DONOR = "11111111-0000-7000-8000-000000000303"
MEASURED = {"value": "187.02", "unit": "mm"}


def scene(count: int = 16) -> list[dict[str, Any]]:
    criteria = [{"id": "c1", "asks": "Ends even and round?"}]
    rods = {"name": "Pushrod", "kind": ROD, "quantity": count, "donor": DONOR, "from": "left head"}
    return [
        described("kind", ROD, name="Pushrod", plural="pushrods", criteria=criteria),
        described("donor", DONOR, name="Donor 2"),
        described("holder", BAG, name="Bag of pushrods", form="bag"),
        described("part", RODS, **rods),
        {"heading": "place", "about": RODS, "body": {"in": BAG}},
    ]


def count_of(page: Page) -> str:
    section = page.locator("section", has=page.get_by_role("heading", name="Counted and single"))
    return section.locator(".sect .soft").inner_text()


def piece(page: Page, number: int | str) -> dict[str, Any]:
    found: dict[str, Any] = page.evaluate(
        """async id => { const { openStore } = await import('/store/index.js');
        const store = window.benchStore ?? (window.benchStore = await openStore());
        const part = (await store.partSlice(id)).subject(id);
        return { hidden: part.hidden, ...Object.fromEntries(
          Object.entries(part.fields).map(([name, one]) => [name, one.value])) }; }""",
        f"{RODS}-{number}",
    )
    return found


def test_sixteen_become_single_with_one_press_and_are_judged_in_order(open_bench: Opener) -> None:
    page = open_bench(scene(), path=f"/part/{RODS}")
    page.context.set_offline(True)
    press(page, "Judge them singly")
    expect(page.get_by_text("0 left, 16 single")).to_be_visible()
    assert piece(page, 16) == {
        "hidden": False, "name": "Pushrod 16", "kind": ROD, "donor": DONOR, "from": "left head",
        "quantity": 1, "bag": RODS, "number": 16,
    }  # fmt: skip
    expect(page.get_by_role("link", name="Inspect no verdict yet")).to_have_count(0)
    page.context.set_offline(False)
    page.goto(page.url.replace(f"/part/{RODS}", f"/holder/{BAG}"))
    expect(page.locator(".act")).to_contain_text("16 of")
    page.locator(".act").click()
    expect(page.locator("h1")).to_contain_text("Pushrod 1")
    page.locator(".pieces").wait_for()
    assert page.locator(".pieces svg").count() == 16


def test_those_nobody_judged_go_back_and_the_others_stay_single(open_bench: Opener) -> None:
    page = open_bench(scene(4), path=f"/part/{RODS}")
    press(page, "Judge them singly")
    expect(page.get_by_text("0 left, 4 single")).to_be_visible()
    keep(page, [{"heading": "verdict", "about": f"{RODS}-2", "body": {"verdict": "scrap"}}])
    press(page, "Count 3 of them together again")
    expect(page.get_by_text("3 left, 1 single")).to_be_visible()
    assert piece(page, 1)["hidden"]
    assert not piece(page, 2)["hidden"]
    press(page, "Judge them singly")
    expect(page.get_by_text("0 left, 4 single")).to_be_visible()
    assert not piece(page, "1.2")["hidden"]
    page.locator("summary", has_text="The single pieces").click()
    expect(page.get_by_role("link", name="Pushrod 2 scrap")).to_be_visible()


def test_a_single_part_is_not_asked_to_be_judged_singly(open_bench: Opener) -> None:
    page = open_bench(scene(1), path=f"/part/{RODS}")
    expect(page.locator("h1")).to_have_text("Pushrod")
    expect(page.get_by_role("button", name="Judge them singly")).to_have_count(0)


def test_what_another_device_judged_while_it_went_back_is_told(open_bench: Opener) -> None:
    page = open_bench(scene(3), path=f"/part/{RODS}")
    press(page, "Judge them singly")
    expect(page.get_by_text("0 left, 3 single")).to_be_visible()
    press(page, "Count them together again")
    expect(page.get_by_text("3 left, 0 single")).to_be_visible()
    seen = {"verdict": "use", "readings": [{"measure": "m1", "value": MEASURED}], "note": "a nick"}
    found = "018d0000-0000-7000-8000-0000000000aa"
    judged = {"verdict": "use", "inspection": found}
    two = f"{RODS}-2"
    keep(page, [{"heading": "inspection", "about": two, "id": found, "body": seen}])
    keep(page, [{"heading": "verdict", "about": two, "body": judged}])
    keep(page, [{"heading": "note", "about": two, "body": {"text": "rings dull"}}])
    page.reload()
    expect(page.get_by_text("Piece 2 was judged on another device")).to_be_visible()
    press(page, "Make it single again")
    expect(page.get_by_text("2 left, 1 single")).to_be_visible()
    page.locator("summary", has_text="The single pieces").click()
    expect(page.get_by_role("link", name="Pushrod 2 use")).to_be_visible()
    (looked,) = kept(page, "inspection", f"{two}.2")
    (verdict,) = kept(page, "verdict", f"{two}.2")
    (note,) = kept(page, "note", f"{two}.2")
    assert (looked["body"], note["body"]) == (seen, {"text": "rings dull"})
    assert verdict["body"] == {**judged, "inspection": looked["id"]}


def test_pieces_made_again_elsewhere_after_they_went_back_are_told_and_made_anew(
    open_bench: Opener,
) -> None:
    page = open_bench(scene(3), path=f"/part/{RODS}")
    press(page, "Judge them singly")
    expect(page.get_by_text("0 left, 3 single")).to_be_visible()
    press(page, "Count them together again")
    expect(page.get_by_text("3 left, 0 single")).to_be_visible()
    ids = [f"{RODS}-{n}" for n in (1, 2, 3)]
    made = {"name": "Pushrod", "kind": ROD, "bag": RODS}
    again = [described("part", one, **made, number=n) for n, one in enumerate(ids, 1)]
    taken = {"heading": "take", "about": RODS, "body": {"count": 3, "pieces": ids}}
    keep(page, [*again, taken, {"heading": "verdict", "about": ids[1], "body": {"verdict": "use"}}])
    page.reload()
    expect(page.get_by_text("Piece 2 was judged on another device")).to_be_visible()
    press(page, "Make it single again")
    expect(page.get_by_text("was judged on another device")).to_have_count(0)
    expect(page.get_by_text("0 left, 3 single")).to_be_visible()
    (verdict,) = kept(page, "verdict", f"{ids[1]}.2")
    assert verdict["body"] == {"verdict": "use"}
