"""Cases near the shared ones give the same, or are refused alike, in both languages."""

from trade import nearby

MANY = 6
"""Calls of each rule; more are tried by hand with `differing(list(calls(500, seed=1)))`."""


def test_both_sides_give_or_refuse_the_same_near_every_shared_case() -> None:
    listed = list(nearby.calls(MANY, seed=20))
    assert nearby.differing(listed) == []


def test_most_of_what_is_tried_gives_something() -> None:
    listed = list(nearby.calls(MANY, seed=20))
    given = [came for came in nearby.in_python(listed) if not refused(came)]
    assert len(given) > len(listed) / 2
    assert {rule for rule, _ in listed} == nearby.shared().keys()


def refused(came: object) -> bool:
    return isinstance(came, dict) and "refused" in came
