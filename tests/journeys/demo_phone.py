"""One phone with the demo workshop on it, for tests that look at screens one after the other."""

import json
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

from garage import QUIET, ROOT, Garage, garage
from playwright.sync_api import Page, sync_playwright
from tools import chromium
from witnessmark.cli.demo import take_demo

DEMO = ROOT / "fixtures" / "demo"
MEASURE = (Path(__file__).parent / "measure.js").read_text("utf-8")
AXE = (ROOT / "tests" / "pwa" / "vendor" / "axe.min.js").read_text("utf-8")
RULES = ["wcag2a", "wcag2aa", "wcag21aa", "wcag22aa", "best-practice"]
SETTLED = """() => {
  const main = document.querySelector('main');
  return main && document.querySelector('h1') && !document.querySelector('[aria-busy="true"]');
}"""

SIZES = {"phone": (390, 844), "small": (320, 640), "desk": (1280, 800)}
THEMES = ("light", "dark", "sunlight")
CONTRAST = ("color-contrast", "color-contrast-enhanced")
LONGER = """(() => {
  const walker = document.createTreeWalker(document.querySelector('#page'), 4);
  const texts = [];
  while (walker.nextNode()) texts.push(walker.currentNode);
  for (const text of texts) {
    const words = text.data.trim();
    if (/[a-z]{2}/.test(words)) text.data += ` ${words.slice(0, Math.ceil(words.length * 0.4))}`;
  }
})()"""
JUMPS = """() => new Promise((resolve) => {
  const jumps = [];
  new PerformanceObserver((list) => jumps.push(...list.getEntries().map((one) => one.value)))
    .observe({ type: 'layout-shift', buffered: true });
  setTimeout(() => resolve(jumps), 500);
})"""


class DemoPhone:
    """A page in Chromium that is paired and holds everything."""

    def __init__(self, page: Page, house: Garage) -> None:
        self.page, self.house = page, house

    def pair(self) -> None:
        """Pair, wait for the first sync, and lay the waiting entries into the outbox."""
        self.page.goto(f"{self.house.address}/pair#{self.house.pairing()['code']}")
        lines = (DEMO / "waiting.jsonl").read_text("utf-8").splitlines()
        waiting = [json.loads(line)["entry"] for line in lines]
        self.page.get_by_role("link", name="To the bench").or_(
            self.page.get_by_role("link", name="Go on")
        ).wait_for(timeout=20_000)
        self.open("/sync")
        self.page.get_by_text("Both hold the same").wait_for(timeout=30_000)
        self.store("await store.takeIn(given);", waiting)
        self.sent()

    def sent(self) -> None:
        """Wait until nothing waits but what was refused, so that the corner says no more."""
        self.open("/sync")
        refused = self.page.get_by_role("link", name="Sync: 1 entry was refused", exact=True)
        refused.wait_for(timeout=30_000)

    def store(self, work: str, given: Any = None) -> Any:
        """Do something with a store of the same page, and close it."""
        return self.page.evaluate(
            """async ([work, given]) => {
              const { openStore } = await import('/store/index.js');
              const store = await openStore();
              const act = Object.getPrototypeOf(async () => {}).constructor;
              try { return await act('store', 'given', work)(store, given); }
              finally { await store.close(); }
            }""",
            [work, given],
        )

    def open(self, path: str) -> None:
        """Open an address and wait until what it is about has been read."""
        self.page.goto(self.house.address + path)
        self.settle()

    def settle(self) -> None:
        """Wait until the screen shows what it is about."""
        self.page.wait_for_function(SETTLED)

    def aloud(self) -> str:
        """The screen as a screen reader meets it, without addresses."""
        lines = self.page.locator("main").aria_snapshot().splitlines()
        told = "\n".join(line for line in lines if "/url:" not in line) + "\n"
        return told.replace("\u00a0", " ")  # one line for the eye, one blank for the ear

    def wear(self, theme: str) -> None:
        """Put on a theme."""
        self.page.evaluate("(theme) => { document.documentElement.dataset.theme = theme; }", theme)

    def measured(self, *, desk: bool, touch: int = 56, gap: int = 12) -> list[str]:
        """What on this screen breaks the rules for targets, edges, type and motion."""
        rule = {"desk": desk, "touch": touch, "gap": gap, "main": 88}
        found: list[str] = self.page.evaluate(f"({MEASURE})({json.dumps(rule)})")
        return found

    def cut_off(self, change: str) -> list[str]:
        """What no longer fits after a change to the page."""
        self.page.evaluate(change)
        return [line for line in self.measured(desk=True) if "cut off" in line or "wide" in line]

    def swept(self, at: str) -> dict[str, list[str]]:
        """What is wrong with the screen that is open: sizes, themes, larger and longer words."""
        desk = at == "desk"
        findings = {"measured": self.measured(desk=desk)}
        for theme in THEMES:
            self.wear(theme)
            findings[f"axe, {theme}"] = self.axe(*([] if at == "phone" else CONTRAST))
        if not desk:
            findings["larger"] = self.cut_off("document.documentElement.style.fontSize = '200%'")
            self.page.evaluate("document.documentElement.style.fontSize = ''")
            findings["longer"] = self.cut_off(LONGER)
        return findings

    def wrong(self, at: str, jumps: list[float]) -> dict[str, Any]:
        """What is wrong with the screen that is open, how it moved while it opened included."""
        findings = {"jumps": jumps, **self.swept(at)}
        return {name: found for name, found in findings.items() if found}

    def jumps(self) -> list[float]:
        """How far things moved while the screen opened; half a second after it stood."""
        found: list[float] = self.page.evaluate(JUMPS)
        return found

    def axe(self, *only: str) -> list[str]:
        """What axe finds, contrast at its strictest included; `only` names single rules."""
        if not self.page.evaluate("() => 'axe' in window"):
            self.page.evaluate(AXE)
        wanted: dict[str, Any] = {"type": "rule", "values": only} if only else {
            "type": "tag", "values": RULES}  # fmt: skip
        options = {"runOnly": wanted, "resultTypes": ["violations"]}
        if not only:
            options["rules"] = {"color-contrast-enhanced": {"enabled": True}}
        answer = self.page.evaluate("(options) => axe.run(document, options)", options)
        return [f"{one['id']}: {one['nodes'][0]['html'][:200]}" for one in answer["violations"]]


@contextmanager
def demo_phone(folder: Path) -> Iterator[DemoPhone]:
    """A garage with the demo, and one phone in it."""
    data = folder / "data"
    take_demo(data, folder / "demo.zip")
    with garage(data) as house, sync_playwright() as player:
        browser = player.chromium.launch(executable_path=chromium(), args=list(QUIET))
        context = browser.new_context(
            viewport={"width": 390, "height": 844}, has_touch=True, reduced_motion="reduce",
            locale="en-GB", timezone_id="UTC", bypass_csp=True,
        )  # fmt: skip
        context.set_default_timeout(20_000)
        phone = DemoPhone(context.new_page(), house)
        try:
            phone.pair()
            yield phone
        finally:
            browser.close()


def wrong_at(phone: DemoPhone, at: str, path: str) -> dict[str, Any]:
    """What is wrong with a screen opened at a size: how it moves, sizes, themes, larger words."""
    size(phone, at)
    phone.open(path)
    return phone.wrong(at, phone.jumps())


def size(phone: DemoPhone, name: str) -> bool:
    width, height = SIZES[name]
    phone.page.set_viewport_size({"width": width, "height": height})
    return name == "desk"
