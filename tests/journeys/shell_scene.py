"""An invented crankshaft and block with their sizes read, and shells of several thicknesses."""

from typing import Any

from journeys.rods import described

BLOCK, CRANK, SHELL = (f"44444444-0000-7000-8000-00000000000{n}" for n in (1, 2, 3))
BORES = ["56.010", "56.012", "56.008", "56.011"]
JOURNALS = ["51.980", "51.990", "51.972", "51.700"]
STOCK = {"yellow": ("1.982", 4), "green": ("1.986", 4), "red": ("1.990", 2), "odd": (None, 2)}


def part(sign: str) -> str:
    """The id of one part."""
    return f"44444444-0000-7000-8000-0000000000{ord(sign[0]):02x}"


def read(measure: str, sizes: list[str]) -> list[dict[str, Any]]:
    """One reading at each main."""
    return [
        {"measure": measure, "position": f"Main {n}", "value": {"value": size, "unit": "mm"}}
        for n, size in enumerate(sizes, 1)
    ]


def kind(about: str, name: str, plural: str, measure: str) -> dict[str, Any]:
    """A kind with one length."""
    measures = [{"id": "m", "name": measure, "quantity": "length", "unit": "mm"}]
    return described("kind", about, name=name, plural=plural, measures=measures, invented=True)


def measured() -> list[dict[str, Any]]:
    """Bores and journals by position; shells counted by colour, one colour without a thickness."""
    entries = [
        kind(BLOCK, "block of mains", "blocks of mains", "Main bore"),
        kind(CRANK, "crank of mains", "cranks of mains", "Main journal"),
        kind(SHELL, "main shell", "main shells", "Wall"),
        described("part", part("b"), name="Block A", kind=BLOCK, invented=True),
        described("part", part("c"), name="Crank A", kind=CRANK, invented=True),
        {"heading": "inspection", "about": part("b"), "body": {"readings": read("m", BORES)}},
        {"heading": "inspection", "about": part("c"), "body": {"readings": read("m", JOURNALS)}},
    ]
    for colour, (wall, many) in STOCK.items():
        about = part(colour)
        entries.append(described("part", about, name=f"{colour} shells", kind=SHELL, quantity=many,
                                 invented=True))  # fmt: skip
        if wall:
            value = {"measure": "m", "value": {"value": wall, "unit": "mm"}}
            body = {"readings": [value]}
            entries.append({"heading": "inspection", "about": about, "body": body})
    return entries
