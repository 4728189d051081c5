"""Gauge studies as tests keep them on a phone, and a published one with its readings."""

from typing import Any

STUDY = "33333333-0000-7000-8000-0000000000a1"
BEGUN = "33333333-0000-7000-8000-0000000000a2"
PUBLISHED = "33333333-0000-7000-8000-0000000000a3"
MICROMETER = "33333333-0000-7000-8000-0000000000b1"
KEEP = "return (await store.keep(given)).map((one) => one.id);"
# Thermal impedance of a power module: ten parts, three people, three times each. Houf and Berman
# 1988, as in Vidakovic, Statistics for Bioengineering Sciences, example 11.14.
IMPEDANCE = """
37 38 37  41 41 40  41 42 41
42 41 43  42 42 42  43 42 43
30 31 31  31 31 31  29 30 28
42 43 42  43 43 43  42 42 42
28 30 29  29 30 29  31 29 29
42 42 43  45 45 45  44 46 45
25 26 27  28 28 30  29 27 27
40 40 40  43 42 42  43 43 41
25 25 25  27 29 28  26 26 26
35 34 34  35 35 34  35 34 35
"""
SOME = {
    1: ("40.01", "40.01", "40.02", "40.01"),
    2: ("39.99", "39.99", "39.98", "39.98"),
    3: ("40.03", "40.02", "40.03", "40.03"),
}


def study(about: str, **fields: Any) -> dict[str, Any]:
    """The plan of a study of pushrods, changed where a field says so."""
    usual = {
        "name": "Pushrod length", "quantity": "length", "unit": "mm", "least": "39.95",
        "most": "40.05", "pieces": 3, "people": ["Ann", "Ben"], "repeats": 2, "invented": True,
    }  # fmt: skip
    return {"heading": "study", "about": about, "body": {"fields": {**usual, **fields}}}


def trial(about: str, piece: int, person: str, repeat: int, value: str) -> dict[str, Any]:
    """One reading in millimetres."""
    read = {"value": value, "unit": "mm"}
    body = {"piece": piece, "person": person, "repeat": repeat, "value": read}
    return {"heading": "trial", "about": about, "body": body}


def micrometer() -> dict[str, Any]:
    fields = {"name": "Micrometer 25 to 50", "quantity": "length", "unit": "mm", "invented": True}
    return {"heading": "instrument", "about": MICROMETER, "body": {"fields": fields}}


def some_readings() -> list[dict[str, Any]]:
    """Twelve: three pieces, Ann and Ben, twice."""
    return [
        trial(STUDY, piece, person, repeat, read[2 * who + repeat - 1])
        for piece, read in SOME.items()
        for who, person in enumerate(("Ann", "Ben"))
        for repeat in (1, 2)
    ]


def published(*, but: int = 0) -> list[dict[str, Any]]:
    """The published study, without so many of its last readings."""
    lines = [line.split() for line in IMPEDANCE.strip().splitlines()]
    plan = study(PUBLISHED, name="Thermal impedance", pieces=10, repeats=3, people=["A", "B", "C"])
    plan["body"]["fields"] |= {"least": "18", "most": "58"}
    read = [
        trial(PUBLISHED, piece, person, repeat + 1, line[3 * who + repeat])
        for repeat in range(3)
        for who, person in enumerate("ABC")
        for piece, line in ((at, lines[at - 1]) for at in order(repeat))
    ]
    return [plan, *read[: len(read) - but]]


def order(repeat: int) -> list[int]:
    """Each round begins one piece further on."""
    return [(at + repeat) % 10 + 1 for at in range(10)]
