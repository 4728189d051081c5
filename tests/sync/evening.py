"""What must hold when every phone is home again, asked of real pages and the real computer."""

import json
import zipfile
from pathlib import Path
from typing import Any

from garage import Garage
from playwright.sync_api import Page
from pwa.bare import tables
from sync.served import Home

HOME_WITHIN_MS = 60_000

COME_HOME = """async () => {
  for (let tries = 0; tries < 40; tries += 1) {
    await window.store.syncNow();
    const { waiting, agreed, syncing, paired } = window.state();
    if (paired !== 'yes' || (waiting === 0 && agreed !== null && !syncing)) break;
    // Another tab may be the one that syncs.
    await new Promise((resolve) => { setTimeout(resolve, 100); });
  }
  return window.state();
}"""


def pair(page: Page, home: Home | Garage, name: str = "bench phone") -> None:
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
        "{ ...window.pull('f1'), id: '018df906-f800-7fdd-9e4f-7ae73514a39b',"
        " device: '018df906-f800-7000-8000-0000000000d0',"
        " n: 1, stamp: '018df906f800-0000', made: 'then', v: 1 }"
    )
    page.evaluate(f"() => window.store.takeIn([{{ ...{envelope}, ...{body} }}])")


def come_home(page: Page) -> dict[str, Any]:
    """Sync until nothing waits and both hold the same."""
    state: dict[str, Any] = page.evaluate(COME_HOME)
    return state


def log_of(home: Home | Garage, folder: Path) -> dict[str, tuple[int, str | None, Any]]:
    """The computer's log, numbered without a hole."""
    rows = home.log() if isinstance(home, Home) else exported(home, folder)
    assert [seq for seq, _, _ in rows] == list(range(1, len(rows) + 1))
    found = [(seq, order, json.loads(text)) for seq, order, text in rows]
    return {entry["id"]: (seq, order, entry) for seq, order, entry in found}


def exported(home: Garage, folder: Path) -> list[tuple[int, str | None, str]]:
    """The log of another process, by its own export."""
    file = folder / "export.zip"
    home.command("export", str(file))
    with zipfile.ZipFile(file) as archive:
        lines = [json.loads(line) for line in archive.read("log.jsonl").splitlines()]
    file.unlink()
    return [(line["seq"], line.get("order"), json.dumps(line["entry"])) for line in lines]


def tables_are_the_log(home: Home | Garage) -> None:
    """By the rebuild of the computer itself."""
    if isinstance(home, Home):
        assert not home.differences()
    else:
        home.command("rebuild")


def all_equal(
    home: Home | Garage, folder: Path, pages: list[Page], kept: list[str], refused: int = 0
) -> None:
    """All devices and digests equal, tables = rebuild, nothing waits, everything kept is there."""
    for page in pages * 2:
        state = come_home(page)
        assert state["waiting"] == 0, (state["trouble"], state["syncing"], state)
        assert state["refused"] == refused, state
    log = log_of(home, folder)
    assert set(kept) <= set(log)
    tables_are_the_log(home)
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
