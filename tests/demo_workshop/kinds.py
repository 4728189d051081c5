"""What kinds of parts the demo knows: what to look at, and usual reasons."""

from demo_workshop.scribe import Scribe

Question = tuple[str, str, str]

ENDS: Question = ("Ends even and round?", "both, under the lamp", "ends")
WOBBLE: Question = ("Rolls without a wobble?", "on the glass plate", "wobble")
PASSAGE: Question = ("Oil passage clear?", "see light through it", "passage")
CRACKS: Question = ("Free of cracks?", "clean, dry, under the lamp", "cracks")
FACE: Question = ("Face flat and unmarked?", "straight edge, light behind it", "face")
THREADS: Question = ("Threads whole?", "a nut runs down by hand", "threads")
BORE: Question = ("Bore smooth?", "fingertip, no step felt", "bore")
TOOTH: Question = ("Teeth even?", "turn it against the light", "teeth")
SEAT: Question = ("Seat even all round?", "blue, turn, look", "seat")
LENGTH: Question = ("As long as the others?", "stand them side by side", "length")

SCRAP = ["cracked", "bent", "worn through", "threads torn"]
SHOP = ["needs grinding", "needs a new seat", "bore out of round"]
SPARE = ["light wear", "not yet cleaned", "good, one too many"]

KINDS: dict[str, tuple[str, tuple[Question, ...], dict[str, bool]]] = {
    "cylinder head": ("cylinder heads", (FACE, CRACKS, SEAT), {}),
    "cylinder block": ("cylinder blocks", (FACE, CRACKS, BORE), {}),
    "crankshaft": ("crankshafts", (CRACKS, BORE, PASSAGE), {}),
    "camshaft": ("camshafts", (CRACKS, WOBBLE), {}),
    "camshaft gear": ("camshaft gears", (TOOTH, CRACKS), {}),
    "connecting rod": ("connecting rods", (CRACKS, BORE, WOBBLE), {}),
    "piston": ("pistons", (CRACKS, BORE), {}),
    "pushrod": ("pushrods", (ENDS, WOBBLE, PASSAGE), {}),
    "rocker arm": ("rocker arms", (BORE, PASSAGE, CRACKS), {}),
    "rocker shaft": ("rocker shafts", (BORE, PASSAGE), {}),
    "rocker pedestal": ("rocker pedestals", (CRACKS, FACE), {}),
    "lifter": ("lifters", (FACE, BORE), {}),
    "valve spring": ("valve springs", (LENGTH, CRACKS), {}),
    "inlet valve": ("inlet valves", (SEAT, WOBBLE), {}),
    "exhaust valve": ("exhaust valves", (SEAT, WOBBLE), {}),
    "main cap": ("main caps", (CRACKS, FACE), {}),
    "main bearing shell": ("main bearing shells", (FACE,), {}),
    "rod bearing shell": ("rod bearing shells", (FACE,), {}),
    "head bolt M11": ("head bolts M11", (THREADS, LENGTH), {"fastener": True, "single_use": True}),
    "main cap bolt M12": ("main cap bolts M12", (THREADS, LENGTH), {"fastener": True}),
    "rod nut M9": ("rod nuts M9", (THREADS,), {"fastener": True, "single_use": True}),
    "flexplate bolt M10": ("flexplate bolts M10", (THREADS,), {"fastener": True}),
    "bolt M8": ("bolts M8", (THREADS,), {"fastener": True}),
    "bolt M6": ("bolts M6", (THREADS,), {"fastener": True}),
    "stud nut M8": ("stud nuts M8", (THREADS,), {"fastener": True}),
    "spark plug": ("spark plugs", (THREADS,), {"fastener": True}),
    "gasket": ("gaskets", (FACE,), {"single_use": True}),
    "flexplate": ("flexplates", (TOOTH, CRACKS), {}),
    "oil pump": ("oil pumps", (BORE, FACE), {}),
    "oil pump drive": ("oil pump drives", (TOOTH,), {}),
    "exhaust manifold": ("exhaust manifolds", (FACE, CRACKS), {}),
    "inlet manifold": ("inlet manifolds", (FACE, CRACKS), {}),
    "timing cover": ("timing covers", (FACE, CRACKS), {}),
    "water pump": ("water pumps", (BORE, FACE), {}),
    "sump": ("sumps", (FACE, THREADS), {}),
    "valve cover": ("valve covers", (FACE,), {}),
    "starter": ("starters", (TOOTH,), {}),
}

COMPANIONS = {
    "cylinder head": ("gasket", "head bolt M11"),
    "flexplate": ("flexplate bolt M10",),
    "timing cover": ("gasket", "bolt M6"),
    "water pump": ("gasket", "bolt M8"),
    "starter": ("bolt M8",),
}


def write_kinds(log: Scribe) -> dict[str, str]:
    """Every kind by its name, then what goes with what."""
    ids = {}
    for name, (plural, asked, is_) in KINDS.items():
        criteria = [{"id": word, "asks": asks, "hint": hint} for asks, hint, word in asked]
        reasons = {"spare": SPARE, "machine": SHOP, "scrap": SCRAP}
        said = {"plural": plural, "criteria": criteria, "reasons": reasons, **is_}
        ids[name] = log.describe("kind", name, **said)
    for name, others in COMPANIONS.items():
        log.write("kind", ids[name], {"fields": {"companions": [ids[other] for other in others]}})
    return ids
