"""Builds the demo; every run gives the same files."""

import json
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from demo_workshop import bench, joints, runs, things
from demo_workshop.scribe import Scribe, as_line

DEMO = Path(__file__).resolve().parents[2] / "fixtures" / "demo"


@dataclass(frozen=True)
class Demo:
    """The files: lines of the log and of what waits, names of the devices, pictures by digest."""

    log: list[str]
    waiting: list[str]
    devices: dict[str, str]
    pictures: dict[str, bytes]


def build() -> Demo:
    """The whole demo, from the first label to the evening it stopped."""
    log = Scribe()
    log.hand = log.tablet
    shop = things.write_beginnings(log)
    log.hand = log.phone
    log.at("9 Mar 10:00:00")
    things.write_holders(log, shop)
    things.write_parts(log, shop)
    log.at("15 Mar 15:00:00")
    bench.write_march(log, shop)
    log.at("3 May 17:30:00")
    log.hand = log.tablet
    made = joints.write_joints(log, shop)
    _second_thoughts(log, shop)
    log.hand = log.phone
    log.at("2 Aug 09:40:00")
    bench.write_august(log, shop)
    log.at("12 Oct 14:10:00")
    bench.write_october(log, shop)
    pump = runs.write_done_runs(log, shop, made)
    log.at("9 Nov 16:00:00")
    runs.write_fitted(log, shop)
    runs.write_head_run(log, shop, made)
    devices = {device.id: device.name for device in (log.phone, log.tablet)}
    return Demo(log.lines(), _waiting(log, shop, made, pump), devices, shop.pictures)


def _second_thoughts(log: Scribe, shop: things.Shop) -> None:
    """Labels on parts, one spoilt; a box made twice; descriptions changed later."""
    named = ("crankshaft", "camshaft", "exhaust manifold", "flexplate", "oil pump", "sump")
    for code, name in zip(shop.codes, named, strict=False):
        log.stand("label", code, {"marks": shop.parts[name]})
    spoilt = {"marks": None, "state": "retired", "invented": True}
    log.stand("label", shop.codes[len(named)], spoilt)
    fields: dict[str, Any] = {"name": "box 8", "form": "box", "invented": True}
    twice = log.write("holder", log.fresh("box made twice"), {"fields": fields})
    log.write("strike-out", twice, {"reason": "made twice, it is box 7"})
    note = "Bottom row. Valve gear of donor 2."
    log.write("holder", shop.holders["bin 12"], {"fields": {"note": note}})
    log.write("part", shop.parts["starter"], {"fields": {"name": "starter, small"}})
    log.hand = log.phone
    log.write("part", shop.parts["starter"], {"fields": {"name": "starter"}})


def _waiting(log: Scribe, shop: things.Shop, made: dict[str, str], pump: str) -> list[str]:
    """Three entries the phone has not sent; the computer refuses the reading of the second."""
    taken = len(log.entries)
    log.at("15 Nov 18:02:00")
    text = "Bolt 6: the old socket had a chipped corner. A new one lies beside the wrench."
    log.write("note", shop.parts["cylinder head"], {"text": text})
    log.later(300)
    run = {"run": pump, "fastener": "f2", "pass": "p1", "lubricant": "dry"}
    reading = {"value": "22", "unit": "N·m"}
    body = {**run, "wrench": shop.wrenches["short click wrench"], "target": dict(reading)}
    log.write("pull", made["Oil pump"], {**body, "reading": reading, "read_at": "bolt"})
    log.later(120)
    log.stand("place", shop.parts["oil pump drive"], {"in": shop.holders["bin 12"]})
    entries = [found.facts for found in log.entries[taken:]]
    del log.entries[taken:]
    entries[1]["body"]["reading"]["value"] = "22.5."
    return [as_line(facts) for facts in entries]


def write(demo: Demo, folder: Path) -> None:
    """Put the files in their folder, and take away pictures that are no longer named."""
    photos = folder / "photos"
    photos.mkdir(parents=True, exist_ok=True)
    for old in photos.iterdir():
        if old.name not in demo.pictures:
            old.unlink()
    for name, drawn in demo.pictures.items():
        (photos / name).write_bytes(drawn)
    names = json.dumps(demo.devices, indent=1) + "\n"
    (folder / "devices.json").write_text(names, encoding="utf-8", newline="\n")
    for name, lines in (("log.jsonl", demo.log), ("waiting.jsonl", demo.waiting)):
        text = "".join(f"{line}\n" for line in lines)
        (folder / name).write_text(text, encoding="utf-8", newline="\n")
