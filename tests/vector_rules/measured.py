"""Shared cases of what a part measures."""

from collections.abc import Callable
from typing import Any

from vector_rules.story import picked, workshop
from witnessmark.views.measured import measured

Given = dict[str, Any]

RULES: dict[str, Callable[[Given], Any]] = {
    "measured": lambda g: picked(measured(workshop(g), g["id"]), g.get("pick")),
}
