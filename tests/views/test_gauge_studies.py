"""Any gauge study, however odd its plan and its readings, is told alike in both languages."""

import json
import random
from pathlib import Path
from typing import Any

import pytest
from tools import under_node
from vector_rules.study import RULES

STUDIES = 300
UNITS = ("mm", "mm", "mm", "in", "°C", None, "ell")
PEOPLE = (["A", "B"], ["A"], ["A", " A", "B", "\u00a0"], [], ["A", "B", "C"])
LIMITS = (None, "0", "39.9", "-1", ".5", "5.", "40.1")
ODD = ("40", "40.0", "-0.5", ".5", "5.", "1e3", "x", "", "-300", "9" * 30, "0.000001")


class Bench:
    """Somebody who measures badly."""

    def __init__(self, seed: int) -> None:
        self.random = random.Random(seed)  # noqa: S311 - no secret hangs on it

    def study(self) -> dict[str, Any]:
        facts = self.whole() if self.random.random() < 0.4 else self.any()
        return {"id": "s", "facts": facts}

    def plan(self, **fields: Any) -> dict[str, Any]:
        limits = {"least": self.random.choice(LIMITS), "most": self.random.choice(LIMITS)}
        return {"heading": "study", "about": "s", "body": {"fields": {**limits, **fields}}}

    def trial(self, piece: int, person: str, repeat: int, value: Any, unit: str) -> dict[str, Any]:
        body = {"piece": piece, "person": person, "repeat": repeat}
        body["value"] = {"value": value, "unit": unit}
        device = self.random.choice("ab")
        return {"heading": "trial", "about": "s", "device": device, "body": body}

    def size(self, piece: int) -> str:
        size = 40 + piece * 0.02 + self.random.gauss(0, 0.01)
        return f"{size:.{self.random.randint(1, 3)}f}"

    def whole(self) -> list[dict[str, Any]]:
        plan = self.plan(unit="mm", pieces=3, people=["A", "B"], repeats=2)
        cells = [(piece, person, turn) for turn in (1, 2) for person in "AB" for piece in (1, 2, 3)]
        return [plan, *(self.trial(*at, self.size(at[0]), "mm") for at in cells)]

    def any(self) -> list[dict[str, Any]]:
        one = self.random.choice
        facts = [
            self.plan(
                unit=one(UNITS), pieces=one((0, 1, 2, 3, 26, -1)), people=one(PEOPLE),
                repeats=one((0, 1, 2, 3)),
            )
        ]  # fmt: skip
        for n in range(one((0, 10, 40))):
            odd = self.random.random() < 0.15
            piece, turn = self.random.randint(0, 3), self.random.randint(0, 3)
            value, unit = (one(ODD), one(UNITS) or "") if odd else (self.size(piece), "mm")
            facts.append({**self.trial(piece, one("ABC"), turn, value, unit), "id": f"t{n}"})
            if self.random.random() < 0.5:
                about = f"t{self.random.randint(0, n)}"
                strike = {"heading": "strike-out", "about": about, "body": {"reason": "x"}}
                facts.append(strike)
        return facts


def rounded(told: Any) -> Any:
    """Nine digits: squares and roots may differ in the last one."""
    if isinstance(told, dict):
        return {name: rounded(each) for name, each in told.items()}
    if isinstance(told, list):
        return [rounded(each) for each in told]
    number = isinstance(told, int | float) and not isinstance(told, bool)
    return pytest.approx(told, rel=1e-9, abs=1e-12) if number else told


def test_any_gauge_study_is_told_alike_in_both_languages() -> None:
    given = [Bench(seed).study() for seed in range(STUDIES)]
    theirs = under_node(Path(__file__).with_name("study_answers.mjs"), given)
    ours = [RULES["study"](each) for each in given]
    assert sum(each["figures"] is not None for each in ours) > STUDIES / 5
    for mine, other in zip(ours, theirs, strict=True):
        assert rounded(json.loads(json.dumps(mine))) == other
