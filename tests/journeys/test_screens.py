"""Every screen of the frame on the demo workshop: measured, read aloud, walked by keyboard."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from journeys.demo_phone import SIZES, DemoPhone, demo_phone, size
from playwright.sync_api import Route

# Typed inside the page: a busy machine must not make a fast scanner look like slow hands.
WEDGE = """(text) => {
  for (const key of [...text, 'Enter'])
    document.activeElement.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true }));
}"""
SPOKEN = Path(__file__).parent / "spoken"
SCREENS = {
    "part": "/L/7K3MQ2RJ", "holder": "/L/2B8NK4WS", "bag": "/L/4TD09HXH", "scan": "/scan",
    "tonight": "/tonight", "find": "/find", "more": "/more", "settings": "/settings",
    "sync": "/sync", "devices": "/devices", "pair": "/pair", "labels": "/labels",
    "lost": "/no/such/place", "not here": "/part/0190a000-0000-7000-8000-000000000000",
    "wrong label": "/L/7K3MQ2R0", "blank label": "blank", "scrap": "scrap", "refused": "refused",
    "two verdicts": "two verdicts", "two places": "two places", "labels of a part": "label",
    "empty holder": "empty",
}  # fmt: skip
FOUND = """
const { part } = await import('/views/part.js');
const { holder } = await import('/views/holder.js');
const { code } = await import('/views/code.js');
const { check } = await import('/trade/label.js');
const found = {};
let scrapped = null;
for (const { id } of (await store.allOf('part')).all('part')) {
  const seen = part(await store.partSlice(id), id);
  if (seen.verdict.ask) found['two verdicts'] = `/part/${id}`;
  if (seen.lies_ask) found['two places'] = `/part/${id}`;
  if (seen.verdict.word === 'scrap') scrapped = id;
  if (seen.codes.includes('7K3MQ2RJ')) found.label = `/label/${id}`;
}
for (const { id } of (await store.allOf('holder')).all('holder'))
  if (holder(await store.holderSlice(id), id).rows.length === 0) found.empty = `/holder/${id}`;
for (const row of await store.refused()) found.refused = `/refused/${row.id}`;
const scrap = `0000SCR${check('0000SCR')}`;
await store.keep([{ heading: 'label', about: scrap, body: { marks: scrapped } }]);
found.scrap = `/L/${scrap}`;
found.blank = `/L/0000BAN${check('0000BAN')}`;
return found;
"""


@pytest.fixture(scope="module")
def phone(tmp_path_factory: pytest.TempPathFactory) -> Iterator[DemoPhone]:
    with demo_phone(tmp_path_factory.mktemp("screens")) as one:
        yield one


@pytest.fixture(scope="module")
def places(phone: DemoPhone) -> dict[str, str]:
    found = phone.store(FOUND)
    phone.sent()
    return {name: found.get(path, path) for name, path in SCREENS.items()}


@pytest.mark.parametrize("screen", SCREENS)
def test_the_demo_has_a_place_for_this_screen(places: dict[str, str], screen: str) -> None:
    assert places[screen].startswith("/")


@pytest.mark.parametrize("at", SIZES)
@pytest.mark.parametrize("screen", SCREENS)
def test_a_screen_holds_in_every_theme_and_with_larger_and_longer_words(
    phone: DemoPhone, places: dict[str, str], screen: str, at: str
) -> None:
    size(phone, at)
    phone.open(places[screen])
    assert phone.wrong(at, phone.jumps()) == {}


def test_sync_stands_still_while_the_computer_takes_its_time(
    phone: DemoPhone, places: dict[str, str]
) -> None:
    size(phone, "phone")
    held: list[Route] = []
    phone.page.route("**/api/v1/sync", lambda asked: held.append(asked))  # noqa: PLW0108
    phone.open("/sync")
    fetch = phone.page.get_by_role("button", name="Fetch what is new")
    fetch.wait_for()
    thinking = phone.jumps()
    for asked in held:
        asked.continue_()
    phone.page.unroute("**/api/v1/sync")
    fetch.wait_for()
    assert [*thinking, *phone.jumps()] == []


@pytest.mark.parametrize("screen", ["part", "holder", "tonight", "find", "more", "settings"])
def test_it_reads_aloud_as_kept(phone: DemoPhone, places: dict[str, str], screen: str) -> None:
    size(phone, "phone")
    phone.open(places[screen])
    kept = (SPOKEN / f"{screen}.txt").read_text("utf-8")
    assert kept == phone.aloud()


@pytest.mark.parametrize("screen", ["part", "tonight", "two places"])
def test_every_figure_has_source_and_both_units_beside_it(
    phone: DemoPhone, places: dict[str, str], screen: str
) -> None:
    phone.open(places[screen])
    assert phone.page.locator(".demo").is_visible()
    bare = phone.page.evaluate(
        """() => [...document.querySelectorAll('.values .n')].filter((figure) => {
          const card = figure.closest('.joint, .step');
          const unit = card?.textContent.match(/lbf·ft|lbf·in|kgf·m|N·m/g) ?? [];
          const degrees = figure.textContent.includes('°');
          const told = card?.querySelector('.source, .unsourced');
          return !told || (!degrees && new Set(unit).size < 2);
        }).map((figure) => figure.textContent)"""
    )
    assert bare == []


@pytest.mark.parametrize("screen", ["part", "holder", "more", "sync", "labels", "settings"])
def test_every_target_is_reached_by_tab_and_seen(
    phone: DemoPhone, places: dict[str, str], screen: str
) -> None:
    size(phone, "phone")
    phone.open(places[screen])
    count = phone.page.evaluate(
        """() => [...document.querySelectorAll('a[href], button, input, select, summary')]
          .filter((one) => !one.disabled && !one.hidden && one.getClientRects().length).length"""
    )
    reached = set()
    for _ in range(count + 2):
        phone.page.keyboard.press("Tab")
        seen = phone.page.evaluate(
            """() => {
              const one = document.activeElement;
              if (one === document.body) return null;
              const all = [...document.querySelectorAll('a[href], button, input, select, summary')];
              const { left, top, width, height } = one.getBoundingClientRect();
              const over = document.elementFromPoint(left + width / 2, top + height / 2);
              const outline = getComputedStyle(one.closest('.find-field') ?? one).outlineWidth;
              const clear = one.contains(over) || over?.contains(one);
              return { at: all.indexOf(one), outline, clear };
            }"""
        )
        if seen:
            reached.add(seen["at"])
            assert seen["clear"], f"target {seen['at']} lies behind something"
            assert seen["outline"] == "4px"
    assert len(reached) == count


def test_a_sheet_closes_by_escape_and_gives_the_focus_back(
    phone: DemoPhone, places: dict[str, str]
) -> None:
    phone.open(places["part"])
    note = phone.page.get_by_role("button", name="Note", exact=True)
    note.focus()
    phone.page.keyboard.press("Enter")
    phone.page.get_by_role("dialog").wait_for()
    phone.page.keyboard.press("Escape")
    phone.page.get_by_role("dialog").wait_for(state="detached")
    assert note.evaluate("(one) => one === document.activeElement")


def test_escape_goes_back_to_the_row_it_was_opened_from(phone: DemoPhone) -> None:
    phone.open("/more")
    row = phone.page.get_by_role("link", name="Settings")
    row.focus()
    phone.page.keyboard.press("Enter")
    phone.page.get_by_role("heading", name="Settings").wait_for()
    phone.page.keyboard.press("Escape")
    phone.page.get_by_role("heading", name="More").wait_for()
    phone.page.wait_for_function("document.activeElement?.getAttribute('href') === '/settings'")


def test_a_kept_note_is_said_once_and_politely(phone: DemoPhone, places: dict[str, str]) -> None:
    phone.open(places["part"])
    phone.page.evaluate(
        """() => {
          window.said = [];
          for (const region of document.querySelectorAll('[aria-live]'))
            new MutationObserver(() => window.said.push([region.ariaLive, region.textContent]))
              .observe(region, { childList: true, characterData: true, subtree: true });
        }"""
    )
    phone.page.get_by_role("button", name="Note", exact=True).click()
    phone.page.get_by_label("What should be known?").fill("The dowel is a loose fit.")
    phone.page.get_by_role("button", name="Keep the note").click()
    phone.page.get_by_text("The dowel is a loose fit.").wait_for()
    assert phone.page.evaluate("window.said") == [["polite", "Kept."]]
    assert phone.page.get_by_text("The note is kept.").is_visible()


@pytest.mark.parametrize("screen", ["tonight", "find", "settings", "holder", "sync"])
def test_a_wedge_scanner_opens_the_record_from_here(
    phone: DemoPhone, places: dict[str, str], screen: str
) -> None:
    phone.open(places[screen])
    phone.page.evaluate(WEDGE, "HTTPS://BENCH.LOCAL:8443/L/7K3MQ2RJ")
    phone.page.get_by_role("heading", name="cylinder head").wait_for()


@pytest.mark.parametrize(
    ("row", "says"),
    [
        ("Devices", "The list of devices is on the computer"),
        ("Print labels", "drawn by the computer"),
    ],
)
def test_without_a_network_it_says_what_the_computer_is_needed_for(
    phone: DemoPhone, row: str, says: str
) -> None:
    phone.open("/more")
    phone.page.get_by_role("link", name=row).click()
    phone.settle()
    phone.page.context.set_offline(True)
    try:
        phone.open("/more")
        phone.page.get_by_role("link", name=row).click()
        phone.page.get_by_text(says).wait_for()
        assert phone.page.get_by_role("button", name="Look again").is_visible()
    finally:
        phone.page.context.set_offline(False)


def test_a_file_that_did_not_come_is_asked_for_again(phone: DemoPhone) -> None:
    browser = phone.page.context.browser
    assert browser
    stranger = browser.new_context()
    try:
        page = stranger.new_page()
        page.route("**/app/icons.js", lambda route: route.abort(), times=1)
        page.goto(f"{phone.house.address}/more")
        page.get_by_role("heading", name="More").wait_for()
    finally:
        stranger.close()


def test_typed_words_stay_words_in_a_field(phone: DemoPhone) -> None:
    phone.open("/find")
    field = phone.page.get_by_role("searchbox")
    field.type("head bolts")
    phone.page.keyboard.press("Enter")
    assert field.input_value() == "head bolts"


def test_hands_left_and_gloved_change_the_targets(phone: DemoPhone, places: dict[str, str]) -> None:
    size(phone, "phone")
    phone.open("/settings")
    phone.page.get_by_role("button", name="Left").click()
    phone.page.get_by_role("group", name="Gloves").get_by_role("button", name="On").click()
    assert phone.page.locator(".doors a").last.inner_text() == "Scan"
    phone.open(places["part"])
    assert phone.measured(desk=False, touch=72, gap=16) == []
    phone.open("/settings")
    phone.page.get_by_role("button", name="Right").click()
    phone.page.get_by_role("group", name="Gloves").get_by_role("button", name="Off").click()
