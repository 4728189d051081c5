"""Invented pushrods with things to measure, and the invented instruments they are read with."""

from typing import Any

from journeys.bench_scene import described

KIND = "33333333-0000-7000-8000-000000000001"
BAG = "33333333-0000-7000-8000-000000000002"
CALIPER = "33333333-0000-7000-8000-00000000000a"
MICROMETER = "33333333-0000-7000-8000-00000000000b"
BALANCE = "33333333-0000-7000-8000-00000000000c"
MANY = 32
SOURCE = "invented manual, page 4"
LENGTH = {
    "id": "m1", "name": "Length", "quantity": "length", "unit": "mm", "instrument": "caliper",
    "least": "186.90", "most": "187.10", "source": SOURCE,
}  # fmt: skip
TUBE = {
    "id": "m2", "name": "Tube", "quantity": "diameter", "unit": "mm", "instrument": "micrometer",
    "positions": ["rocker end", "lifter end"], "directions": ["along", "across"],
    "least": "7.90", "most": "8.00", "source": SOURCE,
}  # fmt: skip
WEIGHT = {"id": "m3", "name": "Weight", "quantity": "mass", "unit": "g", "instrument": "balance"}
CRITERIA = [
    {"id": "c1", "asks": "Ends even and round?", "good": "even and round", "bad": "flat"},
    {"id": "c2", "asks": "Rolls without a wobble?", "hint": "on the glass plate"},
]
REASONS = {"machine": ["wants polish"], "scrap": ["bent", "ball end flat", "cracked", "rust pits"]}


def rod(number: int) -> str:
    """The id of one pushrod."""
    return f"33333333-0000-7000-8000-0000000001{number:02d}"


def instruments() -> list[dict[str, Any]]:
    """A caliper whose calibration is long past its day, a micrometer, a balance."""
    length = {"quantity": "length", "unit": "mm"}
    return [
        described("instrument", CALIPER, name="Caliper 150", sort="caliper", **length,
                  resolution="0.01", deviation="0.03", calibrated="2024-05-03", due="2025-05-03"),
        described("instrument", MICROMETER, name="Micrometer 25", sort="micrometer", **length,
                  resolution="0.001", uncertainty="0.002", lies="top drawer"),
        described("instrument", BALANCE, name="Balance", sort="balance", quantity="mass", unit="g",
                  resolution="0.1"),
    ]  # fmt: skip


def pushrods(many: int = MANY) -> list[dict[str, Any]]:
    """The bag, its kind with what is looked at and measured, and the instruments."""
    kind = {
        "name": "Long pushrod", "plural": "long pushrods", "criteria": CRITERIA,
        "reasons": REASONS, "measures": [LENGTH, TUBE, WEIGHT], "drawing": "ball-end",
    }  # fmt: skip
    numbers = range(1, many + 1)
    return [
        described("kind", KIND, **kind),
        described("holder", BAG, name="Bag of long pushrods", form="bag"),
        *(described("part", rod(n), name=f"Long pushrod {n}", kind=KIND, quantity=1)
          for n in numbers),
        *({"heading": "place", "about": rod(n), "body": {"in": BAG}} for n in numbers),
        *instruments(),
    ]  # fmt: skip


def reading(measure: str, value: str, unit: str = "mm", **more: str) -> dict[str, Any]:
    """One reading as an inspection keeps it."""
    return {"measure": measure, **more, "value": {"value": value, "unit": unit}}


def read_already() -> list[dict[str, Any]]:
    """The first pushrod, read wrong, struck out, read again; the fifth, used though too short."""
    tube = [
        reading("m2", value, position=position, direction=direction, instrument=MICROMETER)
        for position, direction, value in (
            ("rocker end", "along", "7.952"), ("rocker end", "across", "7.940"),
            ("lifter end", "along", "7.961"), ("lifter end", "across", "7.899"),
        )
    ]  # fmt: skip
    slipped, looked = "33333333-0000-7000-8000-0000000000f1", "33333333-0000-7000-8000-0000000000f2"
    return [
        {"heading": "inspection", "about": rod(1), "id": slipped,
         "body": {"verdict": "scrap", "readings": [reading("m1", "178.02")]}},
        {"heading": "strike-out", "about": slipped, "body": {"reason": "the jaw slipped"}},
        {"heading": "inspection", "about": rod(1), "id": looked, "body": {
            "verdict": "spare", "reason": "worn, but good",
            "readings": [reading("m1", "187.02", instrument=CALIPER), *tube,
                         reading("m9", "3.1")],
        }},
        {"heading": "verdict", "about": rod(1),
         "body": {"verdict": "spare", "reason": "worn, but good", "inspection": looked}},
        {"heading": "inspection", "about": rod(5), "body": {
            "verdict": "use", "reason": "the manual allows it",
            "readings": [reading("m1", "186.20", instrument=CALIPER), reading("m3", "62.1", "g")],
        }},
    ]  # fmt: skip
