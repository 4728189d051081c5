"""The plan of a gauge study: what is measured, by whom, how often, and in which order."""

from __future__ import annotations

from typing import Any

from witnessmark.log.values import Subject
from witnessmark.log.workshop import Workshop, value
from witnessmark.trade.gauge_study import MOST
from witnessmark.views import plain, things

Cell = tuple[int, str, int]


def described(workshop: Workshop, subject: Subject | None, id_: str) -> dict[str, Any]:
    """What the study says of itself."""
    instrument = plain.text(value(subject, "instrument"))
    named = (plain.text(each) for each in plain.listed(value(subject, "people")))
    least, most = (_limit(value(subject, name)) for name in ("least", "most"))
    return {
        "id": id_,
        **things.described(subject),
        "name": plain.text(value(subject, "name")),
        "instrument": instrument
        and {"id": instrument, "name": things.name_of(workshop, instrument)},
        "quantity": plain.text(value(subject, "quantity")),
        "unit": plain.text(value(subject, "unit")),
        "least": least,
        "most": most,
        "crossed": least is not None and most is not None and float(least) >= float(most),
        "pieces": _count(value(subject, "pieces")),
        "people": plain.once(each for each in named if each),
        "repeats": _count(value(subject, "repeats")),
        "invented": value(subject, "invented") is True,
    }


def _limit(kept: object) -> str | None:
    """A limit as it was typed, where it reads as a number."""
    found = plain.quantity({"value": kept, "unit": "mm"})
    return found.value if found else None


def _count(kept: object) -> int:
    return max(0, plain.whole(kept) or 0)


def order_of(told: dict[str, Any]) -> list[Cell]:
    """Every cell in the order it is measured; each round begins one piece further on.

    So nobody measures a piece twice in a row, and no round is a copy of the one before.
    """
    pieces, people, repeats = told["pieces"], told["people"], told["repeats"]
    if not told["unit"] or max(pieces, len(people), repeats) > MOST:
        return []
    return [
        ((at + round_) % pieces + 1, person, round_ + 1)
        for round_ in range(repeats)
        for person in people
        for at in range(pieces)
    ]
