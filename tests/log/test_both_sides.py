"""Thousands of histories are folded by the phone's code too, and compared byte for byte."""

import json
import random
import subprocess
from pathlib import Path
from typing import Any

from log.histories import history
from tools import node
from witnessmark.log.clean import canonical
from witnessmark.log.digest import as_hex, digest
from witnessmark.log.entry import read
from witnessmark.log.workshop import links, subject

HERE = Path(__file__).parent
HISTORIES = 4000
TEXTS = 2000


def answers(program: str, lines: list[str]) -> list[str]:
    run = subprocess.run(
        [node(), str(HERE / program)],
        input="\n".join(lines),
        capture_output=True,
        check=True,
        encoding="utf-8",
    )
    return run.stdout.split("\n")[:-1]


def test_both_languages_fold_thousands_of_histories_alike() -> None:
    asked, expected = [], []
    for seed in range(HISTORIES):
        about, entries = history(seed)
        random.Random(seed).shuffle(entries)  # noqa: S311
        found = subject(about, entries)  # type: ignore[arg-type]
        asked.append(json.dumps({"about": about, "entries": entries}))
        expected.append(canonical([found, links(found)]))
    assert expected == answers("fold.mjs", asked)


def text_of(dice: random.Random) -> str:
    signs = 'ab"\\/\b\f\n\r\t\x00\x1f\x7f\x80µ°·é\u2028\u2029\ufeff\ufffd\U0001f527'
    return "".join(dice.choices(signs, k=dice.randint(0, 12)))


def value_of(dice: random.Random, depth: int) -> Any:
    sort = dice.randint(0, 6 if depth else 4)
    if sort == 0:
        return dice.choice((None, True, False))
    if sort == 1:
        return dice.randint(-(2**53) + 1, 2**53 - 1)
    if sort <= 4:
        return text_of(dice)
    if sort == 5:
        return [value_of(dice, depth - 1) for _ in range(dice.randint(0, 4))]
    keys = ("a", "B", "10", "9", "", "_", "-", "~", "__proto__", '"', "\x00", "constructor")
    return {key: value_of(dice, depth - 1) for key in dice.sample(keys, dice.randint(0, 6))}


def test_both_languages_write_the_same_text_and_digest() -> None:
    asked, expected = [], []
    for seed in range(TEXTS):
        dice = random.Random(seed)  # noqa: S311
        body = {"odd": value_of(dice, 5)}
        facts = {
            "id": "01c18537-9c5f-7b3a-9e55-2f6f5c1f0a11",
            "heading": "oil-sample",
            "about": "x",
            "device": "01c184ff-0000-7000-8000-000000000002",
            "n": 1,
            "stamp": "01c185379c5f-0003",
            "made": "today",
            "v": 1,
            "body": body,
        }
        asked.append(json.dumps(facts))
        text = read(asked[-1].encode()).text
        expected.append(json.dumps([text, as_hex(digest(text, "01c185379c5f-0004"))]))
    assert [json.loads(line) for line in expected] == [
        json.loads(line) for line in answers("text.mjs", asked)
    ]
