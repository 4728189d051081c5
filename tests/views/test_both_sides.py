"""A view never stops on odd data, and says the same in Python and JavaScript, byte for byte."""

import json
import subprocess
from pathlib import Path
from typing import Any

from tools import node
from vector_rules.story import workshop
from vector_rules.views import VIEWS
from views.chaos import THINGS, Chaos
from witnessmark.views.find import find, row

HISTORIES = 300
QUERIES = ("pushrod", "push 2", "OLP", "pushrdo", "7K3M Q2RJ", "odd", "", "!")
ASKED: list[tuple[str, dict[str, Any]]] = [
    *(("joint", {"id": id_}) for id_ in ("j1", "j2", "p1", "nowhere")),
    ("joint", {"id": "j1", "run": "r1"}),
    *(("part", {"id": id_}) for id_ in ("p1", "p2", "j1", "nowhere")),
    *(("holder", {"id": id_}) for id_ in ("h1", "h2", "p1")),
    *(("code", {"code": code}) for code in ("7K3MQ2RJ", "2b8n k4ws", "0000001J", "?")),
    ("tonight", {}),
    *(
        ("next_piece", {"holder": id_, "after": after})
        for id_ in ("h1", "p1")
        for after in (None, "p1")
    ),
]


def histories() -> list[dict[str, Any]]:
    questions = {"asked": ASKED, "things": THINGS, "queries": QUERIES}
    return [{"facts": Chaos(seed).history(), "questions": questions} for seed in range(HISTORIES)]


def answers(facts: list[dict[str, Any]]) -> list[Any]:
    told = workshop({"facts": facts})
    rows = [found for id_ in THINGS if (found := row(told, id_))]
    asked = [VIEWS[name](told, given) for name, given in ASKED]
    return [*asked, rows, *(find(rows, query) for query in QUERIES)]


def test_odd_histories_are_answered_alike_in_both_languages() -> None:
    told = histories()
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
            answers(history["facts"]), sort_keys=True, separators=(",", ":"), ensure_ascii=False
        )
        assert ours == other
