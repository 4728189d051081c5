"""A view never stops on odd data, and says the same in Python and JavaScript, byte for byte."""

import json
import subprocess
from pathlib import Path
from typing import Any

import pytest
from tools import node
from vector_rules import instruments, views
from vector_rules.story import workshop
from views.chaos import THINGS, Chaos
from witnessmark.views.find import find
from witnessmark.views.find_row import row

VIEWS = {**views.VIEWS, **instruments.VIEWS}
HISTORIES = 200
QUERIES = ("pushrod", "push 2", "OLP", "pushrdo", "7K3M Q2RJ", "odd", "", "!")
ASKED: list[tuple[str, dict[str, Any]]] = [
    *(("joint", {"id": id_}) for id_ in ("j1", "j2", "p1", "nowhere")),
    ("joint", {"id": "j1", "run": "r1"}),
    *(("part", {"id": id_}) for id_ in ("p1", "p2", "j1", "nowhere")),
    *(("holder", {"id": id_}) for id_ in ("h1", "h2", "p1")),
    *(("code", {"code": code}) for code in ("7K3MQ2RJ", "2b8n k4ws", "0000001J", "?")),
    ("tonight", {}),
    *(("next_piece", {"holder": id_, "after": "p1"}) for id_ in ("h1", "p1")),
    ("next_piece", {"holder": "h1"}),
    *(("instrument", {"id": id_, "today": "2031-03-07"}) for id_ in ("w1", "p1", "nowhere")),
    ("instruments", {"today": "2031-03-07"}),
    *(("pool", {"id": id_}) for id_ in ("k1", "p1", "nowhere")),
    *(("chosen", {"id": id_}) for id_ in ("p1", "k1", "nowhere")),
]
QUESTIONS = {"asked": ASKED, "things": THINGS, "queries": QUERIES}


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
    return [*asked, rows, *(find(rows, query) for query in QUERIES)]


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
    for history, other in zip(told, theirs, strict=True):
        ours = json.dumps(
            answers(history), sort_keys=True, separators=(",", ":"), ensure_ascii=False
        )
        assert ours == other
