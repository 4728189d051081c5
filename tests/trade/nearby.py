"""Cases near the shared ones: every rule's own cases, strayed by chance, run on both sides."""

import importlib
import json
import math
import random
import re
from collections import defaultdict
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

from tools import ROOT, under_node
from witnessmark.errors import WitnessmarkError

HERE = Path(__file__).parent
VECTORS = ROOT / "fixtures" / "vectors"
TRADE = {path.stem for path in (ROOT / "server/witnessmark/trade").glob("*.py")} | {"workings"}
AREAS = sorted(path.stem for path in (HERE.parent / "vector_rules").glob("*.py"))
NUMBER = re.compile(r"-?\d+(?:\.\d+)?")
HAIR = 1e-12
"""Of the largest number of a case: what is left of a difference of like numbers is rounding."""

SUM_ONLY = {"pairing.pair", "choosing.choose", "choosing.best", "mixing.choose", "mixing.best"}
"""Of several arrangements with the same sum one is as good as another."""

Given = dict[str, Any]
Call = tuple[str, Given]


def rules() -> dict[str, Callable[[Given], Any]]:
    found: dict[str, Callable[[Given], Any]] = {}
    for area in AREAS:
        found |= importlib.import_module(f"vector_rules.{area}").RULES
    return found


def shared() -> dict[str, list[Given]]:
    """Every rule of the trade with what those of its shared cases are given that give something.

    Of a case with two faults either may be named, so none begins with one.
    """
    found: dict[str, list[Given]] = defaultdict(list)
    for path in sorted(VECTORS.glob("*.json")):
        document = json.loads(path.read_text("utf-8"))
        for group in document["groups"]:
            for test in group["tests"]:
                rule = test.get("rule", group.get("rule", document["rule"]))
                if rule.partition(".")[0] in TRADE and "gives" in test:
                    found[rule].append(test["given"])
    return dict(found)


def strayed_number(number: float, some: random.Random) -> float:
    whole = isinstance(number, int)
    change = some.choice(["near", "near", "near", "far", "zero", "below", "step"])
    made: float = {
        "near": number * some.uniform(0.8, 1.25),
        "far": number * 10 ** some.uniform(-2, 2),
        "zero": 0,
        "below": -number,
        "step": number + some.choice([-1, 1]),
    }[change]
    return int(made) if whole and some.random() < 0.9 else made


def strayed(value: Any, some: random.Random) -> Any:
    """Much the same thing, with a number here or there another one."""
    if isinstance(value, dict):
        return {key: strayed(each, some) for key, each in value.items()}
    if isinstance(value, list):
        made = [strayed(each, some) for each in value]
        if made and some.random() < 0.1:
            made.pop(some.randrange(len(made)))
        return made
    if isinstance(value, bool) or some.random() < 0.6:
        return value
    if isinstance(value, int | float):
        return strayed_number(value, some)
    if isinstance(value, str) and (found := NUMBER.search(value)):
        decimals = len(found[0].partition(".")[2])
        number = strayed_number(float(found[0]), some)
        return f"{value[: found.start()]}{number:.{decimals}f}{value[found.end() :]}"
    return value


def calls(many: int, seed: int) -> Iterator[Call]:
    """So many calls of each rule; a value may also be that of another of its cases."""
    some = random.Random(seed)  # noqa: S311 - a fixed seed, so that a fault comes again
    for rule, listed in shared().items():
        for _ in range(many):
            given = dict(some.choice(listed))
            other = some.choice(listed)
            for key in given.keys() & other.keys():
                if some.random() < 0.2:
                    given[key] = other[key]
            yield rule, strayed(given, some)


def in_python(listed: list[Call]) -> list[Any]:
    known = rules()
    return [_answer(known[rule], given) for rule, given in listed]


def _answer(rule: Callable[[Given], Any], given: Given) -> Any:
    try:
        return json.loads(json.dumps(rule(given)))
    except WitnessmarkError as refused:
        return {"refused": refused.code}
    except Exception as broke:  # noqa: BLE001 - whatever it is, it is told as a fault
        return {"broke": repr(broke)}


def largest(value: Any) -> float:
    if isinstance(value, dict | list):
        inner = value.values() if isinstance(value, dict) else value
        return max(map(largest, inner), default=0.0)
    if isinstance(value, str) and (found := NUMBER.fullmatch(value)):
        return abs(float(found[0]))
    return abs(value) if isinstance(value, int | float) else 0.0


def alike(one: Any, other: Any, hair: float = 0.0) -> bool:
    if isinstance(one, dict) and isinstance(other, dict):
        return one.keys() == other.keys() and all(alike(one[k], other[k], hair) for k in one)
    if isinstance(one, list) and isinstance(other, list):
        pairs = zip(one, other, strict=False)
        return len(one) == len(other) and all(alike(*pair, hair) for pair in pairs)
    if isinstance(one, bool) or isinstance(other, bool):
        return one is other
    if isinstance(one, int | float) and isinstance(other, int | float):
        return math.isclose(one, other, rel_tol=1e-9, abs_tol=hair)
    return bool(one == other)


def _sum_only(rule: str, came: Any) -> Any:
    told = rule in SUM_ONLY and isinstance(came, dict) and "sum_of_deviations_mm" in came
    return came["sum_of_deviations_mm"] if told else came


def differing(listed: list[Call]) -> list[tuple[Call, Any, Any]]:
    """The calls that give, or refuse, something else on one side, or break on either."""
    found = []
    theirs = under_node(HERE / "nearby.mjs", listed, within=3600)
    for call, one, other in zip(listed, in_python(listed), theirs, strict=True):
        broke = any(isinstance(each, dict) and "broke" in each for each in (one, other))
        one, other = (_sum_only(call[0], each) for each in (one, other))  # noqa: PLW2901
        if broke or not alike(one, other, HAIR * max(largest(call[1]), largest(one))):
            found.append((call, one, other))
    return found
