"""What sets, pool and shelf need of measured: a measure in short, and the size of a part."""

from __future__ import annotations

from typing import Any

from witnessmark.log.values import Subject
from witnessmark.views import measured

size_of = measured.size_of

_NAMES = ("id", "name", "unit", "least", "most")


def measures_of(kind: Subject | None) -> list[dict[str, Any]]:
    """The measures of a kind, in short."""
    return [{name: each[name] for name in _NAMES} for each in measured.measures_of(kind)]
