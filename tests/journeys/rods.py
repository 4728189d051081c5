"""Thirty-two invented pushrods from two donors, made on a phone; eight have worn ends."""

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


# Hundredths of a millimetre off 187 mm, and tenths of a gram off 62 g.
OFF_LENGTH = [
    5,
    5,
    -12,
    -1,
    3,
    3,
    -6,
    -5,
    2,
    -7,
    -1,
    -10,
    0,
    -8,
    1,
    8,
    8,
    7,
    -10,
    3,
    -4,
    -8,
    1,
    4,
    14,
    -2,
    8,
    -23,
    -2,
    0,
    -4,
    6,
]
OFF_WEIGHT = [
    -2,
    4,
    -2,
    -3,
    -7,
    -2,
    9,
    3,
    8,
    2,
    3,
    1,
    -13,
    7,
    4,
    4,
    -14,
    -14,
    -7,
    -4,
    2,
    0,
    4,
    -5,
    2,
    3,
    -5,
    14,
    4,
    10,
    -5,
    -6,
]
WORN_ONES = [12, 17, 21, 23, 24, 26, 27, 31]


def lengths() -> list[str]:
    """Invented lengths in mm, as a caliper shows them."""
    return [f"{187 + off / 100:.2f}" for off in OFF_LENGTH]


def weights() -> list[str]:
    """Invented weights in g."""
    return [f"{62 + off / 10:.1f}" for off in OFF_WEIGHT]


def worn() -> set[int]:
    """The numbers of those with worn ends."""
    return set(WORN_ONES)


def described(at: str, about: str, **fields: Any) -> dict[str, Any]:
    return {"heading": at, "about": about, "body": {"fields": fields}}


def bag() -> list[dict[str, Any]]:
    """Kind, donors, the bag and what lies in it; nothing inspected yet."""
    return [
        described(
            "kind", KIND, name="long pushrod", plural="long pushrods", invented=True,
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


def readings(number: int) -> list[dict[str, Any]]:
    """What was measured on one."""
    found = {"m1": (lengths()[number - 1], "mm"), "m2": (weights()[number - 1], "g")}
    return [
        {"measure": measure, "value": {"value": size, "unit": unit}, "instrument": None}
        for measure, (size, unit) in found.items()
    ]


def measured() -> list[dict[str, Any]]:
    """All measured, none judged."""
    return [
        {"heading": "inspection", "about": rod(n), "body": {"readings": readings(n)}}
        for n in range(1, MANY + 1)
    ]


def inspected() -> list[dict[str, Any]]:
    """What was seen and measured on each, with its verdict."""
    entries = []
    for n in range(1, MANY + 1):
        verdict = {"verdict": "scrap", "reason": "worn ends"} if n in worn() else {"verdict": "use"}
        looks = [{"criterion": "c1", "good": n not in worn()}]
        body = {**verdict, "looks": looks, "readings": readings(n)}
        entries += [
            {"heading": "inspection", "about": rod(n), "body": body},
            {"heading": "verdict", "about": rod(n), "body": verdict},
        ]
    return entries
