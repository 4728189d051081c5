"""What is recorded in a history: every merge rule, at few enough things that devices meet."""

import random
import uuid
from typing import Any

JOINTS = ("joint-1", "joint-2")
PARTS = ("part-1", "part-2", "part-3")
HOLDERS = ("holder-1", "holder-2")
CODES = ("0000001J", "7K3MQ2RJ")


class Bench:
    """Makes drafts, and remembers a few entries that others may strike out or follow."""

    def __init__(self, dice: random.Random) -> None:
        self.dice = dice
        self.seen: list[dict[str, Any]] = []

    def saw(self, entries: list[dict[str, Any]]) -> None:
        """These can be struck out or named from now on."""
        self.seen = (self.seen + entries)[-40:]

    def drafts(self, who: str) -> list[dict[str, Any]]:
        """One to four things at once."""
        makers = [self.part, self.pull, self.place, self.label, self.strike, self.newer, self.begin]
        return [self.dice.choice(makers)(who) for _ in range(self.dice.randint(1, 4))]

    def part(self, who: str) -> dict[str, Any]:
        """A description of one field or two."""
        field = self.dice.choice(["name", "note", "from"])
        fields = {field: f"{field} by {who} {self.dice.randint(0, 99)}", "thread": None}
        return {"heading": "part", "about": self.dice.choice(PARTS), "body": {"fields": fields}}

    def pull(self, who: str) -> dict[str, Any]:
        """A fact that is kept beside others."""
        body = {
            "run": "run-1",
            "fastener": f"f{self.dice.randint(1, 9)}",
            "pass": "p1",
            "wrench": None,
            "target": {"value": "45", "unit": "N·m"},
            "reading": None,
            "lubricant": f"öl ✓ {who}",
        }
        return {"heading": "pull", "about": self.dice.choice(JOINTS), "body": body}

    def begin(self, who: str) -> dict[str, Any]:
        """A run."""
        body = {"run": f"run-{who}", "lubricant": "oil", "wrench": None}
        return {"heading": "begin", "about": self.dice.choice(JOINTS), "body": body}

    def place(self, who: str) -> dict[str, Any]:
        """One stands, and sometimes it names the one before."""
        about = self.dice.choice(PARTS)
        draft = {"heading": "place", "about": about, "body": {"in": self.dice.choice(HOLDERS)}}
        return self.following(draft)

    def label(self, who: str) -> dict[str, Any]:
        """Bound twice, sooner or later."""
        body = {"marks": self.dice.choice(PARTS + HOLDERS)}
        return self.following({"heading": "label", "about": self.dice.choice(CODES), "body": body})

    def following(self, draft: dict[str, Any]) -> dict[str, Any]:
        """With `after`, if an earlier one of its sort is known."""
        sort = (draft["heading"], draft["about"])
        earlier = [one["id"] for one in self.seen if (one["heading"], one["about"]) == sort]
        if earlier and self.dice.random() < 0.7:
            draft["after"] = earlier[-2:]
        return draft

    def strike(self, who: str) -> dict[str, Any]:
        """Of anything seen, a strike-out too; sometimes of what nobody has yet."""
        targets = [one["id"] for one in self.seen] or [self.fresh()]
        about = self.dice.choice([*targets, self.fresh()])
        return {"heading": "strike-out", "about": about, "body": {"reason": f"{who} was wrong"}}

    def newer(self, who: str) -> dict[str, Any]:
        """A heading and a field from a page that is newer than this one."""
        body = {"said": who, "depth": {"how": [1, 2, None, True]}}
        if self.dice.random() < 0.5:
            return {"heading": "moon-phase", "about": self.dice.choice(PARTS), "body": body}
        return {"heading": "note", "about": self.dice.choice(PARTS), "body": {**body, "text": "x"}}

    def poison(self, clock: int) -> dict[str, Any]:
        """Readable by nobody: a pull without its fastener, a reading that is no number."""
        whole = {"run": "r", "fastener": "f1", "pass": "p1", "wrench": None, "target": None}
        reading = {"value": "abc", "unit": "N·m"}
        return {
            "id": self.fresh(),
            "heading": "pull",
            "about": "joint-1",
            "device": "018df906-f800-7000-8000-00000000bad0",
            "n": 1,
            "stamp": f"{clock:012x}-0000",
            "made": "2031-03-07T19:42:10+01:00",
            "v": 1,
            "body": self.dice.choice([{}, {"run": 1}, {**whole, "reading": reading}]),
        }

    def fresh(self) -> str:
        """An id of version 7."""
        text = str(uuid.UUID(int=self.dice.getrandbits(128), version=4))
        return f"{text[:14]}7{text[15:]}"
