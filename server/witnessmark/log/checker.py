"""A fast check made from a marshmallow schema.

marshmallow takes 54 µs an entry and push must stay near the floor, so at import each schema is
turned into nested closures. A test proves that both take and refuse the same.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from marshmallow import Schema, fields

from witnessmark.log.shapes import Leaf, Lines
from witnessmark.log.trouble import Trouble

Check = Callable[[Any], Trouble | None]
Inner = Callable[[Any], Trouble | str | None]
_ABSENT: Any = object()


def compiled(shape: type[Schema]) -> Check:
    """A function that finds the first trouble with a value of this shape."""
    rules = tuple(
        (field.data_key or name, field.required, field.allow_none, _inner(field))
        for name, field in shape().fields.items()
    )

    def check(value: Any) -> Trouble | None:
        if type(value) is not dict:
            return Trouble((), "object")
        get = value.get
        for name, required, null, inner in rules:
            found = get(name, _ABSENT)
            if found is _ABSENT:
                if required:
                    return Trouble((name,), "missing")
            elif (found is not None or not null) and (trouble := inner(found)):
                return _within(name, trouble)
        return None

    return check


def _inner(field: fields.Field[Any]) -> Inner:
    if isinstance(field, Leaf):
        return field.trouble  # its word alone: one call less for each field of each entry
    if isinstance(field, Lines):
        return _lines(field)
    if isinstance(field, fields.Nested):
        return compiled(type(field.schema))
    raise TypeError(f"no checker is made for {type(field).__name__}")


def _lines(field: Lines) -> Inner:
    inner = _inner(field.inner)
    most = field.most

    def check(value: Any) -> Trouble | str | None:
        if type(value) is not list:
            return "list"
        if most is not None and len(value) > most:
            return "many"
        for place, line in enumerate(value):
            if trouble := inner(line):
                return _within(place, trouble)
        return None

    return check


def _within(step: str | int, trouble: Trouble | str) -> Trouble:
    if isinstance(trouble, str):
        return Trouble((step,), trouble)
    return Trouble((step, *trouble.path), trouble.sort)
