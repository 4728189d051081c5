"""What a piece measures: per measure of its kind the mean of the latest inspection that read it."""

from __future__ import annotations

from typing import Any

from witnessmark.errors import TradeError
from witnessmark.log.values import Subject
from witnessmark.log.workshop import value
from witnessmark.trade.units import convert, quantity_of
from witnessmark.views import plain

_NAMES = ("id", "name", "unit", "least", "most")


def measures_of(kind: Subject | None) -> list[dict[str, Any]]:
    """The measures of a kind."""
    lines = [
        {name: plain.text(each.get(name)) for name in _NAMES}
        for each in plain.mappings(value(kind, "measures"))
    ]
    return [line for line in lines if line["id"] is not None]


def size_of(part: Subject | None, measure: dict[str, Any]) -> dict[str, Any] | None:
    """The size of a part on one measure, in the unit of that measure, or None."""
    for fact in reversed(part["facts"] if part else []):
        if fact["heading"] != "inspection" or fact["struck"]:
            continue
        readings = plain.mappings(fact["body"].get("readings"))
        mine = [each for each in readings if each.get("measure") == measure["id"]]
        found = [size for each in mine if (size := _in_unit(each.get("value"), measure["unit"]))]
        if found:
            mean = sum(size for size, _ in found) / len(found)
            decimals = max(decimals for _, decimals in found)
            return {"size": mean, "decimals": decimals, "order": fact["order"]}
    return None


def _in_unit(kept: object, unit: str | None) -> tuple[float, int] | None:
    read = plain.quantity(kept)
    if read is None:
        return None
    to = unit or read.unit
    decimals = len(read.value.partition(".")[2])
    if to == read.unit:
        return float(read.value), decimals
    same = _same_sort(read.unit, to)
    return (convert(float(read.value), read.unit, to), decimals) if same else None


def _same_sort(one: str, other: str) -> bool:
    try:
        return quantity_of(one) == quantity_of(other)
    except TradeError:
        return False
