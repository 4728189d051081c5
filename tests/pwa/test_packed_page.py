"""The page as phones fetch it: in one piece, whole or not at all, and never twice."""

from collections import Counter
from collections.abc import Iterator
from pathlib import Path
from threading import Event

import pytest
from playwright.sync_api import BrowserContext, Page
from pwa.list_page_files import PWA, addresses, decoder_files, page_files
from pwa.whole_site import WholeSite, whole_site

# What starts something, and so is not imported beside the page.
STARTING = {"/app/start.js", "/app/main.js", "/scan/worker.js", "/scan/reader.js"}
KEPT = """async () => (await caches.keys()).sort()"""
HALF = """async () => {
  const half = [];
  for (const cacheName of await caches.keys())
    if (!(await caches.match('/whole', { cacheName }))) half.push(cacheName);
  return half;
}"""
WHOLE = """async (count) => {
  const names = await caches.keys();
  const whole = await Promise.all(names.map((cacheName) => caches.match('/whole', { cacheName })));
  return names.length === count && whole.every(Boolean);
}"""
NOT_HERE = "This screen is not here yet"
UPDATE = "async () => { await (await navigator.serviceWorker.getRegistration()).update(); }"
DROPPED = """async () => {
  const found = await navigator.serviceWorker.getRegistration();
  await new Promise((resolve) => {
    found.addEventListener('updatefound', () => {
      const coming = found.installing;
      coming.addEventListener('statechange', () => {
        if (coming.state === 'redundant') resolve();
      });
    });
    found.update().catch(() => undefined);
  });
}"""
# Asked past what the page has loaded already, but not past its worker.
TOLD = "async () => 'isNew' in (await import('/app/screens/more.js?' + Math.random()))"
TAKE_OVER = """async () => {
  const found = await navigator.serviceWorker.getRegistration();
  const taken = new Promise((resolve) => {
    navigator.serviceWorker.addEventListener('controllerchange', () => resolve());
  });
  const waiting = () => found.waiting ?? null;
  if (!waiting()) await new Promise((resolve) => {
    const coming = found.installing;
    coming.addEventListener('statechange', () => { if (coming.state === 'installed') resolve(); });
  });
  waiting().postMessage('take over');
  await taken;
}"""


@pytest.fixture
def site(tmp_path: Path) -> Iterator[WholeSite]:
    with whole_site(tmp_path) as found:
        yield found


def opened(context: BrowserContext, site: WholeSite, path: str = "/") -> Page:
    """A tab that shows a screen."""
    page = context.new_page()
    page.goto(site.address + path)
    page.locator("h1").first.wait_for()
    return page


def visited(context: BrowserContext, site: WholeSite) -> Page:
    """A tab of a phone that has everything."""
    page = opened(context, site)
    page.wait_for_function(WHOLE, arg=3)
    return page


def heading(page: Page) -> str:
    return page.locator("h1").first.inner_text()


def controlled(page: Page) -> bool:
    return bool(page.evaluate("navigator.serviceWorker.controller !== null"))


def new_screens(site: WholeSite) -> None:
    """Another version, of which only a screen is new."""
    screen = site.folder / "app" / "screens" / "more.js"
    text = screen.read_text(encoding="utf-8")
    screen.write_text(f"{text}\nexport const isNew = true;\n", encoding="utf-8")
    site.list()
    site.ready()


def scripts() -> list[str]:
    return [one for one in addresses(page_files()) if one.endswith(".js") and "zxing" not in one]


def test_a_first_visit_brings_the_page_in_one_piece_and_nothing_twice(
    context: BrowserContext, site: WholeSite
) -> None:
    site.ready()
    page = visited(context, site)
    assert controlled(page)
    asked = Counter(site.asked)
    twice = {one for one, times in asked.items() if times > 1 and "." in one}
    # The font is only asked whether it changed.
    assert twice <= {"/app/look/figures-600.woff2"}
    singly = {one for one in asked if one.endswith((".js", ".css")) and "/pack/" not in one}
    assert singly == {"/app/start.js", "/sw.js"}


def test_after_one_visit_every_screen_and_the_decoder_open_without_a_network(
    context: BrowserContext, site: WholeSite
) -> None:
    site.ready()
    visited(context, site).close()
    context.set_offline(True)
    page = opened(context, site, "/L/7K3MQ2RJ")
    wrong = page.evaluate(
        """async (paths) => {
          const wrong = [];
          for (const path of paths) {
            try { await import(path); } catch (error) { wrong.push(`${path}: ${error}`); }
          }
          return wrong;
        }""",
        [one for one in scripts() if one not in STARTING],
    )
    assert wrong == []
    kinds = page.evaluate(
        """async (paths) => Object.fromEntries(await Promise.all(paths.map(async (path) => {
          const found = await fetch(path);
          return [path, found.ok ? found.headers.get('Content-Type') : 'gone'];
        })))""",
        [*addresses(decoder_files()), "/", "/changes.json", "/app/look/figures-700.woff2"],
    )
    assert "gone" not in kinds.values()
    assert kinds["/vendor/zxing-wasm/reader/zxing_reader.wasm"] == "application/wasm"
    assert kinds["/scan/worker.js"] == "text/javascript; charset=utf-8"


def test_a_page_from_the_phone_is_guarded_like_one_from_the_computer(
    context: BrowserContext, site: WholeSite
) -> None:
    site.ready()
    page = visited(context, site)
    first = site.app.test_client().get("/").headers
    again = page.goto(site.address + "/more")
    assert again is not None
    assert again.from_service_worker
    for name in ("Content-Security-Policy", "Permissions-Policy", "X-Content-Type-Options"):
        assert again.headers[name.lower()] == first[name]
    assert again.headers["content-type"] == "text/html; charset=utf-8"


def test_an_interrupted_first_install_leaves_nothing_and_the_page_still_opens(
    context: BrowserContext, site: WholeSite
) -> None:
    site.ready()
    site.breaks_off = "/pack/.*/shell"
    page = opened(context, site)
    assert not controlled(page)
    assert page.evaluate(HALF) == []
    site.breaks_off = ""
    page = visited(context, site)
    assert controlled(page)
    context.set_offline(True)
    assert heading(opened(context, site, "/more")) != NOT_HERE


@pytest.mark.parametrize("broken", ["screens", "decoder"])
def test_what_was_interrupted_behind_the_shell_comes_at_the_next_start(
    context: BrowserContext, site: WholeSite, broken: str
) -> None:
    site.ready()
    site.breaks_off = f"/pack/.*/{broken}"
    page = opened(context, site)
    assert controlled(page)
    assert (heading(page) == NOT_HERE) == (broken == "screens")
    page.close()
    context.set_offline(True)
    page = opened(context, site, "/more")
    assert (heading(page) == NOT_HERE) == (broken == "screens")
    page.close()
    context.set_offline(False)
    site.breaks_off = ""
    site.asked.clear()
    page = visited(context, site)
    assert heading(page) != NOT_HERE
    assert not [one for one in site.asked if one.endswith("/shell")]
    context.set_offline(True)
    assert heading(opened(context, site, "/more")) != NOT_HERE


def test_the_rest_comes_though_the_page_was_closed_before(
    context: BrowserContext, site: WholeSite
) -> None:
    site.ready()
    on_the_way, let_go, decoder = Event(), Event(), Event()

    def slowly(path: str) -> None:
        if path.endswith("/screens"):
            on_the_way.set()
            let_go.wait(60)
        if path.endswith("/decoder"):
            decoder.set()

    site.when_asked = slowly
    page = context.new_page()
    page.goto(site.address)
    # The doors are drawn, and what waits for its screen says so.
    page.locator(".doors").first.wait_for()
    assert on_the_way.wait(30)
    assert controlled(page)
    page.close()
    let_go.set()
    assert decoder.wait(60)
    context.set_offline(True)
    assert heading(opened(context, site, "/more")) != NOT_HERE


def test_the_rest_comes_by_itself_when_the_network_is_back(
    context: BrowserContext, site: WholeSite
) -> None:
    site.ready()
    site.breaks_off = "/pack/.*/(screens|decoder)"
    page = opened(context, site)
    assert heading(page) == NOT_HERE
    site.breaks_off = ""
    context.set_offline(True)
    context.set_offline(False)
    page.wait_for_function(WHOLE, arg=3)


def test_a_phone_with_the_shell_only_goes_to_the_new_version_and_mixes_nothing(
    context: BrowserContext, site: WholeSite
) -> None:
    site.ready()
    site.breaks_off = "/pack/.*/screens"
    opened(context, site).close()
    new_screens(site)
    site.breaks_off = ""
    page = context.new_page()
    page.goto(site.address)
    page.wait_for_function(f"async () => ({TOLD})().catch(() => false)")
    page.wait_for_function(WHOLE, arg=3)
    page.wait_for_function(
        "(gone) => ![null, gone].includes(document.querySelector('h1')?.innerText ?? null)",
        arg=NOT_HERE,
    )
    kept = page.evaluate(KEPT)
    assert {one.split()[1] for one in kept if not one.startswith("decoder")} == {site.version()}


@pytest.mark.parametrize("broken", ["shell", "screens"])
def test_an_interrupted_update_leaves_the_old_version_whole(
    context: BrowserContext, site: WholeSite, broken: str
) -> None:
    site.ready()
    page = visited(context, site)
    before = page.evaluate(KEPT)
    new_screens(site)
    site.breaks_off = f"/pack/.*/{broken}"
    page.evaluate(DROPPED)
    page.close()
    context.set_offline(True)
    page = opened(context, site, "/more")
    assert heading(page) != NOT_HERE
    assert page.evaluate(TOLD) is False
    assert set(before) <= set(page.evaluate(KEPT))
    context.set_offline(False)
    site.breaks_off = ""
    page.evaluate(UPDATE)
    with page.expect_navigation():
        page.evaluate(TAKE_OVER)
    page.wait_for_function(WHOLE, arg=3)
    assert page.evaluate(TOLD) is True


def test_a_new_version_is_taken_whole_and_the_same_decoder_is_not_fetched_again(
    context: BrowserContext, site: WholeSite
) -> None:
    site.ready()
    page = visited(context, site)
    before = page.evaluate(KEPT)
    texts = site.folder / "app" / "texts" / "frame.js"
    plain = texts.read_text(encoding="utf-8")
    for changed in (f"{plain}\nexport const isNew = true;\n", plain):
        texts.write_text(changed, encoding="utf-8")
        site.list()
        site.ready()
        site.asked.clear()
        page.evaluate(UPDATE)
        told = "async () => 'isNew' in (await import('/app/texts/frame.js?' + Math.random()))"
        is_new = changed is not plain
        assert page.evaluate(told) is not is_new
        with page.expect_navigation():
            page.evaluate(TAKE_OVER)
        page.locator("h1").first.wait_for()
        assert page.evaluate(told) is is_new
        assert not [one for one in site.asked if "decoder" in one or one.endswith(".wasm")]
        assert len(page.evaluate(KEPT)) == len(before)
    assert page.evaluate(KEPT) == before


def test_where_no_pack_can_be_made_the_page_comes_file_by_file(
    context: BrowserContext, site: WholeSite, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("witnessmark.api.packs._PACKING", PWA / "changes.json")
    page = visited(context, site)
    assert controlled(page)
    assert {"/app/main.js", "/app/screens/more.js"} <= set(site.asked)
    context.set_offline(True)
    opened(context, site, "/more")


def test_a_version_that_changes_while_it_comes_file_by_file_is_not_taken(
    context: BrowserContext, site: WholeSite, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("witnessmark.api.packs._PACKING", PWA / "changes.json")

    def publish(path: str) -> None:
        if path == "/app/main.js":
            site.when_asked = lambda _: None
            (site.folder / "changes.json").write_text("[]", encoding="utf-8")
            site.list()

    site.when_asked = publish
    page = opened(context, site)
    assert not controlled(page)
    page = visited(context, site)
    assert controlled(page)
    assert page.evaluate("async () => (await fetch('/changes.json')).json()") == []
