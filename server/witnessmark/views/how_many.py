"""How many a part is: counted, added, taken, and made single piece by piece."""

from __future__ import annotations

from witnessmark.log.values import Subject
from witnessmark.log.workshop import value
from witnessmark.views import plain


def emptied(subject: Subject | None) -> bool:
    """Whether nothing is left of a counted part, because its pieces are single."""
    return bool(single(subject)) and (quantity(subject) or 0) <= 0


def single(subject: Subject | None) -> list[str]:
    """The single pieces of a counted part: taken by name and not counted together again.

    Two devices that take the same pieces take them once.
    """
    out: dict[str, None] = {}
    for fact in subject["facts"] if subject else ():
        pieces = [] if fact["struck"] else plain.texts(fact["body"].get("pieces"))
        for id_ in pieces:
            if fact["heading"] == "take":
                out[id_] = None
            elif fact["heading"] == "add":
                out.pop(id_, None)
    return list(out)


def quantity(subject: Subject | None) -> int | None:
    """How many: as described, one where nothing is said, plus what was added, less what was taken.

    Below zero is shown as it is: somebody took more than was there.
    """
    if subject is None:
        return None
    kept = plain.whole(value(subject, "quantity"))
    count = 1 if kept is None else kept
    for fact in subject["facts"]:
        named = bool(plain.texts(fact["body"].get("pieces")))
        if fact["struck"] is None and fact["heading"] in ("add", "take") and not named:
            change = plain.whole(fact["body"].get("count")) or 0
            count += change if fact["heading"] == "add" else -change
    return count - len(single(subject))


def left(subject: Subject | None, used: int) -> int | None:
    """How many are left of it when so many are used in sets."""
    found = quantity(subject)
    return max(0, found - used) if found is not None and used else found
