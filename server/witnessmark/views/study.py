"""A gauge study: its table of readings, what is measured next, what asks, what it came to."""

from __future__ import annotations

from typing import Any

from witnessmark.errors import TradeError
from witnessmark.log.values import Fact, Subject
from witnessmark.log.workshop import Workshop
from witnessmark.trade.units import Measured, convert
from witnessmark.views import plain, study_result
from witnessmark.views.joint_lines import made_by
from witnessmark.views.study_plan import Cell, described, order_of


def study(workshop: Workshop, id_: str) -> dict[str, Any]:
    """A study as it stands: cells are measured round after round, person after person."""
    subject = workshop.subject(id_)
    told = described(workshop, subject, id_)
    order = order_of(told)
    inside, beside = _sorted_out(subject, told["unit"], set(order))
    cells = {at: _cell(inside.get(at, []), told["unit"]) for at in order}
    open_ = [at for at in order if not inside.get(at)]
    asks = [{**_where(at), "readings": cells[at]["readings"]} for at in order if cells[at]["ask"]]
    found = _result(told, cells)
    last = max((each for at in order for each in inside.get(at, [])), key=_when, default=None)
    return {
        **told,
        "rows": _rows(told, cells),
        "done": len(order) - len(open_),
        "of": len(order),
        "next": _where(open_[0]) if open_ else None,
        "nexts": [_turn(person, open_) for person in told["people"]],
        "last": _told(last) if last else None,
        "asks": asks,
        "beside": beside,
        "struck": _struck(subject),
        "state": _state(order, open_, asks),
        **found,
    }


def _when(fact: Fact) -> tuple[str, str]:
    return fact["order"], fact["id"]


def _sorted_out(
    subject: Subject | None, unit: str | None, cells: set[Cell]
) -> tuple[dict[Cell, list[Fact]], list[dict[str, Any]]]:
    """The readings that stand, by cell, and those that belong to no cell."""
    inside: dict[Cell, list[Fact]] = {}
    beside = []
    for fact in _trials(subject):
        if fact["struck"]:
            continue
        at = _at(fact)
        if at in cells and _readable(fact, unit):
            inside.setdefault(at, []).append(fact)
        else:
            beside.append({**_told(fact), "why": "unit" if at in cells else "cell"})
    return inside, beside


def _trials(subject: Subject | None) -> list[Fact]:
    return [each for each in subject["facts"] if each["heading"] == "trial"] if subject else []


def _at(fact: Fact) -> Cell:
    body = fact["body"]
    piece, repeat = plain.whole(body.get("piece")), plain.whole(body.get("repeat"))
    return piece or 0, plain.text(body.get("person")) or "", repeat or 0


def _readable(fact: Fact, unit: str | None) -> bool:
    kept = plain.quantity(fact["body"].get("value"))
    if kept is None or unit is None:
        return False
    try:
        convert(kept.number, kept.unit, unit)
    except TradeError:
        return False
    return True


def _told(fact: Fact) -> dict[str, Any]:
    piece, person, repeat = _at(fact)
    return {
        "id": fact["id"],
        "piece": piece,
        "person": person,
        "repeat": repeat,
        "value": plain.measured(fact["body"].get("value")),
        **made_by(fact),
    }


def _cell(facts: list[Fact], unit: str) -> dict[str, Any]:
    """One reading; where several that differ stand, a person must say which one counts."""
    read = [each for fact in facts if (each := plain.quantity(fact["body"].get("value")))]
    ask = len({study_result.size(each, unit) for each in read}) > 1
    return {
        "ask": ask,
        "reading": read[0] if read and not ask else None,
        "readings": [_told(fact) for fact in facts],
    }


def _where(at: Cell) -> dict[str, Any]:
    piece, person, repeat = at
    return {"piece": piece, "person": person, "repeat": repeat}


def _turn(person: str, open_: list[Cell]) -> dict[str, Any]:
    """How much somebody has still to measure, and what first."""
    mine = [at for at in open_ if at[1] == person]
    return {"person": person, "left": len(mine), "next": _where(mine[0]) if mine else None}


def _rows(told: dict[str, Any], cells: dict[Cell, dict[str, Any]]) -> list[dict[str, Any]]:
    """Piece after piece: what each person read of it, repeat after repeat."""
    if not cells:
        return []
    turns = range(1, told["repeats"] + 1)
    return [
        {
            "piece": piece,
            "people": [
                [_shown(cells[piece, person, turn], told["unit"]) for turn in turns]
                for person in told["people"]
            ],
        }
        for piece in range(1, told["pieces"] + 1)
    ]


def _shown(cell: dict[str, Any], unit: str) -> dict[str, Any] | None:
    if not cell["readings"]:
        return None
    reading: Measured | None = cell["reading"]
    first = cell["readings"][0]
    return {
        "id": first["id"],
        "value": first["value"],
        "size": study_result.size(reading, unit) if reading else None,
        "ask": cell["ask"],
    }


def _struck(subject: Subject | None) -> list[dict[str, Any]]:
    """Readings that were struck out, newest first."""
    struck = [fact for fact in _trials(subject) if fact["struck"]]
    return [_told(fact) for fact in sorted(struck, key=_when, reverse=True)]


def _state(order: list[Cell], open_: list[Cell], asks: list[dict[str, Any]]) -> str:
    if not order:
        return "unclear"
    if asks:
        return "ask"
    if not open_:
        return "done"
    return "empty" if len(open_) == len(order) else "measuring"


def _result(told: dict[str, Any], cells: dict[Cell, dict[str, Any]]) -> dict[str, Any]:
    """What it came to, from the rounds that are whole; two of them at the least."""
    rounds = 0
    while rounds < told["repeats"] and _whole(cells, rounds + 1):
        rounds += 1
    if not cells or rounds < study_result.FEWEST:
        return {"trouble": None, "figures": None}
    readings = [
        [
            [cells[piece + 1, person, turn + 1]["reading"] for piece in range(told["pieces"])]
            for turn in range(rounds)
        ]
        for person in told["people"]
    ]
    room = study_result.width(told["least"], told["most"])
    return study_result.result(readings, told["unit"], room)


def _whole(cells: dict[Cell, dict[str, Any]], turn: int) -> bool:
    return all(cell["reading"] is not None for at, cell in cells.items() if at[2] == turn)
