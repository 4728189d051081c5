"""What must hold when every phone is home again, asked of real pages and the real computer."""

import json
import urllib.request
import zipfile
from pathlib import Path
from typing import Any

from garage import Garage
from playwright.sync_api import Page
from pwa.bare import tables

HOME_WITHIN_MS = 60_000

COME_HOME = """async () => {
  for (let tries = 0; tries < 40; tries += 1) {
    await window.store.syncNow();
    const { waiting, agreed, syncing, paired } = window.state();
    if (paired !== 'yes' || (waiting === 0 && agreed !== null && !syncing)) break;
  }
  return window.state();
}"""


def pair(page: Page, home: Garage, name: str = "bench phone") -> None:
    """As a person does, with the code the computer shows."""
    code = home.pairing()["code"]
    page.evaluate("([code, name]) => window.store.pair({code, name})", [code, name])


def keep(page: Page, count: int, tag: str = "f") -> list[str]:
    """So many pulls, one after another; their ids once the store says kept."""
    ids: list[str] = page.evaluate(
        """async ([count, tag]) => {
          const ids = [];
          for (let n = 0; n < count; n += 1)
            ids.push((await window.store.keep([window.pull(tag + n)]))[0].id);
          return ids;
        }""",
        [count, tag],
    )
    return ids


def plant(page: Page, body: str) -> None:
    """An entry that no form would make lies among the waiting ones."""
    envelope = (
        "{ ...window.pull('f1'), id: '018df906-f800-7fdd-9e4f-7ae73514a39b', device: 'x', n: 1,"
        " stamp: '018df906f800-0000', made: 'then', v: 1 }"
    )
    page.evaluate(f"() => window.store.takeIn([{{ ...{envelope}, ...{body} }}])")


def come_home(page: Page) -> dict[str, Any]:
    """Sync until nothing waits and both hold the same."""
    state: dict[str, Any] = page.evaluate(COME_HOME)
    return state


def log_of(home: Garage, folder: Path) -> dict[str, tuple[int, str | None, Any]]:
    """The computer's log by its own export."""
    file = folder / "export.zip"
    home.command("export", str(file))
    with zipfile.ZipFile(file) as archive:
        lines = [json.loads(line) for line in archive.read("log.jsonl").splitlines()]
    file.unlink()
    numbers = [line["seq"] for line in lines]
    assert numbers == list(range(1, len(lines) + 1))
    return {line["entry"]["id"]: (line["seq"], line.get("order"), line["entry"]) for line in lines}


def all_equal(
    home: Garage, folder: Path, pages: list[Page], kept: list[str], refused: int = 0
) -> None:
    """All devices and digests equal, tables = rebuild, nothing waits, everything kept is there."""
    for page in pages * 2:
        state = come_home(page)
        assert state["waiting"] == 0, state
        assert state["refused"] == refused, state
    log = log_of(home, folder)
    assert set(kept) <= set(log)
    home.command("rebuild")
    views = []
    for page in pages:
        assert come_home(page)["agreed"] == len(log)
        held = tables(page)
        taken = {key: row for key, row in held["entry"].items() if key in log}
        mine = {
            key: (row["seq"], row.get("order"), json.loads(row["text"]))
            for key, row in taken.items()
        }
        assert mine == log
        assert not held["dirty"]
        views.append({key: row["value"] for key, row in held["subject"].items()})
    assert all(view == views[0] for view in views)


def get(address: str, path: str) -> Any:
    """JSON from an open route."""
    with urllib.request.urlopen(f"{address}/api/v1{path}", timeout=10) as said:
        return json.load(said)
