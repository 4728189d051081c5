"""How quick a phone feels: scan result → record painted, and tap → kept on disk.

    python tests/bench/phone_speed.py [--parts 20000] [--slow 4]

Real server, real Chromium, phone-sized, CPU throttled. Beside each figure stands its bare
counterpart of the same run: an address without a record, and an empty strict transaction.
"""

import argparse
import gzip
import json
import sys
import tempfile
import time
import uuid
from pathlib import Path
from typing import Any
from urllib.request import Request, urlopen

sys.path.insert(0, str(Path(__file__).resolve().parents[1]))

from garage import Garage, garage, phone
from playwright.sync_api import Page, sync_playwright

SCRIPT = Path(__file__).with_suffix(".js").read_text(encoding="utf-8")


class Pen:
    """Writes entries as one device."""

    def __init__(self, device: str) -> None:
        self.device, self.n = device, 0

    def entry(self, heading: str, about: str, body: dict[str, Any]) -> dict[str, Any]:
        self.n += 1
        ms = 0x018D00000000 + self.n
        tail = uuid.uuid4().hex
        return {
            "id": f"{ms >> 16:08x}-{ms & 0xFFFF:04x}-7{tail[:3]}-8{tail[3:6]}-{tail[6:18]}",
            "heading": heading, "about": about, "device": self.device, "n": self.n,
            "stamp": f"{ms:012x}-0000", "made": "2031-03-07T19:42:10+01:00", "v": 1, "body": body,
        }  # fmt: skip


def post(address: str, path: str, body: object, key: str | None = None) -> dict[str, Any]:
    headers = {"Content-Type": "application/json", "Content-Encoding": "gzip"}
    if key:
        headers["Authorization"] = f"Bearer {key}"
    asked = Request(
        address + path, gzip.compress(json.dumps(body).encode()), headers, method="POST"
    )
    with urlopen(asked, timeout=120) as answer:
        result: dict[str, Any] = json.loads(answer.read())
        return result


def fill(server: Garage, count: int) -> tuple[list[dict[str, str]], str]:
    """`count` parts with verdict and place, and one joint of 14; gives some parts and the joint."""
    paired = post(
        server.address, "/api/v1/pair", {"code": server.pairing()["code"], "name": "bench"}
    )
    pen, entries, parts = Pen(paired["device"]), [], []
    bin_ = str(uuid.UUID(int=0x018D00000001700080000000000000B1))
    entries.append(pen.entry("holder", bin_, {"fields": {"name": "Bin 1", "form": "bin"}}))
    for number in range(count):
        part = str(uuid.UUID(int=0x018D00000002700080000000000000A0 + (number << 8)))
        name = f"Part {number}"
        entries.append(pen.entry("part", part, {"fields": {"name": name, "quantity": 1}}))
        entries.append(
            pen.entry("place", part, {"in": bin_})
            if number % 400 == 0
            else pen.entry("verdict", part, {"verdict": "use"})
        )
        parts.append({"id": part, "name": name})
    joint = str(uuid.UUID(int=0x018D00000003700080000000000000C1))
    passes = [{"id": "p0", "how": "hand"}]
    passes += [
        {"id": f"p{i}", "how": "torque", "values": [{"value": v, "unit": "lbf·ft"}]}
        for i, v in enumerate(("20", "45", "85"), 1)
    ]
    bolts = [{"id": f"f{i}", "number": i, "x": i * 60, "y": 100} for i in range(1, 15)]
    entries.append(
        pen.entry(
            "joint",
            joint,
            {
                "fields": {
                    "name": "Head bolts",
                    "parts": [p["id"] for p in parts[:3]],
                    "fasteners": bolts,
                    "pattern": "line",
                    "programme": {
                        "passes": passes,
                        "lubricant": "oiled",
                        "source": "p. 1",
                        "sequence": [b["id"] for b in bolts],
                        "cautions": [],
                    },
                }
            },
        )
    )
    for first in range(0, len(entries), 2000):
        body = {"entries": entries[first : first + 2000], "room": 0}
        post(server.address, "/api/v1/sync", body, paired["key"])
    return parts, joint


def pulls(joint: str, count: int) -> list[dict[str, Any]]:
    run = str(uuid.uuid4())
    return [
        {"heading": "pull", "about": joint, "body": {
            "run": run, "fastener": f"f{i % 14 + 1}", "pass": f"p{i // 14 % 4}", "wrench": None,
            "target": None, "reading": None}}
        for i in range(count)
    ]  # fmt: skip


def p95(times: list[float]) -> float:
    return sorted(times)[int(len(times) * 0.95) - 1]


def tell(what: str, figures: dict[str, list[float]]) -> None:
    ours, bare = p95(figures["times"]), p95(figures["bare"])
    middle = sorted(figures["times"])[len(figures["times"]) // 2]
    print(
        f"{what}: median {middle:.0f} ms, p95 {ours:.0f} ms, bare p95 {bare:.0f} ms, "
        f"ratio {ours / bare:.1f}",
        flush=True,
    )


def measure(page: Page, ask: dict[str, Any]) -> dict[str, list[float]]:
    figures: dict[str, list[float]] = page.evaluate(SCRIPT, ask)
    return figures


def main() -> None:
    asked = argparse.ArgumentParser(description=__doc__)
    asked.add_argument("--parts", type=int, default=20000)
    asked.add_argument("--slow", type=float, default=4)
    options = asked.parse_args()
    with tempfile.TemporaryDirectory() as folder, garage(Path(folder) / "data") as server:
        parts, joint = fill(server, options.parts)
        with sync_playwright() as player:
            context = phone(player, Path(folder) / "phone")
            page = context.pages[0]
            begun = time.perf_counter()
            page.goto(server.pairing()["url"])
            page.wait_for_selector("text=To the bench", timeout=60_000)
            page.goto(server.address + f"/joint/{joint}")
            page.wait_for_selector("text=Head bolts", timeout=600_000)
            print(f"first pull seen after {time.perf_counter() - begun:.1f} s", flush=True)
            page.goto(server.address + "/more")
            page.wait_for_selector("h1")
            link = context.new_cdp_session(page)
            link.send("Emulation.setCPUThrottlingRate", {"rate": options.slow})
            step = max(1, len(parts) // 60)
            tell("record painted", measure(page, {"what": "records", "parts": parts[::step][:60]}))
            tell("kept on disk", measure(page, {"what": "kept", "drafts": pulls(joint, 56)}))
            context.close()


if __name__ == "__main__":
    main()
