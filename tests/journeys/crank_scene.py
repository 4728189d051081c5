"""Invented pistons, pins and rods with their weights, and what they are put together from."""

from typing import Any

from journeys.rods import described

KINDS = {
    "piston": "33333333-0000-7000-8000-000000000001",
    "piston pin": "33333333-0000-7000-8000-000000000002",
    "connecting rod": "33333333-0000-7000-8000-000000000003",
}
WEIGHTS = {
    "piston": ["412.3", "413.1", "411.8", "412.6", "412.0", "413.4"],
    "piston pin": ["104.2", "104.0", "104.5", "104.1", "104.4", "103.9"],
    "connecting rod": ["578.9", "580.2", "579.5", "578.4", "579.9", "579.1", "585.0"],
}


def piece(kind: str, number: int) -> str:
    """The id of one piece."""
    return f"33333333-0000-7000-8000-00000000{list(KINDS).index(kind) + 1:02d}{number:02d}"


def weighed() -> list[dict[str, Any]]:
    """All of them, inspected and weighed; one rod is heavier than the rest."""
    entries: list[dict[str, Any]] = []
    for kind, about in KINDS.items():
        measures = [{"id": "w", "name": "Weight", "quantity": "mass", "unit": "g"}]
        entries.append(described("kind", about, name=kind, plural=f"{kind}s", measures=measures,
                                 invented=True))  # fmt: skip
        for number, weight in enumerate(WEIGHTS[kind], 1):
            part = piece(kind, number)
            reading = {"measure": "w", "value": {"value": weight, "unit": "g"}, "instrument": None}
            entries += [
                described("part", part, name=f"{kind} {number}", kind=about, invented=True),
                {"heading": "inspection", "about": part, "body": {"readings": [reading]}},
                {"heading": "verdict", "about": part, "body": {"verdict": "use"}},
            ]
    return entries
