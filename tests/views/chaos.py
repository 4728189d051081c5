"""Histories that no sane evening produces: every heading, few ids, odd values, any order."""

import random
from collections.abc import Iterable, Iterator
from typing import Any

THINGS = ("j1", "j2", "p1", "p2", "h1", "h2", "k1", "w1", "i1", "b1", "7K3MQ2RJ", "2B8NK4WS")
RUNS, FASTENERS = ("r1", "r1", "r2", "7"), ("f1", "f2", "f3", "1", "x")
PASSES = ("p0", "p1", "p2")
TEXTS = (
    "",
    "  ",
    "dry",
    "oiled",
    "Pushrod 10",
    "pushrod 2",
    "Ölpumpe",
    "No. 007",
    "ß",
    "İ",
    "x\ty",
)
NUMBERS = ("20", "20.0", "45", "0", "-3", ".5", "5.", "61.0", "9" * 20, "000")
UNITS = ("N·m", "lbf·ft", "lbf·in", "°", "Nm", "", "mm")
VERDICTS = ("use", "spare", "machine", "scrap")
LENGTHS = ("41.97", "41.970", "42", "42.004", "-0.02", "1.6535", ".5", "5.", "x", "9" * 20)
DAYS = ("2031-03-07", "2031-02-30", "2030-12-24", "soon", "", None)
POSITIONS = ("top", "bottom", "a", "", None)
ODD: tuple[Any, ...] = (None, "", 0, -7, True, [], {}, ["f1"], {"value": "1"}, "odd")


TARGETS = {"p1": {"value": "20", "unit": "lbf·ft"}, "p2": {"value": "90", "unit": "°"}}
SANE = [
    {"id": "p0", "how": "hand"},
    {"id": "p1", "how": "torque", "values": [TARGETS["p1"]]},
    {"id": "p2", "how": "angle", "values": [TARGETS["p2"]]},
]


ADAPTER = {
    "adapter_length": {"value": "50", "unit": "mm"}, "wrench_length": {"value": "12", "unit": "in"},
    "angle": {"value": "45", "unit": "°"},
}  # fmt: skip


class Chaos:
    def __init__(self, seed: int) -> None:
        self.random = random.Random(seed)  # noqa: S311 - no secret hangs on it
        self.ids: list[str] = []

    def one(self, choices: Any) -> Any:
        return self.random.choice(choices)

    def maybe(self, value: Any) -> Any:
        return self.one(ODD) if self.random.random() < 0.01 else value

    def some(self, choices: Any, most: int = 4) -> list[Any]:
        return [self.one(choices) for _ in range(self.random.randint(0, most))]

    def measured(self) -> Any:
        kept = {"value": self.one(NUMBERS), "unit": self.one(UNITS[:4])}
        return self.maybe(None if self.random.random() < 0.3 else kept)

    def values(self) -> list[dict[str, Any]]:
        return [
            v for v in (self.measured(), self.measured()) if isinstance(v, dict) and "unit" in v
        ]

    def length(self) -> Any:
        kept = {"value": self.one(LENGTHS), "unit": self.one(("mm", "mm", "mm", "in", "g", "ell"))}
        return self.maybe(None if self.random.random() < 0.1 else kept)

    def measures(self) -> list[dict[str, Any]]:
        return [
            {"id": id_, "name": self.text(), "unit": self.one(("mm", "mm", "in", "g", None))}
            | {"least": self.one((None, "41.9", "x")), "most": self.one((None, "42.0", "41"))}
            | {"positions": self.some(POSITIONS[:3]), "directions": self.some(("A", "B"), 2)}
            for id_ in ("m1", "m2")[: self.random.randint(1, 2)]
        ]

    def readings(self) -> Any:
        return self.maybe(
            [
                {"measure": self.one(("m1", "m1", "m2", "?")), "position": self.one(POSITIONS)}
                | {"direction": self.one(("A", "B", None)), "value": self.length()}
                | {"instrument": self.one((None, "i1", "w1", "?"))}
                | {"temperature": self.one((None, {"value": "23", "unit": "°C"}))}
                for _ in range(self.random.randint(0, 5))
            ]
        )

    def text(self) -> Any:
        return self.maybe(self.one(TEXTS))

    def programme(self) -> Any:
        if self.random.random() < 0.7:
            return {"passes": SANE, "lubricant": "oiled", "source": None, "sequence": ["f2"]}
        passes = [
            {"id": id_, "how": self.one(("hand", "torque", "torque", "angle", "back-off"))}
            | {"values": [{**v, "group": self.one((None, "long"))} for v in self.values()]}
            for id_ in PASSES[: self.random.randint(0, 3)]
        ]
        return self.maybe(
            {"passes": passes, "lubricant": self.text(), "source": self.text()}
            | {"sequence": self.maybe(self.some(FASTENERS)), "retorque": self.text()}
            | {"cautions": [{"word": "caution", "says": "hot"}] * self.random.randint(0, 1)}
        )

    def target(self, pass_: str) -> Any:
        return self.measured() if self.random.random() < 0.2 else TARGETS.get(pass_)

    def fasteners(self) -> Any:
        found = [
            {"id": id_, "number": n, "x": self.random.randint(0, 9), "y": self.random.randint(0, 1)}
            | {"group": self.one((None, "long")), "part": self.one((None, "p2"))}
            for n, id_ in enumerate(FASTENERS[: self.random.randint(1, 4)], 1)
        ]
        return self.maybe(found)

    def fields(self, heading: str) -> dict[str, Any]:
        every = {
            "joint": lambda: {
                "name": self.text(), "parts": self.some(("p1", "p2")), "wrench": "w1",
                "fastener_part": self.one((None, "p2")), "fasteners": self.fasteners(),
                "pattern": self.one(("circle", "rows", "line", "points")),
                "programme": self.programme(),
                "adapter": self.one((self.text(), None, {}, ADAPTER)),
            },
            "part": lambda: {
                "name": self.text(), "kind": self.one((None, "k1")),
                "quantity": self.random.randint(-2, 9), "single_use": self.one((None, True, False)),
                "donor": "b1", "from": self.text(),
            },
            "holder": lambda: {"name": self.text(), "form": "bin", "note": self.text()},
            "kind": lambda: {
                "name": self.text(), "plural": self.text(), "single_use": self.one((True, False)),
                "criteria": [{"id": "c", "asks": "Round?", "good_photo": "ab" * 32}],
                "reasons": {"scrap": ["bent"]}, "measures": self.maybe(self.measures()),
                "own_place": self.one((True, False)),
            },
            "instrument": lambda: {
                "name": self.text(), "sort": self.text(), "quantity": "length",
                "unit": self.one(UNITS), "least": self.one(LENGTHS), "most": self.one(LENGTHS),
                "resolution": self.one(("0.01", "x", None)), "due": self.one(DAYS),
                "deviation": self.one(("0.02", "-1", None)), "calibrated": self.one(DAYS),
            },
            "set": lambda: {
                "name": self.text(), "kind": self.one((None, "k1")), "build": "b1",
                "pieces": [{"part": self.one(("p1", "p2")), "place": self.text()}
                           for _ in range(self.random.randint(0, 3))],
                "spares": self.some(("p1", "p2"), 2), "count": self.random.randint(-1, 3),
                "measures": [{"measure": "m1", "weight": self.one(NUMBERS)}],
            },
            "study": lambda: {
                "name": self.text(), "instrument": self.one((None, "i1", "?")),
                "unit": self.one(("mm", "mm", "in", None)), "pieces": self.random.randint(-1, 3),
                "people": self.some(("A", "B", " A"), 3), "repeats": self.random.randint(-1, 3),
                "least": self.one((None, "41", "x")), "most": self.one((None, "43", "40")),
            },
            "wrench": lambda: {
                "name": self.text(), "unit": self.one(UNITS), "least": self.one(NUMBERS),
                "most": self.one(NUMBERS), "deviation": self.one((None, "4", "x", "99")),
            },
            "donor": lambda: {"name": self.text()},
        }  # fmt: skip
        wanted = every[heading]()
        return {name: value for name, value in wanted.items() if self.random.random() < 0.8}

    def body(self, heading: str) -> dict[str, Any]:
        run, fastener, pass_ = self.one(RUNS), self.one(FASTENERS), self.one(PASSES)
        made = {
            "begin": {"run": run, "lubricant": self.text(), "wrench": self.one((None, "w1"))},
            "pull": {
                "run": run, "fastener": fastener, "pass": pass_,
                "wrench": self.one((None, "w1", "?")), "target": self.target(pass_),
                "reading": self.measured(), "read_at": "set",
                "lubricant": self.one(("oiled", "oiled", "oiled", None)),
            },
            "touch": {"run": run, "fastener": fastener, "turned": self.one((True, False))},
            "accept": {"pull": self.one(self.ids or ["?"]), "reason": "held"},
            "onward": {"run": run, "pass": pass_, "reason": self.text()},
            "unsourced": {"run": run, "pass": pass_, "target": self.measured()},
            "loosening": {
                "run": run, "pulls": self.some(self.ids or ["?"], 3), "reason": "leak",
                "fasteners": self.one((None, [fastener])),
            },
            "note": {"text": self.text(), "photos": [{"photo": "ab" * 32}]},
            "verdict": {"verdict": self.one(VERDICTS), "reason": self.text()},
            "place": {
                "in": self.one((None, "h1", "h2")), "where": self.text(), "gone": self.text(),
            },
            "fitted": {"build": self.one((None, "b1")), "place": self.text()},
            "label": {
                "marks": self.one((None, "p1", "h1")), "state": self.one(("retired", "free")),
            },
            "inspection": {
                "verdict": self.one(VERDICTS), "reason": self.text(),
                "looks": [{"criterion": "c", "good": self.one((True, False))}],
                "readings": self.readings(), "photos": [{"photo": "cd" * 32}],
            },
            "sent": {
                "to": self.text(), "for": self.text(), "due": self.one(DAYS),
                "price": self.measured(), "note": self.text(),
            },
            "returned": {
                "sent": self.one(self.ids or ["?"]), "note": self.text(),
                "readings": self.readings(),
            },
            "trial": {
                "piece": self.random.randint(0, 3), "person": self.one(("A", "B", " A")),
                "repeat": self.random.randint(0, 3), "value": self.length(),
            },
            "add": {"count": self.random.randint(0, 3)},
            "take": {"count": self.random.randint(0, 3)},
            "strike-out": {"reason": "slip"},
        }[heading]  # fmt: skip
        return {
            name: self.maybe(value) for name, value in made.items() if self.random.random() < 0.97
        }

    def entry(self, n: int) -> dict[str, Any]:
        heading, about = self.one(HEADINGS)
        if heading == "strike-out":
            about = self.one(self.ids or ["?"])
        described = heading in DESCRIBED
        fact = {
            "id": f"e{n}", "heading": heading, "about": about, "device": self.one("abc"),
            "at": n + self.random.randint(0, 90) / 10, "after": self.some(self.ids or ["?"], 2),
            "body": {"fields": self.fields(heading)} if described else self.body(heading),
        }  # fmt: skip
        self.ids.append(f"e{n}")
        return fact

    def history(self) -> list[dict[str, Any]]:
        described = [
            ("joint", "j1"),
            ("part", "p1"),
            ("part", "p2"),
            ("wrench", "w1"),
            ("begin", "j1"),
            ("kind", "k1"),
            ("study", "s1"),
        ]
        facts = []
        for n, (heading, about) in enumerate(described):
            fact = {"id": f"d{n}", "heading": heading, "about": about, "at": 0}
            body = self.body("begin") if heading == "begin" else {"fields": self.fields(heading)}
            facts.append({**fact, "body": body})
        return facts + [self.entry(n) for n in range(self.random.randint(0, 60))]

    def odd(self, subjects: Iterable[Any]) -> list[list[Any]]:
        """Values no shape would let through, at some places of folded subjects."""
        places = [[each["id"], path] for each in subjects for path in spots(each)]
        chosen = self.random.sample(places, min(len(places), self.random.randint(1, 12)))
        deepest_first = sorted(chosen, key=lambda place: -len(place[1]))
        return [[of, path, self.one(ODD)] for of, path in deepest_first]


def spots(subject: Any) -> Iterator[list[Any]]:
    """Paths to the values of fields and bodies; parts and fasteners stay lists for the links."""
    for name, said in subject["fields"].items():
        if name not in ("parts", "fasteners"):
            yield from ([*path] for path in below(said["value"], ["fields", name, "value"]))
    for place, fact in enumerate(subject["facts"]):
        for key, value in fact["body"].items():
            yield from below(value, ["facts", place, "body", key])


def below(value: Any, path: list[Any]) -> Iterator[list[Any]]:
    yield path
    inner = value.items() if isinstance(value, dict) else ()
    if isinstance(value, list):
        inner = enumerate(value)
    for step, each in inner:
        yield from below(each, [*path, step])


DESCRIBED = {"joint", "part", "holder", "kind", "wrench", "donor", "instrument", "set", "study"}
HEADINGS = [
    *[("joint", "j1"), ("joint", "j2"), ("part", "p1"), ("part", "p2"), ("holder", "h1")],
    *[("holder", "h2"), ("kind", "k1"), ("wrench", "w1"), ("donor", "b1"), ("begin", "j1")],
    *[("pull", "j1")] * 30,
    *[("pull", "j2"), ("touch", "j1"), ("accept", "j1"), ("onward", "j1"), ("unsourced", "j1")],
    *[("loosening", "j1")] * 2,
    *[("note", "j1"), ("note", "p1"), ("verdict", "p1"), ("verdict", "p2"), ("place", "p1")],
    *[("place", "h1"), ("place", "p2"), ("fitted", "p1"), ("label", "7K3MQ2RJ")],
    *[("label", "2B8NK4WS"), ("inspection", "p1"), ("add", "p2"), ("take", "p2")],
    *[("inspection", "p1"), ("inspection", "p2"), ("kind", "k1"), ("part", "p1")] * 3,
    *[("sent", "p1"), ("returned", "p1"), ("sent", "p2"), ("instrument", "i1")] * 2,
    *[("set", "set1"), ("set", "set2"), ("study", "s1")] * 2,
    *[("trial", "s1")] * 6,
    *[("strike-out", "?")] * 5,
]
