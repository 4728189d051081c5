"""The whole thread as one person does it: print, pair, scan, inspect, torque, be killed, sync.

Trusted HTTPS with the workshop's own authority, a phone-sized Chromium with a camera that sees our
own printed label, the computer switched off while the phone is at the bench.
"""

import json
import os
import re
import signal
import subprocess
import zipfile
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
from garage import DESK, Garage, camera_flags, film, phone, trust
from journeys.hands import Hand
from journeys.label_scene import printed_labels
from playwright.sync_api import BrowserContext, Page, Playwright, expect, sync_playwright

PASSES, BOLTS = 2, 6


def kill_browser(profile: Path) -> None:
    """kill -9 of every process of that profile, as an empty battery does."""
    found = subprocess.run(
        ["pgrep", "-f", str(profile)], capture_output=True, text=True, check=False
    )
    for process in found.stdout.split():
        if int(process) != os.getpid():
            os.kill(int(process), signal.SIGKILL)


def label_film(pdf: Path, to: Path) -> str:
    """A film of the first printed label on a bench top; gives its code, read by another reader."""
    ((code, still),) = printed_labels(pdf, 1)
    film([still], to)
    return code


class Bench:
    """One person's thumb on one phone."""

    def __init__(self, page: Page) -> None:
        self.page, self.hand = page, Hand(page)

    def press(self, words: str | re.Pattern[str], exact: bool = False) -> None:
        """Press the key or link that says so, the last one of the screen if several do."""
        place = self.page.locator("a, button").filter(has_text=words)
        if exact:
            place = self.page.get_by_role("button", name=words, exact=True)
        place.last.wait_for()
        self.hand.settle()
        self.hand.press(place.last)

    def fill(self, name: str, text: str) -> None:
        self.page.get_by_label(name, exact=True).first.fill(text)

    def sees(self, words: str) -> None:
        expect(self.page.locator("main")).to_contain_text(words, timeout=20_000)


@pytest.fixture
def player() -> Iterator[Playwright]:
    with sync_playwright() as running:
        yield running


@pytest.fixture
def server(tmp_path: Path) -> Iterator[Garage]:
    here = Garage(tmp_path / "data", "--contact-port", "0", "--name", "bokal")
    try:
        here.start()
        trust(tmp_path, here.data / "trust" / "ca.pem")
        yield here
    finally:
        here.kill()


def local(server: Garage, path: str = "") -> str:
    """The address by the name that needs no network: the certificate names it too."""
    return f"https://localhost:{server.address.rsplit(':', 1)[1]}{path}"


def pair(server: Garage, page: Page) -> None:
    page.goto(local(server, f"/pair#{server.pairing()['code']}"))
    expect(page.get_by_role("heading", level=1)).to_contain_text("Paired", timeout=20_000)


def print_a_sheet(server: Garage, player: Playwright, folder: Path) -> Path:
    """At the computer: pair its browser, make a sheet of blank labels, save the PDF."""
    desk = phone(player, folder / "desk", home=folder, **{**DESK, "is_mobile": False})
    page = desk.pages[0]
    pair(server, page)
    page.goto(local(server, "/labels"))
    page.get_by_text("Make 24 labels").click()
    with page.expect_download() as saved:
        page.get_by_text("Save the PDF").click()
    to = folder / "labels.pdf"
    saved.value.save_as(to)
    desk.close()
    return to


def take_phone(
    player: Playwright, folder: Path, name: str, seen: Path | None = None
) -> BrowserContext:
    flags = camera_flags(seen) if seen else []
    return phone(player, folder / name, *flags, home=folder, permissions=["camera"] if seen else [])


def name_the_bag(bench: Bench, address: str, code: str) -> None:
    """Scan the blank label and say what it marks."""
    bench.page.goto(address + "/scan")
    expect(bench.page.locator(".hit")).to_contain_text("Blank label", timeout=20_000)
    expect(bench.page.locator(".hit")).to_contain_text(f"{code[:4]} {code[4:]}")
    bench.press("New")
    bench.fill("Name", "Water pump")
    bench.press("Keep")
    bench.sees("Water pump")


def inspect(bench: Bench) -> None:
    bench.press("Inspect")
    bench.press("Use")
    bench.press("Keep")
    bench.page.wait_for_url("**/part/*")
    bench.sees("What has been found")


def add_the_joint(bench: Bench) -> None:
    """Six bolts in a circle: by hand, then one value with its page."""
    bench.press("Add a joint")
    bench.fill("Name", "Pump bolts")
    bench.press("Circle")
    fewer = bench.page.get_by_role("group", name="How many").get_by_role("button", name="One less")
    for _ in range(10 - BOLTS):
        bench.hand.settle()
        bench.hand.press(fewer)
    bench.fill("Value", "15")
    bench.press("lbf·ft")
    bench.fill("In your own words", "dry")
    bench.fill("Source: manual and page", "Invented manual, page 4-2")
    bench.press("Keep the joint")


def confirm(bench: Bench, first: int, last: int) -> None:
    """Confirm the bolts that are next, one after the other."""
    for _ in range(first, last + 1):
        bench.press("Confirm")
        bench.hand.settle()


def run_half(bench: Bench) -> None:
    bench.press("Begin")
    confirm(bench, 1, 3)
    bench.press("All the rest")
    bench.sees("All 6 turned in by hand.")
    bench.press("Pass 1")
    confirm(bench, 1, 3)
    expect(bench.page.locator("main")).to_contain_text("3 of 6")


def test_a_label_is_printed_scanned_inspected_torqued_and_synced(
    server: Garage, player: Playwright, tmp_path: Path
) -> None:
    pdf = print_a_sheet(server, player, tmp_path)
    seen = tmp_path / "camera.mjpeg"
    code = label_film(pdf, seen)
    at_bench = take_phone(player, tmp_path, "bench", seen)
    bench = Bench(at_bench.pages[0])
    pair(server, bench.page)
    bench.page.evaluate("navigator.serviceWorker.ready")
    bench.page.goto(local(server, "/sync"))
    bench.sees("Ready for the garage")
    port = int(server.address.rsplit(":", 1)[1])
    server.kill()
    name_the_bag(bench, local(server), code)
    inspect(bench)
    add_the_joint(bench)
    run_half(bench)
    kill_browser(tmp_path / "bench")

    again = take_phone(player, tmp_path, "bench", seen)
    bench = Bench(again.pages[0])
    bench.page.goto(local(server, "/scan"))
    expect(bench.page.locator(".hit")).to_contain_text("Water pump", timeout=20_000)
    bench.press("Open")
    bench.press("Go on")
    bench.sees("It stopped here")
    bench.sees("3 of 6 done")
    bench.press("Touched 3")
    bench.press("Go on at 4")
    confirm(bench, 4, 6)
    bench.sees("All 6 done.")
    bench.press("Done")

    server.start(port)
    bench.page.goto(local(server, "/sync"))
    bench.press(re.compile("Send now|Fetch what is new"))
    expect(bench.page.locator(".sync")).to_contain_text("all home", timeout=60_000)

    second = take_phone(player, tmp_path, "second")
    other = second.pages[0]
    pair(server, other)
    other.goto(local(server, f"/L/{code}"))
    expect(other.locator("main")).to_contain_text("Pump bolts", timeout=20_000)
    expect(other.locator("main")).to_contain_text("1 inspection")
    expect(other.locator("main")).to_contain_text("Invented manual, page 4-2")
    second.close()
    again.close()

    pulls = exported(server, tmp_path, "pull")
    assert len(pulls) == PASSES * BOLTS
    assert {pull["body"]["fastener"] for pull in pulls} == {f"f{n}" for n in range(1, BOLTS + 1)}
    assert len(exported(server, tmp_path, "inspection")) == 1
    assert [touch["body"]["fastener"] for touch in exported(server, tmp_path, "touch")] == ["f3"]


def exported(server: Garage, folder: Path, heading: str) -> list[dict[str, Any]]:
    """The entries of one heading, as the open export has them."""
    to = folder / f"{heading}.zip"
    server.command("export", str(to))
    with zipfile.ZipFile(to) as packed:
        lines = packed.read("log.jsonl").decode().splitlines()
    entries = [json.loads(line)["entry"] for line in lines]
    return [entry for entry in entries if entry["heading"] == heading]
