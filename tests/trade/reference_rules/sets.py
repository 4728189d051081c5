"""Published values of sets: best n of m on one and two measures, equal assembly weights."""

from typing import Any

from trade.reference_amounts import WORDS, ending, named, told
from witnessmark.trade import assemblies, sets, units

Given = dict[str, Any]


def chosen(given: Given, made: Given) -> Given:
    keys = [key for key, value in given.items() if isinstance(value, list) and ending(key)]
    names = [key.removesuffix(str(ending(key))) for key in keys]
    weights = given.get("weights", [1] * len(names))
    scales = given.get("scales", [None] * len(names))
    measures = [
        sets.Measure(name, weight, None if scale is None else units.quantity(scale, unit), *limits)
        for name, weight, scale, unit, limits in zip(
            names, weights, scales, map(unit_of, keys), each_limits(made, names), strict=True
        )
    ]
    rows = zip(*(made[name] for name in names), strict=True)
    pieces = [sets.Piece(str(place), tuple(row)) for place, row in enumerate(rows, 1)]
    found = sets.best(pieces, measures, given["choose"])
    gives: Given = {"cost": found.cost, "chosen": [int(each) for each in found.chosen]}
    for name, spread in zip(names, found.spreads, strict=True):
        gives |= told("spread", spread) | told(f"{name}_spread", spread)
    return gives


def each_limits(made: Given, names: list[str]) -> list[tuple[Any, Any]]:
    """Limits of one measure have no name before them; of several each its own."""
    if len(names) == 1:
        return [(made.get("lower"), made.get("upper"))]
    return [(made.get(f"{name}_lower"), made.get(f"{name}_upper")) for name in names]


def unit_of(key: str) -> str:
    return WORDS[str(ending(key))]


def weighed(given: Given, made: Given) -> Given:
    columns = [value for value in made.values() if isinstance(value, list)]
    return told("spread", assemblies.balance(columns).spread)


def BY_SHAPE(given: Given) -> Given:  # noqa: N802 - the frame's name for it
    run = chosen if "choose" in given else weighed
    return run(given, named(given))


TOPICS: dict[str, Any] = {}
