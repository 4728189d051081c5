"""The rules give what was published, on both sides; fixtures/reference names each source."""

import json
import subprocess
from pathlib import Path
from typing import Any

import pytest
from tools import node
from trade import reference_frame
from trade.reference_cases import RULES as ALL
from trade.reference_cases import Call
from vector_rules.trade import RULES
from witnessmark.errors import TradeError

HERE = Path(__file__).parent
CASES = {stem: cases for stem, cases in ALL.items() if stem not in reference_frame.STEMS}
REFERENCE = HERE.parent.parent / "fixtures" / "reference"
GROUPS = [
    (stem, group)
    for stem in CASES
    for group in json.loads((REFERENCE / f"{stem}.json").read_text(encoding="utf-8"))
]
SIDES = ("python", "javascript")


def in_python(calls: list[Call]) -> list[Any]:
    results = []
    for rule, given in calls:
        try:
            results.append(RULES[rule](given))
        except TradeError as refused:
            results.append({"refused": refused.code})
    return results


def in_javascript(calls: list[Call]) -> list[Any]:
    done = subprocess.run(
        [node(), str(HERE / "calls.mjs")],
        input="".join(json.dumps(call) + "\n" for call in calls),
        capture_output=True, text=True, timeout=60, check=False,
    )  # fmt: skip
    assert done.returncode == 0, done.stderr
    return [json.loads(line) for line in done.stdout.splitlines()]


def share_of_tolerance(expected: Any, actual: Any, within: Any) -> float:
    """How far off, in units of the tolerance; above 1 is wrong, and so is whatever is no number."""
    if isinstance(expected, bool) or not isinstance(expected, int | float) or within == "exact":
        return 0.0 if expected == actual else 2.0
    allowed = within.get("absolute", within.get("relative", 0) * abs(expected))
    return abs(expected - actual) / allowed if allowed else 2.0 * (expected != actual)


@pytest.mark.parametrize("side", SIDES)
@pytest.mark.parametrize(("stem", "group"), GROUPS, ids=[group["topic"] for _, group in GROUPS])
def test_check_values_come_out(stem: str, group: dict[str, Any], side: str) -> None:
    cases = [CASES[stem](case["given"], case["gives"]) for case in group["cases"]]
    calls = [call for case in cases for call in case.calls]
    results = iter(in_python(calls) if side == "python" else in_javascript(calls))
    wrong = []
    for case, told in zip(cases, group["cases"], strict=True):
        pairs = case.check([next(results) for _ in case.calls])
        shares = [share_of_tolerance(*pair, told["within"]) for pair in pairs]
        wrong += [(told["given"], pairs)] if max(shares) > 1 else []
    assert not wrong


def test_every_group_names_its_source() -> None:
    for _, group in GROUPS:
        assert set(group["source"]) == {"title", "where", "kind", "checked"}
        assert all(text.strip() for text in group["source"].values())
