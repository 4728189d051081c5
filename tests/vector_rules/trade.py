"""Shared cases of trade: a dict of names to the rule and back to plain JSON."""

from collections.abc import Callable
from typing import Any

from witnessmark.errors import TradeError
from witnessmark.trade import label

Given = dict[str, Any]


def fault(given: Given) -> dict[str, str]:
    try:
        return {"code": label.parse(given["typed"])}
    except TradeError as refused:
        return {"code": refused.code, "says": refused.sentence}


RULES: dict[str, Callable[[Given], Any]] = {
    "label.parse": lambda g: label.parse(g["typed"]),
    "label.fault": fault,
    "label.check": lambda g: label.check(g["seven"]),
    "label.value": lambda g: label.value(g["sign"]),
    "label.code_from_text": lambda g: label.code_from_text(g["text"]),
    "label.grouped": lambda g: label.grouped(g["code"]),
}
