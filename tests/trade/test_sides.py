"""Texts and numbers nobody thought of are read, refused and judged alike on both sides."""

import json
import math
import random
from pathlib import Path
from typing import Any

from tools import under_node
from vector_rules.bolt_torque import RULES as TORQUE
from vector_rules.bolts import RULES as BOLTS
from witnessmark.errors import WitnessmarkError
from witnessmark.trade.units import TORQUE_WORDS, UNIT_WORDS

HERE = Path(__file__).parent
RULES = BOLTS | TORQUE
UNITS = ["Nm", " N·m", " ft-lb", " lb", " mm", '"', "'", " in", " thou", " psi", " °C", " cc", ""]
BOLT_SIZES = ["M6", "M8", "M10x1.25", "M24", "7/16-20", "1/4-20", "1-8", "#10-32"]
Call = tuple[str, dict[str, Any]]


def amounts(some: random.Random) -> Call:
    number = "".join(some.choices("0123456789.,/ -'½", k=some.randint(1, 7)))
    typed: dict[str, Any] = {
        "typed": number + some.choice(UNITS),
        "wanted": some.choice(["torque", "length", "pressure", "temperature", "volume"]),
    }
    style = some.choice([None, None, ".", ",", "either"])
    return "typed.read", typed | ({"decimal_sign": style} if style else {})


def threads(some: random.Random) -> Call:
    middle = "".join(some.choices("0123456789./- x×½,", k=some.randint(1, 8)))
    behind = some.choice(["", " UNC", " UNF", "-2A", " fine", " coarse", " x 20"])
    return "thread_text.parse", {"designation": some.choice(["M", "m", "", "#"]) + middle + behind}


def torques(some: random.Random) -> Call:
    torque = {"value": f"{10 ** some.uniform(-1, 3.5):.2f}", "unit": some.choice(TORQUE_WORDS)}
    return "plausibility.plausibility", {
        "torque": torque,
        "designation": some.choice(BOLT_SIZES),
        "property_class": some.choice(["8.8", "10.9", "SAE 5", "8", "12.9", "4.6"]),
        "state": some.choice([None, "dry", "oiled", "moly", "zinc plated", "sealant"]),
        "value_for": some.choice([None, "dry", "oiled", "moly"]),
        "then_angle": some.random() < 0.3,
    }


def conversions(some: random.Random) -> Call:
    words = list(UNIT_WORDS[some.choice(list(UNIT_WORDS))])
    value = "".join(some.choices("0123456789.", k=some.randint(1, 6)))
    return "units.shown", {
        "measured": {"value": value, "unit": some.choice(words)},
        "to": some.choice(words),
    }


def in_python(rule: str, given: dict[str, Any]) -> Any:
    try:
        return json.loads(json.dumps(RULES[rule](given)))
    except WitnessmarkError as refused:
        return {"refused": refused.code, "says": refused.sentence}


def alike(one: Any, other: Any) -> bool:
    if isinstance(one, dict) and isinstance(other, dict):
        return one.keys() == other.keys() and all(alike(one[key], other[key]) for key in one)
    if isinstance(one, list) and isinstance(other, list):
        return len(one) == len(other) and all(map(alike, one, other))
    if isinstance(one, float | int) and isinstance(other, float | int):
        return math.isclose(one, other, rel_tol=1e-9)
    return bool(one == other)


def test_both_sides_read_refuse_and_judge_alike() -> None:
    some = random.Random(20)  # noqa: S311 - a fixed seed, so that a fault comes again
    makers = (amounts, threads, torques, conversions)
    calls = [maker(some) for maker in makers for _ in range(300)]
    came = under_node(HERE / "side_calls.mjs", calls, within=60)
    pairs = [(call, in_python(*call), other) for call, other in zip(calls, came, strict=True)]
    assert [pair for pair in pairs if not alike(*pair[1:])] == []
    read = [one for _, one, _ in pairs if not (isinstance(one, dict) and "refused" in one)]
    assert len(read) > len(calls) / 3
