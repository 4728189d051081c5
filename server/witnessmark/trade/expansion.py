"""Lengths at 20 °C, the temperature every size is stated at, and at any other."""

from __future__ import annotations

from witnessmark.errors import TradeError
from witnessmark.trade import alike, amounts, units
from witnessmark.trade.units import Quantity

REFERENCE_C = 20.0
TYPICAL = {
    "steel": 11.5,
    "stainless steel": 16.0,
    "grey iron": 10.5,
    "aluminium": 23.0,
    "piston alloy": 20.0,
    "bronze": 18.0,
    "brass": 19.0,
    "magnesium": 26.0,
    "titanium": 8.6,
    "ceramic gauge": 9.3,
}
"""Material → µm per metre and kelvin; typical figures from memory, no authority."""
_COLDEST, _HOTTEST = -100.0, 400.0


class MaterialUnknown(TradeError):
    """No figure for it in the list."""

    code = "expansion-material"
    says = "There is no typical expansion for {material} here."
    next_step = "Choose another material, or type its expansion."


class TemperatureBeyond(TradeError):
    """Outside what the straight line of expansion holds for."""

    code = "expansion-temperature"
    says = "{temperature} °C is beyond what this reckons with, -100 to 400 °C."
    next_step = "Look at the thermometer and its unit."


class ExpansionBeyond(TradeError):
    """More than any material of an engine."""

    code = "expansion-beyond"
    says = "No material of an engine expands by {expansion} µm in each metre and kelvin."
    next_step = "Look at the unit: steel has 11.5."


def typical(material: str) -> Quantity:
    """Typical expansion of a material; a table value from memory, no authority.

    raises: MaterialUnknown.
    source: from memory; steel, aluminium, grey iron and piston alloy agree with the check values
    >>> units.magnitude(typical("steel"), "µm/(m·K)")
    11.5
    """
    if not isinstance(material, str) or material not in TYPICAL:
        raise MaterialUnknown(material=material)
    return units.quantity(TYPICAL[material], "µm/(m·K)")


@units.check("length", "temperature", "expansion")
def length_at_20(length: Quantity, temperature: Quantity, expansion: Quantity) -> Quantity:
    """The length a thing has at 20 °C, from the length it has at a temperature.

    length: as it is there, measured by something that does not expand or was at 20 °C.
    raises: TemperatureBeyond, ExpansionBeyond; NotAboveZero; NoQuantity, WrongQuantity.
    source: ISO 1 (reference temperature); L20 = L / (1 + a (t − 20)), a the expansion
    >>> hot = units.quantity(50, "mm"), units.quantity(32, "°C"), typical("steel")
    >>> round(units.magnitude(length_at_20(*hot), "mm"), 6)
    49.993101
    """
    size = amounts.above_zero(alike.mm(length, "length"), "length")
    return alike.of_mm(size / _growth(temperature, expansion))


@units.check("length", "temperature", "expansion")
def length_at(length_20: Quantity, temperature: Quantity, expansion: Quantity) -> Quantity:
    """The length a thing has at a temperature, from its length at 20 °C.

    raises: as length_at_20.
    source: as length_at_20
    >>> hot = units.quantity(100, "mm"), units.quantity(120, "°C"), typical("aluminium")
    >>> round(units.magnitude(length_at(*hot), "mm"), 6)
    100.23
    """
    size = amounts.above_zero(alike.mm(length_20, "length"), "length")
    return alike.of_mm(size * _growth(temperature, expansion))


@units.check("length", "temperature", "expansion", "temperature", "expansion")
def corrected(
    read: Quantity,
    part_temperature: Quantity,
    part_expansion: Quantity,
    instrument_temperature: Quantity,
    instrument_expansion: Quantity,
) -> Quantity:
    """The length at 20 °C from a reading of an instrument that was not at 20 °C either.

    The instrument's scale has grown, so it reads too little; the part has grown, so there is too
    much of it. Same material at the same temperature: nothing to correct.
    raises: as length_at_20.
    source: ISO 1; L20 = reading (1 + ai (ti − 20)) / (1 + ap (tp − 20)),
    ai and ap the expansions of instrument and part
    >>> warm = units.quantity(30, "°C")
    >>> steel = warm, typical("steel")
    >>> units.magnitude(corrected(units.quantity(54, "mm"), *steel, *steel), "mm")
    54.0
    """
    size = amounts.above_zero(alike.mm(read, "reading"), "reading")
    scale = _growth(instrument_temperature, instrument_expansion)
    return alike.of_mm(size * (scale / _growth(part_temperature, part_expansion)))


@units.check("length", "expansion", "temperature-difference")
def from_temperature(
    length: Quantity, expansion: Quantity, standard_uncertainty: Quantity
) -> Quantity:
    """Standard uncertainty of a length when the temperature itself is known only so well.

    raises: ExpansionBeyond; NotAboveZero, BelowZero; NoQuantity, WrongQuantity.
    source: JCGM 100:2008 (GUM), 5.1.3; u = L a u(t)
    >>> sure = units.quantity(2, "K")
    >>> found = from_temperature(units.quantity(100, "mm"), typical("aluminium"), sure)
    >>> round(units.magnitude(found, "µm"), 6)
    4.6
    """
    size = amounts.above_zero(alike.mm(length, "length"), "length")
    about = units.magnitude(standard_uncertainty, "K")
    return alike.of_mm(size * abs(_alpha(expansion)) * amounts.not_below_zero(about, "uncertainty"))


@units.check("length", "length", "expansion", "expansion", "temperature", "temperature")
def clearance_at(
    clearance: Quantity,
    bore: Quantity,
    bore_expansion: Quantity,
    inner_expansion: Quantity,
    *,
    measured_at: Quantity,
    bore_at: Quantity | None = None,
    inner_at: Quantity | None = None,
) -> Quantity:
    """A clearance at other temperatures than the one bore and inner part were measured at.

    clearance, bore: as measured, both parts at measured_at; interference is below zero.
    bore_at, inner_at: the temperatures asked for; 20 °C where none is given.
    raises: as length_at_20.
    source: as length_at_20, bore and inner part each for itself
    >>> apart, bore = units.quantity(0.05, "mm"), units.quantity(86, "mm")
    >>> grown = typical("grey iron"), units.quantity(21, "µm/(m·K)")
    >>> at_20 = clearance_at(apart, bore, *grown, measured_at=units.quantity(35, "°C"))
    >>> round(units.magnitude(at_20, "mm"), 7)
    0.0635229
    """
    wide = amounts.above_zero(alike.mm(bore, "bore"), "bore")
    inner = amounts.above_zero(wide - alike.mm(clearance, "clearance"), "inner part")
    reference = units.quantity(REFERENCE_C, "°C")
    outer_growth = _growth(reference if bore_at is None else bore_at, bore_expansion)
    inner_growth = _growth(reference if inner_at is None else inner_at, inner_expansion)
    return alike.of_mm(
        wide * outer_growth / _growth(measured_at, bore_expansion)
        - inner * inner_growth / _growth(measured_at, inner_expansion)
    )


def _growth(temperature: Quantity, expansion: Quantity) -> float:
    celsius = units.magnitude(temperature, "°C")
    if not _COLDEST <= celsius <= _HOTTEST:
        raise TemperatureBeyond(temperature=f"{celsius:g}")
    return 1 + _alpha(expansion) * (celsius - REFERENCE_C)


def _alpha(expansion: Quantity) -> float:
    alpha = units.magnitude(expansion, "1/K")
    if not -1e-5 <= alpha <= 2e-4:  # noqa: PLR2004 - from beyond glass to plastics
        raise ExpansionBeyond(expansion=f"{alpha * 1e6:g}")
    return alpha
