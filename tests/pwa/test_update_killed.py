"""A browser killed in the middle of an update opens what it had, and gets the new one later."""

import threading
from collections.abc import Iterator
from functools import partial
from pathlib import Path
from typing import Any

import pytest
from garage import kill_browser, phone
from playwright.sync_api import BrowserContext, Page, Playwright
from pwa.bare import shell
from pwa.test_worker import VERSION, VERSIONS_KEPT, Pages, Server, Site, opened


class Slow(Pages):
    """One file of the new version does not come until it is let go."""

    let_go = threading.Event()
    wanted = threading.Event()

    def send_head(self) -> Any:
        if self.path.startswith("/slow.js"):
            self.wanted.set()
            self.let_go.wait(60)
        return super().send_head()


@pytest.fixture
def site(tmp_path: Path) -> Iterator[Any]:
    found: Any = Site(tmp_path / "site")
    server = Server(("127.0.0.1", 0), partial(Slow, directory=str(found.folder)))
    thread = threading.Thread(target=server.serve_forever)
    thread.start()
    found.address = f"http://127.0.0.1:{server.server_port}"
    yield found
    Slow.let_go.set()
    server.shutdown()
    server.server_close()
    thread.join()


def first_visit(context: BrowserContext, site: Any) -> Page:
    context.route(
        "**/L/0000001J", lambda route: route.fulfill(content_type="text/html", body=shell())
    )
    page = opened(context, site)
    context.unroute("**/L/0000001J")
    return page


def test_a_browser_killed_in_the_middle_of_an_update_has_one_whole_version(
    player: Playwright, site: Any, tmp_path: Path
) -> None:
    profile = tmp_path / "profile"
    page = first_visit(phone(player, profile), site)
    page.evaluate("() => window.store.keep([window.pull('f1')])")
    (site.folder / "slow.js").write_text("export {};\n", encoding="utf-8")
    site.publish("two", "/slow.js")
    page.evaluate(
        "() => { navigator.serviceWorker.getRegistration().then((one) => one.update()); }"
    )
    assert Slow.wanted.wait(30)
    kill_browser(profile)
    context = phone(player, profile)
    context.set_offline(True)
    page = context.new_page()
    page.goto(f"{site.address}/L/7K3MQ2RJ")
    page.wait_for_function("window.isReady")
    assert page.evaluate(VERSION) == "one"
    page.evaluate("() => window.begin()")
    assert page.evaluate("() => window.state().waiting") == 1
    Slow.let_go.set()
    context.set_offline(False)
    page.evaluate("() => window.update.watchUpdates(window.store)")
    page.evaluate(
        "() => { navigator.serviceWorker.getRegistration().then((one) => one.update()); }"
    )
    page.wait_for_function("() => window.state().update", timeout=30_000)
    with page.expect_navigation():
        assert page.evaluate("() => window.update.takeUpdate()") == "going"
    page.wait_for_function("window.isReady")
    assert page.evaluate(VERSION) == "two"
    page.wait_for_function(VERSIONS_KEPT, arg="shell two")
    context.close()
