"""From a bag of 32 used pushrods to 16 in the engine, offline, and then on the computer.

Taps and seconds a piece are printed and kept as properties of the test.
"""

import re
from collections.abc import Callable, Iterator
from pathlib import Path
from time import monotonic

import pytest
from journeys import rods
from journeys.demo_phone import DemoPhone, demo_phone
from journeys.hands import Hand
from playwright.sync_api import Page, expect

Note = Callable[[str, object], None]
MOST_TAPS = 4


@pytest.fixture
def phone(tmp_path: Path) -> Iterator[DemoPhone]:
    with demo_phone(tmp_path) as one:
        one.store(rods.KEEP, [*rods.bag(), *rods.measured()])
        one.sent()
        one.page.evaluate("navigator.serviceWorker.ready")
        one.page.get_by_text("Ready for the garage").wait_for(timeout=60_000)
        yield one


class Thumb:
    """Presses what is seen, and counts."""

    def __init__(self, page: Page) -> None:
        self.page, self.hand, self.taps = page, Hand(page), 0

    def key(self, place: str, words: str | re.Pattern[str]) -> None:
        found = self.page.locator(place).filter(has_text=words).first
        found.wait_for()
        self.hand.settle()
        self.hand.press(found)
        self.taps += 1


def judge(thumb: Thumb, number: int) -> int:
    """One piece under the lamp; gives the taps it took."""
    expect(thumb.page.locator("h1")).to_contain_text(f"ong pushrod {number} of {rods.MANY}")
    before = thumb.taps
    if number in rods.worn():
        thumb.key(".looks button", "No")
        thumb.key(".judge button", "Scrap")
        thumb.key(".reasons button", "worn ends")
    else:
        thumb.key(".looks button", "Yes")
    thumb.key(".act", "Keep")
    return thumb.taps - before


def narrowest() -> float:
    """The least spread by trying every run of neighbours; on one measure no other can be less."""
    good = sorted(
        float(length) for n, length in enumerate(rods.lengths(), 1) if n not in rods.worn()
    )
    return min(last - first for first, last in zip(good, good[rods.WANTED - 1 :], strict=False))


READ = """
const set = (await store.allOf('set')).all('set')[0];
const parts = await store.allOf('part');
const said = (name) => set.fields[name].value;
const stands = (one) => one.heading === 'verdict' && one.stands;
const pieces = said('pieces').map(({ part }) => part);
return {
  pieces,
  says: said('says'),
  spares: said('spares'),
  places: pieces.map((id) => parts.subject(id).fields.for?.value ?? null),
  verdicts: said('spares').map((id) => parts.subject(id).facts.find(stands).body.verdict),
};
"""


def test_the_best_sixteen_of_thirty_two_pushrods_are_chosen_offline_and_seen_on_the_computer(
    phone: DemoPhone, record_property: Note
) -> None:
    page, house = phone.page, phone.house
    port = int(house.address.rsplit(":", 1)[1])
    house.kill()
    phone.open(f"/inspect/{rods.BAG}")
    thumb, begun = Thumb(page), monotonic()
    taps = {number: judge(thumb, number) for number in range(1, rods.MANY + 1)}
    expect(page.locator("h1")).to_have_text("All looked at.")
    seconds = (monotonic() - begun) / rods.MANY
    good = [taken for number, taken in taps.items() if number not in rods.worn()]
    record_property("taps for a good piece", max(good))
    record_property("seconds a piece", round(seconds, 1))
    print(f"taps for a good piece: {max(good)}, for all: {thumb.taps}; {seconds:.1f} s a piece")
    assert max(good) <= MOST_TAPS

    phone.open("/sets")
    thumb.key(".row", "long pushrod")
    phone.settle()
    expect(page.locator(".count .fig")).to_have_text(str(rods.WANTED))
    spread = narrowest()
    expect(page.locator(".set-says")).to_contain_text(f"These 16 span {spread:.2f} mm.")
    thumb.key(".chips button", "Keep as spares, ranked")
    thumb.key(".act", "Keep this set")
    page.wait_for_url(re.compile(r"/set/[0-9a-f-]{36}"))
    expect(page.locator("h1")).to_have_text("16 long pushrods")

    kept = phone.store(READ)
    length = {rods.rod(n): float(one) for n, one in enumerate(rods.lengths(), 1)}
    chosen = [length[piece] for piece in kept["pieces"]]
    assert max(chosen) - min(chosen) == pytest.approx(spread)
    assert not set(kept["pieces"]) & {rods.rod(n) for n in rods.worn()}
    assert sorted(kept["places"], key=int) == [str(n) for n in range(1, rods.WANTED + 1)]
    assert len(kept["spares"]) == rods.MANY - rods.WORN - rods.WANTED
    assert set(kept["verdicts"]) == {"spare"}

    house.start(port)
    phone.sent()
    browser = page.context.browser
    assert browser
    other = browser.new_context(viewport={"width": 1280, "height": 800}, locale="en-GB")
    other.set_default_timeout(20_000)
    desk = other.new_page()
    desk.goto(f"{house.address}/pair#{house.pairing()['code']}")
    desk.get_by_role("link", name="To the bench").or_(
        desk.get_by_role("link", name="Go on")
    ).wait_for()
    desk.goto(f"{house.address}/sync")
    desk.get_by_text("Both hold the same").wait_for(timeout=60_000)
    desk.goto(f"{house.address}/sets")
    desk.get_by_role("link", name=re.compile("16 long pushrods")).click()
    expect(desk.get_by_role("heading", level=1)).to_have_text("16 long pushrods")
    expect(desk.locator("main")).to_contain_text(kept["says"])
    other.close()
