"""One history: several phones, one computer, and everything that sync.md names as a fault."""

import json
import random
from pathlib import Path
from typing import Any

from sync.computer import Computer
from sync.drafts import Bench
from sync.phones import Ask, PhoneFault, Phones

YEAR_MS = 365 * 86_400_000
HOUR_MS = 3_600_000

FAULTS = {
    "none": 8,
    "answer lost": 1,
    "cut on the way": 1,
    "doubled": 1,
    "late": 1,
    "never sent": 1,
    "server in trouble": 1,
    "killed": 1,
    "flat": 1,
}
HAPPENS = {
    "keep": 40,
    "sync": 40,
    "spoil": 2,
    "revoke": 1,
    "copy": 1,
    "kill": 3,
    "flat": 3,
    "backup": 3,
    "restore": 2,
    "again": 3,
}


def drawn(dice: random.Random, weights: dict[str, int]) -> str:
    """One of the words, as often as its weight says."""
    return dice.choices(list(weights), list(weights.values()))[0]


class History:
    """Runs from a seed, so that a broken one can be run again."""

    def __init__(self, seed: int, folder: Path, phones: Phones) -> None:
        self.dice = random.Random(seed)  # noqa: S311
        self.computer = Computer(folder)
        self.phones = phones
        phones.hear = self.hear
        phones.do("seed", seed=seed + 1)
        self.names: list[str] = []
        self.clocks: dict[str, int] = {}
        self.kept: set[str] = set()
        self.poison: set[str] = set()
        self.late: list[Ask] = []
        self.dying: set[int] = set()
        self.calm = False
        self.bench = Bench(self.dice)

    # Requests on the way

    def hear(self, ask: Ask) -> None:
        """A phone asked the computer something: the dice say what becomes of it."""
        fault = "none" if self.calm or ask["path"].endswith("/pair") else drawn(self.dice, FAULTS)
        if self.late and self.dice.random() < 0.5:
            self.computer.answer(self.late.pop())
        if fault == "late":
            self.late.append(ask)
        if fault in ("late", "never sent"):
            return self.phones.answer(ask, None)
        if fault in ("killed", "flat"):
            return self.die(ask, fault)
        said = self.heard(ask, fault)
        return self.phones.answer(ask, None if fault in ("answer lost", "cut on the way") else said)

    def heard(self, ask: Ask, fault: str) -> dict[str, Any]:
        """What the computer makes of the request under this fault."""
        if fault == "server in trouble":
            return {"status": 503, "headers": {"Retry-After": "1"}, "body": ""}
        if fault == "cut on the way" and ask["body"]:
            half = ask["body"][: len(ask["body"]) // 8 * 4]
            return self.computer.answer({**ask, "body": half})
        if fault == "doubled":
            self.computer.answer(ask)
        return self.computer.answer(ask)

    def die(self, ask: Ask, fault: str) -> None:
        """The phone is killed while it waits, before or after the computer heard it."""
        if self.dice.random() < 0.5:
            self.computer.answer(ask)
        self.dying.add(self.phones.begin("kill", name=ask["phone"], flat=fault == "flat"))

    def buried(self) -> None:
        """Every page that was killed has begun anew."""
        while self.dying:
            serial = self.dying.pop()
            while serial not in self.phones.told:
                self.phones.read()
            self.phones.told.pop(serial)

    # What happens

    def tick(self, name: str) -> None:
        """Time goes on; sometimes a phone's clock jumps."""
        self.computer.clock += self.dice.choice([5, 500, 60_000, HOUR_MS])
        jump = self.dice.choices(
            [0, YEAR_MS, -YEAR_MS, -60_000, 7 * HOUR_MS], weights=[20, 1, 1, 2, 1]
        )[0]
        self.clocks[name] += self.dice.choice([5, 500, 60_000]) + jump
        self.phones.do("clock", name=name, clock=self.clocks[name])

    def join(self, name: str) -> None:
        """One more phone, which may record before it is paired."""
        self.names.append(name)
        off = self.dice.choice([0, 0, YEAR_MS, -YEAR_MS, 20 * 60_000])
        self.clocks[name] = self.computer.clock + off
        self.phones.do("phone", name=name, clock=self.clocks[name])
        if self.dice.random() < 0.3:
            self.keep(name)
        self.pair(name)

    def pair(self, name: str) -> None:
        """By a fresh code."""
        self.phones.do("pair", name=name, code=self.computer.code())

    def keep(self, name: str) -> None:
        """Someone records something at the bench."""
        entries = self.phones.do("keep", name=name, drafts=self.bench.drafts(name))
        self.kept.update(entry["id"] for entry in entries)
        self.bench.saw(entries)

    def spoil(self, name: str) -> None:
        """An entry the computer will not take lies among the waiting ones."""
        entry = self.bench.poison(self.clocks[name])
        self.poison.add(entry["id"])
        self.phones.do("takeIn", name=name, entries=[entry])

    def sync(self, name: str) -> None:
        """The phone tries; whatever becomes of it."""
        serial = self.phones.begin("sync", name=name)
        while serial not in self.phones.told and not self.dying:
            self.phones.read()
        self.phones.told.pop(serial, None)
        self.buried()

    def revoke(self, name: str) -> None:
        """Shut out at the computer; paired again by the owner later."""
        device = self.phones.do("look", name=name)["device"]
        known = [one.id for one in self.computer.store.devices()]
        if device in known:
            self.computer.store.revoke(device)

    def copy(self, name: str) -> None:
        """The phone's profile is copied to another: two phones, one key."""
        if len(self.names) < 8:
            twin = f"{name}+"
            if twin not in self.names:
                self.phones.do("copy", name=twin, of=name)
                self.names.append(twin)
                self.clocks[twin] = self.clocks[name]

    def restore(self) -> None:
        """Last week's backup becomes the present, and the computer goes on recording."""
        if self.computer.backups:
            self.computer.bring_back()
            if self.dice.random() < 0.5:
                self.computer.store.append_own("note", "joint-1", {"text": "after the restore"})

    def step(self) -> None:
        """One thing happens somewhere."""
        name = self.dice.choice(self.names)
        self.tick(name)
        self.buried()
        happens = drawn(self.dice, HAPPENS)
        if happens == "backup":
            self.computer.backup(self.dice.choice(["command", "folder"]))
        elif happens == "restore":
            self.restore()
        elif happens in ("kill", "flat"):
            self.phones.do("kill", name=name, flat=happens == "flat")
        elif happens == "again":
            if self.phones.do("look", name=name)["paired"] != "yes":
                self.pair(name)
        else:
            getattr(self, happens)(name)

    def run(self, phones: int, steps: int) -> None:
        """Everything, then a quiet evening at home."""
        for number in range(phones):
            self.join(f"phone {number}")
        for _ in range(steps):
            try:
                self.step()
            except PhoneFault as fault:
                # A page killed in the middle says so to whoever waited for it; nothing else may.
                if fault.code != "not-kept-closed":
                    raise
        self.evening()

    def evening(self) -> None:
        """No faults any more: every phone comes home, and again after two hours."""
        self.calm = True
        self.buried()
        for _ in range(3):
            self.computer.clock += 2 * HOUR_MS
            for name in self.names:
                self.clocks[name] += 2 * HOUR_MS
                self.phones.do("clock", name=name, clock=self.clocks[name])
                if self.phones.do("look", name=name)["paired"] != "yes":
                    self.pair(name)
                self.phones.do("sync", name=name)
                for row in self.phones.do("refused", name=name):
                    assert row["id"] in self.poison, row
                    self.phones.do("giveUp", name=name, entry=row["id"], reason="planted")
        while self.late:
            self.computer.answer(self.late.pop())
        for name in self.names:
            self.phones.do("sync", name=name)

    # What must hold

    def check(self) -> None:
        """All equal, digests equal, tables = log, nothing waiting, everything kept is there."""
        log = self.computer.log()
        truth = {json.loads(text)["id"]: (order, text) for _, order, text in log}
        assert self.kept <= set(truth), f"lost: {sorted(self.kept - set(truth))}"
        assert not self.poison & set(truth)
        rebuilt = self.computer.store.rebuild()
        assert not list(rebuilt.differences)
        looks = {name: self.phones.do("look", name=name) for name in self.names}
        for name, look in looks.items():
            self.check_phone(name, look, truth)
        first = looks[self.names[0]]["subjects"]
        for name, look in looks.items():
            assert look["subjects"] == first, f"{name} shows another workshop"
        assert not self.phones.unhandled

    def check_phone(self, name: str, look: dict[str, Any], truth: dict[str, Any]) -> None:
        """One phone holds what the log holds."""
        assert look["agreed"] == len(truth), (name, look["agreed"], len(truth), look["sync"])
        assert look["waiting"] == [], (name, look["sync"], look["refused"])
        assert look["dirty"] == 0, f"{name} has things left to fold"
        # Numbers are not compared: after a restore the same entries may have come back in another
        # order, and a phone whose cursor still names the right entry need not know.
        assert all(row["seq"] for row in look["entries"] if row["id"] not in self.poison)
        held = {
            row["id"]: (row.get("order"), row["text"])
            for row in look["entries"]
            if row["id"] not in self.poison
        }
        odd = {key: (held.get(key), truth.get(key)) for key in held.keys() ^ truth.keys()}
        odd |= {
            key: (held[key], truth[key]) for key in held.keys() & truth if held[key] != truth[key]
        }
        assert not odd, (name, odd)
