"""Whether a workshop of 2 000 pieces stays fluid: what a tap takes until the screen has changed.

    python tests/bench/pieces_speed.py [--pieces 2000] [--kinds 20] [--slow 4] [--samples 20]
        [--only next verdict]

Real server, real Chromium, phone-sized, CPU throttled, screens loaded ahead. Clocked from the tap
to the painted frame that answers it: a verdict, the next piece of a bag, the pool of a set, the
shelf, a found name. Beside each stands a bare counterpart of the same run: a tap that opens an
address without a record. The goal is p95 ≤ 100 ms.
"""

import argparse
import sys
import tempfile
import uuid
from pathlib import Path
from statistics import median
from typing import Any

sys.path.insert(0, str(Path(__file__).resolve().parents[1]))
sys.path.insert(0, str(Path(__file__).resolve().parents[2] / "server"))

from bench.phone_speed import Pen, in_page, p95, post
from garage import Garage, garage, phone
from playwright.sync_api import Page, sync_playwright

SCRIPT = in_page(Path(__file__).with_suffix(".js"))
GOAL_MS = 100
# The first content stands for a tap's answer; "whole" is clocked until nothing more comes.
WHATS = (
    "verdict", "next", "pool", "pool, whole", "away", "shelf", "shelf, whole", "sets",
    "sets, whole", "kind", "kind, whole", "history", "history, whole", "find",
)  # fmt: skip
ALL = ("verdict", "next", "pool", "away", "shelf", "sets", "kind", "history", "find")
BAG = str(uuid.UUID(int=0x018D00000001700080000000000000C1))


def about(sort: int, number: int) -> str:
    return str(uuid.UUID(int=0x018D00000002700080000000000000A0 + (sort << 60) + (number << 8)))


def kind_entry(pen: Pen, number: int) -> dict[str, Any]:
    fields = {
        "name": f"kind {number}", "plural": f"kind {number} pieces",
        "criteria": [{"id": "c1", "asks": "Ends round and smooth?"}],
        "measures": [{"id": "m1", "name": "Length", "quantity": "length", "unit": "mm"}],
    }  # fmt: skip
    return pen.entry("kind", about(1, number), {"fields": fields})


def judged(pen: Pen, part: str, number: int) -> list[dict[str, Any]]:
    """Two inspections, a verdict and a place: what a piece has after two evenings."""
    size = f"{187 + (number * 7919 % 97) / 200:.3f}"
    reading = {"measure": "m1", "value": {"value": size, "unit": "mm"}, "instrument": None}
    verdict = "spare" if number % 3 == 0 else "use"
    look = {"verdict": verdict, "looks": [{"criterion": "c1", "good": True}]}
    return [
        pen.entry("inspection", part, {**look, "readings": [reading]}),
        pen.entry("inspection", part, {**look, "readings": [reading]}),
        pen.entry("verdict", part, {"verdict": verdict}),
        pen.entry("place", part, {"in": about(3, number % 40)}),
    ]


def fill(server: Garage, pieces: int, kinds: int, fresh: int) -> None:
    """Pieces of all kinds, judged; a bag of as many as are inspected while it is clocked."""
    paired = post(
        server.address, "/api/v1/pair", {"code": server.pairing()["code"], "name": "bench"}
    )
    pen = Pen(paired["device"])
    entries = [kind_entry(pen, number) for number in range(kinds)]
    entries += [
        pen.entry("holder", about(3, at), {"fields": {"name": f"Bin {at}", "form": "bin"}})
        for at in range(40)
    ]
    entries.append(pen.entry("holder", BAG, {"fields": {"name": "Bag", "form": "bag"}}))
    for number in range(pieces):
        part = about(2, number)
        fields = {"name": f"Piece {number:04d}", "kind": about(1, number % kinds), "quantity": 1}
        entries.append(pen.entry("part", part, {"fields": fields}))
        if number < fresh * kinds and number % kinds == 0:
            entries.append(pen.entry("place", part, {"in": BAG}))
        else:
            entries += judged(pen, part, number)
    for first in range(0, len(entries), 2000):
        body = {"entries": entries[first : first + 2000], "room": 0}
        post(server.address, "/api/v1/sync", body, paired["key"])


def tell(what: str, times: list[float], bare: list[float]) -> None:
    goal = "" if p95(times) <= GOAL_MS else f" (goal {GOAL_MS} ms)"
    print(
        f"{what}: median {median(times):.0f} ms, p95 {p95(times):.0f} ms{goal}; bare "
        f"{median(bare):.0f} and {p95(bare):.0f} ms; ratio {median(times) / median(bare):.1f} "
        f"and {p95(times) / p95(bare):.1f}",
        flush=True,
    )


def clock(page: Page, address: str, options: argparse.Namespace) -> None:
    ask = {
        "samples": options.samples, "bag": BAG, "pool": about(1, 1), "rest": 900,
        "kinds": options.kinds, "pieces": options.pieces,
    }  # fmt: skip
    page.goto(f"{address}/more")
    page.wait_for_load_state("networkidle")
    link = page.context.new_cdp_session(page)
    link.send("Emulation.setCPUThrottlingRate", {"rate": options.slow})
    for what in options.only or ALL:
        figures = page.evaluate(SCRIPT, {**ask, "what": what})
        tell(what, figures["times"], figures["bare"])


def main() -> None:
    asked = argparse.ArgumentParser(description=__doc__)
    asked.add_argument("--pieces", type=int, default=2000)
    asked.add_argument("--kinds", type=int, default=20)
    asked.add_argument("--slow", type=float, default=4)
    asked.add_argument("--samples", type=int, default=20)
    asked.add_argument("--only", nargs="+", choices=WHATS)
    options = asked.parse_args()
    with tempfile.TemporaryDirectory() as folder, garage(Path(folder) / "data") as server:
        fill(server, options.pieces, options.kinds, 2 * options.samples + 4)
        with sync_playwright() as player:
            context = phone(player, Path(folder) / "phone")
            page = context.pages[0]
            page.goto(server.pairing()["url"])
            page.wait_for_selector("text=To the bench", timeout=60_000)
            page.goto(f"{server.address}/sync")
            page.wait_for_selector("text=Both hold the same", timeout=600_000)
            clock(page, server.address, options)
            context.close()


if __name__ == "__main__":
    main()
