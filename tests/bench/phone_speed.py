"""How quick a phone feels: scan result → record painted, and tap → kept on disk.

    python tests/bench/phone_speed.py [--parts 20000] [--slow 4] [--samples 60]

Real server, real Chromium, phone-sized, CPU throttled, the page open and its screens loaded
ahead. Clocked from the label's address handed to the page until the frame that holds name,
verdict and the values of the joints is painted. Beside each figure stands its bare counterpart
of the same run, taken in turn: an address without a record, and an empty strict transaction.
"main thread" is the time the page itself worked for one, without what other work on this machine
took. Between two samples there is a pause, as the confirm of a run has one.
"""

import argparse
import gzip
import json
import sys
import tempfile
import time
import uuid
from pathlib import Path
from statistics import median
from typing import Any
from urllib.request import Request, urlopen

sys.path.insert(0, str(Path(__file__).resolve().parents[1]))
sys.path.insert(0, str(Path(__file__).resolve().parents[2] / "server"))

from garage import Garage, garage, phone
from playwright.sync_api import CDPSession, Page, sync_playwright
from witnessmark.trade import label

REST_MS = 300
CLOCK = Path(__file__).with_name("tap_clock.js").read_text(encoding="utf-8").rstrip().rstrip(";")


def in_page(script: Path) -> str:
    """A bench's script as one function of what to do, with the clock of taps at hand."""
    own = script.read_text(encoding="utf-8").rstrip().rstrip(";")
    return f"(ask) => (\n{own}\n)(ask, (\n{CLOCK}\n)(ask.rest))"


SCRIPT = in_page(Path(__file__).with_suffix(".js"))


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


def joint_of(parts: list[dict[str, Any]]) -> dict[str, Any]:
    """A joint of 14 in four passes."""
    passes: list[dict[str, Any]] = [{"id": "p0", "how": "hand"}]
    passes += [
        {"id": f"p{i}", "how": "torque", "values": [{"value": v, "unit": "lbf·ft"}]}
        for i, v in enumerate(("20", "45", "85"), 1)
    ]
    bolts = [{"id": f"f{i}", "number": i, "x": i * 60, "y": 100} for i in range(1, 15)]
    programme = {
        "passes": passes, "lubricant": "oiled", "source": "p. 1",
        "sequence": [b["id"] for b in bolts], "cautions": [],
    }  # fmt: skip
    return {
        "name": "Head bolts", "parts": [p["id"] for p in parts], "fasteners": bolts,
        "pattern": "line", "programme": programme,
    }  # fmt: skip


def dress(
    pen: "Pen", entries: list[dict[str, Any]], shown: list[dict[str, Any]], number: int
) -> str:
    """Labels, notes and inspections for six shown parts, and a joint of three of them."""
    joint = str(uuid.UUID(int=0x018D00000003700080000000000000C1 + (number << 8)))
    for at, part in enumerate(shown[number : number + 6], number):
        seven = f"7K3M{label.ALPHABET[at // 32]}{label.ALPHABET[at % 32]}2"
        code = seven + label.check(seven)
        part.update(code=f"/L/{code}", record=f"/part/{part['id']}", joint=at < number + 3)
        entries.append(pen.entry("label", code, {"marks": part["id"]}))
        entries.append(pen.entry("note", part["id"], {"text": "Washed, no cracks seen"}))
        entries.append(pen.entry("inspection", part["id"], {"verdict": "use", "reason": "as new"}))
    entries.append(pen.entry("joint", joint, {"fields": joint_of(shown[number : number + 3])}))
    return joint


def fill(server: Garage, count: int, samples: int) -> tuple[list[dict[str, Any]], str]:
    """`count` parts with verdict or place; gives those that are looked at, and a joint."""
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
    shown = parts[:: max(1, count // samples)][:samples]
    joints = [dress(pen, entries, shown, number) for number in range(0, len(shown) - 2, 6)]
    for first in range(0, len(entries), 2000):
        body = {"entries": entries[first : first + 2000], "room": 0}
        post(server.address, "/api/v1/sync", body, paired["key"])
    return shown, joints[0]


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


def tell(what: str, figures: dict[str, Any]) -> None:
    ours, bare = p95(figures["times"]), p95(figures["bare"])
    middle, bare_middle = median(figures["times"]), median(figures["bare"])
    print(
        f"{what}: median {middle:.0f} ms, p95 {ours:.0f} ms; bare {bare_middle:.0f} and "
        f"{bare:.0f} ms; ratio {middle / bare_middle:.1f} and {ours / bare:.1f}; main thread "
        f"{figures['worked']:.0f} ms each (with its bare one); layout shift "
        f"{sum(figures['shifts']):.3f}",
        flush=True,
    )


def worked(link: CDPSession) -> float:
    """Milliseconds the page's main thread has worked so far."""
    told = link.send("Performance.getMetrics")["metrics"]
    return 1000 * float(next(each["value"] for each in told if each["name"] == "TaskDuration"))


def measure(page: Page, link: CDPSession, ask: dict[str, Any]) -> dict[str, Any]:
    before = worked(link)
    figures: dict[str, Any] = page.evaluate(SCRIPT, {"rest": REST_MS, **ask})
    return {**figures, "worked": (worked(link) - before) / len(figures["times"])}


def main() -> None:
    asked = argparse.ArgumentParser(description=__doc__)
    asked.add_argument("--parts", type=int, default=20000)
    asked.add_argument("--slow", type=float, default=4)
    asked.add_argument("--samples", type=int, default=60)
    options = asked.parse_args()
    with tempfile.TemporaryDirectory() as folder, garage(Path(folder) / "data") as server:
        parts, joint = fill(server, options.parts, options.samples)
        with sync_playwright() as player:
            context = phone(player, Path(folder) / "phone")
            page = context.pages[0]
            begun = time.perf_counter()
            page.goto(server.pairing()["url"])
            page.wait_for_selector("text=To the bench", timeout=60_000)
            page.goto(server.address + f"/joint/{joint}")
            page.wait_for_selector("text=Head bolts", timeout=600_000)
            print(f"first pull seen after {time.perf_counter() - begun:.1f} s", flush=True)
            page.goto(server.address + f"/part/{parts[0]['id']}")
            page.wait_for_selector(".verdict")
            page.wait_for_load_state("networkidle")
            link = context.new_cdp_session(page)
            link.send("Emulation.setCPUThrottlingRate", {"rate": options.slow})
            link.send("Performance.enable", {"timeDomain": "threadTicks"})
            for way, what in (("code", "label read"), ("record", "record opened")):
                ask = {"what": "records", "way": way, "parts": parts}
                tell(f"{what} → painted", measure(page, link, ask))
            drafts = pulls(joint, options.samples)
            tell("kept on disk", measure(page, link, {"what": "kept", "drafts": drafts}))
            context.close()


if __name__ == "__main__":
    main()
