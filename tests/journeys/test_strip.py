"""Bag and label: a donor is taken apart offline, part after part, in few taps."""

from collections.abc import Callable
from typing import Any

from journeys.bench_scene import described, kept
from journeys.hands import Hand
from playwright.sync_api import Page, expect

Opener = Callable[..., Page]
DONOR = "11111111-0000-7000-8000-000000000201"
LIFTER = "11111111-0000-7000-8000-000000000202"
CAP = "11111111-0000-7000-8000-000000000203"
BLANKS = ("7K3MQ2RJ", "VT4CX27V", "NW5JW1T8", "XKPDF8P9")


def scene() -> list[dict[str, Any]]:
    return [
        described("donor", DONOR, name="Donor 2", engine="Kelderby 28"),
        described("kind", LIFTER, name="Lifter", plural="lifters", own_place=True),
        described("kind", CAP, name="Main cap", plural="main caps", own_place=True),
    ]


class Taps:
    """A hand that counts."""

    def __init__(self, page: Page) -> None:
        self.page, self.hand, self.count = page, Hand(page), 0

    def press(self, name: str) -> None:
        self.hand.settle()
        self.hand.press(self.page.get_by_role("button", name=name, exact=True))
        self.count += 1

    def keep(self) -> None:
        self.hand.settle()
        self.hand.press(self.page.locator(".act"))
        self.count += 1


def wedge(page: Page, code: str) -> None:
    """A blank label is read, and stands in the form."""
    read(page, code)
    label = page.get_by_role("button", name=f"Label {code[:4]} {code[4:]}", exact=True)
    label.wait_for()


def read(page: Page, code: str) -> None:
    """A reader that types a whole label faster than hands can."""
    page.evaluate(
        """text => { for (const key of [...text, 'Enter'])
          document.body.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true })); }""",
        f"https://workshop.local:8443/L/{code}",
    )


def subjects(page: Page, donor: str) -> list[dict[str, Any]]:
    """The parts of a donor as they stand, oldest first."""
    found: list[dict[str, Any]] = page.evaluate(
        """async donor => { const { openStore } = await import('/store/index.js');
        const store = window.benchStore ?? (window.benchStore = await openStore());
        const parts = (await store.donorSlice(donor)).all('part');
        return parts.map(part => ({ id: part.id, ...Object.fromEntries(
          Object.entries(part.fields).map(([name, one]) => [name, one.value])) })); }""",
        donor,
    )
    return sorted(found, key=lambda part: str(part["id"]))


def at_the_donor(open_bench: Opener) -> tuple[Page, Taps]:
    page = open_bench(scene(), path="/strip")
    taps = Taps(page)
    taps.press("Donor 2")
    taps.keep()
    expect(page.locator("h1")).to_contain_text("Donor 2")
    page.context.set_offline(True)
    return page, taps


def test_parts_are_bagged_offline_in_two_taps_each_with_a_wedge_reader(
    open_bench: Opener, record_property: Any
) -> None:
    page, taps = at_the_donor(open_bench)
    wedge(page, BLANKS[0])
    taps.press("Lifter")
    taps.press("cylinder 1 intake")
    taps.keep()
    expect(page.get_by_text("1 part", exact=True).first).to_be_visible()
    taps.count = 0
    for code, place in zip(
        BLANKS[1:], ("cylinder 2 intake", "cylinder 3 intake", "cylinder 3 exhaust"), strict=True
    ):
        wedge(page, code)
        taps.press(place)
        expect(page.locator(".act")).to_contain_text(f"Lifter, {place}")
        taps.keep()
        expect(page.get_by_role("link", name=f"Lifter {place}")).to_be_visible()
    record_property("taps a part", taps.count / 3)
    assert taps.count == 6
    parts = subjects(page, DONOR)
    assert [part["from"] for part in parts] == [
        "cylinder 1 intake", "cylinder 2 intake", "cylinder 3 intake", "cylinder 3 exhaust",
    ]  # fmt: skip
    assert {part["kind"] for part in parts} == {LIFTER}
    names = page.locator(".notes li b").all_inner_texts()
    assert names[0] == "Lifter cylinder 3 exhaust"
    assert names[-1] == "Lifter cylinder 1 intake"
    marked = page.evaluate(
        """async code => { const { openStore } = await import('/store/index.js');
        return (await window.benchStore.codeSlice(code)).subject(code).facts[0].body.marks; }""",
        BLANKS[3],
    )
    assert marked == parts[3]["id"]


def test_a_part_without_a_label_and_another_kind_have_their_own_row_of_places(
    open_bench: Opener,
) -> None:
    page, taps = at_the_donor(open_bench)
    taps.press("Main cap")
    taps.press("Another place")
    page.get_by_label("Place in your words").fill("main cap 2")
    taps.keep()
    expect(page.get_by_text("no label")).to_be_visible()
    expect(page.get_by_role("button", name="main cap 3", exact=True)).to_be_visible()
    taps.press("Lifter")
    expect(page.get_by_role("button", name="cylinder 1 intake", exact=True)).to_be_visible()
    taps.press("Main cap")
    expect(page.get_by_role("button", name="main cap 3", exact=True)).to_be_visible()
    (part,) = subjects(page, DONOR)
    assert part["name"] == "Main cap main cap 2"
    assert part["quantity"] == 1


def test_a_kill_in_the_middle_loses_nothing_that_was_said(open_bench: Opener) -> None:
    page, taps = at_the_donor(open_bench)
    taps.press("Lifter")
    taps.press("lobe 1")
    taps.keep()
    wedge(page, BLANKS[0])
    taps.press("lobe 2")
    taps.press("One more")
    page.context.set_offline(False)
    page.reload()
    expect(page.locator("h1")).to_contain_text("Donor 2")
    expect(page.get_by_role("button", name="Label 7K3M Q2RJ")).to_be_visible()
    expect(page.get_by_role("button", name="lobe 2", exact=True)).to_have_attribute(
        "aria-pressed", "true"
    )
    expect(page.get_by_role("link", name="Lifter lobe 1")).to_be_visible()
    taps.keep()
    expect(page.get_by_role("link", name="Lifter lobe 2")).to_be_visible()
    assert [part["quantity"] for part in subjects(page, DONOR)] == [1, 2]


def test_a_bagged_part_is_struck_out_with_its_label(open_bench: Opener) -> None:
    page, taps = at_the_donor(open_bench)
    wedge(page, BLANKS[0])
    taps.press("Lifter")
    taps.press("lobe 1")
    taps.keep()
    taps.press("Strike out: Lifter lobe 1")
    hand = Hand(page)
    hand.settle()
    hand.press(page.locator("dialog .chips button").first)
    hand.settle()
    hand.press(page.locator("dialog .act"))
    expect(page.locator(".notes .out")).to_contain_text("Lifter lobe 1")
    expect(page.get_by_text("nothing yet").first).to_be_visible()
    assert subjects(page, DONOR) == []
    wedge(page, BLANKS[0])
    taps.press("lobe 1")
    taps.keep()
    expect(page.locator(".notes li")).to_have_count(2)
    assert [part["from"] for part in subjects(page, DONOR)] == ["lobe 1"]


def test_a_label_that_marks_something_is_not_taken(open_bench: Opener) -> None:
    page, taps = at_the_donor(open_bench)
    wedge(page, BLANKS[0])
    taps.press("Lifter")
    taps.keep()
    expect(page.get_by_role("link", name="Lifter")).to_be_visible()
    read(page, BLANKS[0])
    expect(page.locator(".tell")).to_have_text("This label marks Lifter. Take a blank one.")
    expect(page.get_by_role("button", name="Scan the label")).to_be_visible()


def test_a_typed_label_leads_to_the_next_label_until_one_goes_without(open_bench: Opener) -> None:
    page, taps = at_the_donor(open_bench)
    taps.press("Scan the label")
    page.get_by_text("There is no camera here.").wait_for()
    page.get_by_role("button", name="Type it").last.click()
    page.locator(".typed-code input").fill(BLANKS[0])
    taps.keep()
    page.get_by_role("button", name=f"Label {BLANKS[0][:4]} {BLANKS[0][4:]}").wait_for()
    taps.press("Lifter")
    taps.press("lobe 1")
    taps.keep()
    taps.press("Without a label")
    expect(page.get_by_role("link", name="Lifter lobe 1")).to_be_visible()
    taps.press("lobe 2")
    taps.keep()
    expect(page.get_by_role("link", name="Lifter lobe 2")).to_be_visible()
    expect(page.get_by_role("button", name="Scan the label")).to_be_visible()


def test_a_photo_is_kept_with_its_part(open_bench: Opener) -> None:
    page, taps = at_the_donor(open_bench)
    picture = page.screenshot()
    page.locator("input[type=file]").set_input_files(
        {"name": "part.png", "mimeType": "image/png", "buffer": picture}
    )
    expect(page.get_by_text("1 photo taken.")).to_be_visible()
    taps.press("Lifter")
    taps.press("lobe 1")
    taps.keep()
    page.get_by_role("link", name="Lifter lobe 1").wait_for()
    (part,) = subjects(page, DONOR)
    assert len(kept(page, "photo", part["id"])) == 1


def test_a_photo_that_is_ready_after_its_part_was_kept_stays_with_that_part(
    open_bench: Opener,
) -> None:
    page, taps = at_the_donor(open_bench)
    taps.press("Lifter")
    taps.press("lobe 1")
    page.evaluate(
        """() => { const make = window.createImageBitmap;
        const held = new Promise(done => { window.letGo = done; });
        window.createImageBitmap = async (...given) => { await held; return make(...given); }; }"""
    )
    page.locator("input[type=file]").set_input_files(
        {"name": "part.png", "mimeType": "image/png", "buffer": page.screenshot()}
    )
    taps.keep()
    page.get_by_role("link", name="Lifter lobe 1").wait_for()
    page.evaluate("letGo()")
    (part,) = subjects(page, DONOR)
    page.wait_for_timeout(1000)
    assert len(kept(page, "photo", part["id"])) == 1
    assert page.get_by_text("1 photo taken.").count() == 0


def test_the_donor_is_made_on_the_spot_and_has_a_page(open_bench: Opener) -> None:
    page = open_bench([], path="/strip")
    page.get_by_label("Name of the donor").fill("A boat engine")
    taps = Taps(page)
    taps.keep()
    expect(page.locator("h1")).to_contain_text("A boat engine")
    taps.press("All kinds")
    page.get_by_label("Name or word").fill("rocker a")
    taps.press("Start from: Rocker arm")
    taps.press("intake")
    taps.keep()
    expect(page.get_by_role("link", name="Rocker arm intake")).to_be_visible()
    page.goto(page.url.replace("/strip", "/donors"))
    page.get_by_role("link", name="A boat engine").click()
    expect(page.get_by_role("heading", level=1)).to_have_text("A boat engine")
    expect(page.get_by_text("1 to look at").first).to_be_visible()
    row = page.get_by_role("link", name="Rocker arm intake not looked")
    expect(row).to_contain_text("was at intake")
    page.get_by_role("link", name="Strip on").click()
    expect(page.get_by_text("1 part", exact=True).first).to_be_visible()
