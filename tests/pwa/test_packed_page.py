"""The page as phones fetch it: in one piece, whole or not at all, and never twice."""

from collections import Counter
from collections.abc import Iterator
from pathlib import Path

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
UPDATE = "async () => { await (await navigator.serviceWorker.getRegistration()).update(); }"
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


def controlled(page: Page) -> bool:
    return bool(page.evaluate("navigator.serviceWorker.controller !== null"))


def scripts() -> list[str]:
    return [one for one in addresses(page_files()) if one.endswith(".js") and "zxing" not in one]


def test_a_first_visit_brings_the_page_in_one_piece_and_nothing_twice(
    context: BrowserContext, site: WholeSite
) -> None:
    site.ready()
    page = opened(context, site)
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
    opened(context, site).close()
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
    page = opened(context, site)
    first = site.app.test_client().get("/").headers
    again = page.goto(site.address + "/more")
    assert again is not None
    assert again.from_service_worker
    for name in ("Content-Security-Policy", "Permissions-Policy", "X-Content-Type-Options"):
        assert again.headers[name.lower()] == first[name]
    assert again.headers["content-type"] == "text/html; charset=utf-8"


@pytest.mark.parametrize("broken", ["/pack/.*/page", "/pack/.*/decoder"])
def test_an_interrupted_install_leaves_no_half_version_and_the_page_still_opens(
    context: BrowserContext, site: WholeSite, broken: str
) -> None:
    site.ready()
    site.breaks_off = broken
    page = opened(context, site)
    assert not controlled(page)
    assert page.evaluate(HALF) == []
    site.breaks_off = ""
    page = opened(context, site)
    assert controlled(page)
    context.set_offline(True)
    opened(context, site, "/more")


def test_a_new_version_is_taken_whole_and_the_same_decoder_is_not_fetched_again(
    context: BrowserContext, site: WholeSite
) -> None:
    site.ready()
    page = opened(context, site)
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
    page = opened(context, site)
    assert controlled(page)
    assert "/app/main.js" in site.asked
    context.set_offline(True)
    opened(context, site, "/more")


def test_a_version_that_changes_while_it_comes_file_by_file_is_not_taken(
    context: BrowserContext, site: WholeSite, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("witnessmark.api.packs._PACKING", PWA / "changes.json")

    def publish(path: str) -> None:
        if path.endswith("/page"):
            site.when_asked = lambda _: None
            (site.folder / "changes.json").write_text("[]", encoding="utf-8")
            site.list()

    site.when_asked = publish
    page = opened(context, site)
    assert not controlled(page)
    page = opened(context, site)
    assert controlled(page)
    assert page.evaluate("async () => (await fetch('/changes.json')).json()") == []
