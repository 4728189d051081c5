"""Shared cases of the workings: what is given as typed, what each side tells."""

from collections.abc import Callable
from typing import Any

from witnessmark.trade.workings.registry import work_out

RULES: dict[str, Callable[[dict[str, Any]], object]] = {
    "workings.work_out": lambda g: work_out(g["working"], g["given"]),
}
