"""How far a bolt stretches under load, section by section, and the load from its stretch."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from witnessmark.trade import alike, amounts, units
from witnessmark.trade.thread import Thread, stress_area_mm2
from witnessmark.trade.units import Quantity, magnitude, quantity


@dataclass(frozen=True, slots=True)
class Section:
    """A piece of the bolt that carries the whole load: its length and its area."""

    length: Quantity
    area: Quantity


def give(sections: Sequence[Section]) -> float:
    """Σ L/A in 1/mm: the sections are springs in series.

    raises: NotACount without a section; as amounts; WrongQuantity.
    source: definition
    >>> give([Section(quantity(40, "mm"), quantity(50, "mm²"))])
    0.8
    """
    amounts.count(len(alike.many(sections, "sections")), "number of sections", 1)
    parts = [
        amounts.above_zero(
            magnitude(amounts.kind(each, Section, "section").length, "mm"), "length of a section"
        )
        / amounts.above_zero(magnitude(each.area, "mm²"), "area of a section")
        for each in sections
    ]
    return math.fsum(parts)


@units.check("force", "pressure", None)
def stretch(load: Quantity, modulus: Quantity, sections: Sequence[Section]) -> Quantity:
    """ΔL = F/E Σ L/A, within the elastic range.

    raises: as amounts: modulus, load, lengths and areas must be above zero.
    source: Hooke's law
    >>> shank = Section(quantity(40, "mm"), quantity(50.265, "mm²"))
    >>> round(magnitude(stretch(quantity(20, "kN"), quantity(205, "GPa"), [shank]), "mm"), 4)
    0.0776
    """
    force = amounts.above_zero(magnitude(load, "N"), "load")
    stiff = amounts.above_zero(magnitude(modulus, "MPa"), "modulus")
    return quantity(force / stiff * give(sections), "mm")


@units.check("length", "pressure", None)
def load(stretched: Quantity, modulus: Quantity, sections: Sequence[Section]) -> Quantity:
    """F = ΔL E/Σ L/A, the way back; within the elastic range.

    raises: as stretch.
    source: Hooke's law
    >>> shank = Section(quantity(45, "mm"), quantity(44.18, "mm²"))
    >>> round(magnitude(load(quantity(0.15, "mm"), quantity(205, "GPa"), [shank]), "kN"), 2)
    30.19
    """
    longer = amounts.above_zero(magnitude(stretched, "mm"), "stretch")
    stiff = amounts.above_zero(magnitude(modulus, "MPa"), "modulus")
    return quantity(longer * stiff / give(sections), "N")


@units.check("pressure", None)
def stiffness(modulus: Quantity, sections: Sequence[Section]) -> Quantity:
    """E/Σ L/A: the load for each millimetre of stretch.

    raises: as stretch.
    source: Hooke's law
    >>> shank = Section(quantity(40, "mm"), quantity(50, "mm²"))
    >>> round(magnitude(stiffness(quantity(200, "GPa"), [shank]), "N/mm"))
    250000
    """
    stiff = amounts.above_zero(magnitude(modulus, "MPa"), "modulus")
    return quantity(stiff / give(sections), "N/mm")


@units.check(None, "length", "length", "length")
def bolt(
    threaded: Thread, shank: Quantity, free_thread: Quantity, waist: Quantity | None = None
) -> tuple[Section, ...]:
    """The sections of a bolt as a caliper finds it: shank, and thread that is in no nut.

    shank or free_thread may be nothing, not both; waist: the diameter of a reduced shank. What
    head and nut give is left out, so the real stretch is somewhat more.
    raises: as amounts; NotACount where both lengths are nothing.
    source: definition; stress area as in thread
    >>> from witnessmark.trade.thread_text import parse
    >>> [round(magnitude(each.area, "mm²"), 2) for each in
    ...     bolt(parse("M10"), quantity(30, "mm"), quantity(12, "mm"))]
    [78.54, 57.99]
    """
    amounts.kind(threaded, Thread, "thread")
    across = threaded.diameter_mm if waist is None else magnitude(waist, "mm")
    areas = (math.pi / 4 * amounts.above_zero(across, "waist") ** 2, stress_area_mm2(threaded))
    lengths = (
        amounts.not_below_zero(magnitude(shank, "mm"), "shank"),
        amounts.not_below_zero(magnitude(free_thread, "mm"), "free thread"),
    )
    found = tuple(
        Section(quantity(length, "mm"), quantity(area, "mm²"))
        for length, area in zip(lengths, areas, strict=True)
        if length
    )
    amounts.count(len(found), "number of sections", 1)
    return found
