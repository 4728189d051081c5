"""Published values of the labels' alphabet, and what its check character must catch."""

from typing import Any

from witnessmark.errors import TradeError
from witnessmark.trade import label

GOOD = "WTNSMRK4"
"""A good code of which no two neighbours are alike."""

SIGNS = {label.value(sign): sign for sign in label.ALPHABET}
CHECK_SYMBOLS = label.ALPHABET + "*~$=U"
"""The published symbols, five of which our labels can't carry."""


def of_number(number: int) -> dict[str, str]:
    rest, code = number // 32, SIGNS[number % 32]
    while rest:
        rest, code = rest // 32, SIGNS[rest % 32] + code
    symbol = CHECK_SYMBOLS[number % 37]
    return {"code": code, "with_check": code + symbol, "check_symbol": symbol}


def is_caught(code: str) -> bool:
    try:
        label.parse(code)
    except TradeError:
        return True
    return False


def caught() -> dict[str, int]:
    places = range(len(GOOD))
    changed = [
        GOOD[:at] + sign + GOOD[at + 1 :]
        for at in places
        for sign in {*label.ALPHABET} - {GOOD[at]}
    ]
    swapped = [GOOD[:at] + GOOD[at + 1] + GOOD[at] + GOOD[at + 2 :] for at in places[:-1]]
    return {
        "single_changes": sum(map(is_caught, changed)),
        "neighbour_swaps_at_most": sum(map(is_caught, swapped)),
    }


def by_shape(given: dict[str, Any]) -> dict[str, Any]:
    if "length" in given:
        return caught()
    if "alphabet" in given:
        return {"symbols": "".join(SIGNS[n] for n in range(32)), "check_symbols": CHECK_SYMBOLS}
    if "number" in given:
        return of_number(given["number"])
    read = [label.value(sign) for sign in given["typed"].replace("-", "")]
    return {"read": "".join(SIGNS[n] for n in read)}


TOPICS: dict[str, Any] = {}
BY_SHAPE = by_shape
