"""Wrenches and instruments of a workshop, with calibrations old and new and labels."""

from typing import Any

WRENCH, OLD, GAUGE, BALANCE, ODD = (f"55555555-0000-7000-8000-00000000000{n}" for n in range(1, 6))
KEEP = "await store.keep(given);"
LABEL = """
const { check } = await import('/trade/label.js');
const made = (body) => `${body}${check(body)}`;
const codes = ['0000WR1', '0000MC1', '0000BA1'].map(made);
const label = (marks, at) => ({ heading: 'label', about: codes[at], body: { marks } });
await store.keep(given.map(label));
return codes;
"""
WIPE = """
const drafts = [];
for (const heading of ['wrench', 'instrument'])
  for (const { made } of (await store.allOf(heading)).all(heading))
    drafts.push({ heading: 'strike-out', about: made, body: { reason: 'sold' } });
await store.keep(drafts);
"""


def described(heading: str, about: str, **fields: Any) -> dict[str, Any]:
    return {"heading": heading, "about": about, "body": {"fields": fields}}


def scene() -> list[dict[str, Any]]:
    """Two wrenches and three instruments; one of these is described by two devices at odds."""
    torque = {"unit": "N·m", "sort": "click"}
    length = {"quantity": "length", "unit": "mm"}
    return [
        described("wrench", WRENCH, name="Half-inch click wrench", least="40", most="200",
                  graduation="1", calibrated="2024-02-12", lies="on the wall", **torque),
        described("wrench", OLD, name="Small click wrench", least="2", most="10",
                  deviation="2.5", calibrated="2030-01-01", **torque),
        described("instrument", GAUGE, name="Micrometer 50 to 75", sort="micrometer", least="50",
                  most="75", resolution="0.01", deviation="0.004", uncertainty="0.003",
                  calibrated="2024-02-12", due="2026-02-12", lies="top drawer", **length),
        described("instrument", GAUGE, calibrated="2025-02-10"),
        described("instrument", BALANCE, name="Balance", sort="balance", quantity="mass", unit="g",
                  most="500", resolution="0.1"),
        described("instrument", ODD, name="Old gauge", sort="telescoping gauge", quantity="length",
                  unit="bar", least="9", most="3", calibrated="last spring"),
    ]  # fmt: skip
