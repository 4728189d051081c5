"""Where a run stands: marks of every fastener in every pass, what is open, what comes next."""

from __future__ import annotations

from dataclasses import dataclass

from witnessmark.log.values import Fact, Subject
from witnessmark.log.workshop import Workshop
from witnessmark.views import plain
from witnessmark.views.programme import Fastener, Pass, Programme
from witnessmark.views.pulls import Pull, pulls
from witnessmark.views.runs import Run, covers, fastener_of, pass_of


@dataclass(frozen=True, slots=True)
class Cell:
    """One fastener in one pass: its pulls by order."""

    pulls: tuple[Pull, ...] = ()

    @property
    def latest(self) -> Pull | None:
        """The latest pull that is neither struck nor loosened; it decides."""
        return next((each for each in reversed(self.pulls) if each.live), None)

    @property
    def mark(self) -> str:
        """todo, done, flagged, doubt, out or void; which one is next is said by the run."""
        if self.latest:
            return self.latest.mark
        if any(each.void is None for each in self.pulls):
            return "out"
        return "void" if self.pulls else "todo"

    @property
    def counts(self) -> bool:
        """Whether this pass is done for this fastener."""
        return self.latest is not None and self.latest.counts


EMPTY = Cell()


@dataclass(frozen=True, slots=True)
class Progress:
    """All that follows from the pulls of one run."""

    programme: Programme
    run: Run
    pulls: list[Pull]
    cells: dict[tuple[str, str], Cell]
    reached: dict[str, int]
    """Fastener → the farthest pass that is done for it."""
    left: dict[str, str]
    """Pass → the reason it was left with."""
    turned: frozenset[tuple[str, str]]
    """(pass, fastener) that may have been turned by an angle and must not be turned again."""

    def cell(self, pass_: Pass, fastener: str) -> Cell:
        """A fastener in a pass."""
        return self.cells.get((pass_.id, fastener), EMPTY)

    def open_in(self, pass_: Pass) -> list[Fastener]:
        """The fasteners that keep a pass from being whole, by the pass's own order.

        One that is done in a later pass owes this one nothing.
        """
        return [
            self.programme.fasteners[each]
            for each in self.programme.path(pass_)
            if self.reached.get(each, -1) < pass_.number
        ]

    def whole_in(self, pass_: Pass) -> bool:
        """Whether every fastener is done in this pass itself."""
        return all(self.cell(pass_, each).counts for each in self.programme.fasteners)

    @property
    def current(self) -> Pass | None:
        """The first pass that is open and was not left with a reason."""
        return next(
            (
                each
                for each in self.programme.passes.values()
                if each.id not in self.left and self.open_in(each)
            ),
            None,
        )

    @property
    def coming(self) -> list[Fastener]:
        """What the current pass still offers: the untouched first, then those struck out."""
        current = self.current
        if current is None:
            return []
        marks = [(each, self.cell(current, each.id).mark) for each in self.open_in(current)]
        todo = [each for each, mark in marks if mark in ("todo", "void")]
        back = [
            each
            for each, mark in marks
            if mark == "out" and (current.id, each.id) not in self.turned
        ]
        return todo + back

    @property
    def loosened(self) -> Fact | None:
        """The latest loosening that is not struck."""
        return next(iter(reversed(self.run.of("loosening"))), None)

    @property
    def undone(self) -> bool:
        """Whether all was loosened and nothing pulled since."""
        all_of_it = any(each["body"].get("fasteners") is None for each in self.run.of("loosening"))
        return all_of_it and not any(each.live for each in self.pulls)

    @property
    def complete(self) -> bool:
        """Whether every pass is behind it and the last one is whole."""
        passes = list(self.programme.passes.values())
        return bool(passes) and self.current is None and self.whole_in(passes[-1])

    @property
    def last(self) -> Pull | None:
        """The latest pull that is neither struck nor loosened."""
        return next((each for each in reversed(self.pulls) if each.live), None)


def progress(joint: Subject, run: Run, programme: Programme, workshop: Workshop) -> Progress:
    """Where a run stands."""
    found = pulls(joint, run, programme, workshop)
    cells: dict[tuple[str, str], list[Pull]] = {}
    for each in found:
        if each.pass_ and each.fastener:
            cells.setdefault((each.pass_.id, each.fastener.id), []).append(each)
    full = {key: Cell(tuple(each)) for key, each in cells.items()}
    return Progress(
        programme=programme,
        run=run,
        pulls=found,
        cells=full,
        reached=_reached(full),
        left={
            pass_of(each): plain.text(each["body"].get("reason")) or "" for each in run.of("onward")
        },
        turned=frozenset(
            key for key, cell in full.items() if _turned(cell, programme.passes[key[0]], run, joint)
        ),
    )


def _reached(cells: dict[tuple[str, str], Cell]) -> dict[str, int]:
    reached: dict[str, int] = {}
    for (_, fastener), cell in cells.items():
        if cell.latest and cell.latest.pass_ and cell.counts:
            reached[fastener] = max(reached.get(fastener, -1), cell.latest.pass_.number)
    return reached


def _turned(cell: Cell, pass_: Pass, run: Run, joint: Subject) -> bool:
    """Whether an angle was perhaps pulled that does not count: a second turn can break it.

    Struck: until somebody says after the strike that it was not turned. In doubt: always.
    """
    if pass_.how != "angle" or cell.counts:
        return False
    fastener = fastener_of(cell.pulls[0].fact)
    on_it = [each for each in cell.pulls if each.void is None]
    if not on_it or _loosened_since(on_it[-1], fastener, run):
        return False
    if cell.latest is not None:
        return True
    strikes = {each["id"]: each["order"] for each in joint["strikes"]}
    struck = [strikes.get(gone["id"], "") for each in on_it if (gone := each.fact["struck"])]
    answers = [
        each["order"]
        for each in run.of("touch")
        if fastener_of(each) == fastener and each["body"].get("turned") is False
    ]
    return not any(order > max(struck) for order in answers)


def _loosened_since(pull: Pull, fastener: str, run: Run) -> bool:
    return any(
        each["order"] > pull.fact["order"] and covers(each, fastener)
        for each in run.of("loosening")
    )
