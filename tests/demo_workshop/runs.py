"""Torque runs of the demo: three done, one loosened again, one stopped half-way."""

from typing import Any

from demo_workshop.joints import JOINTS, measured
from demo_workshop.scribe import Scribe
from demo_workshop.things import Shop


class Run:
    """One going at a joint."""

    def __init__(self, log: Scribe, shop: Shop, joints: dict[str, str], name: str) -> None:
        self.log, self.shop, self.said = log, shop, JOINTS[name]
        self.joint = joints[name]
        self.wrench = shop.wrenches[self.said["wrench"]]
        self.id = log.fresh(f"run {name} {log.now}")
        self.pulls: list[str] = []
        lubricant = self.said["lubricant"]
        body = {"run": self.id, "lubricant": lubricant, "wrench": self.wrench}
        log.write("begin", self.joint, body)
        log.later(45)

    def order(self) -> list[int]:
        """Fastener numbers in the order of the programme."""
        fields = next(
            taken.facts["body"]["fields"]
            for taken in self.log.entries
            if taken.facts["about"] == self.joint and taken.facts["heading"] == "joint"
        )
        return [int(one[1:]) for one in fields["programme"]["sequence"]]

    def pull(self, pass_: str, number: int, target: str | None, **more: Any) -> str:
        """One fastener at one pass."""
        body: dict[str, Any] = {
            "run": self.id,
            "fastener": f"f{number}",
            "pass": pass_,
            "wrench": self.wrench if target else None,
            "target": measured(target) if target else None,
            "reading": None,
            "lubricant": self.said["lubricant"],
            **more,
        }
        made = self.log.write("pull", self.joint, body)
        self.pulls.append(made)
        return made

    def by_hand(self) -> None:
        """Three by three taps, then all the rest at once."""
        for place, number in enumerate(self.order()):
            if place < 3:
                self.pull("p0", number, None)
                self.log.later(9)
            else:
                self.pull("p0", number, None, together=True)
        self.log.later(60)

    def whole(self, pass_: str, target: str, rear: str | None = None) -> None:
        """Every fastener at this value, in order, at a person's pace."""
        groups = self.said.get("groups", {})
        for number in self.order():
            self.pull(pass_, number, rear if rear and number in groups else target)
            self.log.later(11 + number % 5)
        self.log.later(90)


def write_done_runs(log: Scribe, shop: Shop, joints: dict[str, str]) -> str:
    """Main caps, camshaft gear and oil pump done, timing cover loosened; the oil pump's run."""
    log.at("20 Oct 10:05:00")
    caps = Run(log, shop, joints, "Main caps")
    caps.by_hand()
    caps.whole("p1", "45 N·m")
    caps.whole("p2", "70 N·m")
    for number in caps.order():
        rear = number in JOINTS["Main caps"]["groups"]
        more = {"reading": measured("101 N·m"), "read_at": "bolt"} if number == 3 else {}
        pull = caps.pull("p3", number, "105 N·m" if rear else "95 N·m", **more)
        if more:
            reason = "Page 3-9 allows up to 102."
            log.write("accept", joints["Main caps"], {"pull": pull, "reason": reason})
        log.later(14)
    log.at("25 Oct 19:20:00")
    gear = Run(log, shop, joints, "Camshaft gear")
    gear.by_hand()
    gear.whole("p1", "25 N·m")
    log.at("27 Oct 18:40:00")
    pump = Run(log, shop, joints, "Oil pump")
    pump.by_hand()
    pump.whole("p1", "22 N·m")
    log.at("29 Oct 20:10:00")
    cover = Run(log, shop, joints, "Timing cover")
    cover.by_hand()
    cover.whole("p1", "8 N·m")
    log.at("3 Nov 11:15:00")
    undone = {"run": cover.id, "pulls": cover.pulls, "fasteners": None}
    reason = "The front seal was forgotten."
    log.stand("loosening", joints["Timing cover"], {**undone, "reason": reason})
    return pump.id


def write_fitted(log: Scribe, shop: Shop) -> None:
    """What is on the engine now."""
    names = ["crankshaft", "camshaft", "camshaft gear", "oil pump", "cylinder head"]
    names += [f"main cap {i}" for i in range(1, 8)] + [f"main shells {i}" for i in range(1, 8)]
    for name in names:
        log.stand("fitted", shop.parts[name], {"build": shop.build})
        if name not in ("crankshaft", "camshaft"):
            where = {"in": shop.holders["engine stand"], "where": "under the cover"}
            log.stand("place", shop.parts[name], where)


def write_head_run(log: Scribe, shop: Shop, joints: dict[str, str]) -> None:
    """The head bolts: pass 1 whole, pass 2 stopped after bolt 8, bolt 6 struck out."""
    log.at("14 Nov 19:20:00")
    head = Run(log, shop, joints, "Head bolts")
    head.wrench = shop.wrenches["short click wrench"]
    head.by_hand()
    head.whole("p1", "20 lbf·ft")
    head.wrench = shop.wrenches["long click wrench"]
    times = ("39:24", "39:47", "40:06", "40:31", "41:02", "41:30", "41:51", "42:08")
    for number, time in enumerate(times, 1):
        log.at(f"14 Nov 19:{time}")
        pull = head.pull("p2", number, "45 lbf·ft")
        if number == 6:
            log.at("14 Nov 19:41:37")
            log.write("strike-out", pull, {"reason": "socket slipped"})
