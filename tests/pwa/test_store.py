"""What the store of the phone promises, in the database of a real browser."""

import hashlib
import io
import json
import zipfile
from typing import Any

from playwright.sync_api import BrowserContext, Page
from pwa.bare import HOME, bare_page, tables


def kept(page: Page, drafts: str) -> list[dict[str, Any]]:
    found: list[dict[str, Any]] = page.evaluate(f"() => window.store.keep({drafts})")
    return found


def outcome(page: Page, work: str) -> dict[str, Any]:
    """What a piece of work threw: code, sentence, next step."""
    found: dict[str, Any] = page.evaluate(
        f"async () => {{ try {{ await ({work}); return {{}}; }} catch (error) {{"
        " return { code: error.code, says: error.says, next: error.next }; } }"
    )
    return found


def test_what_was_kept_is_there_in_a_new_tab_and_waits(context: BrowserContext, page: Page) -> None:
    entries = kept(page, "[window.part('part-1', {name: 'Bolt'}), window.pull('f1')]")
    page.close()
    again = bare_page(context)
    assert list(tables(again)["outbox"]) == [entry["id"] for entry in entries]
    assert again.evaluate("() => window.state().waiting") == 2
    name = "async () => (await store.partSlice('part-1')).subject('part-1').fields.name.value"
    assert again.evaluate(name) == "Bolt"


def test_ids_rise_as_their_entries_were_made(page: Page) -> None:
    entries = kept(page, "Array.from({length: 50}, (_, n) => window.pull('f' + n))")
    ids = [entry["id"] for entry in entries]
    assert ids == sorted(ids)
    assert [entry["n"] for entry in entries] == list(range(1, 51))
    stamps = [entry["stamp"] for entry in entries]
    assert stamps == sorted(set(stamps))


OLDER = """async () => {
  const db = await openDB('witnessmark');
  const row = await db.get('subject', 'part-1');
  await db.put('subject', { ...row, wants: [] });
  await db.delete('meta', 'rows');
  db.close();
}"""


def test_rows_of_an_older_page_are_made_anew(context: BrowserContext, page: Page) -> None:
    sent = "{heading: 'sent', about: 'part-1', body: {to: 'Grinder', for: 'grind'}}"
    kept(page, f"[window.part('part-1', {{name: 'Rod'}}), {sent}]")
    page.evaluate(OLDER)
    page.close()
    again = bare_page(context)
    out = "async () => (await store.awaySlice()).all('part').map(({id}) => id)"
    assert again.evaluate(out) == ["part-1"]
    assert "out" in tables(again)["subject"]["part-1"]["wants"]


def test_a_draft_the_log_cannot_hold_writes_nothing(page: Page) -> None:
    work = "store.keep([window.pull('f1'), {heading: 'pull', about: 'j', body: {run: 'r'}}])"
    assert outcome(page, work)["code"] == "field-missing"
    found = tables(page)
    assert not found["entry"]
    assert not found["outbox"]
    assert found["meta"]["clock"]["n"] == 0


def test_two_tabs_number_their_entries_without_hole_or_double(
    context: BrowserContext, page: Page
) -> None:
    other = bare_page(context)
    work = "async () => { for (let n = 0; n < 20; n += 1) await store.keep([window.pull('f1')]); }"
    page.evaluate(f"() => {{ window.work = ({work})(); }}")
    other.evaluate(work)
    page.evaluate("() => window.work")
    entries = [json.loads(row["text"]) for row in tables(page)["entry"].values()]
    assert sorted(entry["n"] for entry in entries) == list(range(1, 41))
    assert len({entry["stamp"] for entry in entries}) == 40
    page.wait_for_function("() => window.state().waiting === 40")
    other.wait_for_function("() => window.state().waiting === 40")


def test_a_full_disk_says_so_and_leaves_nothing_half_written(context: BrowserContext) -> None:
    devtools = context.new_cdp_session(context.new_page())
    devtools.send("Storage.overrideQuotaForOrigin", {"origin": HOME, "quotaSize": 3_000_000})
    page = bare_page(context)
    page.evaluate("() => { window.heavy = { heading: 'note', about: 'part-1', body: {} }; }")
    page.evaluate("() => { window.heavy.body.text = 'x'.repeat(60000); }")
    said: dict[str, Any] = {}
    for _ in range(60):
        before = tables(page)["meta"]["clock"]
        said = outcome(page, "store.keep(Array.from({length: 5}, () => window.heavy))")
        if said:
            break
    assert said["code"] == "not-kept-full"
    assert said["next"]
    after = tables(page)
    assert after["meta"]["clock"] == before
    assert len(after["entry"]) == len(after["outbox"]) == before["n"]
    devtools.send("Storage.overrideQuotaForOrigin", {"origin": HOME})
    page.wait_for_function("() => store.keep([window.pull('f2')]).then(() => true, () => false)")


def test_a_newer_page_in_another_tab_is_let_through_and_this_one_says_so(page: Page) -> None:
    page.evaluate("() => window.openDB('witnessmark', 2).then((db) => db.close())")
    assert outcome(page, "store.keep([window.pull('f1')])")["code"] == "not-kept-closed"


def test_storage_thrown_away_under_an_open_page_is_founded_anew(
    context: BrowserContext, page: Page
) -> None:
    kept(page, "[window.pull('f1')]")
    devtools = context.new_cdp_session(page)
    devtools.send("Storage.clearDataForOrigin", {"origin": HOME, "storageTypes": "indexeddb"})
    page.wait_for_function(
        "async () => (await indexedDB.databases()).every(({name}) => name !== 'witnessmark')"
        " || !(await window.tables()).meta?.clock?.n"
    )
    said = outcome(page, "store.keep([window.pull('f2')])")
    if said:
        kept(page, "[window.pull('f2')]")
    assert len(tables(page)["entry"]) == 1


def test_stamps_rise_though_the_clock_steps_back_a_year(page: Page) -> None:
    first = kept(page, "[window.pull('f1')]")[0]["stamp"]
    page.evaluate("() => { const now = Date.now; Date.now = () => now() - 31_536_000_000; }")
    second, third = kept(page, "[window.pull('f2'), window.pull('f3')]")
    assert first < second["stamp"] < third["stamp"]


def test_a_strike_out_may_come_before_its_target(page: Page) -> None:
    struck, strike = kept(
        page,
        "[window.pull('f1'), {heading: 'strike-out', about: 'x', body: {reason: 'wrong bolt'}}]",
    )
    target = {**struck, "id": strike["about"], "n": 9}
    page.evaluate("entry => store.takeIn([{...entry, id: 'x'}])", target)
    facts = page.evaluate(
        "async () => (await store.jointSlice('joint-1')).subject('joint-1').facts"
    )
    assert {fact["id"]: bool(fact["struck"]) for fact in facts} == {struck["id"]: False, "x": True}
    assert not tables(page)["orphan"]


def test_what_screens_read_is_what_a_fold_of_everything_gives(page: Page) -> None:
    kept(page, "[window.part('part-1', {name: 'A', note: 'n'}), window.pull('f1')]")
    kept(page, "[window.part('part-1', {name: 'B'}), window.pull('f2')]")
    kept(page, "[{heading: 'place', about: 'part-1', body: {in: 'holder-1'}}]")
    whole = """async () => {
      const { subject } = await import('/log/workshop.js');
      const { entry, subject: held } = await window.tables();
      const lines = Object.values(entry).map(({ text }) => JSON.parse(text))
        .map((one) => ({ entry: one, order: one.stamp }));
      return Object.values(held).map(({ id, value }) => [
        JSON.stringify(subject(id, lines.filter((line) => line.entry.about === id))),
        JSON.stringify(value)]);
    }"""
    pairs = page.evaluate(whole)
    assert len(pairs) == 2
    assert all(expected == actual for expected, actual in pairs)


def test_what_was_read_is_read_anew_as_soon_as_something_was_kept(
    context: BrowserContext, page: Page
) -> None:
    kept(page, "[window.part('part-1', {name: 'Bolt'})]")
    assert page.evaluate("async () => await store.partSlice('p') === await store.partSlice('p')")
    name = "async () => (await store.partSlice('part-1')).subject('part-1').fields.name.value"
    page.evaluate(name)
    kept(page, "[window.part('part-1', {name: 'Nut'})]")
    assert page.evaluate(name) == "Nut"
    kept(bare_page(context), "[window.part('part-1', {name: 'Washer'})]")
    page.wait_for_function(f"async () => await ({name})() === 'Washer'")


def test_a_label_brings_the_record_of_what_it_marks(page: Page) -> None:
    kept(
        page,
        "[window.part('part-1', {name: 'Bolt'}),"
        " {heading: 'label', about: '0000001J', body: {marks: 'part-1'}}]",
    )
    same = "async () => await store.codeSlice('0000001J') === await store.partSlice('part-1')"
    assert page.evaluate(same)


def test_what_was_read_is_known_without_waiting_until_something_is_written(page: Page) -> None:
    kept(page, "[window.part('part-1', {name: 'Bolt'})]")
    assert page.evaluate("() => store.known('part', 'part-1')") is None
    same = "async () => await store.partSlice('part-1') === store.known('part', 'part-1')"
    assert page.evaluate(same)
    kept(page, "[window.part('part-2', {name: 'Nut'})]")
    assert page.evaluate("() => store.known('part', 'part-1')") is None


FRESHLY = """async () => {
  const { openStore } = await import('/store/index.js');
  const other = await openStore();
  const told = (slice) => JSON.stringify(['bag-1', 'bag-2', 'part-1', 'part-2', '0000001J']
    .map((id) => [slice.subject(id), slice.linked(id, 'lies-in')]));
  const same = told(await store.holderSlice('bag-1')) === told(await other.holderSlice('bag-1'));
  const few = (slice) => JSON.stringify(slice.all('instrument'));
  const all = few(await store.allOf('instrument')) === few(await other.allOf('instrument'));
  await other.close();
  return [same, all];
}"""


def test_a_slice_held_in_memory_is_what_a_fresh_reading_gives(page: Page) -> None:
    """Whether it was mended with the one thing that changed, or asked anew."""
    holder = "{heading: 'holder', about: 'bag-%d', body: {fields: {name: 'Bag', form: 'bag'}}}"
    steps = (
        f"[{holder % 1}, {holder % 2}, window.part('part-1', {{name: 'Rod'}}),"
        " {heading: 'place', about: 'part-1', body: {in: 'bag-1'}}]",
        "[{heading: 'verdict', about: 'part-1', id: '018d0000-0000-7000-8000-0000000000a1',"
        " body: {verdict: 'use'}}]",
        "[window.part('part-2', {name: 'Rod'})]",
        "[{heading: 'place', about: 'part-2', body: {in: 'bag-1'}}]",
        "[{heading: 'instrument', about: 'tool-1', body: {fields: {name: 'Caliper'}}}]",
        "[{heading: 'strike-out', about: '018d0000-0000-7000-8000-0000000000a1',"
        " body: {reason: 'wrong piece'}}]",
        "[{heading: 'label', about: '0000001J', body: {marks: 'part-1'}}]",
        "[{heading: 'place', about: 'part-1', body: {in: 'bag-2'}}]",
    )
    for step in steps:
        kept(page, step)
        assert page.evaluate(FRESHLY) == [True, True], step


def test_search_rows_follow_what_is_recorded(page: Page) -> None:
    kept(page, "[window.part('part-1', {name: 'Pushrod', kind: 'kind-1', note: 'bent tip'})]")
    assert [row["name"] for row in page.evaluate("() => store.findRows()")] == ["Pushrod"]
    kept(
        page,
        "[{heading: 'kind', about: 'kind-1', body: {fields: {name: 'valve gear'}}},"
        " {heading: 'label', about: '0000001J', body: {marks: 'part-1'}},"
        " {heading: 'verdict', about: 'part-1', body: {verdict: 'scrap'}},"
        " {heading: 'holder', about: 'holder-1', body: {fields: {name: 'Bag 4'}}},"
        " {heading: 'place', about: 'part-1', body: {in: 'holder-1'}}]",
    )
    page.wait_for_function("async () => (await store.findRows()).length === 2")
    rows = {row["id"]: row for row in page.evaluate("() => store.findRows()")}
    assert rows["part-1"]["codes"] == ["0000001J"]
    assert rows["part-1"]["scrap"] is True
    for word in ("valve gear", "bent tip", "Bag 4"):
        assert word in rows["part-1"]["words"]


def test_a_photo_is_kept_under_its_digest(page: Page) -> None:
    picture = b"\xff\xd8\xff" + bytes(1000)
    sha = page.evaluate(
        "bytes => store.keepPhoto(new Blob([new Uint8Array(bytes)], {type: 'image/jpeg'}))",
        list(picture),
    )
    assert sha == hashlib.sha256(picture).hexdigest()
    assert page.evaluate("async sha => (await store.photo(sha)).size", sha) == len(picture)
    assert tables(page)["photo"][sha]["state"] == "waiting"
    kept(page, f"[{{heading: 'photo', about: 'part-1', body: {{photo: '{sha}'}}}}]")
    assert tables(page)["photo"][sha]["state"] == "waiting"
    assert page.evaluate("() => window.state().photosWaiting") == 1


def test_the_saved_file_is_an_ordinary_archive_in_the_form_of_the_export(page: Page) -> None:
    entries = kept(page, "[window.part('part-1', {name: 'Bölt'}), window.pull('f1')]")
    page.evaluate("() => store.keepPhoto(new Blob(['123456789'], {type: 'image/jpeg'}))")
    saved = page.evaluate(
        "async () => Array.from(new Uint8Array(await (await store.saveToFile()).arrayBuffer()))"
    )
    with zipfile.ZipFile(io.BytesIO(bytes(saved))) as archive:
        assert archive.testzip() is None
        lines = [json.loads(line) for line in archive.read("log.jsonl").splitlines()]
        sha = hashlib.sha256(b"123456789").hexdigest()
        # The check sum of nine digits is the published check value of CRC-32.
        assert archive.getinfo(f"photos/{sha}").CRC == 0xCBF43926
    assert [line["entry"] for line in lines] == entries


def test_drafts_and_settings_come_back(context: BrowserContext, page: Page) -> None:
    page.evaluate("() => store.setDraft('inspect part-1', {verdict: 'use'})")
    page.evaluate("() => store.setSetting('by', 'the owner')")
    assert kept(page, "[window.pull('f1')]")[0]["by"] == "the owner"
    page.close()
    again = bare_page(context)
    assert again.evaluate("() => store.draft('inspect part-1')") == {"verdict": "use"}
    assert again.evaluate("() => store.setting('by')") == "the owner"
    again.evaluate("() => store.setDraft('inspect part-1', null)")
    assert again.evaluate("() => store.draft('inspect part-1')") is None


def test_pauses_double_from_two_seconds_to_five_minutes(page: Page) -> None:
    tries = """async () => {
      const { pause } = await import('/store/schedule.js');
      return [...[1, 2, 3, 8, 9, 40].map((n) => pause(n, 0, 0)), pause(1, 0, 1), pause(1, 9000, 0)];
    }"""
    expected = [2000, 4000, 8000, 256000, 300000, 300000, 1000, 9000]
    assert page.evaluate(tries) == expected
