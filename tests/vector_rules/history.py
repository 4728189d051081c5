"""Shared cases of histories: of a part, of a kind, of a donor, and how many to bring home."""

from collections.abc import Callable
from typing import Any

from vector_rules.story import picked, workshop
from witnessmark.views.history import of_donor, of_kind, of_part
from witnessmark.views.history_counts import bring_home

Given = dict[str, Any]

VIEWS: dict[str, Callable[[Any, Given], Any]] = {
    "history.of_part": lambda w, g: of_part(w, g["id"]),
    "history.of_kind": lambda w, g: of_kind(w, g["id"], g.get("most")),
    "history.of_donor": lambda w, g: of_donor(w, g["id"], g.get("most")),
}


def told(name: str) -> Callable[[Given], Any]:
    return lambda given: picked(VIEWS[name](workshop(given), given), given.get("pick"))


RULES: dict[str, Callable[[Given], Any]] = {
    **{name: told(name) for name in VIEWS},
    "history_counts.bring_home": lambda g: bring_home(
        g["judged"], g["rejected"], g["wanted"], g["chance"]
    ),
}
