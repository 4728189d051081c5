"""Workings ask and tell the same on both sides, and their names can be trusted."""

import json
import subprocess
from pathlib import Path
from typing import Any

import pytest
from tools import node
from witnessmark.trade.lubricant import state_of
from witnessmark.trade.workings.cautions import SAYS
from witnessmark.trade.workings.errors import WorkingDoubled
from witnessmark.trade.workings.given import Given
from witnessmark.trade.workings.lines import decimals_for
from witnessmark.trade.workings.registry import WORKINGS, collected
from witnessmark.trade.workings.working import Ask, Result, Working

ROOT = Path(__file__).resolve().parent.parent.parent
LISTED = """
globalThis.navigator ??= { languages: ['en'] };
const { WORKINGS } = await import(process.argv[1] + '/pwa/trade/workings/registry.js');
const { SAYS } = await import(process.argv[1] + '/pwa/trade/workings/cautions.js');
const listed = [...WORKINGS.values()].map(({ work, blames, ...rest }) => rest);
const texts = {};
for (const name of ['run', 'workings', 'workings_bolts', 'workings_engine'])
  Object.assign(texts, (await import(`${process.argv[1]}/pwa/app/texts/${name}.js`)).texts);
console.log(JSON.stringify({ listed, says: SAYS, texts }));
"""
VECTORS = ROOT / "fixtures" / "vectors"


def nothing(_: Given) -> Result:
    return Result(())


def made(*asks: Ask, name: str = "one") -> Working:
    return Working(name, "One.", "a = b", "definition", asks, nothing)


@pytest.fixture(scope="module")
def theirs() -> dict[str, Any]:
    done = subprocess.run(
        [node(), "--input-type=module", "-e", LISTED, ROOT.as_uri()],
        capture_output=True, text=True, check=True, timeout=60,
    )  # fmt: skip
    told: dict[str, Any] = json.loads(done.stdout)
    return told


def test_both_sides_ask_the_same(theirs: dict[str, Any]) -> None:
    ours = [each.told() for each in WORKINGS.values()]
    for each in ours:
        del each["says"]
    assert ours == theirs["listed"]


def test_both_sides_caution_in_the_same_words(theirs: dict[str, Any]) -> None:
    assert {code: list(said) for code, said in SAYS.items()} == theirs["says"]
    assert {word for word, _ in SAYS.values()} <= {"danger", "warning", "caution", "notice"}


def told_lines() -> set[tuple[str, str]]:
    """Every line that a shared case tells: the working and the name of the line."""
    return {
        (test["given"]["working"], line["name"])
        for path in VECTORS.glob("workings_*.json")
        for group in json.loads(path.read_text("utf-8"))["groups"]
        for test in group["tests"]
        for line in test.get("gives", {"lines": []})["lines"]
    }


def test_the_page_has_words_for_all_that_is_asked_and_told(theirs: dict[str, Any]) -> None:
    texts = theirs["texts"]
    said = {each.name: each.says for each in WORKINGS.values()}
    assert {name: texts.get(f"work.{name}.says") for name in said} == said
    wanted = {("ask", name, ask.name) for name in said for ask in WORKINGS[name].asks}
    wanted |= {("line", name, line) for name, line in told_lines() if name != "convert"}
    choices = {
        ("choice", ask.name, word)
        for each in WORKINGS.values()
        for ask in each.asks
        if ask.quantity == "choice"
        for word in ask.choices
    }
    missing = [
        (kind, where, name)
        for kind, where, name in wanted | choices
        if not {f"{kind}.{where}.{name}", f"{kind}.{name}"} & texts.keys()
        and f"lubricant.{state_of(name)}" not in texts
    ]
    assert missing == []


def test_every_working_has_cases_and_every_caution_is_given_in_one() -> None:
    cases = "".join(path.read_text("utf-8") for path in sorted(VECTORS.glob("workings_*.json")))
    assert {path.stem for path in VECTORS.glob("workings_*.json")} == {
        f"workings_{name.replace('-', '_')}" for name in WORKINGS
    }
    assert [code for code in SAYS if f'"code": "{code}"' not in cases] == []


def test_a_name_stands_once() -> None:
    with pytest.raises(WorkingDoubled):
        collected([made(), made()])


@pytest.mark.parametrize(
    "asks",
    [
        (Ask("a", "number"), Ask("a", "number")),
        (Ask("Bad_Name", "number"),),
        (Ask("a", "luck"),),
        (Ask("a", "torque", unit="mm"),),
        (Ask("a", "choice"),),
        (Ask("a", "any", follows="b"),),
    ],
)
def test_an_ask_that_cannot_be_asked_is_found_at_the_start(asks: tuple[Ask, ...]) -> None:
    with pytest.raises(WorkingDoubled):
        collected([made(*asks)])


@pytest.mark.parametrize(
    ("value", "figures", "decimals"),
    [(0, 3, 2), (5, 3, 2), (47.5, 3, 1), (100, 3, 0), (1234, 3, 0), (0.1, 3, 3), (0.0499, 3, 4),
     (-0.05, 2, 3), (9.999, 3, 2)],
)  # fmt: skip
def test_a_number_is_shown_with_so_many_figures(value: float, figures: int, decimals: int) -> None:
    assert decimals == decimals_for(value, figures)
