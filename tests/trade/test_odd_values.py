"""Whatever odd thing stands where a number or a list belongs is refused by name on both sides."""

from __future__ import annotations

import copy
import json
import math
import subprocess
from collections.abc import Iterator
from pathlib import Path
from typing import Any

from tools import node
from vector_rules.measure import RULES
from witnessmark.errors import WitnessmarkError

HERE = Path(__file__).parent
VECTORS = HERE.parents[1] / "fixtures" / "vectors"
STEMS = [
    "interaction",
    "adapter",
    "dimension",
    "limits",
    "shape",
    "expansion",
    "scatter",
    "gauge_study",
    "fit",
    "valve_train",
    "rule_of_thumb",
    "assignment",
    "choosing",
    "mixing",
    "points",
]
ODD: dict[str, Any] = {
    "nan": math.nan,
    "infinity": math.inf,
    "minus infinity": -math.inf,
    "huge": 1e300,
    "true": True,
    "text": "x",
    "object": {},
}
AS_JSON = {"nan", "infinity", "minus infinity"}
Path_ = tuple[str | int, ...]


def places(value: Any, path: Path_ = ()) -> Iterator[Path_]:
    """Where numbers and lists stand in a case; of a long list its first two only."""
    if isinstance(value, dict):
        for key, inner in value.items():
            yield from places(inner, (*path, key))
    elif isinstance(value, list):
        yield path
        for index, inner in enumerate(value[:2]):
            yield from places(inner, (*path, index))
    elif isinstance(value, int | float):
        yield path


def with_odd(given: dict[str, Any], path: Path_, odd: Any) -> dict[str, Any]:
    made = copy.deepcopy(given)
    inner: Any = made
    for step in path[:-1]:
        inner = inner[step]
    inner[path[-1]] = odd
    return made


def calls() -> Iterator[tuple[str, dict[str, Any], Path_, str]]:
    for stem in STEMS:
        document = json.loads((VECTORS / f"{stem}.json").read_text("utf-8"))
        for group in document["groups"]:
            given = next((each["given"] for each in group["tests"] if "gives" in each), {})
            for path in places(given):
                yield from ((group["rule"], given, path, odd) for odd in ODD)


def test_python_refuses_odd_values_by_name() -> None:
    wrong = []
    for rule, given, path, odd in calls():
        try:
            came: object = RULES[rule](with_odd(given, path, ODD[odd]))
        except WitnessmarkError:
            continue
        except (TypeError, ValueError, AttributeError, ArithmeticError) as broke:
            came = repr(broke)
        wrong.append(f"{rule} {path} {odd}: {came}")
    assert not wrong, "\n".join(wrong[:20])


def test_javascript_refuses_odd_values_by_name() -> None:
    listed = list(calls())
    lines = [
        json.dumps([rule, with_odd(given, path, {"odd": odd} if odd in AS_JSON else ODD[odd])])
        for rule, given, path, odd in listed
    ]
    done = subprocess.run(
        [node(), str(HERE / "measured.mjs")],
        input="\n".join(lines) + "\n",
        capture_output=True, text=True, timeout=120, check=True,
    )  # fmt: skip
    answers = [json.loads(line) for line in done.stdout.splitlines()]
    wrong = [
        f"{rule} {path} {odd}: {came}"
        for (rule, _, path, odd), came in zip(listed, answers, strict=True)
        if not (isinstance(came, dict) and came.get("refused"))
    ]
    assert not wrong, "\n".join(wrong[:20])
