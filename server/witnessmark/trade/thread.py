"""Threads of fasteners: designations as people write them, diameters and tensile stress area.

Basic profile of ISO 68-1, which unified threads share: H = √3/2 P. Diameters are the basic ones of
ISO 724, without tolerance.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Literal

from witnessmark.trade import amounts, units
from witnessmark.trade.units import Quantity

PITCH_FACTOR = 3 * math.sqrt(3) / 8
MINOR_FACTOR = 5 * math.sqrt(3) / 8
ROOT_FACTOR = {"metric": 17 * math.sqrt(3) / 24, "unified": 0.6875 * math.sqrt(3)}
INCH_AREA_FACTOR = 0.9743
MM_AN_INCH = 25.4


def plain(number: float) -> str:
    """A number without a nought behind its point, as people write sizes.

    source: definition
    >>> plain(8.0), plain(1.25)
    ('8', '1.25')
    """
    return repr(amounts.finite(number, "size")).removesuffix(".0")


Standard = Literal["metric", "unified"]


@dataclass(frozen=True, slots=True)
class Thread:
    """A thread by its nominal diameter and pitch; read one with thread_text.parse."""

    standard: Standard
    size: str
    series: str
    diameter_mm: float
    pitch_mm: float
    threads_per_inch: float | None = None

    def __post_init__(self) -> None:
        if amounts.kind(self.standard, str, "standard") not in ROOT_FACTOR:
            raise amounts.WrongKind(what="standard")
        amounts.above_zero(self.diameter_mm, "diameter")
        amounts.above_zero(self.pitch_mm, "pitch")

    @property
    def designation(self) -> str:
        """As it is written here: M8, M10×1.25, 7/16-20 UNF."""
        if self.standard == "metric":
            coarse = self.series == "coarse"
            return self.size if coarse else f"{self.size}×{plain(self.pitch_mm)}"
        series = self.series.lstrip("8")
        return f"{self.size}-{plain(self.threads_per_inch or 0)} {series}"

    @property
    def diameter(self) -> Quantity:
        """The nominal diameter."""
        return units.quantity(self.diameter_mm, "mm")

    @property
    def pitch(self) -> Quantity:
        """From one thread to the next, which is the lead too: fasteners have one start."""
        return units.quantity(self.pitch_mm, "mm")


@dataclass(frozen=True, slots=True)
class Sizes:
    """Basic diameters and tensile stress area of a thread."""

    pitch_diameter: Quantity
    minor_diameter: Quantity
    root_diameter: Quantity
    stress_area: Quantity


def pitch_diameter_mm(thread: Thread) -> float:
    """d2 = d - 0.649519 P, in millimetres.

    source: ISO 724 (from memory); ASME B1.1, the same basic profile
    >>> from witnessmark.trade.thread_text import parse
    >>> round(pitch_diameter_mm(parse("M8")), 3)
    7.188
    """
    own = amounts.kind(thread, Thread, "thread")
    return own.diameter_mm - PITCH_FACTOR * own.pitch_mm


def minor_diameter_mm(thread: Thread) -> float:
    """d1 = d - 1.082532 P, of the nut thread, in millimetres.

    source: ISO 724 (from memory); ASME B1.1, the same basic profile
    >>> from witnessmark.trade.thread_text import parse
    >>> round(minor_diameter_mm(parse("M8")), 3)
    6.647
    """
    own = amounts.kind(thread, Thread, "thread")
    return own.diameter_mm - MINOR_FACTOR * own.pitch_mm


def root_diameter_mm(thread: Thread) -> float:
    """d3, of the bolt thread: metric d - 1.226869 P, unified (rounded root) d - 1.190785 P; mm.

    source: ISO 898-1, 9.1.6.1 (from memory); ASME B1.1, UNR external thread (from memory)
    >>> from witnessmark.trade.thread_text import parse
    >>> round(root_diameter_mm(parse("M8")), 3)
    6.466
    """
    own = amounts.kind(thread, Thread, "thread")
    return own.diameter_mm - ROOT_FACTOR[own.standard] * own.pitch_mm


def stress_area_mm2(thread: Thread, formula: Standard | None = None) -> float:
    """The tensile stress area in square millimetres, by the formula of its own standard.

    metric: π/4 ((d2 + d3)/2)², d3 of the metric profile. unified: π/4 (D - 0.9743/n)².
    formula: the other standard's may be asked for; they differ by 4 % of a pitch.
    source: ISO 898-1, 9.1.6.1; ASME B1.1 appendix B (both from memory, agree with the tables)
    >>> from witnessmark.trade.thread_text import parse
    >>> round(stress_area_mm2(parse("1/2-13")) / 25.4**2, 4)
    0.1419
    """
    pitch = amounts.kind(thread, Thread, "thread").pitch_mm
    if (formula or thread.standard) == "metric":
        root = thread.diameter_mm - ROOT_FACTOR["metric"] * pitch
        mean = (pitch_diameter_mm(thread) + root) / 2
    else:
        mean = thread.diameter_mm - INCH_AREA_FACTOR * pitch
    return math.pi / 4 * mean**2


def sizes(thread: Thread) -> Sizes:
    """Pitch, minor and root diameter and the tensile stress area, as quantities.

    raises: nothing; a Thread that exists has them.
    source: as the single functions
    >>> from witnessmark.trade.thread_text import parse
    >>> round(units.magnitude(sizes(parse("M8")).stress_area, "mm²"), 2)
    36.61
    """
    return Sizes(
        units.quantity(pitch_diameter_mm(thread), "mm"),
        units.quantity(minor_diameter_mm(thread), "mm"),
        units.quantity(root_diameter_mm(thread), "mm"),
        units.quantity(stress_area_mm2(thread), "mm²"),
    )
