"""A set: its pieces and their places, ranked spares, what they span, what changed since."""

from __future__ import annotations

from typing import Any

from witnessmark.log.values import Fact, Subject
from witnessmark.log.workshop import Workshop, standing, value
from witnessmark.views import how_many, plain, things
from witnessmark.views.away import is_away
from witnessmark.views.pool import in_sets, used_in_sets
from witnessmark.views.sizes import measures_of, size_of

Line = dict[str, Any]


def chosen(workshop: Workshop, id_: str) -> Line:
    """A set as it stands now.

    changed: pieces that are no longer as they were; claimed: pieces another standing set holds
    too, so that a person must say which of them keeps it.
    """
    found = workshop.subject(id_)
    kind, build = plain.text(value(found, "kind")), plain.text(value(found, "build"))
    measures = _compared(found, measures_of(workshop.subject(kind) if kind else None))
    since = found["fields"]["pieces"]["order"] if found and "pieces" in found["fields"] else ""
    others = in_sets(workshop, id_) if found and not found["hidden"] else {}
    used = used_in_sets(workshop)
    pieces = [
        {
            **_line(workshop, part, measures, since, build),
            "place": plain.text(each.get("place")),
            "also": _also(workshop, part, others.get(part, []), used[part]),
        }
        for each in plain.mappings(value(found, "pieces"))
        for part in (plain.as_id(each.get("part")),)
    ]
    spares = [
        {**_line(workshop, part, measures, since, build), "rank": rank}
        for rank, part in enumerate(plain.texts(value(found, "spares")), 1)
    ]
    return {
        "id": id_,
        **things.described(found),
        "name": plain.text(value(found, "name")),
        "kind": {"id": kind, "name": things.name_of(workshop, kind)} if kind else None,
        "build": {"id": build, "name": things.name_of(workshop, build)} if build else None,
        "count": plain.whole(value(found, "count")),
        "says": plain.text(value(found, "says")),
        "pieces": pieces,
        "spares": spares,
        "spread": [{**each, **_spread(pieces, at)} for at, each in enumerate(measures)],
        "changed": [each["id"] for each in pieces if each["changes"]],
        "claimed": [each["id"] for each in pieces if each["also"]],
        "invented": value(found, "invented") is True,
    }


def _compared(found: Subject | None, measures: list[Line]) -> list[Line]:
    """The measures the set was compared by, with their weights."""
    known = {each["id"]: each for each in measures}
    return [
        {**known[measure], "weight": plain.text(each.get("weight"))}
        for each in plain.mappings(value(found, "measures"))
        if (measure := plain.as_id(each.get("measure"))) in known
    ]


def _line(
    workshop: Workshop, id_: str, measures: list[Line], since: str, build: str | None
) -> Line:
    part = workshop.subject(id_)
    sizes = [size_of(part, measure) for measure in measures]
    return {
        "id": id_,
        "name": plain.text(value(part, "name")),
        "verdict": things.mark(part),
        "sizes": [each and {name: each[name] for name in ("size", "decimals")} for each in sizes],
        "changes": _changes(part, list(zip(measures, sizes, strict=True)), since, build),
    }


def _also(
    workshop: Workshop, part: str, others: list[str], used: int
) -> list[dict[str, str | None]]:
    """Other standing sets that hold a piece, where all of them together want more than there are.

    Sets may share what is counted, as long as there is enough of it.
    """
    enough = used <= (how_many.quantity(workshop.subject(part)) or 1)
    return (
        [] if enough else [{"id": each, "name": things.name_of(workshop, each)} for each in others]
    )


def _changes(
    part: Subject | None,
    sizes: list[tuple[Line, Line | None]],
    since: str,
    build: str | None,
) -> list[str]:
    """What became of a piece since it was chosen."""
    if part is None or part["heading"] != "part" or part["hidden"]:
        return ["missing"]
    mark = things.mark(part)
    fitted = [plain.text(each["body"].get("build")) for each in standing(part, "fitted")]
    read = {_read_since(part, measure, now, since) for measure, now in sizes}
    found = {
        mark: mark not in ("use", "spare"),
        **{word: word in read for word in ("measured-again", "reading-struck", "no-reading")},
        "away": is_away(part),
        "fitted-elsewhere": any(each is not None and each != build for each in fitted),
    }
    return [word for word, true in found.items() if true]


def _read_since(part: Subject, measure: Line, now: Line | None, since: str) -> str | None:
    """What became of the reading a piece was chosen by."""
    if now and now["order"] > since:
        return "measured-again"
    was = size_of(_as_it_was(part, since), measure) if part["strikes"] else now
    if was is None or (now and now["order"] == was["order"]):
        return None
    return "reading-struck" if now else "no-reading"


def _as_it_was(part: Subject, since: str) -> Subject:
    """A part with the facts there were then, of which only what was struck by then is struck."""
    then = {each["id"] for each in part["strikes"] if each["order"] <= since}
    facts = [
        fact
        if fact["struck"] is None or fact["struck"]["id"] in then
        else Fact(**{**fact, "struck": None})
        for fact in part["facts"]
        if fact["order"] <= since
    ]
    return Subject(**{**part, "facts": facts})


def _spread(pieces: list[Line], at: int) -> Line:
    found = [each["sizes"][at] for each in pieces if each["sizes"][at]]
    if not found:
        return {"low": None, "high": None, "spread": None, "decimals": None}
    low, high = min(each["size"] for each in found), max(each["size"] for each in found)
    decimals = max(each["decimals"] for each in found)
    return {"low": low, "high": high, "spread": high - low, "decimals": decimals}
