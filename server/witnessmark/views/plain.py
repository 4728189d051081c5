"""Reading plain JSON that may be odd: what has not the shape asked for is None or empty."""

from __future__ import annotations

import json
import re
from collections.abc import Iterable
from typing import Any, TypeVar

from witnessmark.errors import TradeError
from witnessmark.trade.units import Measured

T = TypeVar("T")
_BLANKS = " \t\r\n\u00a0"
_PIECES = re.compile(r"[0-9]+|[^0-9]+")


def text(value: object) -> str | None:
    """The text without blanks around it, or None when nothing is left."""
    return (value.strip(_BLANKS) or None) if isinstance(value, str) else None


def as_id(value: object) -> str:
    """The text of an id as it is, or none at all; never another value made into text."""
    return value if isinstance(value, str) else ""


def whole(value: object) -> int | None:
    """The whole number both languages can count with, or None; true and false are none."""
    known = isinstance(value, int) and not isinstance(value, bool) and abs(value) < 2**53
    return value if known else None  # type: ignore[return-value]


def listed(value: object) -> list[Any]:
    """The list, or an empty one."""
    return value if isinstance(value, list) else []


def texts(value: object) -> list[str]:
    """The texts of a list, others left out."""
    return [each for each in listed(value) if isinstance(each, str)]


def mapping(value: object) -> dict[str, Any]:
    """The object, or an empty one."""
    return value if isinstance(value, dict) else {}


def mappings(value: object) -> list[dict[str, Any]]:
    """The objects of a list, others left out."""
    return [each for each in listed(value) if isinstance(each, dict)]


def measured(value: object) -> dict[str, str] | None:
    """A measured value as it was kept, or None."""
    number, unit = mapping(value).get("value"), mapping(value).get("unit")
    if isinstance(number, str) and isinstance(unit, str):
        return {"value": number, "unit": unit}
    return None


def quantity(value: object) -> Measured | None:
    """A measured value to compute with, or None where number or unit cannot be read."""
    kept = measured(value)
    try:
        return Measured(kept["value"], kept["unit"]) if kept else None
    except TradeError:
        return None


def natural(name: str | None) -> list[tuple[int, int, str]]:
    """A key that sorts "Pushrod 2" before "Pushrod 10", and the nameless last."""
    if name is None:
        return [(2, 0, "")]
    return [_piece(piece) for piece in _PIECES.findall(name.lower())]


def _piece(piece: str) -> tuple[int, int, str]:
    if piece[0] in "0123456789":
        digits = piece.lstrip("0")
        return 0, len(digits), digits
    return 1, 0, piece


def alike(one: object, other: object) -> bool:
    """Whether two JSON values say the same; true is not 1."""
    return json.dumps(one, sort_keys=True) == json.dumps(other, sort_keys=True)


def once(ids: Iterable[T]) -> list[T]:
    """The ids in the order they come, each once."""
    return list(dict.fromkeys(ids))
