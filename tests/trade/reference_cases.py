"""Published and computed check values, each made into calls of the rules it concerns.

A case becomes calls ("rule", given) and a check of their results; both languages run the calls.
"""

from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

from witnessmark.trade import label

Call = tuple[str, dict[str, Any]]
CHECK_SYMBOLS = label.ALPHABET + "*~$=U"


@dataclass(frozen=True)
class Case:
    calls: list[Call]
    check: Callable[[list[Any]], list[tuple[Any, Any]]]
    """From the results of the calls: pairs of what is expected and what came."""


def code(given: dict[str, Any], gives: dict[str, Any]) -> Case:
    if "length" in given:
        changes = given["length"] * (given["alphabet"] - 1)
        expected = (gives["single_changes"], gives["neighbour_swaps_at_most"])
        return Case([], lambda _: [(expected, (changes, given["length"] - 1))])
    if "alphabet" in given:
        values = [value_of(sign) for sign in gives["symbols"]]
        return Case(values, lambda out: [(list(range(32)), out)])
    if "number" in given:
        return number_case(given["number"], gives)
    signs = [value_of(sign) for sign in given["typed"].replace("-", "")]
    if "refused" in gives:
        return Case(signs, lambda out: [(True, {"refused": "label-sign"} in out)])
    return Case(signs, lambda out: [(gives["read"], "".join(label.ALPHABET[n] for n in out))])


def value_of(sign: str) -> Call:
    return "label.value", {"sign": sign}


def number_case(number: int, gives: dict[str, Any]) -> Case:
    symbol = CHECK_SYMBOLS[number % 37]
    if "check_symbol" in gives:
        return Case([], lambda _: [(gives["check_symbol"], symbol)])

    def read(out: list[Any]) -> list[tuple[Any, Any]]:
        folded = sum(value * 32**place for place, value in enumerate(reversed(out)))
        return [(number, folded), (gives["with_check"], gives["code"] + symbol)]

    return Case([value_of(sign) for sign in gives["code"]], read)


RULES = {"label": code}
