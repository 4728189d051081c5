"""Made-up histories of a workshop: what several devices that meet now and then would write."""

import random
from typing import Any

Ordered = dict[str, Any]

VERDICTS = ("use", "spare", "machine", "scrap")
NAMES = ("pushrod", "tray 4", "N·m", "🔧", "", None)


class History:
    """Entries of a few devices about one thing; each device knows only what it was told."""

    def __init__(self, seed: int) -> None:
        self.dice = random.Random(seed)  # noqa: S311 - a seed makes the history, not a secret
        self.about = self.dice.choice(("x", "7K3MQ2RJ"))
        self.made: list[Ordered] = []
        self.known: dict[str, list[Ordered]] = {device: [] for device in "abc"}

    def run(self) -> list[Ordered]:
        """Between 1 and 24 entries, with a meeting of two devices now and then."""
        for _ in range(self.dice.randint(1, 24)):
            device = self.dice.choice("abc")
            self._write(device)
            if self.dice.random() < 0.4:
                self._meet(device, self.dice.choice("abc"))
        return self.made

    def _meet(self, one: str, other: str) -> None:
        both = [*self.known[one], *(e for e in self.known[other] if e not in self.known[one])]
        self.known[one], self.known[other] = list(both), list(both)

    def _write(self, device: str) -> None:
        heading, body, after, about = self._content(device)
        n = len(self.made) + 1
        stamp = f"{self.dice.randint(1, 12):012x}-{self.dice.randint(0, 2):04x}"
        entry = {
            "id": f"e{n}",
            "heading": heading,
            "about": about,
            "device": device,
            "n": n,
            "stamp": stamp,
            "made": f"day {n}",
            "v": 2 if self.dice.random() < 0.04 else 1,
            "body": body,
        }
        if after:
            entry["after"] = after
        order = stamp if self.dice.random() < 0.9 else f"{self.dice.randint(1, 6):012x}-0000"
        line = {"entry": entry, "order": order}
        self.made.append(line)
        self.known[device].append(line)

    def _content(self, device: str) -> tuple[str, dict[str, Any], list[str], str]:
        known = self.known[device]
        sort = self.dice.choice(("part", "pull", "place", "verdict", "label", "strike", "odd"))
        if sort == "strike":
            target = self.dice.choice(known)["entry"]["id"] if known else "e9"
            return "strike-out", {"reason": "slip"}, [], target
        if sort in {"place", "verdict", "label"}:
            return sort, self._one_stands(sort), self._after(known, sort), self.about
        if sort == "pull":
            return "pull", {"run": "r", "fastener": "f1", "pass": "p1"}, [], self.about
        if sort == "odd":
            heading = self.dice.choice(("oil-sample", "note", "sheet"))
            return heading, {"text": "seen", "odd": [1, {"b": None, "a": True}]}, [], self.about
        fields = {
            name: self.dice.choice(NAMES)
            for name in ("name", "note", "kind", "build")
            if self.dice.random() < 0.5
        }
        return "part", {"fields": fields}, [], self.about

    def _one_stands(self, heading: str) -> dict[str, Any]:
        if heading == "verdict":
            return {"verdict": self.dice.choice(VERDICTS)}
        to = self.dice.choice(("h1", "h2", None))
        return {"in": to} if heading == "place" else {"marks": to}

    def _after(self, known: list[Ordered], heading: str) -> list[str]:
        ids = [line["entry"]["id"] for line in known if line["entry"]["heading"] == heading]
        return self.dice.sample(ids, self.dice.randint(0, min(len(ids), 3)))


def history(seed: int) -> tuple[str, list[Ordered]]:
    """One history: the id it is about, and its entries in the order they were made."""
    made = History(seed)
    return made.about, made.run()
