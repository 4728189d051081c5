"""A counted part and its single pieces: how many of each, what may be counted together again."""

from __future__ import annotations

import json
import re
from typing import Any

from witnessmark.log.values import Subject
from witnessmark.log.workshop import Workshop, standing, value
from witnessmark.views import how_many, plain, things

# More pieces than anybody judges one by one are not made at once.
MOST = 400
SEVERAL = 2
_PIECE = re.compile(r"([1-9][0-9]{0,5})(\.[0-9]+)?")


def counted(workshop: Workshop, id_: str) -> dict[str, Any]:
    """How many are left and how many are single, and what may become single or go back.

    Also those pieces another device judged while they went back.
    """
    subject = workshop.subject(id_)
    out = how_many.single(subject)
    left = how_many.quantity(subject) or 0
    pieces = [_line(workshop, subject, piece) for piece in out]
    return {
        "id": id_,
        "left": left,
        "single": len(out),
        "make": _make(subject, left, out),
        "pieces": pieces,
        "back": [each["id"] for each in pieces if not each["touched"]],
        "judged_back": _judged_back(workshop, subject, out),
        "lost": _lost(workshop, subject, out),
    }


def _make(subject: Subject | None, left: int, out: list[str]) -> list[dict[str, Any]]:
    """The pieces that become single next: the lowest numbers that are counted.

    A piece has the same id on every device, so two that make it make one; one that went back is
    struck out for good, and its number gets another id.
    """
    made: list[dict[str, Any]] = []
    single = plain.text(value(subject, "bag")) is not None
    if subject is None or single or left + len(out) < SEVERAL or left > MOST:
        return made
    ever = _ever_taken(subject)
    numbers = {_number(subject, id_) for id_ in out}
    number = 0
    while len(made) < left:
        number += 1
        if number not in numbers:
            piece = {"id": _fresh(subject, number, ever), "number": number}
            made.append({**piece, "name": _name_of(subject, number)})
    return made


def _ever_taken(subject: Subject | None) -> list[str]:
    """Every piece that was taken by name, once."""
    return plain.once(
        id_
        for each in (subject["facts"] if subject else ())
        if each["heading"] == "take" and each["struck"] is None
        for id_ in plain.texts(each["body"].get("pieces"))
    )


def _fresh(subject: Subject, number: int, ever: list[str]) -> str:
    first = f"{subject['id']}-{number}"
    id_, round_ = first, 1
    while id_ in ever:
        round_ += 1
        id_ = f"{first}.{round_}"
    return id_


def _number(subject: Subject | None, id_: str) -> int | None:
    """The number of a piece by its id."""
    own = subject["id"] if subject else ""
    found = _PIECE.fullmatch(id_[len(own) + 1 :])
    return int(found[1]) if found and id_[: len(own)] == own else None


def _line(workshop: Workshop, subject: Subject | None, id_: str) -> dict[str, Any]:
    piece = workshop.subject(id_)
    return {
        "id": id_,
        "name": plain.text(value(piece, "name")),
        "number": plain.whole(value(piece, "number")),
        "mark": things.mark(piece),
        "touched": _touched(workshop, subject, piece),
        "descriptions": _descriptions(piece),
    }


def _descriptions(piece: Subject | None) -> list[str]:
    """Entries that describe it and would be struck out."""
    said = piece["fields"].values() if piece else ()
    return sorted(
        {
            each
            for one in said
            for each in (one["entry"], *(claim["entry"] for claim in one["lost"]))
        }
    )


def _touched(workshop: Workshop, subject: Subject | None, piece: Subject | None) -> str | None:
    """Why a piece stays single: told of, with a label of its own, or moved; or not here."""
    if piece is None:
        return "not-here"
    if _told(piece):
        return "facts"
    if workshop.linked(piece["id"], "marks"):
        return "label"
    return None if _places(piece) == _places(subject) else "moved"


def _told(piece: Subject | None) -> bool:
    """Whether anything but its place is kept about it, a note in its description included."""
    facts = piece["facts"] if piece else []
    said = any(each["heading"] != "place" and each["struck"] is None for each in facts)
    return said or plain.text(value(piece, "note")) is not None


def _places(subject: Subject | None) -> list[str]:
    """Where it lies; said twice by two devices is said once."""
    return sorted(
        {
            json.dumps([plain.text(each["body"].get("in")), plain.text(each["body"].get("gone"))])
            for each in standing(subject, "place")
        }
    )


def _judged_back(
    workshop: Workshop, subject: Subject | None, out: list[str]
) -> list[dict[str, Any]]:
    """Pieces counted together again on one device and judged or told of on another.

    Nothing is lost, and somebody has to say that they are single.
    """
    single = {_number(subject, id_) for id_ in out}
    return [
        {"id": id_, "number": _number(subject, id_)}
        for id_ in _ever_taken(subject)
        if id_ not in out and _told(workshop.subject(id_)) and _number(subject, id_) not in single
    ]


def _lost(workshop: Workshop, subject: Subject | None, out: list[str]) -> list[dict[str, Any]]:
    """Single pieces that are told of but shown nowhere, and what each becomes when made again.

    One device made them and counted them together, another made the same ones later: what strikes
    out the first description hides the piece, though the other description stands.
    """
    ever = _ever_taken(subject)
    lines = []
    for id_ in out:
        piece, number = workshop.subject(id_), _number(subject, id_)
        if subject is None or piece is None or number is None or not piece["hidden"]:
            continue
        if value(piece, "bag") == subject["id"] and _told(piece):
            made = {"id": _fresh(subject, number, ever), "number": number}
            lines.append({**made, "name": _name_of(subject, number), "was": id_})
    return lines


def _name_of(subject: Subject, number: int) -> str:
    name = plain.text(value(subject, "name"))
    return f"{name} {number}" if name else str(number)
