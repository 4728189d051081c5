"""Keys of published cases that end in a unit, as amounts by name; results told in every unit."""

from __future__ import annotations

from typing import Any

from witnessmark.trade import units

WORDS = {
    "_mm": "mm", "_in": "in", "_cm": "cm", "_thou": "thou",
    "_cm3": "cm³", "_in3": "in³", "_L": "L", "_mm3": "mm³", "_cc": "cm³",
    "_psi": "psi", "_kPa": "kPa", "_bar": "bar", "_g": "g", "_kg": "kg", "_oz": "oz", "_N": "N",
    "_deg": "°", "_rpm": "1/min", "_s": "s", "_m_s": "m/s", "_ft_min": "ft/min", "_lbf": "lbf",
}  # fmt: skip
ENDINGS = sorted(WORDS, key=len, reverse=True)


def ending(key: str) -> str | None:
    return next((each for each in ENDINGS if key.endswith(each)), None)


def amount(value: Any, word: str) -> Any:
    if isinstance(value, list):
        return [amount(each, word) for each in value]
    return None if value is None else units.quantity(value, word)


def named(given: dict[str, Any]) -> dict[str, Any]:
    """Without its unit each name holds an amount; what has no unit stays as it is."""
    made = {}
    for key, value in given.items():
        suffix = ending(key)
        made[key.removesuffix(suffix or "")] = amount(value, WORDS[suffix]) if suffix else value
    return made


def told(name: str, size: units.Quantity | None) -> dict[str, float]:
    """The amount in every unit a case may ask for."""
    if size is None:
        return {}
    same = {
        suffix: word
        for suffix, word in WORDS.items()
        if size.dimensionality == units.quantity(1.0, word).dimensionality
    }
    return {f"{name}{suffix}": units.magnitude(size, word) for suffix, word in same.items()}
