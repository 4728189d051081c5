"""Shared cases of photos: what names them, what was pointed at, what a kind shows."""

from collections.abc import Callable
from typing import Any

from vector_rules.story import picked, workshop
from witnessmark.views.pictures import examples, pictures, pointed

Given = dict[str, Any]

RULES: dict[str, Callable[[Given], Any]] = {
    "pictures": lambda g: picked(pictures(workshop(g), g["id"]), g.get("pick")),
    "pictures.examples": lambda g: picked(examples(workshop(g).subject(g["id"])), g.get("pick")),
    "pictures.pointed": lambda g: picked(pointed(workshop(g), g["id"], g["photo"]), g.get("pick")),
}
