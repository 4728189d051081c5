"""Kill -9 of the browser and of the computer, and the disk that has an entry before "kept"."""

import json
import re
import shutil
from collections.abc import Iterator
from pathlib import Path

import pytest
from garage import Garage, garage
from playwright.sync_api import Playwright
from pwa.bare import HOME, tables
from sync.conftest import Phone
from sync.evening import all_equal, come_home, keep, pair
from sync.killable import Killable
from sync.proxy import Line, line_to
from sync.served import Home
from tools import ToolMissing


@pytest.fixture
def killable(player: Playwright, tmp_path: Path) -> Iterator[Killable]:
    found = Killable(player, tmp_path / "profile")
    yield found
    found.kill()


def test_what_was_shown_as_kept_outlives_a_killed_browser(
    killable: Killable, home: Home, line: Line, tmp_path: Path
) -> None:
    page = killable.start(line.address)
    pair(page, home)
    kept: list[str] = []
    for life in range(3):
        kept += keep(page, 5, f"life{life}-")
        killable.kill()
        page = killable.start(line.address)
        assert set(kept) <= set(tables(page)["entry"])
    all_equal(home, tmp_path, [page], kept)


def test_a_browser_killed_in_the_middle_of_a_pull_goes_on_where_it_was(
    killable: Killable, home: Home, line: Line, phone: Phone, tmp_path: Path
) -> None:
    other = phone()
    other.evaluate("() => { window.many = Array.from({length: 600}, (_, n) => pull('f' + n)); }")
    kept = other.evaluate("async () => (await store.keep(window.many)).map(({id}) => id)")
    come_home(other)
    page = killable.start(line.address)
    line.plan = ["answer cut", "none"]
    pair(page, home, "second")
    killable.kill()
    page = killable.start(line.address)
    all_equal(home, tmp_path, [page, other], kept)


def test_the_disk_has_an_entry_before_the_screen_says_kept(
    player: Playwright, tmp_path: Path
) -> None:
    strace = shutil.which("strace")
    if not strace:
        raise ToolMissing("strace is not on this computer")
    trace = tmp_path / "trace"
    calls = "trace=fsync,fdatasync"
    watched = Killable(player, tmp_path / "profile", strace, "-f", "-ttt", "-y", "-e", calls,
                       "-o", str(trace))  # fmt: skip
    page = watched.start(HOME)
    moments = page.evaluate(
        """async () => {
          const moments = [];
          for (let n = 0; n < 10; n += 1) {
            const before = performance.timeOrigin + performance.now();
            await store.keep([window.pull('f' + n)]);
            moments.push([before / 1000, (performance.timeOrigin + performance.now()) / 1000]);
            await new Promise((resolve) => setTimeout(resolve, 50));
          }
          return moments;
        }"""
    )
    watched.kill()
    line = re.compile(r"^\d+\s+([\d.]+) (?:fsync|fdatasync)\(\d+<[^>]*IndexedDB[^>]*>")
    lines = trace.read_text(encoding="utf-8", errors="replace").splitlines()
    synced = [float(found[1]) for found in map(line.match, lines) if found]
    for before, after in moments:
        assert any(before - 0.02 <= moment <= after for moment in synced), (before, after, synced)


@pytest.fixture
def computer(tmp_path: Path) -> Iterator[Garage]:
    with garage(tmp_path / "data", "--localhost") as found:
        yield found


def test_a_computer_killed_around_its_commits_has_every_entry_once(
    killable: Killable, computer: Garage, tmp_path: Path
) -> None:
    with line_to(computer.address) as (line, address):
        page = killable.start(address)
        pair(page, computer)
        kept: list[str] = []
        for life in range(3):
            page.evaluate(
                """(life) => {
                  const many = Array.from({length: 400}, (_, n) => window.pull(`f${life}-${n}`));
                  window.kept = store.keep(many).then((made) => made.map(({id}) => id));
                  window.round = window.kept.then(() => store.syncNow());
                }""",
                life,
            )
            kept += page.evaluate("() => window.kept")
            computer.kill()
            line.target = computer.start()
        all_equal(computer, tmp_path, [page], kept)


@pytest.mark.parametrize("how", ["command", "copy"])
def test_last_weeks_backup_gets_back_what_the_phones_still_hold(
    how: str, killable: Killable, computer: Garage, tmp_path: Path
) -> None:
    with line_to(computer.address) as (line, address):
        page = killable.start(address)
        pair(page, computer)
        kept = keep(page, 5, "old")
        come_home(page)
        backup = tmp_path / "backup"
        if how == "command":
            computer.command("backup", str(backup))
        else:
            computer.stop()
            shutil.copytree(computer.data, backup)
            line.target = computer.start()
        picture = "() => store.keepPhoto(new Blob([new Uint8Array([255, 216, 255, 1])]))"
        page.evaluate(picture.replace("1])]", "1])], {type: 'image/jpeg'}"))
        kept += keep(page, 6, "after the backup")
        come_home(page)
        computer.stop()
        shutil.rmtree(computer.data)
        if how == "command":
            computer.command("restore", str(backup))
        else:
            shutil.copytree(backup, computer.data)
        line.target = computer.start()
        kept += keep(page, 2, "after the restore")
        all_equal(computer, tmp_path, [page], kept)
        photos = [path for path in computer.data.rglob("*") if len(path.name.split(".")[0]) == 64]
        assert len(photos) == 1
        found = json.dumps(tables(page)["photo"])
        assert '"held"' in found
