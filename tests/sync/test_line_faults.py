"""The line breaks in every way it can, and nothing is lost, doubled or stuck."""

from pathlib import Path

import pytest
from sync.conftest import Phone
from sync.evening import all_equal, come_home, keep, plant
from sync.proxy import Line
from sync.served import Home

FAULTS = [
    ["answer lost"],
    ["request cut"],
    ["answer cut"],
    ["doubled"],
    ["late", "after the late one"],
    ["reset", "trouble", "stranger", "wall"],
    ["answer lost", "answer cut", "doubled", "late", "request cut", "after the late one"],
]


@pytest.mark.parametrize("plan", FAULTS, ids=[", ".join(plan) for plan in FAULTS])
def test_entries_come_home_once_through(
    plan: list[str], home: Home, line: Line, phone: Phone, tmp_path: Path
) -> None:
    one, other = phone(), phone(name="tablet")
    come_home(one)
    line.plan = list(plan)
    kept = keep(one, 25, "a") + keep(other, 5, "b")
    for page in (one, other) * 4:
        page.evaluate("() => window.store.syncNow()")
    assert line.done == plan
    all_equal(home, tmp_path, [one, other], kept)


def test_a_wall_that_answers_everything_turns_no_entry_into_a_refused_one(
    home: Home, line: Line, phone: Phone, tmp_path: Path
) -> None:
    page = phone()
    come_home(page)
    line.plan = ["wall"] * 30
    kept = keep(page, 3)
    for _ in range(5):
        page.evaluate("() => window.store.syncNow()")
    state = page.evaluate("() => window.state()")
    assert (state["waiting"], state["refused"]) == (3, 0)
    assert state["trouble"] == "stranger"
    line.plan = []
    all_equal(home, tmp_path, [page], kept)


@pytest.mark.parametrize("place", [0, 12, 24])
def test_one_entry_the_computer_will_not_read_holds_up_no_other(
    place: int, home: Home, phone: Phone, tmp_path: Path
) -> None:
    page = phone()
    kept = keep(page, place, "a")
    plant(page, "{ body: { run: 'r' } }")
    kept += keep(page, 24 - place, "b")
    come_home(page)
    rows = page.evaluate("() => window.store.refused()")
    assert [(row["code"], row["entry"]["body"]) for row in rows] == [
        ("field-missing", {"run": "r"})
    ]
    repaired = page.evaluate(
        "id => window.store.repair(id, window.pull('f1', {body: {run: 'r'}}))", rows[0]["id"]
    )
    assert repaired[0]["repairs"] == rows[0]["id"]
    all_equal(home, tmp_path, [page], [*kept, repaired[0]["id"]])


def test_an_entry_larger_than_the_computer_takes_is_refused_alone(
    home: Home, phone: Phone, tmp_path: Path
) -> None:
    page = phone()
    kept = keep(page, 10)
    plant(page, "{ heading: 'note', body: { text: 'ä'.repeat(5_000_000) } }")
    come_home(page)
    [row] = page.evaluate("() => window.store.refused()")
    assert row["code"] in ("too-much", "entry-too-large")
    page.evaluate("id => window.store.giveUp(id, 'far too long')", row["id"])
    assert page.evaluate("() => window.store.refused({given: true})")[0]["given"]["reason"]
    all_equal(home, tmp_path, [page], kept)
