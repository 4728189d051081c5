"""Published values run over both sides: every case of fixtures/reference, and how far off it came.

An adapter a stem, reference_rules/<stem>.py and .mjs, says how a topic's `given` becomes calls of
the rules and their results become `gives`. TOPICS maps a topic to such a function; BY_SHAPE, where
there is one, takes every other topic of the stem by the keys of its case.
"""

import importlib
import json
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from tools import under_node
from witnessmark.errors import WitnessmarkError

HERE = Path(__file__).parent
REFERENCE = HERE.parents[1] / "fixtures" / "reference"
STEMS = sorted(path.stem for path in (HERE / "reference_rules").glob("*.py"))
SIDES = ("python", "javascript")
NOT_COMPARED = {"or", "refused", "one_best_choice"}
"""Keys that are no result: an alternative, a reason, one of several equally good choices."""

Case = dict[str, Any]
Adapter = Callable[[Case], Case]


@dataclass(frozen=True)
class Outcome:
    """One case on one side; share is how far off, in units of the tolerance, above 1 is wrong."""

    stem: str
    group: Case
    case: Case
    side: str
    share: float
    came: Any


def groups(stem: str, path: Path | None = None) -> list[Case]:
    """The groups of a stem, from its own file or from another one of the same shape."""
    listed = json.loads((path or REFERENCE / f"{stem}.json").read_text(encoding="utf-8"))
    return [group for group in listed if path is None or group["rule"] == stem]


def adapter(stem: str, topic: str) -> Adapter | None:
    module = importlib.import_module(f"trade.reference_rules.{stem}")
    found: Adapter | None = module.TOPICS.get(topic, getattr(module, "BY_SHAPE", None))
    return found


def in_python(stem: str, topic: str, given: Case) -> Any:
    run = adapter(stem, topic)
    if run is None:
        return {"no adapter": topic}
    try:
        return json.loads(json.dumps(run(given)))
    except WitnessmarkError as refused:
        return {"refused": refused.code, "says": refused.sentence}


def number_share(expected: float, actual: Any, within: Any) -> float:
    if isinstance(actual, bool) or not isinstance(actual, int | float):
        return 2.0
    if expected == actual:
        return 0.0
    if within == "exact":
        return 2.0
    allowed = within.get("absolute", within.get("relative", 0) * abs(expected))
    return abs(expected - actual) / allowed if allowed else 2.0


def share(expected: Any, actual: Any, within: Any) -> float:
    """Numbers by their tolerance; words, truths and lists of places exactly."""
    if isinstance(expected, list):
        if not isinstance(actual, list) or len(expected) != len(actual):
            return 2.0
        places = all(isinstance(each, int) for each in expected)
        rule = "exact" if places else within
        pairs = zip(expected, actual, strict=True)
        return max((share(*pair, rule) for pair in pairs), default=0.0)
    if isinstance(expected, dict):
        if not isinstance(actual, dict):
            return 2.0
        return max((share(v, actual.get(k), within) for k, v in expected.items()), default=0.0)
    if isinstance(expected, bool) or not isinstance(expected, int | float):
        return 0.0 if expected == actual else 2.0
    return number_share(expected, actual, within)


def key_share(key: str, gives: Case, came: Case, within: Any) -> float:
    """A bound in a key's name ("…_at_least") is a bound, not a value."""
    expected, actual = gives[key], came.get(key)
    if key.endswith(("_at_least", "_at_most")) and isinstance(actual, int | float):
        return 2.0 * (actual < expected if key.endswith("_at_least") else actual > expected)
    allowed = [expected, gives["or"]] if "or" in gives else [expected]
    return min(share(each, actual, within) for each in allowed)


def case_share(case: Case, came: Any) -> float:
    gives = case["gives"]
    if "refused" in gives:
        return 0.0 if isinstance(came, dict) and came.get("refused") else 2.0
    if not isinstance(came, dict) or {"refused", "no adapter"} & came.keys():
        return 2.0
    keys = [key for key in gives if key not in NOT_COMPARED]
    return max((key_share(key, gives, came, case["within"]) for key in keys), default=0.0)


def outcomes(stem: str, side: str, path: Path | None = None) -> Iterator[Outcome]:
    """Every case of a stem, run on one side."""
    listed = [(group, case) for group in groups(stem, path) for case in group["cases"]]
    calls = [(stem, group["topic"], case["given"]) for group, case in listed]
    came = (
        [in_python(*call) for call in calls]
        if side == "python"
        else under_node(HERE / "reference_run.mjs", calls)
    )
    for (group, case), result in zip(listed, came, strict=True):
        yield Outcome(stem, group, case, side, case_share(case, result), result)
