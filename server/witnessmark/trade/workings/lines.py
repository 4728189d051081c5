"""Lines of a result: numbers with the digits they are worth, their band, and another unit."""

from __future__ import annotations

from witnessmark.trade import rule_of_thumb, units
from witnessmark.trade.workings.working import Line

OTHER = {
    "N·m": "lbf·ft", "lbf·ft": "N·m", "lbf·in": "N·m", "kgf·m": "N·m",
    "N": "lbf", "kN": "lbf", "lbf": "kN", "kgf": "N",
    "mm": "in", "in": "mm", "µm": "thou", "thou": "µm", "cm": "in", "m": "ft", "ft": "m",
    "cm³": "in³", "in³": "cm³", "L": "in³", "mm³": "in³",
    "kPa": "psi", "bar": "psi", "psi": "kPa", "kgf/cm²": "psi", "MPa": "ksi", "ksi": "MPa",
    "g": "oz", "kg": "lb", "oz": "g", "lb": "kg", "°C": "°F", "°F": "°C",
}  # fmt: skip
"""The unit that is shown beside another one."""


def shown(value: float, decimals: int) -> str:
    """The number with so many decimals; a hair of the last float never tips it over a half."""
    return units.rounded(float(f"{value:.12g}"), decimals)


def decimals_for(value: float, figures: int) -> int:
    """How many decimals show a number with so many significant figures."""
    size, whole, power = abs(float(f"{value:.12g}")), 1, 10.0
    if size == 0:
        return figures - 1
    while size >= power:
        whole, power = whole + 1, power * 10
    power = 1.0
    while size < power:
        whole, power = whole - 1, power / 10
    return max(0, figures - whole)


def amount(
    name: str,
    value: float,
    unit: str | None = None,
    *,
    figures: int = 3,
    decimals: int | None = None,
    band: tuple[float, float] | None = None,
    mark: str | None = None,
) -> Line:
    """A number of a unit, with its band from least to most."""
    places = decimals_for(value, figures) if decimals is None else decimals
    between = (shown(band[0], places), shown(band[1], places)) if band else None
    return Line(
        name=name,
        value=value,
        unit=unit,
        low=band[0] if band else None,
        high=band[1] if band else None,
        shown=shown(value, places),
        between=between,
        other=_other(value, unit, figures),
        mark=mark,
    )


def text(value: float, unit: str, figures: int = 3) -> str:
    """An amount inside a sentence."""
    return f"{shown(value, decimals_for(value, figures))} {unit}"


def share(
    name: str,
    value: float,
    *,
    decimals: int = 0,
    band: tuple[float, float] | None = None,
    mark: str | None = None,
) -> Line:
    """A share, told in per cent."""
    hundred = (band[0] * 100, band[1] * 100) if band else None
    return amount(name, value * 100, "%", decimals=decimals, band=hundred, mark=mark)


def span(
    name: str,
    ends: tuple[float, float],
    unit: str | None,
    figures: int = 3,
    *,
    mark: str | None = None,
) -> Line:
    """From so much to so much, with no value that stands out; its value is the lower end."""
    places = decimals_for(ends[1], figures)
    both = " to ".join(shown(end, places) for end in ends)
    return Line(name, ends[0], unit, low=ends[0], high=ends[1], shown=both, mark=mark)


def usual(band: rule_of_thumb.Band, unit: str) -> Line:
    """What is usual, by a rule of thumb; both ends of its band are known."""
    low, high = (units.magnitude(end, unit) for end in (band.low, band.high) if end is not None)
    return span("usual", (low, high), unit, 2, mark="rule-of-thumb")


def word(name: str, value: str, *, mark: str | None = None) -> Line:
    """A word, such as a verdict."""
    return Line(name=name, value=value, shown=value.replace("-", " "), mark=mark)


def count(name: str, value: int, *, band: tuple[int, int] | None = None) -> Line:
    """A whole number."""
    between = (str(band[0]), str(band[1])) if band else None
    low, high = band or (None, None)
    return Line(name, value, low=low, high=high, shown=str(value), between=between)


def numbers(name: str, value: list[int]) -> Line:
    """Numbers that name pieces of a list, counted from 1."""
    return Line(name=name, value=tuple(value), shown=", ".join(str(each) for each in value))


def _other(value: float, unit: str | None, figures: int) -> str | None:
    if unit not in OTHER:
        return None
    to = OTHER[unit]
    other = units.convert(value, unit, to)
    return f"{shown(other, decimals_for(other, figures))} {to}"
