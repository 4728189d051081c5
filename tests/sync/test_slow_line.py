"""Ten photos on a slow line: reduced, one at a time, whole, and never in the way of an entry."""

import base64
import hashlib
import io
from pathlib import Path

from PIL import Image
from playwright.sync_api import Page
from pwa.bare import tables
from sync.conftest import Phone
from sync.evening import all_equal, come_home, keep
from sync.proxy import Line
from sync.served import Home

COUNT, MOST_BYTES = 10, 2 * 1024 * 1024
TAKE = """async ([picture, count]) => {
  const { reducePhoto } = await import('/app/reduce_photo.js');
  const source = await createImageBitmap(
    await (await fetch(`data:image/jpeg;base64,${picture}`)).blob());
  const canvas = document.createElement('canvas');
  [canvas.width, canvas.height] = [source.width, source.height];
  const pen = canvas.getContext('2d');
  pen.drawImage(source, 0, 0);
  const kept = [];
  for (let n = 0; n < count; n += 1) {
    pen.fillStyle = `hsl(${n * 30} 80% 50%)`;
    pen.fillRect(0, 0, 200, 200);
    const taken = await new Promise((done) => canvas.toBlob(done, 'image/jpeg', 1));
    const photo = await window.store.keepPhoto(await reducePhoto(taken));
    const body = { photo };
    const [entry] = await window.store.keep([{ heading: 'photo', about: 'part-1', body }]);
    kept.push({ photo, entry: entry.id, before: taken.size });
  }
  return kept;
}"""
KIND = """photo => window.store.keep([{ heading: 'kind', about: 'kind-1', body: { fields: {
  name: 'Pushrod', criteria: [{ id: 'c1', asks: 'Straight?', good_photo: photo }] } } }])"""
HOME = "() => window.state().waiting === 0"


def noisy() -> str:
    """A picture that packs badly, as a phone's camera gives it."""
    made = io.BytesIO()
    Image.effect_noise((2400, 1800), 80).convert("RGB").save(made, "JPEG", quality=95)
    return base64.b64encode(made.getvalue()).decode()


def waiting(page: Page) -> int:
    count: int = page.evaluate("() => window.state().photosWaiting")
    return count


def test_ten_photos_go_one_at_a_time_whole_and_entries_go_beside_them(
    home: Home, line: Line, phone: Phone, tmp_path: Path
) -> None:
    page, other = phone(), phone(name="tablet")
    come_home(page)
    line.photo_seconds = 60
    taken = page.evaluate(TAKE, [noisy(), COUNT])
    assert all(one["before"] > MOST_BYTES for one in taken)
    late = keep(page, 1, "late")
    page.wait_for_function(HOME)
    assert waiting(page) == COUNT, "the entries came home while the first photo was on its way"
    line.down = True
    late += keep(page, 1, "without a line")
    line.let_go.set()
    page.wait_for_function(f"() => window.state().photosWaiting < {COUNT}", timeout=30_000)
    line.down = False
    all_equal(home, tmp_path, [page, other], [one["entry"] for one in taken] + late)
    page.wait_for_function("() => window.state().photosWaiting === 0", timeout=60_000)
    photos = [one["photo"] for one in taken]
    sent = [(sha, size) for sha, size in line.photos if size]
    assert line.most_under_way == 1
    assert {sha for sha, _ in sent} == set(photos)
    assert all(size <= MOST_BYTES for _, size in sent)
    workshop = home.store.ensure_workshop()
    for sha in photos:
        raw = home.store.photo(workshop, sha).file.read_bytes()
        assert hashlib.sha256(raw).hexdigest() == sha


def test_an_entry_and_a_photo_go_while_the_photo_of_another_phone_is_fetched(
    home: Home, line: Line, phone: Phone
) -> None:
    page, other = phone(), phone(name="tablet")
    page.evaluate(TAKE, [noisy(), 2])
    come_home(page)
    page.wait_for_function("() => window.state().photosWaiting === 0", timeout=60_000)
    line.photo_seconds = 60
    other.evaluate("() => { window.store.syncNow(); }")
    other.wait_for_function("async () => Object.keys((await tables()).photo).length === 2")
    keep(other, 1, "meanwhile")
    other.wait_for_function(HOME)
    [own] = other.evaluate(TAKE, [noisy(), 1])
    other.wait_for_function(HOME)
    assert waiting(other) == 1
    line.let_go.set()
    other.wait_for_function("() => window.state().photosWaiting === 0", timeout=60_000)
    assert home.store.photo(home.store.ensure_workshop(), own["photo"]).file.is_file()
    other.wait_for_function(
        "async () => Object.values((await tables()).photo).every(row => row.state === 'held')",
        timeout=60_000,
    )


def test_the_example_of_a_kind_comes_to_the_other_phone_before_other_photos(
    home: Home, line: Line, phone: Phone, tmp_path: Path
) -> None:
    page, other = phone(), phone(name="tablet")
    [one] = page.evaluate(TAKE, [noisy(), 1])
    page.evaluate(KIND, one["photo"])
    come_home(page)
    page.wait_for_function("() => window.state().photosWaiting === 0", timeout=60_000)
    other.evaluate("() => window.store.setSetting('photo-limit', 0)")
    come_home(other)
    other.evaluate("() => window.store.syncNow()")
    row = tables(other)["photo"][one["photo"]]
    assert (row["state"], row["spec"]) == ("held", True)
