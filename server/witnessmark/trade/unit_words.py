"""The closed lists of unit words: what stands on the screen and on the wire, quantity by quantity.

A word belongs to one quantity only. Text of a person is matched against these lists and never
reaches pint's parser, which reads "35 Nm" as a textile unit; and pint cannot tell torque from
energy, so the quantity's name carries the meaning.
"""

from __future__ import annotations

UNIT_WORDS: dict[str, dict[str, str]] = {
    "torque": {
        "N·m": "newton * meter",
        "lbf·ft": "pound_force * foot",
        "lbf·in": "pound_force * inch",
        "kgf·m": "kilogram_force * meter",
    },
    "angle": {"°": "degree", "turn": "turn"},
    "force": {"N": "newton", "kN": "kilonewton", "lbf": "pound_force", "kgf": "kilogram_force"},
    "length": {
        "mm": "millimeter",
        "µm": "micrometer",
        "cm": "centimeter",
        "m": "meter",
        "in": "inch",
        "thou": "thou",
        "ft": "foot",
    },
    "area": {"mm²": "millimeter ** 2", "cm²": "centimeter ** 2", "in²": "inch ** 2"},
    "pressure": {
        "kPa": "kilopascal",
        "bar": "bar",
        "psi": "pound_force / inch ** 2",
        "kgf/cm²": "kilogram_force / centimeter ** 2",
        "MPa": "megapascal",
        "GPa": "gigapascal",
        "ksi": "kip_per_square_inch",
    },
    "volume": {
        "cm³": "centimeter ** 3",
        "in³": "inch ** 3",
        "L": "liter",
        "mm³": "millimeter ** 3",
    },
    "mass": {"g": "gram", "kg": "kilogram", "oz": "ounce", "lb": "pound"},
    "temperature": {"°C": "degree_Celsius", "°F": "degree_Fahrenheit"},
    "temperature-difference": {
        "Δ°C": "delta_degree_Celsius",
        "Δ°F": "delta_degree_Fahrenheit",
        "K": "kelvin",
    },
    "expansion": {
        "µm/(m·K)": "micrometer / meter / kelvin",
        "1/K": "1 / kelvin",
    },
    "flow": {
        "cm³/min": "centimeter ** 3 / minute",
        "L/min": "liter / minute",
        "L/h": "liter / hour",
        "in³/min": "inch ** 3 / minute",
    },
    "speed": {"1/min": "1 / minute"},
    "travel-speed": {"m/s": "meter / second", "ft/min": "foot / minute"},
    "spring-rate": {"N/mm": "newton / millimeter", "lbf/in": "pound_force / inch"},
    "time": {"s": "second", "min": "minute", "h": "hour"},
    "voltage": {"V": "volt", "mV": "millivolt"},
    "resistance": {"Ω": "ohm", "kΩ": "kiloohm"},
    "current": {"A": "ampere", "mA": "milliampere"},
}
"""Quantity → word → the registry's expression for it. "speed" is of turning, rpm in the trade."""
