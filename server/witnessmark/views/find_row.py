"""What find looks through for one thing: its name, what is said of it, where it lies."""

from __future__ import annotations

from typing import Any

from witnessmark.log.values import Subject
from witnessmark.log.workshop import Workshop, standing, value
from witnessmark.views import plain, things

HEADINGS = ("part", "holder", "joint", "step", "wrench", "instrument", "donor", "build")
_OWN = ("from", "for", "thread", "note", "engine", "plural", "noun", "sort", "lies")

Row = dict[str, Any]


def row(workshop: Workshop, id_: str) -> Row | None:
    """What find looks through for one thing, or None for what is not looked for by name."""
    subject = workshop.subject(id_)
    heading = subject["heading"] if subject else None
    if subject is None or heading not in HEADINGS or subject["hidden"]:
        return None
    lies = things.lies(workshop, subject)["lies"]
    origin = things.name_of(workshop, value(subject, "donor"))
    said = [
        things.name_of(workshop, value(subject, "kind")),
        origin,
        *(plain.text(value(subject, name)) for name in _OWN),
        *(each[name] for each in lies for name in ("name", "where", "gone")),
        *(outer["name"] for each in lies for outer in each["chain"]),
        *(plain.text(each["body"].get("place")) for each in standing(subject, "fitted")),
        things.name_of(workshop, value(subject, "build")),
        *(
            things.name_of(workshop, each["body"].get("build"))
            for each in standing(subject, "fitted")
        ),
        *_notes(subject),
    ]
    return {
        "id": id_,
        "heading": heading,
        "name": plain.text(value(subject, "name"))
        or things.name_of(workshop, value(subject, "kind")),
        "words": " ".join(plain.once(each for each in said if each)),
        "codes": things.labels(workshop, id_)["codes"],
        "at": _at(workshop, subject, lies),
        "verdict": (verdict := things.verdict(subject)["word"]),
        "scrap": verdict == "scrap",
    }


def _at(workshop: Workshop, subject: Subject, lies: list[dict[str, Any]]) -> str | None:
    """The build it is fitted to, what it lies in, or what its description says of that."""
    builds = (each["body"].get("build") for each in standing(subject, "fitted"))
    fitted = [name for name in (things.name_of(workshop, build) for build in builds) if name]
    held = [each["name"] for each in lies if each["name"]]
    return ", ".join(plain.once(fitted or held)) or plain.text(value(subject, "lies"))


def _notes(subject: Subject) -> list[str | None]:
    noted = [fact for fact in subject["facts"] if fact["heading"] == "note" and not fact["struck"]]
    return [plain.text(fact["body"].get("text")) for fact in noted]
