"""What a search looks through: one row for each named thing, made anew when the log has grown."""

from typing import Any

from flask import current_app

from witnessmark.api.keys import store
from witnessmark.store import slices
from witnessmark.views.find_row import row

_HEADINGS = ("part", "holder", "joint", "step", "wrench", "instrument", "donor", "build")
_WORKSHOPS_HELD = 8
Rows = list[dict[str, Any]]


def found_rows(workshop: str) -> Rows:
    """The rows of a workshop, as of the log's newest entry."""
    held: dict[str, tuple[int, Rows]] = current_app.extensions.setdefault("witnessmark-rows", {})
    head = store().head(workshop)
    if workshop in held and held[workshop][0] == head:
        return held[workshop][1]
    known = store().slice(workshop, slices.found_slice)
    named = [found["id"] for heading in _HEADINGS for found in known.all(heading)]
    rows = [made for made in (row(known, one) for one in named) if made is not None]
    while len(held) >= _WORKSHOPS_HELD:
        held.pop(next(iter(held)))
    held[workshop] = (head, rows)
    return rows
