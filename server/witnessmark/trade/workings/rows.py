"""Lists that stand side by side, a number of each in every row."""

from __future__ import annotations

from collections.abc import Mapping

from witnessmark.trade.workings.errors import RowsUneven
from witnessmark.trade.workings.given import Typed
from witnessmark.trade.workings.working import Working


def refuse_uneven(working: Working, values: Mapping[str, tuple[Typed, ...]]) -> None:
    """Lists of one row must be of one length."""
    rows: dict[str, dict[str, int]] = {}
    for ask in working.asks:
        if ask.row and (ask.name in values or not ask.optional):
            rows.setdefault(ask.row, {})[ask.name] = len(values.get(ask.name, ()))
    for row, lengths in rows.items():
        if len(set(lengths.values())) > 1:
            raise RowsUneven(row=row, about=min(lengths, key=lambda name: lengths[name]))
