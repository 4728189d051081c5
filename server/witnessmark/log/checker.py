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
_ABSENT: Any = object()


def compiled(shape: type[Schema]) -> Check:
    """A function that finds the first trouble with a value of this shape."""
    schema = shape()
    rules = tuple(
        (field.data_key or name, field.required, field.allow_none, _check(field))
        for name, field in schema.fields.items()
    )

    def check(value: Any) -> Trouble | None:
        if type(value) is not dict:
            return Trouble((), "object")
        for name, required, null, inner in rules:
            found = value.get(name, _ABSENT)
            if found is _ABSENT:
                if required:
                    return Trouble((name,), "missing")
            elif found is None and null:
                pass
            elif trouble := inner(found):
                return Trouble((name, *trouble.path), trouble.sort)
        return None

    return check


def _check(field: fields.Field[Any]) -> Check:
    if isinstance(field, Leaf):
        return _leaf(field)
    if isinstance(field, Lines):
        return _lines(field)
    if isinstance(field, fields.Nested):
        return compiled(type(field.schema))
    raise TypeError(f"no checker is made for {type(field).__name__}")


def _leaf(field: Leaf) -> Check:
    sort_of = field.trouble

    def check(value: Any) -> Trouble | None:
        sort = sort_of(value)
        return Trouble((), sort) if sort else None

    return check


def _lines(field: Lines) -> Check:
    inner = _check(field.inner)
    most = field.most

    def check(value: Any) -> Trouble | None:
        if type(value) is not list:
            return Trouble((), "list")
        if most is not None and len(value) > most:
            return Trouble((), "many")
        for place, line in enumerate(value):
            if trouble := inner(line):
                return Trouble((place, *trouble.path), trouble.sort)
        return None

    return check
