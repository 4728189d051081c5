"""What a thing is, and what its kind says of judging it."""

from __future__ import annotations

from typing import Any

from witnessmark.log.values import Subject
from witnessmark.log.workshop import Workshop, value
from witnessmark.views import plain, things


def kind_of(workshop: Workshop, subject: Subject | None) -> dict[str, Any]:
    """What it is, with the criteria and reasons its kind brings."""
    id_ = plain.text(value(subject, "kind"))
    found = workshop.subject(id_) if id_ else None
    reasons = plain.mapping(value(found, "reasons"))
    return {
        "kind": {
            "id": id_,
            "name": plain.text(value(found, "name")),
            "plural": plain.text(value(found, "plural")),
        }
        if id_
        else None,
        "criteria": [
            {name: plain.text(each.get(name)) for name in ("id", "asks", "hint", "good", "bad")}
            for each in plain.mappings(value(found, "criteria"))
        ],
        "reasons": {word: plain.texts(reasons.get(word)) for word in things.VERDICTS},
    }
