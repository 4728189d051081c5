"""What holds for a joint in any history, however odd."""

import json
import random
from typing import Any

import pytest
from vector_rules.story import BASES, workshop
from views.chaos import Chaos
from witnessmark.views.joint import joint

SEEDS = range(40)
STATES = {"no-value", "not-begun", "running", "not-whole", "done"}
MARKS = {"todo", "next", "done", "out", "flagged", "doubt", "void"}
COUNTS = ("done", "flagged")


def told(seed: int) -> dict[str, Any]:
    return joint(workshop({"facts": Chaos(seed).history()}), "j1")


def evening(seed: int) -> list[dict[str, Any]]:
    """Pulls of both devices on the four bolts, as a tired pair of hands makes them."""
    made = random.Random(seed)  # noqa: S311 - no secret hangs on it
    facts: list[dict[str, Any]] = []
    for n in range(made.randint(0, 40)):
        pull = {"pull": [made.choice(("f1", "f2", "f3", "f4")), made.choice(("p0", "p1", "p2"))]}
        fact: dict[str, Any] = {**pull, "id": f"x{n}", "device": made.choice("ab")}
        if n and made.random() < 0.2:
            of = f"x{made.randrange(n)}"
            fact = {"heading": "strike-out", "about": of, "body": {"reason": "slip"}, "id": f"x{n}"}
        facts.append({**fact, "at": 600 + n * made.choice((0.4, 2, 30))})
    return facts


def floats(value: Any) -> bool:
    if isinstance(value, dict | list):
        inner = value.values() if isinstance(value, dict) else value
        return any(floats(each) for each in inner)
    return isinstance(value, float)


@pytest.mark.parametrize("seed", SEEDS)
def test_a_joint_is_always_told_in_the_same_words_and_whole_numbers(seed: int) -> None:
    view = told(seed)
    assert view["state"] in STATES
    assert {each["mark"] for each in view["fasteners"]} <= MARKS
    assert not floats(view)
    json.dumps(view, allow_nan=False)


@pytest.mark.parametrize("seed", SEEDS)
def test_done_is_counted_from_the_marks(seed: int) -> None:
    for each in told(seed)["passes"]:
        counted = [mark for mark in each["marks"].values() if mark in COUNTS]
        assert each["done"] == len(counted)
        assert each["whole"] == (each["done"] == each["of"] > 0)


@pytest.mark.parametrize("seed", SEEDS)
def test_what_may_have_been_turned_is_never_next(seed: int) -> None:
    view = told(seed)
    coming = [each["fastener"] for each in (view["next"], view["after_next"]) if each]
    assert not set(coming) & set(view["turned"])
    assert (view["next"] is not None) == (view["state"] == "running")


@pytest.mark.parametrize("seed", SEEDS)
def test_one_fastener_at_most_is_next_and_it_is_open(seed: int) -> None:
    view = joint(workshop({"base": "four bolts", "facts": evening(seed)}), "j1")
    marked = [each["id"] for each in view["fasteners"] if each["mark"] == "next"]
    assert marked == ([view["next"]["fastener"]] if view["next"] else [])
    if view["next"]:
        assert view["next"]["number"] in view["open"]


@pytest.mark.parametrize("seed", SEEDS)
def test_a_joint_is_done_only_with_every_last_pull_good(seed: int) -> None:
    view = joint(workshop({"base": "four bolts", "facts": evening(seed)}), "j1")
    last = view["passes"][-1]
    assert (view["state"] == "done") == (last["whole"] and not view["open"])


@pytest.mark.parametrize("seed", range(40))
def test_following_what_is_next_always_ends_with_done(seed: int) -> None:
    facts = evening(seed)
    for n in range(60):
        view = joint(workshop({"base": "four bolts", "facts": facts}), "j1")
        if view["next"] is None:
            break
        pull = [view["next"]["fastener"], view["pass"]]
        facts = [*facts, {"pull": pull, "id": f"y{n}", "at": 9000 + 60 * n}]
    assert view["state"] == "done"


def test_striking_every_pull_gives_the_beginning_back() -> None:
    facts = [{"pull": [each, "p0"], "id": each} for each in ("f1", "f2", "f3")]
    strikes = [
        {"heading": "strike-out", "about": each["id"], "body": {"reason": "wrong joint"}}
        for each in facts
    ]
    view = joint(workshop({"base": "four bolts", "facts": [*facts, *strikes]}), "j1")
    assert view["passes"][0]["done"] == 0
    assert [each["mark"] for each in view["recent"]] == ["out"] * 3
    assert view["next"]["fastener"] == "f4"


def test_the_bases_of_the_shared_cases_are_described_whole() -> None:
    for name in ("four bolts", "two bolts by angle"):
        view = joint(workshop({"base": name}), BASES[name]["joint"])
        assert view["state"] == "running"
        assert not view["held"]
