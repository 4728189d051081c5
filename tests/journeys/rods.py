"""Thirty-two invented pushrods from two donors, made on a phone; eight have worn ends."""

from random import Random
from typing import Any

KIND = "22222222-0000-7000-8000-000000000001"
DONORS = ["22222222-0000-7000-8000-00000000000a", "22222222-0000-7000-8000-00000000000b"]
BAG = "22222222-0000-7000-8000-00000000000c"
MANY, WORN, WANTED = 32, 8, 16

KEEP = """
const at = 60;
for (let from = 0; from < given.length; from += at) await store.keep(given.slice(from, from + at));
"""


def rod(number: int) -> str:
    """The id of one pushrod."""
    return f"22222222-0000-7000-8000-0000000001{number:02d}"


def lengths() -> list[str]:
    """Invented lengths in mm, as a caliper shows them."""
    chance = Random(2026)
    return [f"{chance.gauss(187.0, 0.06):.2f}" for _ in range(MANY)]


def weights() -> list[str]:
    """Invented weights in g."""
    chance = Random(7)
    return [f"{chance.gauss(62.0, 0.8):.1f}" for _ in range(MANY)]


def worn() -> set[int]:
    """The numbers of those with worn ends."""
    return set(Random(5).sample(range(1, MANY + 1), WORN))


def described(at: str, about: str, **fields: Any) -> dict[str, Any]:
    return {"heading": at, "about": about, "body": {"fields": fields}}


def bag() -> list[dict[str, Any]]:
    """Kind, donors, the bag and what lies in it; nothing inspected yet."""
    return [
        described(
            "kind", KIND, name="pushrod", plural="pushrods", invented=True,
            criteria=[{"id": "c1", "asks": "Ends round and smooth?", "drawing": "ball-end"}],
            measures=[{"id": "m1", "name": "Length", "quantity": "length", "unit": "mm"},
                      {"id": "m2", "name": "Weight", "quantity": "mass", "unit": "g"}],
            reasons={"scrap": ["worn ends"]},
        ),
        *(described("donor", each, name=f"Donor {sign}", invented=True)
          for each, sign in zip(DONORS, "AB", strict=True)),
        described("holder", BAG, name="Bag of pushrods", form="bag"),
        *(described("part", rod(n), name=f"Pushrod {n}", kind=KIND,
                    donor=DONORS[n % 2], invented=True) for n in range(1, MANY + 1)),
        *({"heading": "place", "about": rod(n), "body": {"in": BAG}} for n in range(1, MANY + 1)),
    ]  # fmt: skip


def inspected() -> list[dict[str, Any]]:
    """What was seen and measured on each, with its verdict."""
    entries = []
    for n, (length, weight) in enumerate(zip(lengths(), weights(), strict=True), 1):
        verdict = {"verdict": "scrap", "reason": "worn ends"} if n in worn() else {"verdict": "use"}
        readings = [
            {"measure": "m1", "value": {"value": length, "unit": "mm"}, "instrument": None},
            {"measure": "m2", "value": {"value": weight, "unit": "g"}, "instrument": None},
        ]
        looks = [{"criterion": "c1", "good": n not in worn()}]
        body = {**verdict, "looks": looks, "readings": readings}
        entries += [
            {"heading": "inspection", "about": rod(n), "body": body},
            {"heading": "verdict", "about": rod(n), "body": verdict},
        ]
    return entries
