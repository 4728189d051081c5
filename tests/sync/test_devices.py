"""Phones that are shut out, copied, wrong about the time, or open twice."""

import json
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Browser, Page, Route
from pwa.bare import bare_page, tables
from sync.conftest import Phone
from sync.evening import all_equal, come_home, keep, pair, plant
from sync.proxy import Line
from sync.served import Home

YEAR_MS = 31_536_000_000
PHOTO = """() => store.keepPhoto(
  new Blob([new Uint8Array([255, 216, 255, 7])], {type: 'image/jpeg'}))"""


def test_what_was_recorded_before_the_first_pairing_is_adopted(
    home: Home, phone: Phone, tmp_path: Path
) -> None:
    page = phone(paired=False)
    kept = keep(page, 5)
    before = tables(page)["meta"]["clock"]["device"]
    pair(page, home)
    kept += keep(page, 2)
    all_equal(home, tmp_path, [page], kept)
    devices = [entry["device"] for _, _, entry in log(home)]
    assert devices.count(before) == 5


def log(home: Home) -> list[tuple[int, str | None, dict[str, str]]]:
    """The log, its entries read."""
    return [(seq, order, json.loads(text)) for seq, order, text in home.log()]


@pytest.mark.parametrize("years", [1, -1])
def test_a_phone_whose_clock_is_a_year_off_wins_for_no_year(
    years: int, home: Home, phone: Phone, tmp_path: Path
) -> None:
    wrong = f"{{ const now = Date.now; Date.now = () => now() + {years * YEAR_MS}; }}"
    off, right = phone(script=wrong, paired=False, name="off"), phone(name="right")
    kept = [off.evaluate("() => store.keep([window.part('part-1', {name: 'by off'})])")[0]["id"]]
    pair(off, home)
    come_home(off)
    come_home(right)
    kept += [right.evaluate("() => store.keep([window.part('part-1', {name: 'later'})])")[0]["id"]]
    all_equal(home, tmp_path, [off, right], kept)
    name = "async () => (await store.partSlice('part-1')).subject('part-1').fields.name.value"
    assert [page.evaluate(name) for page in (off, right)] == ["later", "later"]
    kept += [off.evaluate("() => store.keep([window.part('part-1', {name: 'last'})])")[0]["id"]]
    all_equal(home, tmp_path, [off, right], kept)
    assert [page.evaluate(name) for page in (off, right)] == ["last", "last"]


def test_a_phone_shut_out_keeps_what_waits_and_brings_it_when_paired_again(
    home: Home, phone: Phone, tmp_path: Path
) -> None:
    page, other = phone(), phone(name="tablet")
    kept = keep(page, 3)
    come_home(page)
    home.store.revoke(page.evaluate("() => store.device().device"))
    kept += keep(page, 4)
    assert come_home(page)["paired"] == "revoked"
    assert page.evaluate("() => window.state().waiting") == 4
    saved = page.evaluate("async () => (await store.saveToFile()).size")
    assert saved > 1000
    pair(page, home)
    all_equal(home, tmp_path, [page, other], kept)


def test_what_the_old_key_is_told_says_nothing_of_the_new_one(
    home: Home, phone: Phone, tmp_path: Path
) -> None:
    page = phone()
    kept = keep(page, 3)
    come_home(page)
    home.store.revoke(page.evaluate("() => store.device().device"))
    held: list[Route] = []

    def hold(route: Route) -> None:
        held.append(route)

    page.route("**/api/v1/sync", hold, times=1)
    with page.expect_request("**/api/v1/sync"):
        kept += keep(page, 1)
    pair(page, home)
    held[0].continue_()
    all_equal(home, tmp_path, [page], kept)
    assert page.evaluate("() => window.state().paired") == "yes"


def test_a_copied_profile_is_two_phones_with_one_key_and_loses_nothing(
    chrome: Browser, home: Home, line: Line, phone: Phone, tmp_path: Path
) -> None:
    page = phone()
    kept = keep(page, 3)
    come_home(page)
    line.down = True
    kept += keep(page, 3, "waiting")
    copy = bare_page_with(chrome, line.address, tables(page))
    kept += keep(page, 4, "a") + keep(copy, 4, "b")
    line.down = False
    all_equal(home, tmp_path, [page, copy], kept)


def bare_page_with(chrome: Browser, address: str, rows: dict[str, Any]) -> Page:
    """A phone whose storage was copied from another."""
    line_down = bare_page(chrome.new_context(), address)
    line_down.evaluate(
        """async (rows) => {
          await window.store.close();
          const db = await window.openDB('witnessmark');
          for (const [name, found] of Object.entries(rows)) {
            const table = db.transaction(name, 'readwrite').objectStore(name);
            for (const [key, row] of Object.entries(found))
              await (table.keyPath ? table.put(row) : table.put(row, key));
          }
          db.close();
          await window.begin();
        }""",
        rows,
    )
    return line_down


def test_two_tabs_write_and_only_one_of_them_syncs(
    home: Home, line: Line, phone: Phone, tmp_path: Path
) -> None:
    page = phone()
    other = page.context.new_page()
    other.goto(f"{line.address}/bare")
    other.wait_for_function("window.isReady")
    other.evaluate("() => window.begin()")
    work = "async () => { for (let n = 0; n < 15; n += 1) await store.keep([window.pull('f1')]); }"
    page.evaluate(f"() => {{ window.work = ({work})(); }}")
    other.evaluate(work)
    page.evaluate("() => window.work")
    kept = list(tables(page)["entry"])
    assert len(kept) == 30
    all_equal(home, tmp_path, [page, other], kept)
    numbers = sorted(entry["n"] for _, _, entry in log(home) if entry["id"] in kept)
    assert numbers == list(range(1, 31))


def test_another_workshop_opens_a_second_store_and_hears_nothing_of_the_first(
    home: Home, phone: Phone, tmp_path: Path
) -> None:
    page = phone()
    mine = keep(page, 3)
    come_home(page)
    home.store.close()
    stranger = home.store
    with stranger.engine.begin() as connection:
        workshop = stranger.add_workshop(connection, "The club")
    code = stranger.pairing_code(workshop).code
    page.evaluate("code => store.pair({code, name: 'guest'})", code)
    theirs = keep(page, 2, "club")
    assert come_home(page)["agreed"] == 2
    held = stranger.log(workshop, 0, 100).page.rows
    assert {text.split('"id":"')[1][:36] for _, _, text in held} == set(theirs)
    assert not set(mine) & set(theirs)
    pair(page, home, "again")
    all_equal(home, tmp_path, [page], mine)


def test_refused_entries_are_counted_nowhere_once_given_up(
    home: Home, phone: Phone, tmp_path: Path
) -> None:
    page, other = phone(), phone(name="tablet")
    kept = keep(page, 3)
    plant(page, "{ body: { run: 'r' } }")
    come_home(page)
    [row] = page.evaluate("() => store.refused()")
    page.evaluate("id => store.sendAgain(id)", row["id"])
    come_home(page)
    assert len(page.evaluate("() => store.refused()")) == 1
    page.evaluate("id => store.giveUp(id, 'a slip of the thumb')", row["id"])
    all_equal(home, tmp_path, [page, other], kept)


def test_a_photo_follows_its_entry_to_the_other_phone_and_never_holds_it_up(
    home: Home, line: Line, phone: Phone, tmp_path: Path
) -> None:
    page, other = phone(), phone(name="tablet")
    other.evaluate("() => store.setSetting('photo-limit', 0)")
    sha = page.evaluate(PHOTO)
    draft = f"{{heading: 'photo', about: 'part-1', body: {{photo: '{sha}'}}}}"
    kept = [page.evaluate(f"() => store.keep([{draft}])")[0]["id"]]
    all_equal(home, tmp_path, [page, other], kept)
    page.wait_for_function("() => window.state().photosWaiting === 0")
    assert tables(other)["photo"][sha]["state"] == "away"
    assert other.evaluate("async sha => (await store.photo(sha)).size", sha) == 4
    assert tables(other)["photo"][sha]["state"] == "held"
    other.evaluate("() => store.setSetting('photo-limit', 1000)")
    assert other.evaluate("async () => store.photo('0'.repeat(64))") is None


def test_a_picture_the_computer_will_not_take_is_shown_and_holds_up_no_other(
    home: Home, phone: Phone, tmp_path: Path
) -> None:
    page = phone()
    bad = page.evaluate("() => store.keepPhoto(new Blob(['no picture'], {type: 'image/jpeg'}))")
    good = page.evaluate(PHOTO)
    come_home(page)
    page.wait_for_function("() => window.state().photosWaiting === 0")
    assert [row["photo"] for row in page.evaluate("() => store.refused()")] == [bad]
    assert tables(page)["photo"][good]["state"] == "held"
    page.evaluate("sha => store.giveUp(sha, 'a slip')", bad)
    assert page.evaluate("() => store.refused()") == []
