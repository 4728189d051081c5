"""Whatever the order and however often: the same entries give the same workshop."""

import copy
import json
from typing import Any

from hypothesis import given, settings
from hypothesis import strategies as st
from log.histories import history
from witnessmark.log.workshop import links, standing, subject

SEEDS = st.integers(0, 2**32)
MANY = settings(max_examples=1000, deadline=None, derandomize=True, database=None)


def folded(about: str, entries: list[dict[str, Any]]) -> str:
    found = subject(about, entries)  # type: ignore[arg-type]
    return json.dumps([found, links(found)], sort_keys=True)


@MANY
@given(SEEDS, st.randoms(use_true_random=False))
def test_the_order_of_arrival_makes_no_difference(seed: int, dice: Any) -> None:
    about, entries = history(seed)
    shuffled = list(entries)
    dice.shuffle(shuffled)
    assert folded(about, entries) == folded(about, shuffled)


@MANY
@given(SEEDS, st.randoms(use_true_random=False))
def test_entries_that_come_twice_count_once(seed: int, dice: Any) -> None:
    about, entries = history(seed)
    again = [*entries, *dice.choices(entries, k=len(entries))]
    dice.shuffle(again)
    assert folded(about, entries) == folded(about, copy.deepcopy(again))


@MANY
@given(SEEDS)
def test_the_fold_changes_none_of_its_entries(seed: int) -> None:
    about, entries = history(seed)
    before = copy.deepcopy(entries)
    folded(about, entries)
    assert before == entries


@MANY
@given(SEEDS)
def test_every_entry_is_somewhere_in_its_subject(seed: int) -> None:
    about, entries = history(seed)
    found = subject(about, entries)  # type: ignore[arg-type]
    text = json.dumps(found)
    struck = {strike["target"] for strike in found["strikes"] if strike["counts"]}
    for line in entries:
        entry = line["entry"]
        said = entry["body"].get("fields")
        if entry["id"] in struck or said == {}:
            continue
        assert f'"{entry["id"]}"' in text


@MANY
@given(SEEDS)
def test_what_stands_is_what_no_unstruck_fact_names(seed: int) -> None:
    about, entries = history(seed)
    found = subject(about, entries)  # type: ignore[arg-type]
    for heading in ("place", "verdict", "label"):
        facts = [fact for fact in found["facts"] if fact["heading"] == heading]
        named = {earlier for fact in facts if not fact["struck"] for earlier in fact["after"]}
        expected = [f["id"] for f in facts if not f["struck"] and f["id"] not in named]
        assert expected == [fact["id"] for fact in standing(found, heading)]


@MANY
@given(SEEDS)
def test_the_last_claim_of_each_field_wins(seed: int) -> None:
    about, entries = history(seed)
    found = subject(about, entries)  # type: ignore[arg-type]
    for field in found["fields"].values():
        claims = [field, *field["lost"]]
        keys = [(claim["order"], claim["device"], claim["entry"]) for claim in claims]
        assert sorted(keys, reverse=True) == keys


@MANY
@given(SEEDS)
def test_a_strike_of_a_strike_brings_nothing_back(seed: int) -> None:
    about, entries = history(seed)
    strikes = [line for line in entries if line["entry"]["heading"] == "strike-out"]
    more = [
        {
            "entry": {**line["entry"], "id": f"s{i}", "about": line["entry"]["id"]},
            "order": "00000000000d-0000",
        }
        for i, line in enumerate(strikes)
    ]
    before = subject(about, entries)  # type: ignore[arg-type]
    after = subject(about, [*entries, *more])  # type: ignore[arg-type]
    assert (before["facts"], before["fields"]) == (after["facts"], after["fields"])


@MANY
@given(SEEDS, st.integers(0, 24))
def test_a_second_strike_changes_nothing(seed: int, which: int) -> None:
    about, entries = history(seed)
    target = entries[which % len(entries)]["entry"]
    strike = {**target, "heading": "strike-out", "about": target["id"], "v": 1}
    strike["body"] = {"reason": "slip"}
    one = {"entry": {**strike, "id": "s1"}, "order": "00000000000d-0000"}
    two = {"entry": {**strike, "id": "s2"}, "order": "00000000000e-0000"}
    once = subject(about, [*entries, one])  # type: ignore[arg-type]
    twice = subject(about, [two, *entries, one])  # type: ignore[arg-type]
    assert (once["facts"], once["fields"], once["hidden"]) == (
        twice["facts"],
        twice["fields"],
        twice["hidden"],
    )
