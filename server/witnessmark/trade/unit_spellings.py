"""How people write the unit words, squeezed to small letters without dots, blanks and strokes.

Each spelling stands under the quantity that was asked for, so "nm" is no nanometre where a torque
is wanted. What the trade writes for two units is listed with both, and is never guessed.
"""

from __future__ import annotations

from itertools import product

POUND = ("lb", "lbs", "lbf", "pound", "pounds", "#")
KILO = ("kg", "kgf", "kp")
FOOT = ("ft", "foot", "feet")
INCH = ("in", "inch", "inches")
METRE = ("m", "meter", "meters", "metre", "metres")


def _levers(forces: tuple[str, ...], arms: tuple[str, ...]) -> tuple[str, ...]:
    """Force and arm in either order, and with the stroke people put between them."""
    pairs = list(product(forces, arms)) + list(product(arms, forces))
    return tuple(f"{one}{between}{other}" for one, other in pairs for between in ("", "/"))


def _over(above: tuple[str, ...], below: tuple[str, ...]) -> tuple[str, ...]:
    return tuple(f"{one}/{other}" for one, other in product(above, below))


SPELLINGS: dict[str, dict[str, tuple[str, ...]]] = {
    "torque": {
        "N·m": ("nm", *(f"newton{arm}" for arm in METRE)),
        "lbf·ft": _levers(POUND, FOOT),
        "lbf·in": _levers(POUND, INCH),
        "kgf·m": tuple(each for each in _levers(KILO, METRE) if "/" not in each),
    },
    "angle": {
        "°": ("deg", "degs", "degree", "degrees"),
        "turn": ("turns", "rev", "revs", "revolution", "revolutions"),
    },
    "force": {
        "N": ("newton", "newtons"),
        "kN": ("kilonewton", "kilonewtons"),
        "lbf": POUND,
        "kgf": (*KILO, "kilo", "kilos", "kilogram", "kilograms"),
    },
    "length": {
        "mm": ("millimeter", "millimeters", "millimetre", "millimetres"),
        "µm": (
            "um",
            "u",
            "micron",
            "microns",
            "micrometer",
            "micrometers",
            "micrometre",
            "micrometres",
        ),
        "cm": ("centimeter", "centimeters", "centimetre", "centimetres"),
        "m": METRE,
        "in": (*INCH, '"'),
        "thou": ("thous", "thousandth", "thousandths"),
        "ft": (*FOOT, "'"),
    },
    "area": {
        "mm²": ("mm2", "sqmm"),
        "cm²": ("cm2", "sqcm"),
        "in²": ("in2", "sqin", "squareinch", "squareinches"),
    },
    "pressure": {
        "kPa": ("kilopascal", "kilopascals"),
        "bar": ("bars",),
        "psi": ("psig", *POUND, *_over(POUND, ("in2", "sqin")), "poundspersquareinch"),
        "kgf/cm²": (*KILO, *_over(KILO, ("cm2", "sqcm")), "at", "ksc"),
        "MPa": ("n/mm2", "megapascal", "megapascals"),
        "GPa": ("kn/mm2", "gigapascal", "gigapascals"),
        "ksi": ("kpsi",),
    },
    "volume": {
        "cm³": ("cm3", "cc", "ccs", "ccm", "ml", "milliliter", "millilitre", "cubiccentimeters"),
        "in³": ("in3", "cuin", "ci", "cid", "cubicinch", "cubicinches"),
        "L": ("liter", "liters", "litre", "litres", "ltr", "dm3"),
        "mm³": ("mm3",),
    },
    "mass": {
        "g": ("gm", "gms", "gram", "grams", "gramme", "grammes"),
        "kg": ("kgs", "kilo", "kilos", "kilogram", "kilograms"),
        "oz": ("ounce", "ounces"),
        "lb": ("lbs", "pound", "pounds", "#"),
    },
    "temperature": {
        "°C": ("c", "degc", "degreec", "degreesc", "celsius", "centigrade", "degreescelsius"),
        "°F": ("f", "degf", "degreef", "degreesf", "fahrenheit", "degreesfahrenheit"),
    },
    "temperature-difference": {
        "Δ°C": ("°c", "c", "degc", "celsius"),
        "Δ°F": ("°f", "f", "degf", "fahrenheit"),
        "K": ("kelvin",),
    },
    "expansion": {
        "µm/(m·K)": ("um/mk", "um/m/k", "ppm/k", "ppm/°c", "um/m°c", "10⁻⁶/k"),
        "1/K": ("/k", "1/°c", "/°c", "k1"),
    },
    "flow": {
        "cm³/min": ("cc/min", "ml/min", "ccm"),
        "L/min": ("lpm", "liter/min", "litre/min"),
        "L/h": ("lph", "liter/h", "litre/h"),
        "in³/min": ("cuin/min", "ci/min"),
    },
    "speed": {
        "1/min": ("rpm", "rpms", "r/min", "rev/min", "revs/min", "revs", "/min", "min1", "u/min"),
    },
    "travel-speed": {
        "m/s": ("mps", "m/sec", "ms1"),
        "ft/min": ("fpm", "feet/min", "foot/min", "'/min"),
    },
    "spring-rate": {
        "N/mm": ("newton/mm",),
        "lbf/in": tuple(each for each in _over(POUND, INCH) if each != "lbf/in"),
    },
    "time": {
        "s": ("sec", "secs", "second", "seconds"),
        "min": ("mins", "minute", "minutes"),
        "h": ("hr", "hrs", "hour", "hours"),
    },
    "voltage": {"V": ("volt", "volts"), "mV": ("millivolt", "millivolts")},
    "resistance": {"Ω": ("ohm", "ohms"), "kΩ": ("kohm", "kohms", "k")},
    "current": {
        "A": ("amp", "amps", "ampere", "amperes"),
        "mA": ("milliamp", "milliamps", "milliampere", "milliamperes"),
    },
}
"""Quantity → word → further spellings; the word itself, squeezed, is one too."""

TWO_MEANINGS: dict[str, dict[tuple[str, str], tuple[str, ...]]] = {
    "torque": {
        ("lbf·ft", "lbf·in"): POUND,
        ("kgf·m", "kgf·cm"): (*KILO, "kgs", "kilo", "kilos"),
    },
    "length": {("thou", "mm"): ("mil", "mils")},
    "mass": {("gram", "grain"): ("gr", "grs")},
    "temperature": {("°C", "°F"): ("°", "deg", "degs", "degree", "degrees")},
    "temperature-difference": {("Δ°C", "Δ°F"): ("°", "deg", "degs", "degree", "degrees")},
}
"""Quantity → the two units → what is written for either."""

NOT_TAKEN: dict[str, tuple[str, ...]] = {"temperature": ("k", "°k", "degk", "kelvin", "kelvins")}
"""Quantity → what is well known but not read: no thermometer of a workshop shows kelvin."""

AS_WRITTEN: dict[str, dict[tuple[str, str], tuple[str, ...]]] = {
    "pressure": {("MPa", "millipascal"): ("mPa",)}
}
"""Quantity → the two units → what is written for either where capitals are kept apart."""
