"""Property classes of bolts: proof, yield and tensile stress, and the loads of a thread in them.

Table values, not a judgement about the bolt in hand. A class is refused in sizes its table lacks.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from functools import cache, lru_cache

from witnessmark.trade import amounts, units
from witnessmark.trade.thread import MM_AN_INCH, Standard, Thread, plain, stress_area_mm2
from witnessmark.trade.thread_errors import ClassSize, ClassThread, ClassUnknown
from witnessmark.trade.units import Quantity


@cache
def mpa_a_ksi() -> float:
    """How many MPa a thousand pounds per square inch are; reckoned when it is first wanted.

    source: as units.convert
    >>> round(mpa_a_ksi(), 6)
    6.894757
    """
    return units.convert(1, "ksi", "MPa")


@dataclass(frozen=True, slots=True)
class Row:
    """One line of a table: sizes above `over` up to `most`, stresses as printed."""

    over: float
    most: float
    proof: float
    yields: float
    tensile: float


METRIC: dict[str, tuple[Row, ...]] = {
    "4.6": (Row(1.6, 39, 225, 240, 400),),
    "4.8": (Row(1.6, 39, 310, 340, 420),),
    "5.6": (Row(1.6, 39, 280, 300, 500),),
    "5.8": (Row(1.6, 39, 380, 420, 520),),
    "6.8": (Row(1.6, 39, 440, 480, 600),),
    "8.8": (Row(1.6, 16, 580, 640, 800), Row(16, 39, 600, 660, 830)),
    "9.8": (Row(1.6, 16, 650, 720, 900),),
    "10.9": (Row(1.6, 39, 830, 940, 1040),),
    "12.9": (Row(1.6, 39, 970, 1100, 1220),),
}
"""MPa by diameter in mm: ISO 898-1:2013, table 3 (8.8, 10.9, 12.9 fetched, else from memory)."""

INCH: dict[str, tuple[Row, ...]] = {
    "SAE 1": (Row(0.25, 1.5, 33, 36, 60),),
    "SAE 2": (Row(0.25, 0.75, 55, 57, 74), Row(0.75, 1.5, 33, 36, 60)),
    "SAE 4": (Row(0.25, 1.5, 65, 100, 115),),
    "SAE 5": (Row(0.25, 1, 85, 92, 120), Row(1, 1.5, 74, 81, 105)),
    "SAE 5.2": (Row(0.25, 1, 85, 92, 120),),
    "SAE 7": (Row(0.25, 1.5, 105, 115, 133),),
    "SAE 8": (Row(0.25, 1.5, 120, 130, 150),),
    "SAE 8.1": (Row(0.25, 1.5, 120, 130, 150),),
    "SAE 8.2": (Row(0.25, 1, 120, 130, 150),),
}
"""ksi by diameter in inches: SAE J429, table 1 (2, 5, 8 fetched, the rest from memory)."""

_CLASS = re.compile(
    r"(?:(sae)(?:\s*j429)?\s*|(?:sae\s*)?(?:j429\s*)?(gr\.?|grade|class|cl\.?)\s*)?([0-9.]+)"
)


@dataclass(frozen=True, slots=True)
class Stresses:
    """The three stresses of a class in one size, in the unit its table is printed in."""

    property_class: str
    proof: Quantity
    yields: Quantity
    tensile: Quantity


@dataclass(frozen=True, slots=True)
class Loads:
    """What a thread of a class holds: proof load, load at yield, least load at break."""

    proof_load: Quantity
    yield_load: Quantity
    ultimate_load: Quantity


def class_of(typed: str, standard: Standard | None = None) -> str:
    """The name of a property class as people write it: "8.8", "SAE 8".

    "grade 8" and a bare 8 are SAE classes, 8.8 and 10,9 are metric.
    raises: ClassUnknown; ClassThread where the thread's standard has no such class.
    source: ISO 898-1, SAE J429 (names)
    >>> class_of("10,9"), class_of("Gr. 5"), class_of("SAE J429 grade 8")
    ('10.9', 'SAE 5', 'SAE 8')
    """
    if standard is not None:
        amounts.kind(standard, str, "standard")
    return _class_of(typed.strip() if isinstance(typed, str) else "", standard)


@lru_cache(maxsize=256)
def _class_of(text: str, standard: Standard | None) -> str:
    found = _CLASS.fullmatch(re.sub("([0-9]),([0-9])", r"\1.\2", text.lower()))
    number = found[3] if found else ""
    name = number if number in METRIC and not (found and found[1]) else f"SAE {number}"
    if name not in METRIC and name not in INCH:
        raise ClassUnknown(typed=text[:20])
    if standard is not None and (standard == "metric") != (name in METRIC):
        raise ClassThread(name=name, thread=f"{standard} threads")
    return name


def _row(name: str, diameter_mm: float) -> Row:
    amounts.finite(diameter_mm, "diameter")
    if not isinstance(name, str) or name not in METRIC | INCH:
        raise ClassUnknown(typed=name)
    rows, size, unit = (
        (METRIC[name], diameter_mm, "mm")
        if name in METRIC
        else (INCH[name], diameter_mm / MM_AN_INCH, "in")
    )
    hair = 1e-9 * size
    for row in rows:
        if size <= row.most + hair and size >= rows[0].over - hair:
            return row
    raise ClassSize(
        name=name,
        size=f"{plain(round(size, 4))} {unit}",
        least=f"{plain(rows[0].over)} {unit}",
        most=f"{plain(rows[-1].most)} {unit}",
    )


def proof_stress_mpa(name: str, diameter_mm: float) -> float:
    """The proof stress of a class (as class_of names it) in MPa, for computing.

    raises: ClassSize.
    source: as stresses
    >>> proof_stress_mpa("8.8", 16), proof_stress_mpa("8.8", 18)
    (580, 600)
    """
    return _row(name, diameter_mm).proof * (1 if name in METRIC else mpa_a_ksi())


def yield_stress_mpa(name: str, diameter_mm: float) -> float:
    """The yield stress (lower yield or 0.2 %) of a class in MPa, for computing.

    raises: ClassSize.
    source: as stresses
    >>> yield_stress_mpa("10.9", 10)
    940
    """
    return _row(name, diameter_mm).yields * (1 if name in METRIC else mpa_a_ksi())


@units.check(None, "length")
def stresses(property_class: str, diameter: Quantity) -> Stresses:
    """Proof, yield and tensile stress of a class in one size. A boundary belongs to the lower line.

    Metric classes in MPa, SAE classes in psi, as printed.
    raises: ClassUnknown; ClassSize beyond the table (9.8 above 16 mm, SAE 5.2 above 1 in…).
    source: ISO 898-1:2013, table of mechanical properties; SAE J429, table 1. Table values
    >>> units.magnitude(stresses("SAE 5", units.quantity(1.125, "in")).proof, "psi")
    74000.0
    """
    name = class_of(property_class)
    row = _row(name, amounts.above_zero(units.magnitude(diameter, "mm"), "diameter"))
    unit, times = ("MPa", 1) if name in METRIC else ("psi", 1000)
    proof, yields, tensile = (
        units.quantity(each * times, unit) for each in (row.proof, row.yields, row.tensile)
    )
    return Stresses(name, proof, yields, tensile)


def loads(thread: Thread, property_class: str) -> Loads:
    """Proof, yield and least breaking load: stress × tensile stress area.

    raises: ClassUnknown; ClassSize; ClassThread (10.9 on an inch thread).
    source: ISO 898-1:2013, tables of loads; SAE J429. The tables round area and load
    >>> from witnessmark.trade.thread_text import parse
    >>> round(units.magnitude(loads(parse("M8"), "8.8").proof_load, "kN"), 1)
    21.2
    """
    name = class_of(property_class, amounts.kind(thread, Thread, "thread").standard)
    row = _row(name, thread.diameter_mm)
    times = stress_area_mm2(thread) * (1 if name in METRIC else mpa_a_ksi())
    proof, yields, ultimate = (
        units.quantity(each * times, "N") for each in (row.proof, row.yields, row.tensile)
    )
    return Loads(proof, yields, ultimate)
