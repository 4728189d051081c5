"""The fourteen joints of the demo. Every value is invented for an engine that never was."""

from typing import Any

from witnessmark.trade.sequence import order, positions

from demo_workshop.scribe import Scribe
from demo_workshop.things import Shop

MANUAL = "Kelderby workshop manual, page "
OIL = "oiled thread and face"
DRY = "dry"
Values = list[tuple[str, str]] | None

STRETCH = {
    "word": "caution",
    "says": "Some head bolts stretch for good and are used once. "
    "Look it up before fitting these again.",
}
TWICE = {
    "word": "warning",
    "says": "Turning a bolt twice by its angle can stretch or break it.",
}
LOOSE_GEAR = {
    "word": "danger",
    "says": "A gear that comes loose ruins the engine at once. Use the locking compound.",
}

JOINTS: dict[str, dict[str, Any]] = {
    "Head bolts": {
        "page": "6-14", "lubricant": OIL, "pattern": "rows", "count": 14, "noun": "bolt",
        "thread": "M11 × 1.5", "fastener_part": "head bolts", "wrench": "long click wrench",
        "parts": ["cylinder head", "cylinder block", "head gasket"], "casting": "head",
        "torque": ["20 lbf·ft", "45 lbf·ft", "85 lbf·ft"], "cautions": [STRETCH],
        "retorque": "Again after the first warm run, cold, pass 3.", "by_order": True,
    },
    "Rocker pedestals": {
        "page": None, "lubricant": DRY, "pattern": "line", "count": 12, "noun": "bolt",
        "thread": "M8 × 1.25", "fastener_part": "pedestal bolts", "wrench": "short click wrench",
        "parts": [f"rocker pedestal {i}" for i in range(1, 7)] + ["rocker shaft", "cylinder head"],
        "torque": ["18 lbf·ft"],
    },
    "Exhaust manifold studs": {
        "page": "8-3", "lubricant": "anti-seize", "pattern": "line", "count": 12, "noun": "nut",
        "thread": "M8 × 1.25", "fastener_part": "exhaust stud nuts",
        "wrench": "short click wrench", "parts": ["exhaust manifold", "cylinder head"],
        "torque": ["14 lbf·ft"],
    },
    "Flexplate bolts": {
        "page": "4-22", "lubricant": "locking compound", "pattern": "circle", "count": 6,
        "noun": "bolt", "thread": "M10 × 1", "fastener_part": "flexplate bolts",
        "wrench": "short click wrench", "parts": ["flexplate", "crankshaft"], "casting": "ring",
        "torque": ["30 N·m"], "angle": "60", "cautions": [TWICE],
    },
    "Main caps": {
        "page": "3-9", "lubricant": OIL, "pattern": "rows", "count": 14, "noun": "bolt",
        "thread": "M12 × 1.75", "fastener_part": "main cap bolts", "wrench": "long click wrench",
        "parts": [f"main cap {i}" for i in range(1, 8)] + ["cylinder block", "crankshaft"],
        "torque": ["45 N·m", "70 N·m", "95 N·m/105 N·m"], "groups": {7: "rear", 14: "rear"},
    },
    "Rod caps": {
        "page": "3-12", "lubricant": OIL, "pattern": "rows", "count": 12, "noun": "nut",
        "thread": "M9 × 1", "fastener_part": "rod nuts", "wrench": "short click wrench",
        "parts": [f"connecting rod {i}" for i in range(1, 7)] + ["crankshaft"],
        "torque": ["20 N·m", "45 N·m"],
    },
    "Oil pump": {
        "page": "5-4", "lubricant": DRY, "pattern": "circle", "count": 4, "noun": "bolt",
        "thread": "M8 × 1.25", "fastener_part": "oil pump bolts", "wrench": "short click wrench",
        "parts": ["oil pump", "cylinder block"], "torque": ["22 N·m"],
        "notes": {2: "Sealant: it goes into an oil passage."},
    },
    "Sump": {
        "page": "5-2", "lubricant": DRY, "pattern": "rows", "count": 20, "noun": "bolt",
        "thread": "M6 × 1", "fastener_part": "sump bolts", "wrench": "dial wrench",
        "parts": ["sump", "sump gasket", "cylinder block"], "torque": ["50 lbf·in", "80 lbf·in"],
    },
    "Timing cover": {
        "page": "2-7", "lubricant": DRY, "pattern": "points", "count": 10, "noun": "bolt",
        "thread": "M6 × 1", "fastener_part": "timing cover bolts", "wrench": "short click wrench",
        "parts": ["timing cover", "timing cover gasket", "cylinder block"], "torque": ["8 N·m"],
    },
    "Water pump": {
        "page": "7-3", "lubricant": DRY, "pattern": "circle", "count": 5, "noun": "bolt",
        "thread": "M8 × 1.25", "fastener_part": "water pump bolts",
        "wrench": "short click wrench", "parts": ["water pump", "water pump gasket"],
        "torque": ["20 N·m"],
    },
    "Camshaft gear": {
        "page": "2-5", "lubricant": "locking compound", "pattern": "circle", "count": 3,
        "noun": "bolt", "thread": "M8 × 1.25", "fastener_part": "gear bolts", "casting": "ring",
        "wrench": "short click wrench", "parts": ["camshaft gear", "camshaft"],
        "torque": ["25 N·m"], "cautions": [LOOSE_GEAR],
    },
    "Inlet manifold": {
        "page": "8-1", "lubricant": DRY, "pattern": "line", "count": 8, "noun": "nut",
        "thread": "M8 × 1.25", "fastener_part": "inlet stud nuts", "wrench": "short click wrench",
        "parts": ["inlet manifold", "cylinder head"], "torque": ["16 lbf·ft"],
    },
    "Valve cover": {
        "page": None, "lubricant": DRY, "pattern": "line", "count": 6, "noun": "bolt",
        "thread": "M6 × 1", "fastener_part": "valve cover bolts", "parts": ["valve cover"],
        "torque": None,
    },
    "Spark plugs": {
        "page": "9-2", "lubricant": DRY, "pattern": "line", "count": 6, "noun": "plug",
        "thread": "M14 × 1.25", "fastener_part": "spark plugs", "wrench": "short click wrench",
        "parts": ["cylinder head"], "torque": ["2 kgf·m"],
    },
}  # fmt: skip
"""Several values of one pass stand behind a stroke: for the others, for the group `rear`."""

COVER_POINTS = [
    (300, 60), (420, 40), (580, 40), (700, 60), (760, 180),
    (740, 320), (640, 440), (360, 440), (260, 320), (240, 180),
]  # fmt: skip


def write_joints(log: Scribe, shop: Shop) -> dict[str, str]:
    """Every joint by its name."""
    return {name: _joint(log, shop, name, said) for name, said in JOINTS.items()}


def _joint(log: Scribe, shop: Shop, name: str, said: dict[str, Any]) -> str:
    fields: dict[str, Any] = {
        "build": shop.build,
        "parts": [shop.parts[part] for part in said["parts"]],
        "noun": said["noun"],
        "plural": f"{said['noun']}s",
        "thread": said["thread"],
        "fastener_part": shop.parts[said["fastener_part"]],
        "fasteners": _fasteners(said),
        "pattern": said["pattern"],
    }
    if said["torque"]:
        fields["programme"] = _programme(said)
    if "wrench" in said:
        fields["wrench"] = shop.wrenches[said["wrench"]]
    if "casting" in said:
        fields["casting"] = said["casting"]
    return log.describe("joint", name, **fields)


def _places(said: dict[str, Any]) -> list[tuple[int, int]]:
    if said["pattern"] == "points":
        return COVER_POINTS
    where = positions(said["pattern"], said["count"])
    if said.get("by_order"):
        return [where[number - 1] for number in order(said["pattern"], said["count"])]
    return where


def _fasteners(said: dict[str, Any]) -> list[dict[str, Any]]:
    fasteners = []
    for number, (x, y) in enumerate(_places(said), 1):
        one: dict[str, Any] = {"id": f"f{number}", "number": number, "x": x, "y": y}
        if "groups" in said:
            one["group"] = said["groups"].get(number, "front")
        if number in said.get("notes", {}):
            one["note"] = said["notes"][number]
        fasteners.append(one)
    return fasteners


def measured(text: str) -> dict[str, str]:
    """A measured value from a number, a blank and a unit."""
    value, unit = text.split(" ")
    return {"value": value, "unit": unit}


def _programme(said: dict[str, Any]) -> dict[str, Any]:
    passes: list[dict[str, Any]] = [{"id": "p0", "how": "hand"}]
    for text in said["torque"]:
        values = [measured(each) for each in text.split("/")]
        if "groups" in said:
            front, rear = values[0], values[-1]
            values = [{"group": "front", **front}, {"group": "rear", **rear}]
        passes.append({"id": f"p{len(passes)}", "how": "torque", "values": values})
    if "angle" in said:
        turn = [{"value": said["angle"], "unit": "°"}]
        passes.append({"id": f"p{len(passes)}", "how": "angle", "values": turn})
    numbers = range(1, said["count"] + 1)
    if not said.get("by_order"):
        numbers = order(said["pattern"], said["count"])
    return {
        "passes": passes,
        "lubricant": said["lubricant"],
        "sequence": [f"f{number}" for number in numbers],
        "source": MANUAL + said["page"] if said["page"] else None,
        "cautions": said.get("cautions", []),
        "invented": True,
        **({"retorque": said["retorque"]} if "retorque" in said else {}),
    }
