"""A fast check made from a marshmallow schema.

marshmallow takes 54 µs an entry and push must stay near the floor. So at import each schema is
turned into one expression that says whether a value is well, and into nested functions that
find the first trouble when it is not. A test proves that all three take and refuse the same.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from itertools import count
from typing import Any

from marshmallow import Schema, fields

from witnessmark.log import shapes
from witnessmark.log.shapes import Leaf, Lines, TextOr
from witnessmark.log.trouble import Trouble

Check = Callable[[Any], Trouble | None]
Inner = Callable[[Any], Trouble | str | None]
_ABSENT: Any = object()


def compiled(shape: type[Schema]) -> Check:
    """A function that finds the first trouble with a value of this shape."""
    find, well = finder(shape), _Expression().of(shape)

    def check(value: Any) -> Trouble | None:
        try:
            if well(value):
                return None
        except KeyError:
            pass  # a field that must be there is not; the expression does not ask twice
        return find(value)

    return check


def finder(shape: type[Schema]) -> Check:
    """The same by asking field after field; slower, and exact about where the trouble is."""
    rules = tuple(
        (name, field.required, field.allow_none, _inner(field)) for name, field in _fields(shape)
    )

    def check(value: Any) -> Trouble | None:
        if type(value) is not dict:
            return Trouble((), "object")
        for name, required, null, inner in rules:
            found = value.get(name, _ABSENT)
            if found is _ABSENT:
                if required:
                    return Trouble((name,), "missing")
            elif (found is not None or not null) and (trouble := inner(found)):
                return _within(name, trouble)
        return None

    return check


def _fields(shape: type[Schema]) -> Iterator[tuple[str, fields.Field[Any]]]:
    for name, field in shape().fields.items():
        yield field.data_key or name, field


def _inner(field: fields.Field[Any]) -> Inner:
    if isinstance(field, Leaf):
        return field.trouble
    if isinstance(field, Lines):
        return _lines(field)
    if isinstance(field, TextOr):
        return _text_or(finder(type(field.schema)))
    if isinstance(field, fields.Nested):
        return finder(type(field.schema))
    raise TypeError(f"no checker is made for {type(field).__name__}")


def _text_or(inner: Check) -> Inner:
    return lambda value: None if type(value) is str else inner(value)


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


class _Expression:
    """Writes the text of the expression, and keeps what it names."""

    def __init__(self) -> None:
        self.names: dict[str, Any] = dict(vars(shapes))
        self.numbers = count()

    def of(self, shape: type[Schema]) -> Callable[[Any], object]:
        """The expression for a shape, as a function of a value."""
        source = f"lambda value: {self._object('value', shape)}"
        made: Callable[[Any], object] = eval(source, self.names)  # noqa: S307  only our own schemas
        return made

    def _object(self, x: str, shape: type[Schema]) -> str:
        tests = [f"type({x}) is dict"]
        tests += [self._field(x, name, field) for name, field in _fields(shape)]
        return " and ".join(f"({test})" for test in tests)

    def _field(self, box: str, name: str, field: fields.Field[Any]) -> str:
        x = f"x{next(self.numbers)}"
        found = f"({x} := {box}[{name!r}])"
        some = f"{found} is not None and" if not field.allow_none else f"{found} is None or"
        rule = f"{some} ({self._value(x, field)})"
        return rule if field.required else f"{name!r} not in {box} or {rule}"

    def _value(self, x: str, field: fields.Field[Any]) -> str:
        if isinstance(field, Leaf) and field.good:
            return field.good.format(x=x)
        if isinstance(field, fields.Nested):
            inside = self._object(x, type(field.schema))
            return f"type({x}) is str or ({inside})" if isinstance(field, TextOr) else inside
        named = f"n{next(self.numbers)}"
        self.names[named] = _inner(field)
        return f"{named}({x}) is None"
