"""Build, donors, wrenches, holders and parts of the demo, with labels and places."""

from dataclasses import dataclass, field
from typing import Any

from demo_workshop.kinds import write_kinds
from demo_workshop.scribe import Scribe, code_for

FIXED_CODES = {
    "cylinder head": "7K3MQ2RJ",
    "bag of head bolts": "4TD09HXH",
    "bin 12": "2B8NK4WS",
}
SHEET = {"preset": "a4-3x8", "start": 1}
ON_A_SHEET = 24

HOLDERS: list[tuple[str, str, str | None, str]] = [
    ("shelf A", "shelf", None, "Left wall. Clean parts only."),
    ("shelf B", "shelf", None, "Back wall, four rows."),
    ("shelf C", "shelf", None, "Under the window. Donor 1, uncleaned."),
    ("bench", "other", None, ""),
    ("engine stand", "other", None, "Under the cover."),
    ("drawer 1", "box", "bench", "Wrenches."),
    ("drawer 2", "box", "bench", "Gauges."),
    *((f"bin {i}", "bin", "shelf B" if i > 6 else "shelf A", "") for i in range(1, 15)),
    *((f"tray {i}", "tray", "bench" if i < 5 else "shelf A", "") for i in range(1, 7)),
    *((f"box {i}", "box", "shelf C", "Donor 1, as it came off.") for i in range(1, 8)),
    ("bag of head bolts", "bag", "tray 3", ""),
    ("bag of main cap bolts", "bag", "tray 2", ""),
    ("bag of rod nuts", "bag", "tray 2", ""),
    ("bag of flexplate bolts", "bag", "bin 9", ""),
    ("bag of pump bolts", "bag", "bin 5", ""),
    ("bag of sump bolts", "bag", "bin 8", ""),
    ("bag of cover bolts", "bag", "bin 5", ""),
    ("bag of manifold nuts", "bag", "bin 10", ""),
    ("bag of pedestal bolts", "bag", "bin 7", ""),
    ("bag of gear bolts", "bag", "bin 4", ""),
    ("bag of plugs", "bag", "bin 11", ""),
    *((f"bag of valves, cylinder {i}", "bag", "bin 3", "") for i in range(1, 7)),
    *((f"bag of shells, main {i}", "bag", "tray 2", "") for i in range(1, 8)),
    ("bag of gaskets", "bag", "shelf A", "Hang it up, do not fold it."),
]


@dataclass
class Shop:
    """Ids of what has been made, by name."""

    build: str = ""
    donors: list[str] = field(default_factory=list)
    kinds: dict[str, str] = field(default_factory=dict)
    wrenches: dict[str, str] = field(default_factory=dict)
    holders: dict[str, str] = field(default_factory=dict)
    parts: dict[str, str] = field(default_factory=dict)
    codes: list[str] = field(default_factory=list)
    kind_of: dict[str, str] = field(default_factory=dict)
    pictures: dict[str, bytes] = field(default_factory=dict)


def write_beginnings(log: Scribe) -> Shop:
    """What the workshop began with on the day the second donor was bought."""
    engine = "Kelderby 28 straight-six"
    shop = Shop(build=log.describe("build", "Build 1", engine=engine, note="For the green van."))
    shop.donors = [
        log.describe("donor", "Donor 1", engine=engine, note="Seized, stood in a barn."),
        log.describe("donor", "Donor 2", engine=engine, bought="8 March", note="In boxes."),
    ]
    shop.kinds = write_kinds(log)
    _write_wrenches(log, shop)
    return shop


def _write_wrenches(log: Scribe, shop: Shop) -> None:
    rows: list[tuple[str, str, str, str, str, str, str, str, str]] = [
        ("long click wrench", "click", "N·m", "40", "200", "1", "4", "2024-02-20", "drawer 1"),
        ("short click wrench", "click", "N·m", "5", "60", "0.5", "4", "2024-02-20", "drawer 1"),
        ("beam wrench", "beam", "lbf·ft", "0", "150", "5", "4", "2023-01-11", "hook by the door"),
        ("dial wrench", "dial", "lbf·in", "20", "200", "2", "4", "2022-06-03", "drawer 2"),
        ("angle gauge", "angle", "°", "0", "360", "2", "2", "2024-02-20", "drawer 2"),
    ]
    names = ("sort", "unit", "least", "most", "graduation", "deviation", "calibrated", "lies")
    for name, *said in rows:
        fields = dict(zip(names, said, strict=True))
        shop.wrenches[name] = log.describe("wrench", name, **fields)


def write_holders(log: Scribe, shop: Shop) -> None:
    """Holders, each with a label of a printed sheet; what is left of the last sheet is blank."""
    codes = [FIXED_CODES.get(name, code_for(name)) for name, *_ in HOLDERS]
    codes.append(FIXED_CODES["cylinder head"])
    while len(codes) % ON_A_SHEET or len(codes) < 4 * ON_A_SHEET:
        codes.append(code_for(f"sheet place {len(codes)}"))
    for at in range(0, len(codes), ON_A_SHEET):
        some = codes[at : at + ON_A_SHEET]
        sheet = log.fresh(f"sheet {at}")
        body = {"codes": some, "layout": SHEET, "reprint": False, "invented": True}
        log.write("sheet", sheet, body)
    shop.codes = codes[len(HOLDERS) + 1 :]
    for (name, form, _, note), code in zip(HOLDERS, codes, strict=False):
        said: dict[str, Any] = {"form": form, "build": shop.build}
        if note:
            said["note"] = note
        shop.holders[name] = log.describe("holder", name, **said)
        log.stand("label", code, {"marks": shop.holders[name]})
    for name, _, lies, _ in HOLDERS:
        if lies:
            log.stand("place", shop.holders[name], {"in": shop.holders[lies]})


def part(log: Scribe, shop: Shop, name: str, kind: str, lies: str, **said: Any) -> str:
    """One part, described and put where it lies."""
    donor = said.pop("donor", 2)
    fields = {"kind": shop.kinds[kind], "quantity": 1, "build": shop.build, **said}
    if donor:
        fields["donor"] = shop.donors[donor - 1]
    about = log.describe("part", name, **fields)
    shop.parts[name], shop.kind_of[name] = about, kind
    log.stand("place", about, {"in": shop.holders[lies]})
    return about


ENGINE = [
    ("cylinder head", "cylinder head", "bin 12", {"from_": "bought 8 March"}),
    ("cylinder block", "cylinder block", "engine stand", {}),
    ("crankshaft", "crankshaft", "engine stand", {}),
    ("camshaft", "camshaft", "engine stand", {}),
    ("camshaft gear", "camshaft gear", "bin 4", {}),
    ("rocker shaft", "rocker shaft", "bin 12", {}),
    ("flexplate", "flexplate", "bin 9", {}),
    ("oil pump", "oil pump", "bin 5", {}),
    ("oil pump drive", "oil pump drive", "bin 12", {}),
    ("exhaust manifold", "exhaust manifold", "bin 10", {}),
    ("inlet manifold", "inlet manifold", "bin 10", {}),
    ("timing cover", "timing cover", "bin 5", {}),
    ("water pump", "water pump", "bin 6", {"donor": 1}),
    ("sump", "sump", "bin 8", {}),
    ("valve cover", "valve cover", "bin 14", {"donor": 1}),
    ("starter", "starter", "bin 13", {"donor": 1}),
    ("head gasket", "gasket", "bag of gaskets", {"donor": 0, "from_": "bought new"}),
    ("timing cover gasket", "gasket", "bag of gaskets", {"donor": 0, "from_": "bought new"}),
    ("water pump gasket", "gasket", "bag of gaskets", {"donor": 0, "from_": "bought new"}),
    ("sump gasket", "gasket", "bag of gaskets", {"donor": 0, "from_": "bought new"}),
]
COUNTED = [
    ("head bolts", "head bolt M11", "bag of head bolts", 14, "M11 × 1.5"),
    ("main cap bolts", "main cap bolt M12", "bag of main cap bolts", 14, "M12 × 1.75"),
    ("rod nuts", "rod nut M9", "bag of rod nuts", 12, "M9 × 1"),
    ("flexplate bolts", "flexplate bolt M10", "bag of flexplate bolts", 6, "M10 × 1"),
    ("oil pump bolts", "bolt M8", "bag of pump bolts", 4, "M8 × 1.25"),
    ("water pump bolts", "bolt M8", "bag of pump bolts", 5, "M8 × 1.25"),
    ("sump bolts", "bolt M6", "bag of sump bolts", 20, "M6 × 1"),
    ("timing cover bolts", "bolt M6", "bag of cover bolts", 10, "M6 × 1"),
    ("valve cover bolts", "bolt M6", "bag of cover bolts", 6, "M6 × 1"),
    ("exhaust stud nuts", "stud nut M8", "bag of manifold nuts", 12, "M8 × 1.25"),
    ("inlet stud nuts", "stud nut M8", "bag of manifold nuts", 8, "M8 × 1.25"),
    ("pedestal bolts", "bolt M8", "bag of pedestal bolts", 12, "M8 × 1.25"),
    ("gear bolts", "bolt M8", "bag of gear bolts", 3, "M8 × 1.25"),
    ("spark plugs", "spark plug", "bag of plugs", 6, "M14 × 1.25"),
    ("valve springs", "valve spring", "bin 12", 6, ""),
]


def write_parts(log: Scribe, shop: Shop) -> None:
    """About 150 parts: castings, counted fasteners, and those that return to their own place."""
    for name, kind, lies, said in ENGINE:
        part(log, shop, name, kind, lies, **said)
    log.stand("label", FIXED_CODES["cylinder head"], {"marks": shop.parts["cylinder head"]})
    for name, kind, lies, quantity, thread in COUNTED:
        more = {"thread": thread} if thread else {}
        part(log, shop, name, kind, lies, quantity=quantity, **more)
    _valve_gear(log, shop)
    for i in range(1, 7):
        _cylinder(log, shop, i)
    for i in range(1, 8):
        part(log, shop, f"main cap {i}", "main cap", "tray 2", for_=f"main {i}")
        lies = f"bag of shells, main {i}"
        part(log, shop, f"main shells {i}", "main bearing shell", lies, donor=0, quantity=2)
    _from_donor_1(log, shop)


def _valve_gear(log: Scribe, shop: Shop) -> None:
    for i in range(1, 13):
        cylinder, side = (i + 1) // 2, "intake" if i % 2 else "exhaust"
        place = f"cylinder {cylinder} {side}"
        for name in ("pushrod", "rocker arm", "lifter"):
            part(log, shop, f"{name} {i}", name, "bin 12", from_=place, for_=place)


def _cylinder(log: Scribe, shop: Shop, i: int) -> None:
    place = f"cylinder {i}"
    for name in ("piston", "connecting rod"):
        part(log, shop, f"{name} {i}", name, "tray 1", from_=place, for_=place)
    for name in ("inlet valve", "exhaust valve"):
        part(log, shop, f"{name} {i}", name, f"bag of valves, cylinder {i}", for_=place)
    part(log, shop, f"rocker pedestal {i}", "rocker pedestal", "bin 7", for_=place)
    part(log, shop, f"rod shells {i}", "rod bearing shell", "tray 2", donor=0, quantity=2)


def _from_donor_1(log: Scribe, shop: Shop) -> None:
    for i in range(1, 5):
        for name in ("piston", "connecting rod"):
            lies = f"box {i}"
            part(log, shop, f"{name} {i}, donor 1", name, lies, donor=1, from_=f"cylinder {i}")
    for i in range(1, 13):
        part(log, shop, f"pushrod {i}, donor 1", "pushrod", "box 5", donor=1)
        if i % 2:
            part(log, shop, f"rocker arm {i}, donor 1", "rocker arm", "box 6", donor=1)
    for name in ("crankshaft", "camshaft", "exhaust manifold", "oil pump"):
        part(log, shop, f"{name}, donor 1", name, "box 7", donor=1)
