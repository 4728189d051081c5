"""Published orders of tightening, and what must hold of every other."""

from typing import Any

from witnessmark.trade import sequence

Given = dict[str, Any]


def BY_SHAPE(given: Given) -> Given:  # noqa: N802 - the frame's name for it
    columns = given.get("columns", 1)
    count = given.get("fasteners", given.get("rows", 1) * columns)
    order = sequence.order(given["pattern"], count, given.get("rows", 2))
    if given.get("loosen"):
        order = sequence.loosening(order)
    column = [(number - 1) % columns + 1 for number in order]
    away = abs(order[1] - order[0]) if count > 1 else 0
    return {
        "order": order,
        "permutation": sorted(order) == list(range(1, count + 1)),
        "second_steps_away_at_least": min(away, count - away),
        "first_two_columns_are": sorted(set(column[:2])),
        "last_two_columns_are": sorted(set(column[-2:])),
    }


TOPICS: dict[str, Any] = {}
