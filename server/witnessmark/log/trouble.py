"""What is wrong with one field, and the sentence that says so to a person."""

from __future__ import annotations

from dataclasses import dataclass

from witnessmark.errors import FieldMissing, FieldShape, Refusal

Path = tuple[str | int, ...]

SAYS = {
    "text": "is no text",
    "blank": "is blank",
    "id": "is no id",
    "number": "is no number",
    "whole": "is no whole number",
    "truth": "is neither true nor false",
    "list": "is no list",
    "object": "has not the fields it should have",
    "word": "is none of the words it may be",
    "many": "has more lines than it may have",
    "long": "is longer than it may be",
    "digest": "is no digest of a picture",
    "code": "is no code of a label",
    "stamp": "is no stamp",
    "least": "is less than 1",
    "spot": "is no place on a picture",
}
"""The end of the sentence for each sort of trouble. "missing" has a class of its own."""

ONE_OF = {
    "passes": "pass", "values": "value", "fasteners": "fastener", "photos": "photo",
    "looks": "look", "readings": "reading", "codes": "code", "parts": "part",
    "cautions": "caution", "sequence": "place in the sequence", "criteria": "criterion",
    "measures": "measure", "companions": "companion", "pulls": "pull", "after": "line of after",
}  # fmt: skip
"""One line of a list, as a person calls it; other lists say "line"."""


@dataclass(frozen=True, slots=True)
class Trouble:
    """The path to a field and the sort of trouble with it, a key of SAYS or "missing"."""

    path: Path
    sort: str


def refusal(trouble: Trouble, whose: str) -> Refusal:
    """The refusal that names the field and the thing it belongs to."""
    what = named(trouble.path, whose)
    if trouble.sort == "missing":
        return FieldMissing(what=what)
    return FieldShape(what=what, trouble=SAYS[trouble.sort])


def named(path: Path, whose: str) -> str:
    """A path in words, innermost first: "The unit of value 1 of pass 2 of this joint"."""
    words: list[str] = []
    for step in path:
        if isinstance(step, int):
            plural = words.pop().removeprefix("the ") if words else ""
            words.append(f"{ONE_OF.get(plural, 'line')} {step + 1}")
        elif step not in {"fields", "value"} or len(path) == 1:
            words.append(f"the {step.replace('_', ' ')}")
    spoken = " of ".join([*reversed(words), whose])
    return spoken[0].upper() + spoken[1:]
