"""Published values of units: factors both ways, temperatures, what people type."""

from typing import Any

from witnessmark.trade import typed, units

Given = dict[str, Any]


def converted(given: Given) -> Given:
    if "interval" in given:
        number = units.convert_difference(given["interval"], given["unit"], given["to"])
        return {"interval": number, "unit": given["to"]}
    return {"value": units.convert(given["value"], given["unit"], given["to"]), "unit": given["to"]}


def read(given: Given) -> Given:
    amount = typed.read(given["typed"], given["wanted"])
    gives: Given = {"value": amount.value, "unit": amount.unit}
    for word in units.UNIT_WORDS[given["wanted"]]:
        gives[f"value_{word}"] = units.magnitude(amount.quantity, word)
    return gives


def BY_SHAPE(given: Given) -> Given:  # noqa: N802 - the frame's name for it
    return read(given) if "typed" in given else converted(given)


TOPICS: dict[str, Any] = {}
