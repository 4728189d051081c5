"""Accidental touches make no entry; meant ones make exactly one, and are answered three ways."""

import pytest
from journeys.bench_scene import JOINT, keep, kept, pulls
from journeys.hands import Hand
from playwright.sync_api import Page, expect

DROP = {"x": 60, "y": 300, "id": 5}
WET = "Screen is wet. Wipe it, or press longer"


@pytest.fixture(autouse=True)
def begun_run(bench: Page, hand: Hand) -> None:
    """The run is begun and its confirm hears."""
    hand.settle()
    hand.press(bench.locator(".act"))
    expect(bench.locator(".act")).to_contain_text("Confirm 1")
    hand.settle()


def causes(page: Page) -> list[str]:
    found: list[str] = page.evaluate(
        "import('/app/press.js').then(press => press.rejectedContacts().map(one => one.cause))"
    )
    return found


@pytest.mark.parametrize(
    ("length", "count", "cause"),
    [(40, 0, "too short"), (110, 1, None), (1700, 0, "too long")],
)
def test_a_press_counts_only_when_it_is_neither_a_drop_nor_a_sleeve(
    bench: Page, hand: Hand, length: int, count: int, cause: str | None
) -> None:
    hand.press(bench.locator(".act"), length)
    expect(bench.locator(".passes .now")).to_contain_text(f"{count} of 14")
    assert len(kept(bench, "pull")) == count
    assert causes(bench) == ([cause] if cause else [])


def test_a_press_that_slides_is_dropped(bench: Page, hand: Hand) -> None:
    hand.press(bench.locator(".act"), drift=20)
    assert causes(bench) == ["drift"]
    assert kept(bench, "pull") == []


def test_a_second_contact_beside_the_press_spoils_it(bench: Page, hand: Hand) -> None:
    hand.press(bench.locator(".act"), second=True)
    assert causes(bench) == ["two contacts"]
    assert kept(bench, "pull") == []


def test_a_kept_confirm_is_deaf_and_drawn_as_kept(bench: Page, hand: Hand) -> None:
    act = bench.locator(".act")
    hand.press(act)
    expect(act).to_have_attribute("data-press", "kept")
    hand.pass_time(160)
    hand.press(act)
    assert causes(bench) == ["just kept"]
    hand.settle()
    hand.press(act)
    expect(bench.locator(".passes .now")).to_contain_text("2 of 14")
    assert len(kept(bench, "pull")) == 2


def test_a_press_meant_for_what_was_there_before_a_scroll_is_dropped(
    bench: Page, hand: Hand
) -> None:
    point = hand.middle(bench.locator(".act"))
    bench.evaluate("document.dispatchEvent(new Event('scroll'))")
    hand.down(point)
    hand.pass_time(120)
    hand.up()
    assert causes(bench) == ["just scrolled"]
    assert kept(bench, "pull") == []


def test_a_wet_screen_wants_a_longer_press_until_ten_quiet_seconds(bench: Page, hand: Hand) -> None:
    for _ in range(3):
        hand.down(DROP)
        hand.cancel()
    expect(bench.get_by_text(WET)).to_be_visible()
    hand.pass_time(200)
    hand.press(bench.locator(".act"), 200)
    assert causes(bench) == ["screen is wet"]
    hand.pass_time(200)
    hand.press(bench.locator(".act"), 650)
    expect(bench.locator(".passes .now")).to_contain_text("1 of 14")
    expect(bench.get_by_text(WET)).to_be_hidden(timeout=12_000)
    hand.press(bench.locator(".act"))
    expect(bench.locator(".passes .now")).to_contain_text("2 of 14")
    assert len(kept(bench, "pull")) == 2


def test_the_click_after_a_press_does_not_reach_the_next_screen(bench: Page, hand: Hand) -> None:
    run = bench.evaluate(
        """async id => { const { openStore } = await import('/store/index.js');
        const slice = await (await openStore()).jointSlice(id);
        return slice.subject(id).facts.find(fact => fact.heading === 'begin').body.run }""",
        JOINT,
    )
    keep(bench, pulls("p0", range(1, 15), run=run, together=True))
    expect(bench.get_by_text("All 14 turned in by hand.")).to_be_visible()
    hand.settle()
    hand.press(bench.get_by_role("button", name="Pass 1: 20 lbf·ft"))
    expect(bench.locator(".act")).to_contain_text("Confirm 1")
    assert len(kept(bench, "pull")) == 14


def test_enter_confirms_once_per_key_up(bench: Page, hand: Hand) -> None:
    bench.locator("h1").focus()
    for _ in range(4):
        bench.keyboard.down("Enter")
    bench.keyboard.up("Enter")
    expect(bench.locator(".passes .now")).to_contain_text("1 of 14")
    hand.settle()
    bench.locator(".act").focus()
    bench.keyboard.press("Enter")
    expect(bench.locator(".passes .now")).to_contain_text("2 of 14")
    assert len(kept(bench, "pull")) == 2


def test_a_screen_reader_confirms_without_a_contact(bench: Page) -> None:
    bench.evaluate("document.querySelector('.act').click()")
    expect(bench.locator(".passes .now")).to_contain_text("1 of 14")


@pytest.mark.parametrize("off", [None, "sound", "vibration"])
def test_a_kept_pull_is_seen_heard_and_felt_and_each_can_be_off_alone(
    bench: Page, hand: Hand, off: str | None
) -> None:
    if off:
        bench.evaluate(
            "name => import('/app/settings.js').then(s => s.setSetting(name, false))", off
        )
    before = bench.evaluate("felt")
    hand.press(bench.locator(".act"))
    expect(bench.locator(".paint-edge")).to_have_count(1)
    expect(bench.locator("[aria-live=polite]").first).to_contain_text("Kept: bolt 1.")
    after = bench.evaluate("felt")
    assert (after["tones"] > before["tones"]) == (off != "sound")
    assert (after["buzzes"][len(before["buzzes"]) :] == ["[40]"]) == (off != "vibration")
