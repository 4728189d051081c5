"""What was found on the parts: forty inspections with pictures, verdicts, readings, notes."""

from hashlib import sha256
from typing import Any

from demo_workshop.joints import measured
from demo_workshop.kinds import KINDS
from demo_workshop.pictures import picture
from demo_workshop.scribe import Scribe
from demo_workshop.things import Shop

MARCH: list[tuple[str, str, str, str, str, tuple[str, ...]]] = [
    ("cylinder head", "spare", "not yet cleaned", "No cracks seen.", "head", ()),
    ("cylinder block", "use", "", "Bores smooth, face clean.", "block", ()),
    ("crankshaft", "use", "", "Journals polished, passages blown through.", "crank", ()),
    ("crankshaft, donor 1", "scrap", "cracked", "Crack at the fourth web.", "", ("cracks",)),
    ("camshaft", "use", "", "Lobes even.", "", ()),
    ("camshaft, donor 1", "spare", "light wear", "Lobe 5 dull.", "", ()),
    ("exhaust manifold, donor 1", "scrap", "cracked", "Between 3 and 4.", "manifold crack",
     ("cracks",)),
    ("exhaust manifold", "use", "", "", "", ()),
    ("oil pump, donor 1", "scrap", "worn through", "Deep marks in the body.", "", ("bore",)),
    ("piston 1, donor 1", "scrap", "cracked", "Crown cracked.", "piston crack", ("cracks",)),
    ("piston 2, donor 1", "scrap", "worn through", "Skirt scored.", "skirt scores", ("bore",)),
    ("piston 3, donor 1", "spare", "good, one too many", "", "", ()),
    ("rocker arm 3, donor 1", "scrap", "worn through", "Pad worn hollow.", "", ("bore",)),
    ("connecting rod 1, donor 1", "spare", "good, one too many", "", "", ()),
]  # fmt: skip
AUGUST: list[tuple[str, str, str, str, str, tuple[str, ...]]] = [
    ("cylinder head", "machine", "needs a new seat",
     "Exhaust seat of cylinder 5 pitted. Sent to the machine shop.", "seat pits", ("seat",)),
    ("valve springs", "scrap", "too short", "All six 2 mm short.", "spring", ("length",)),
    ("exhaust valve 5", "scrap", "bent", "Rolls with a wobble.", "valve", ("wobble", "seat")),
    ("lifter 1", "machine", "needs grinding", "All twelve go together.", "", ("face",)),
    ("piston 1", "use", "", "", "piston", ()),
    ("piston 2", "use", "", "", "", ()),
    ("piston 3", "use", "", "", "", ()),
    ("piston 4", "use", "", "A light mark on the crown.", "", ()),
    ("connecting rod 1", "use", "", "", "", ()),
    ("connecting rod 2", "machine", "bore out of round", "Big end oval.", "", ("bore",)),
    ("main shells 1", "use", "", "New, plain side clean.", "shells", ()),
]  # fmt: skip
OCTOBER: list[tuple[str, str, str, str, str, tuple[str, ...]]] = [
    ("cylinder head", "use", "",
     "Face flat: 0.04 mm over the length, limit 0.10. Seats cut, guides measured.", "seat", ()),
    ("rocker arm 1", "use", "", "All twelve alike.", "rocker", ()),
    ("rocker arm 7", "use", "", "Wear marks, still smooth.", "rocker wear", ()),
    ("rocker shaft", "spare", "light wear", "Light wear at 4.", "shaft wear", ()),
    ("pushrod 1", "use", "", "", "pushrods", ()),
    ("pushrod 2", "use", "", "", "", ()),
    ("pushrod 3", "scrap", "bent", "A finger's breadth off the glass.", "bent", ("wobble",)),
    ("pushrod 4", "use", "", "", "", ()),
    ("camshaft gear", "use", "", "", "gear", ()),
    ("oil pump", "use", "", "Gears and body without marks.", "pump", ()),
    ("flexplate", "use", "", "Teeth even.", "", ()),
    ("head bolts", "use", "", "New, counted twice.", "bolts", ()),
    ("main cap 4", "use", "", "", "", ()),
    ("timing cover", "use", "", "", "", ()),
    ("sump", "use", "", "Face dressed with a flat stone.", "", ()),
]  # fmt: skip
AT_A_GLANCE = {
    "use": (
        "head gasket", "main cap bolts", "oil pump bolts", "gear bolts", "timing cover bolts",
        "timing cover gasket", "flexplate bolts", "exhaust stud nuts", "sump gasket",
        *(f"rocker arm {i}" for i in range(2, 13) if i != 7),
        *(f"main cap {i}" for i in range(1, 8) if i != 4),
        *(f"main shells {i}" for i in range(2, 8)),
    ),
    "machine": tuple(f"lifter {i}" for i in range(2, 13)),
}  # fmt: skip
WARMTH = {"manifold crack": 6, "skirt scores": 4, "bolts": 3, "spring": 6, "gear": 3, "shells": 4}


def shot(shop: Shop, name: str) -> dict[str, str]:
    """A picture as a fact names it; its bytes are kept for the folder."""
    drawn = picture(name, WARMTH.get(name, 0))
    digest = sha256(drawn).hexdigest()
    shop.pictures[digest] = drawn
    return {"photo": digest, "says": "drawn for the demo"}


def inspect(log: Scribe, shop: Shop, row: tuple[str, str, str, str, str, tuple[str, ...]]) -> None:
    """One inspection and the verdict that follows from it."""
    name, verdict, reason, note, drawn, bad = row
    asked = [word for *_, word in KINDS[shop.kind_of[name]][1]]
    body: dict[str, Any] = {"verdict": verdict}
    body["looks"] = [{"criterion": word, "good": word not in bad} for word in asked]
    body |= {key: said for key, said in (("reason", reason), ("note", note)) if said}
    if drawn:
        body["photos"] = [shot(shop, drawn)]
    inspection = log.write("inspection", shop.parts[name], body)
    said = {"verdict": verdict, "inspection": inspection}
    log.stand("verdict", shop.parts[name], {**said, **({"reason": reason} if reason else {})})
    log.later(70)


def write_march(log: Scribe, shop: Shop) -> None:
    """The first look, on the day the boxes came and the weekend after."""
    for row in MARCH:
        inspect(log, shop, row)
    bought = {"price": {"value": "180", "unit": "€"}, "seller": "a farmer", "says": "in boxes"}
    log.write("purchase", shop.parts["cylinder head"], bought)
    log.write("note", shop.parts["camshaft"], {"text": "Keep it with its own lifters."})


def write_august(log: Scribe, shop: Shop) -> None:
    """Cleaned and measured; what goes to the machine shop leaves its bin."""
    for row in AUGUST:
        inspect(log, shop, row)
    for name in AT_A_GLANCE["machine"]:
        said = {"verdict": "machine", "reason": "needs grinding"}
        log.stand("verdict", shop.parts[name], said)
    away = {"in": shop.holders["bin 12"], "gone": "at the machine shop"}
    for name in ["cylinder head", "oil pump drive", *(f"lifter {i}" for i in range(1, 13))]:
        log.stand("place", shop.parts[name], away)
    for i, value in enumerate(("88.02", "88.03", "88.02", "88.04", "88.02", "88.03"), 1):
        body = {"of": f"bore {i}", "value": measured(f"{value} mm")}
        log.write("reading", shop.parts["cylinder block"], body)
    log.hand = log.tablet
    said = {"verdict": "machine", "reason": "needs grinding"}
    log.stand("verdict", shop.parts["piston 4"], said, blind=True)
    log.stand("place", shop.parts["starter"], {"in": shop.holders["shelf B"]}, blind=True)
    log.hand = log.phone


def write_october(log: Scribe, shop: Shop) -> None:
    """The head comes back, the valve gear is sorted."""
    log.stand("place", shop.parts["cylinder head"], {"in": shop.holders["bin 12"]})
    for row in OCTOBER:
        inspect(log, shop, row)
    for name in AT_A_GLANCE["use"]:
        log.stand("verdict", shop.parts[name], {"verdict": "use"})
    flat = {"of": "face, over the length", "value": measured("0.04 mm")}
    log.write("reading", shop.parts["cylinder head"], flat)
    log.write("add", shop.parts["sump bolts"], {"count": 2, "says": "from the spare box"})
    log.write("take", shop.parts["valve cover bolts"], {"count": 1, "says": "thread torn"})
    log.write("note", shop.holders["bin 12"], {"text": "Pushrods 5 to 12 still to look at."})
    log.write("photo", shop.holders["bin 12"], shot(shop, "valve"))
