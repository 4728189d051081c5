"""An invented bench: parts, wrenches and a joint, kept through the page's own store."""

from typing import Any

from playwright.sync_api import Page

HEAD = "11111111-0000-7000-8000-000000000001"
BOLTS = "11111111-0000-7000-8000-000000000002"
JOINT = "11111111-0000-7000-8000-000000000003"
WRENCH = "11111111-0000-7000-8000-000000000004"
SMALL_WRENCH = "11111111-0000-7000-8000-000000000005"
BAG = "11111111-0000-7000-8000-000000000006"
KIND = "11111111-0000-7000-8000-000000000007"
PUSHRODS = [f"11111111-0000-7000-8000-0000000001{n:02}" for n in range(1, 5)]


def fasteners(count: int = 14, columns: int = 7) -> list[dict[str, Any]]:
    """Heads in two rows, numbered outwards from the middle."""
    numbers = (
        [13, 9, 5, 1, 4, 8, 12, 14, 10, 6, 2, 3, 7, 11] if count == 14 else range(1, count + 1)
    )
    return [
        {
            "id": f"f{number}",
            "number": number,
            "x": round(1000 * (place % columns) / max(columns - 1, 1)),
            "y": 500 * (place // columns),
        }
        for place, number in enumerate(numbers)
    ]


def programme(count: int = 14, **changes: Any) -> dict[str, Any]:
    """By hand, then three torque passes."""
    values = ["20", "45", "85"]
    passes = [{"id": "p0", "how": "hand"}] + [
        {"id": f"p{n}", "how": "torque", "values": [{"value": value, "unit": "lbf·ft"}]}
        for n, value in enumerate(values, 1)
    ]
    return {
        "passes": passes,
        "lubricant": "oiled",
        "sequence": [f"f{n}" for n in range(1, count + 1)],
        "source": "manual p. 6-14",
        "cautions": [],
        "invented": True,
        **changes,
    }


def described(heading: str, about: str, **fields: Any) -> dict[str, Any]:
    """A description as a draft."""
    return {"heading": heading, "about": about, "body": {"fields": fields}}


def judged(part: str, verdict: str) -> dict[str, Any]:
    """A verdict as a draft."""
    return {"heading": "verdict", "about": part, "body": {"verdict": verdict}}


def joint(count: int = 14, **changes: Any) -> dict[str, Any]:
    """The head bolts; a changed programme goes in as `programme`."""
    fields = {
        "name": "Head bolts", "parts": [HEAD], "noun": "bolt", "plural": "bolts",
        "fastener_part": BOLTS, "fasteners": fasteners(count), "pattern": "rows",
        "casting": "head", "programme": programme(count), "wrench": WRENCH,
    }  # fmt: skip
    return described("joint", JOINT, **{**fields, **changes})


def bench_drafts(count: int = 14, **changes: Any) -> list[dict[str, Any]]:
    """Everything a run of the head bolts needs."""
    click = {"sort": "click", "unit": "lbf·ft", "least": "15", "most": "150"}
    dial = {"sort": "dial", "unit": "N·m", "least": "2", "most": "20"}
    return [
        described("part", HEAD, name="Cylinder head", quantity=1),
        described("part", BOLTS, name="Head bolts M11", quantity=count),
        judged(HEAD, "use"),
        judged(BOLTS, "use"),
        described("wrench", WRENCH, name="Long click wrench", **click),
        described("wrench", SMALL_WRENCH, name="Small dial wrench", **dial),
        joint(count, **changes),
    ]  # fmt: skip


def bag() -> list[dict[str, Any]]:
    """A bag of four pushrods nobody has looked at."""
    ends = {"hint": "both, under the lamp", "good": "even and round", "bad": "flat, with a step"}
    criteria = [
        {"id": "c1", "asks": "Ends even and round?", **ends},
        {"id": "c2", "asks": "Rolls without a wobble?", "hint": "on the glass plate"},
        {"id": "c3", "asks": "Oil passage clear?", "hint": "see light through it"},
    ]  # fmt: skip
    reasons = {
        "spare": ["slightly worn"],
        "machine": ["wants polish"],
        "scrap": ["bent", "ball end flat"],
    }
    kind = {"plural": "pushrods", "criteria": criteria, "reasons": reasons, "drawing": "ball-end"}
    rods = [
        described("part", rod, name=f"Pushrod {n}", kind=KIND, quantity=1)
        for n, rod in enumerate(PUSHRODS, 1)
    ]
    return [
        described("kind", KIND, name="Pushrod", **kind),
        described("holder", BAG, name="Bag of pushrods", form="bag"),
        *rods,
        *({"heading": "place", "about": rod, "body": {"in": BAG}} for rod in PUSHRODS),
    ]  # fmt: skip


RUN = "run-1"
VALUES = {"p1": "20", "p2": "45", "p3": "85"}


def begun() -> dict[str, Any]:
    """The run begun with the usual wrench."""
    return {
        "heading": "begin",
        "about": JOINT,
        "body": {"run": RUN, "lubricant": "oiled", "wrench": WRENCH},
    }


def pulls(pass_: str, numbers: range | list[int], **changes: Any) -> list[dict[str, Any]]:
    """Fasteners confirmed at a pass, as drafts."""
    value = VALUES.get(pass_)
    body = {
        "run": RUN, "pass": pass_, "wrench": WRENCH, "reading": None, "lubricant": "oiled",
        "target": {"value": value, "unit": "lbf·ft"} if value else None, **changes,
    }  # fmt: skip
    return [
        {"heading": "pull", "about": JOINT, "body": {**body, "fastener": f"f{n}"}} for n in numbers
    ]


def half_way(count: int = 14) -> list[dict[str, Any]]:
    """A run that stopped in its second pass after bolt 8."""
    every = range(1, count + 1)
    together = pulls("p0", every, together=True)
    return [
        *bench_drafts(count),
        begun(),
        *together,
        *pulls("p1", every),
        *pulls("p2", range(1, 9)),
    ]


def keep(page: Page, drafts: list[dict[str, Any]]) -> list[dict[str, Any]]:
    """Keep drafts on this phone as a second tab of it would."""
    entries: list[dict[str, Any]] = page.evaluate(
        """async drafts => {
          const { openStore } = await import('/store/index.js');
          const store = window.benchStore ?? (window.benchStore = await openStore());
          return store.keep(drafts);
        }""",
        drafts,
    )
    return entries


def kept(page: Page, heading: str, about: str | None = None) -> list[dict[str, Any]]:
    """What this phone holds of a heading, oldest first, struck ones too."""
    facts: list[dict[str, Any]] = page.evaluate(
        """async ([heading, about]) => {
          const { openStore } = await import('/store/index.js');
          const store = window.benchStore ?? (window.benchStore = await openStore());
          const id = about.replace('joint:', '');
          const slice = await (id === about ? store.partSlice(id) : store.jointSlice(id));
          const subject = slice.subject(id);
          return subject ? subject.facts.filter(fact => fact.heading === heading) : [];
        }""",
        [heading, about or f"joint:{JOINT}"],
    )
    return facts
