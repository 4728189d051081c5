"""Reading what came from a person or a program: text or number with unit, one or several."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import replace
from typing import Any

from witnessmark.errors import TradeError
from witnessmark.trade import amounts, typed, units
from witnessmark.trade.unit_errors import NumberNegative
from witnessmark.trade.unit_words import UNIT_WORDS
from witnessmark.trade.workings.errors import (
    AskMissing,
    AskShape,
    AskUnknown,
    NotAChoice,
    RowsUneven,
)
from witnessmark.trade.workings.given import Given, Typed
from witnessmark.trade.workings.rows import refuse_uneven
from witnessmark.trade.workings.working import Ask, Working

LONGEST = 80
LARGEST = 2**53
"""Whole numbers below it are the same in every language."""
MOST = 200
PER_CENT = "%"
WHOLE = 100
_APART = re.compile(r"[\s;]+")
_CURRENCY = re.compile(r"[A-Z]{3}")


def read(working: Working, given: Mapping[str, Any]) -> Given:
    """Everything given, read; what is left out takes its default.

    raises: AskUnknown, AskMissing, AskShape, NotAChoice, RowsUneven; what reading a number
    raises. Each has the name of the ask among its facts as `about`.
    """
    if not isinstance(given, dict):
        raise AskShape(ask="given", trouble="is no object of values by their names")
    known = ", ".join(working.by_name)
    for name in given:
        if name not in working.by_name:
            raise AskUnknown(ask=str(name)[:LONGEST], known=known)
    values: dict[str, tuple[Typed, ...]] = {}
    for ask in working.asks:
        found = read_ask(_following(ask, values), given.get(ask.name))
        if found:
            values[ask.name] = found
    refuse_uneven(working, values)
    return Given(values)


def read_ask(ask: Ask, given: object) -> tuple[Typed, ...]:
    """What was given for one ask; nothing where nothing was given and nothing must be.

    raises: as read.
    """
    try:
        found = _several(ask, given) if ask.many else _single(ask, given)
    except TradeError as refused:
        refused.facts.setdefault("about", ask.name)
        raise
    if not found and not ask.optional:
        raise AskMissing(ask=_said(ask.name), about=ask.name)
    return found


def _following(ask: Ask, values: Mapping[str, tuple[Typed, ...]]) -> Ask:
    """An ask of any quantity is one of the quantity chosen before it."""
    chosen = values.get(ask.follows or "")
    return replace(ask, quantity=chosen[0].value) if chosen else ask


def _said(name: str) -> str:
    return name.replace("-", " ")


def _single(ask: Ask, given: object) -> tuple[Typed, ...]:
    if _is_empty(given):
        unit = PER_CENT if ask.quantity == "share" else ask.unit
        return (Typed(ask.default, unit),) if ask.default is not None else ()
    return (_one(ask, given),)


def _is_empty(given: object) -> bool:
    if isinstance(given, dict):
        given = given.get("value")
    return given is None or (isinstance(given, str) and not given.strip())


def _several(ask: Ask, given: object) -> tuple[Typed, ...]:
    if isinstance(given, str):
        given = _pieces(ask, given)
    if given is None:
        return ()
    if not isinstance(given, list):
        raise AskShape(ask=_said(ask.name), trouble="is no list")
    if len(given) > MOST:
        raise AskShape(ask=_said(ask.name), trouble=f"has more than {MOST} numbers")
    filled = [at for at, each in enumerate(given) if not _is_empty(each)]
    if len(filled) != len(given[: filled[-1] + 1 if filled else 0]):
        raise RowsUneven(row=_said(ask.row or ask.name))
    return tuple(_one(ask, given[at]) for at in filled)


def _pieces(ask: Ask, text: str) -> list[str]:
    """The numbers of a text like "198.12 198.31 mm"; one unit at the end holds for all."""
    pieces = [piece for piece in _APART.split(text.strip()) if piece]
    unit = pieces.pop() if pieces and not re.search("[0-9]", pieces[-1]) else ""
    return [f"{piece} {unit}".strip() for piece in pieces]


def _one(ask: Ask, given: object) -> Typed:
    if isinstance(given, bool) or not isinstance(given, dict | str | int):
        raise AskShape(ask=_said(ask.name), trouble="is neither text nor a number with its unit")
    parts = given if isinstance(given, dict) else {"value": given}
    value, unit = parts.get("value"), parts.get("unit")
    if isinstance(value, int) and not isinstance(value, bool) and abs(value) < LARGEST:
        value = str(value)
    if not isinstance(value, str) or not isinstance(unit, str | None) or len(value) > LONGEST:
        raise AskShape(ask=_said(ask.name), trouble="is neither text nor a number with its unit")
    return _READERS.get(ask.quantity, _measured)(ask, value.strip(), unit or None)


def _measured(ask: Ask, text: str, unit: str | None) -> Typed:
    if unit is not None and unit not in UNIT_WORDS[ask.quantity]:
        units.quantity_of(unit)
        raise AskShape(ask=_said(ask.name), trouble=f"is not measured in {unit}")
    found = typed.read(text, ask.quantity, unit=unit, decimal_sign=typed.EITHER)
    if found.number.startswith("-") and not ask.signed:
        raise NumberNegative(typed=text)
    return Typed(found.number, found.unit)


def _number(ask: Ask, text: str) -> str:
    return units.parse_number(text, one_decimal_key=True, signed=ask.signed)


def _bare(ask: Ask, text: str, unit: str | None) -> Typed:
    if unit is not None:
        raise AskShape(ask=_said(ask.name), trouble="has no unit")
    return Typed(_number(ask, text))


def _count(ask: Ask, text: str, unit: str | None) -> Typed:
    plain = float(_bare(ask, text, unit).value)
    whole: Any = int(plain) if plain.is_integer() else plain
    return Typed(str(amounts.count(whole, _said(ask.name))))


def _share(ask: Ask, text: str, unit: str | None) -> Typed:
    if unit not in (None, PER_CENT):
        raise AskShape(ask=_said(ask.name), trouble="is told in per cent")
    plain = _number(ask, text.removesuffix(PER_CENT))
    if float(plain) > WHOLE:
        raise AskShape(ask=_said(ask.name), trouble="is more than 100 per cent")
    return Typed(plain, PER_CENT)


def _designation(ask: Ask, text: str, unit: str | None) -> Typed:
    if unit is not None:
        raise AskShape(ask=_said(ask.name), trouble="has no unit")
    return Typed(text)


def _choice(ask: Ask, text: str, unit: str | None) -> Typed:
    word = text.replace(" ", "-")
    if unit is not None or word not in ask.choices:
        raise NotAChoice(typed=text, known=", ".join(ask.choices))
    return Typed(word)


def _currency(ask: Ask, text: str, unit: str | None) -> Typed:
    if unit is not None or not _CURRENCY.fullmatch(text):
        raise AskShape(ask=_said(ask.name), trouble="is no currency of three letters, like EUR")
    return Typed(text)


def _any(ask: Ask, text: str, unit: str | None) -> Typed:
    """Of what quantity it is was not chosen."""
    raise AskMissing(ask=_said(ask.follows or ask.name), about=ask.follows)


_READERS = {
    "any": _any,
    "number": _bare,
    "count": _count,
    "share": _share,
    "designation": _designation,
    "choice": _choice,
    "currency": _currency,
}
