"""Every working by its name, in the order of the list; checks their names."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping
from typing import Any

from witnessmark.errors import TradeError
from witnessmark.trade.unit_words import UNIT_WORDS
from witnessmark.trade.workings.adapter import ADAPTER
from witnessmark.trade.workings.bring import BRING
from witnessmark.trade.workings.cautions import WEIGHTS, Caution
from witnessmark.trade.workings.clearance import CLEARANCE
from witnessmark.trade.workings.convert import CONVERT
from witnessmark.trade.workings.errors import WorkingDoubled, WorkingUnknown
from witnessmark.trade.workings.given import Given, Typed
from witnessmark.trade.workings.preload import PRELOAD
from witnessmark.trade.workings.ratio import RATIO
from witnessmark.trade.workings.reading import read
from witnessmark.trade.workings.ring_gap import RING_GAP
from witnessmark.trade.workings.sets import SET
from witnessmark.trade.workings.stretch import STRETCH
from witnessmark.trade.workings.working import PLAIN, Ask, Working

_NAME = re.compile(r"[a-z][a-z0-9]*(-[a-z0-9]+)*")


def collected(workings: Iterable[Working]) -> Mapping[str, Working]:
    """The workings by name.

    raises: WorkingDoubled for a name that stands twice or is no word of the wire.
    """
    found: dict[str, Working] = {}
    for working in workings:
        _check_name(working.name, found)
        found[working.name] = working
        asks: dict[str, Ask] = {}
        for ask in working.asks:
            _check_name(ask.name, asks)
            asks[ask.name] = ask
            _check_ask(ask, asks)
    return found


def _check_name(name: str, taken: Mapping[str, object]) -> None:
    if name in taken or not _NAME.fullmatch(name):
        raise WorkingDoubled(name=name)


def _check_ask(ask: Ask, before: Mapping[str, Ask]) -> None:
    known = ask.quantity in UNIT_WORDS or ask.quantity in PLAIN
    unit = ask.unit is None or ask.unit in UNIT_WORDS.get(ask.quantity, ())
    chosen = bool(ask.choices) or ask.quantity != "choice"
    if not (known and unit and chosen) or (ask.follows and ask.follows not in before):
        raise WorkingDoubled(name=ask.name)


WORKINGS = collected((CONVERT, ADAPTER, PRELOAD, STRETCH, CLEARANCE, RING_GAP, RATIO, SET, BRING))


def working(name: str) -> Working:
    """The working of a name.

    raises: WorkingUnknown.
    """
    if not isinstance(name, str) or name not in WORKINGS:
        raise WorkingUnknown(working=name, known=", ".join(WORKINGS))
    return WORKINGS[name]


def work_out(name: str, given: Mapping[str, Any]) -> dict[str, object]:
    """What a working finds for what is given: text, numbers with units, or lists of them.

    raises: WorkingUnknown; as reading.read; what the rules of the trade raise, with the name of
    the ask among its facts as `about` where it is known.
    """
    asked = working(name)
    values = read(asked, given)
    try:
        result = asked.work(values)
    except TradeError as refused:
        _name_ask(asked, refused)
        raise
    return {
        "working": name,
        "formula": asked.formula,
        "source": asked.source,
        "given": _told(asked, values),
        "lines": [line.told() for line in result.lines],
        "cautions": [each.told() for each in sorted(result.cautions, key=_weight)],
    }


def _weight(caution: Caution) -> int:
    return WEIGHTS.index(caution.word)


def _name_ask(asked: Working, refused: TradeError) -> None:
    """The ask that a rule's refusal is about, by the name of the argument."""
    named = refused.facts.get("what") or refused.facts.get("argument") or ""
    plain = re.sub(r"[ _]", "-", str(named))
    word = asked.blames.get(refused.code) or asked.blames.get(plain, plain)
    if word in asked.by_name:
        refused.facts.setdefault("about", word)


def _told(asked: Working, values: Given) -> dict[str, object]:
    told: dict[str, object] = {}
    for ask in asked.asks:
        if values.has(ask.name):
            several = [_plain(each) for each in values.values[ask.name]]
            told[ask.name] = several if ask.many else several[0]
    return told


def _plain(typed: Typed) -> dict[str, str] | str:
    return {"value": typed.value, "unit": typed.unit} if typed.unit else typed.value
