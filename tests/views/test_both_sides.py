"""A view never stops on odd data, and says the same in Python and JavaScript, byte for byte."""

import json
import math
import subprocess
from pathlib import Path
from typing import Any

import pytest
from tools import node
from vector_rules import history, instruments, views
from vector_rules.story import workshop
from views.chaos import THINGS, Chaos
from witnessmark.views.find import find
from witnessmark.views.find_row import row
from witnessmark.views.measured import measured
from witnessmark.views.pictures import examples, pictures
from witnessmark.views.study import study

VIEWS = {
    **views.VIEWS,
    **instruments.VIEWS,
    **history.VIEWS,
    "measured": lambda w, g: measured(w, g["id"]),
    "study": lambda w, g: study(w, g["id"]),
    "pictures": lambda w, g: pictures(w, g["id"]),
    "pictures.examples": lambda w, g: examples(w.subject(g["id"])),
}
HISTORIES = 200
TODAY = "2031-03-07"
QUERIES = ("pushrod", "push 2", "OLP", "pushrdo", "7K3M Q2RJ", "odd", "", "!")
ASKED: list[tuple[str, dict[str, Any]]] = [
    *(("joint", {"id": id_}) for id_ in ("j1", "j2", "p1", "nowhere")),
    ("joint", {"id": "j1", "run": "r1"}),
    *(("part", {"id": id_}) for id_ in ("p1", "p2", "j1", "nowhere")),
    *(("holder", {"id": id_}) for id_ in ("h1", "h2", "p1")),
    *(("code", {"code": code}) for code in ("7K3MQ2RJ", "2b8n k4ws", "0000001J", "?")),
    ("tonight", {"today": TODAY}),
    *(("next_piece", {"holder": id_, "after": "p1"}) for id_ in ("h1", "p1")),
    ("next_piece", {"holder": "h1"}),
    *(("instrument", {"id": id_, "today": TODAY}) for id_ in ("w1", "i1", "p1", "nowhere")),
    ("instruments", {"today": TODAY}),
    ("away", {"today": TODAY}),
    *(("away.out", {"id": id_, "today": TODAY}) for id_ in ("p1", "nowhere")),
    *(("counted", {"id": id_}) for id_ in ("p1", "p2", "nowhere")),
    *(("donor", {"id": id_}) for id_ in ("b1", "p1")),
    *(("own_place", {"id": id_}) for id_ in ("p1", "p2")),
    *(("pictures", {"id": id_}) for id_ in ("p1", "j1", "nowhere")),
    *(("pictures.examples", {"id": id_}) for id_ in ("k1", "p1")),
]
FIGURES: list[tuple[str, dict[str, Any]]] = [
    *(("pool", {"id": id_}) for id_ in ("k1", "p1", "nowhere")),
    *(("chosen", {"id": id_}) for id_ in ("set1", "p1", "nowhere")),
    ("shelf", {}),
    *(("measured", {"id": id_}) for id_ in ("p1", "p2", "k1", "nowhere")),
    *(("history.of_part", {"id": id_}) for id_ in ("p1", "p2", "j1", "nowhere")),
    *(("history.of_kind", {"id": id_}) for id_ in ("k1", "p1", "nowhere")),
    ("history.of_kind", {"id": "k1", "most": 1}),
    *(("history.of_donor", {"id": id_}) for id_ in ("b1", "p1", "nowhere")),
    *(("study", {"id": id_}) for id_ in ("s1", "p1", "nowhere")),
]
"""Answers with computed figures: they may differ in the last of nine digits."""
QUESTIONS = {"asked": ASKED, "things": THINGS, "queries": QUERIES, "figures": FIGURES}


def as_they_come(seed: int) -> dict[str, Any]:
    return {"facts": Chaos(seed).history(), "odd": [], "questions": QUESTIONS}


def with_odd_values(seed: int) -> dict[str, Any]:
    """As if the check of shapes had let things through that it never does."""
    chaos = Chaos(seed)
    facts = chaos.history()
    odd = chaos.odd(workshop({"facts": facts}).subjects)
    return {"facts": facts, "odd": odd, "questions": QUESTIONS}


def answers(told: dict[str, Any]) -> list[Any]:
    here = workshop(json.loads(json.dumps(told)))
    rows = [found for id_ in THINGS if (found := row(here, id_))]
    asked = [VIEWS[name](here, given) for name, given in ASKED]
    figures = [VIEWS[name](here, given) for name, given in FIGURES]
    return [*asked, rows, *(find(rows, query) for query in QUERIES), figures]


def same(mine: Any, other: Any) -> bool:
    """The same but for the last digits of what was computed."""
    if isinstance(mine, dict) and isinstance(other, dict):
        return mine.keys() == other.keys() and all(same(mine[key], other[key]) for key in mine)
    if isinstance(mine, list) and isinstance(other, list):
        return len(mine) == len(other) and all(map(same, mine, other))
    number = isinstance(mine, int | float) and not isinstance(mine, bool)
    if number and isinstance(other, int | float) and not isinstance(other, bool):
        return math.isclose(mine, other, rel_tol=1e-9, abs_tol=1e-12)
    return type(mine) is type(other) and bool(mine == other)


@pytest.mark.parametrize("make", [as_they_come, with_odd_values])
def test_any_history_is_answered_alike_in_both_languages(make: Any) -> None:
    told = [make(seed) for seed in range(HISTORIES)]
    lines = "".join(json.dumps(each, ensure_ascii=False) + "\n" for each in told)
    done = subprocess.run(
        [node(), str(Path(__file__).with_name("answers.mjs"))],
        input=lines, capture_output=True, text=True, timeout=300, check=False,
    )  # fmt: skip
    assert done.returncode == 0, done.stderr[-3000:]
    theirs = done.stdout.splitlines()
    assert len(theirs) == len(told)
    for told_one, line in zip(told, theirs, strict=True):
        *exact, figures = json.loads(json.dumps(answers(told_one)))
        *others, other_figures = json.loads(line)
        assert json.dumps(exact, sort_keys=True) == json.dumps(others, sort_keys=True)
        for asked, mine, other in zip(FIGURES, figures, other_figures, strict=True):
            assert same(mine, other), (asked, mine, other)
