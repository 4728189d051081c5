"""Whatever a working is given, it tells a result or one refusal, the same on both sides."""

import json
import subprocess
from collections.abc import Iterator
from typing import Any

from tools import ROOT, node
from witnessmark.errors import WitnessmarkError
from witnessmark.trade.workings.registry import WORKINGS, work_out

GOOD: dict[str, dict[str, Any]] = {
    "convert": {"amount": "45 N·m"},
    "adapter": {"wanted": "60 N·m", "wrench-length": "400 mm", "adapter-length": "50 mm"},
    "preload": {"thread": "M10", "class": "8.8", "torque": "80 N·m"},
    "stretch": {"load": "30 kN", "length": ["30 mm"], "diameter": ["10 mm"]},
    "clearance": {"bore": "57.055 mm", "shaft": "57 mm"},
    "ring-gap": {"gap": "0.35 mm", "bore": "86 mm"},
    "ratio": {"bore": "86 mm", "stroke": "86 mm", "chamber": "48 cc",
              "gasket-thickness": "1.2 mm", "piston-below-deck": "0.3 mm"},
    "set": {"choose": "2", "size": ["1 mm", "2 mm", "3 mm"]},
    "bring": {"needed": "8"},
}  # fmt: skip
ODD: list[Any] = [
    None, True, False, 0, -1, 10**30, 1.5, "", "x", "9" * 5000, "\ud800", "١٢ mm", "1,234 mm",
    "NaN", "Infinity", "1e400 mm", "½", "-", "--5", "5\x00mm", "constructor", "__proto__", [], [1],
    [None], [[]], ["5"] * 300, "5 " * 300, [{"value": "x"}], {}, {"value": None},
    {"value": "5", "unit": 3},
    {"value": "5", "unit": "\ud800"}, {"value": "5", "unit": []}, {"value": [], "unit": "mm"},
    {"value": "5", "unit": "constructor"}, {"value": True, "unit": "mm"},
]  # fmt: skip
LONGEST = 2000
ANSWERED = """
const { workOut } = await import(process.argv[1] + '/pwa/trade/workings/registry.js');
const told = ([name, given]) => {
  try {
    workOut(name, given);
    return 'told';
  } catch (refused) {
    return refused.code && refused.says && refused.next ? refused.code : String(refused);
  }
};
let text = '';
for await (const piece of process.stdin) text += piece;
console.log(JSON.stringify(JSON.parse(text).map(told)));
"""


def cases() -> Iterator[tuple[Any, Any]]:
    for name, working in WORKINGS.items():
        yield from ((name, GOOD[name] | {ask.name: odd}) for ask in working.asks for odd in ODD)
        yield from ((name, odd) for odd in ODD)
        yield name, GOOD[name] | {"\ud800": 1}
    yield from ((odd, {}) for odd in ODD)


def answer(name: Any, given: Any) -> str:
    try:
        json.dumps(work_out(name, given)).encode()
    except WitnessmarkError as refused:
        told = json.dumps(refused.answer(), ensure_ascii=False).encode()
        return refused.code if len(told) < LONGEST else "too long to read"
    return "told"


def test_a_working_tells_or_refuses_whatever_it_is_given_and_both_sides_alike() -> None:
    listed = list(cases())
    ours = [answer(*each) for each in listed]
    done = subprocess.run(
        [node(), "--input-type=module", "-e", ANSWERED, ROOT.as_uri()],
        input=json.dumps(listed), capture_output=True, text=True, check=True, timeout=120,
    )  # fmt: skip
    theirs = json.loads(done.stdout)
    pairs = zip(listed, ours, theirs, strict=True)
    assert [each for each in pairs if each[1] != each[2]] == []
