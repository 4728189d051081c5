"""What a part measures: for each measure of its kind every reading, and what the latest tell."""

from __future__ import annotations

from typing import Any

from witnessmark.log.values import Fact, Subject
from witnessmark.log.workshop import Workshop, value
from witnessmark.views import plain
from witnessmark.views.joint_lines import made_by
from witnessmark.views.reading import spot_of
from witnessmark.views.told import size_told, told

Measure = dict[str, Any]

READ = ("inspection", "returned")
"""What may bring readings."""

_TEXTS = ("id", "name", "quantity", "unit", "instrument", "least", "most", "source")
_LISTS = ("positions", "directions")
_NOW = ("value", "size", "decimals", "uncertainty", "from", "verdict", "out_of_round", "taper")


def measures_of(kind: Subject | None) -> list[Measure]:
    """The measures of a kind."""
    lines = [
        {
            **{name: plain.text(each.get(name)) for name in _TEXTS},
            **{name: plain.texts(each.get(name)) for name in _LISTS},
        }
        for each in plain.mappings(value(kind, "measures"))
    ]
    return [line for line in lines if line["id"] is not None]


def measured(workshop: Workshop, id_: str) -> list[dict[str, Any]]:
    """Every measure of a part's kind, with its readings, newest round first.

    A round is what one inspection, or one coming back, read; the latest that was not struck out
    and tells a size counts.
    """
    part = workshop.subject(id_)
    kind = workshop.subject(plain.text(value(part, "kind")) or "")
    return [_line(workshop, part, measure) for measure in measures_of(kind)]


def _line(workshop: Workshop, part: Subject | None, measure: Measure) -> dict[str, Any]:
    rounds = _rounds(workshop, part, measure)
    counts = (each for each in rounds if not each["struck"] and each["size"] is not None)
    nothing = {**told(measure, [], lambda _: None), "inspection": None, "order": None}
    now = next(counts, nothing)
    return {
        **measure,
        "unit": measure["unit"] or now["unit"],
        "inspection": now["inspection"],
        "order": now["order"],
        **{name: now[name] for name in _NOW},
        "readings": [reading for each in rounds for reading in each["readings"]],
        "rounds": rounds,
    }


def _rounds(workshop: Workshop, part: Subject | None, measure: Measure) -> list[dict[str, Any]]:
    """What each fact that read a measure told, newest first; struck ones, too."""
    rounds = []
    for fact in _newest_first(part):
        readings = _readings(fact, measure)
        if not readings:
            continue
        by = {
            "inspection": fact["id"],
            "heading": fact["heading"],
            "order": fact["order"],
            **made_by(fact),
        }
        lines = [{**_reading(each), **by} for each in readings]
        rounds.append({**by, **told(measure, readings, workshop.subject), "readings": lines})
    return rounds


def _reading(reading: dict[str, Any]) -> dict[str, Any]:
    position, direction = spot_of(reading)
    return {
        "position": position,
        "direction": direction,
        **(plain.measured(reading.get("value")) or {"value": None, "unit": None}),
        "instrument": plain.text(reading.get("instrument")),
    }


def _newest_first(part: Subject | None) -> list[Fact]:
    facts = part["facts"] if part else []
    return [fact for fact in reversed(facts) if fact["heading"] in READ]


def _readings(fact: Fact, measure: Measure) -> list[dict[str, Any]]:
    """What a fact read of a measure, as far as it can be shown."""
    found = plain.mappings(fact["body"].get("readings"))
    mine = [each for each in found if each.get("measure") == measure["id"]]
    return [each for each in mine if plain.measured(each.get("value"))]


def size_of(part: Subject | None, measure: Measure) -> dict[str, Any] | None:
    """The size of a part on one measure, in the unit of that measure, or None."""
    for fact in _newest_first(part):
        found = None if fact["struck"] else size_told(measure, _readings(fact, measure))
        if found:
            return {**found, "order": fact["order"]}
    return None
