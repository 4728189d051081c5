"""Stretch: how far a bolt of sections stretches under load, or the load from its stretch."""

from __future__ import annotations

import math

from witnessmark.trade import strength, stretch, units
from witnessmark.trade.stretch import Section
from witnessmark.trade.units import Quantity
from witnessmark.trade.workings import bolts, lines
from witnessmark.trade.workings.cautions import Caution, caution
from witnessmark.trade.workings.errors import AskMissing, RowsUneven
from witnessmark.trade.workings.given import Given
from witnessmark.trade.workings.working import Ask, Line, Result, Working


def work(given: Given) -> Result:
    """Stretch or load, stiffness, and the share of proof where thread and class are known."""
    if not given.has("stretched") and not given.has("load"):
        raise AskMissing(ask="load or stretch", about="load")
    sections, modulus = _sections(given), given.amount("modulus")
    if given.has("stretched"):
        force = stretch.load(given.amount("stretched"), modulus, sections)
        unit = bolts.force_unit(given, "stretched")
        first = lines.amount("load", units.magnitude(force, unit), unit)
    else:
        force = given.amount("load")
        unit = "in" if given.unit("load") == "lbf" else "mm"
        longer = units.magnitude(stretch.stretch(force, modulus, sections), unit)
        first = lines.amount("stretch", longer, unit)
    share, cautions = _of_proof(given, force)
    rate = units.magnitude(stretch.stiffness(modulus, sections), "N/mm") / 1000
    stiff = lines.amount("stiffness", rate, "kN/mm")
    return Result((first, *share, stiff), (*cautions, caution("stretch-more")))


def _sections(given: Given) -> list[Section]:
    """Plain lengths by their diameter, and the free thread by its stress area."""
    if given.has("length") != given.has("diameter"):
        raise RowsUneven(row="section", about="length")
    found = []
    if given.has("length"):
        pairs = zip(given.amounts("length"), given.all_in("diameter", "mm"), strict=True)
        found = [Section(length, _area(across)) for length, across in pairs]
    if given.has("free-thread"):
        none = units.quantity(0, "mm")
        found += stretch.bolt(bolts.threaded(given), none, given.amount("free-thread"))
    if not found:
        raise AskMissing(ask="length of a section", about="length")
    return found


def _area(diameter: float) -> Quantity:
    return units.quantity(math.pi / 4 * diameter**2, "mm²")


def _of_proof(given: Given, force: Quantity) -> tuple[tuple[Line, ...], tuple[Caution, ...]]:
    if not given.has("thread") or not given.has("class"):
        return (), ()
    proof = strength.loads(bolts.threaded(given), given.word("class")).proof_load
    share = units.magnitude(force, "N") / units.magnitude(proof, "N")
    over = (caution("stretch-over-proof"),) if share > 1 else ()
    return (lines.share("share-of-proof", share, mark="table-value"),), over


STRETCH = Working(
    name="stretch",
    says="How far a bolt of several sections stretches under load, and back.",
    formula="stretch = load ÷ modulus × Σ (length ÷ area)",
    source="Hooke’s law. Stress area of the free thread: ISO 898-1 or ASME B1.1, quoted from "
    "memory. 205 GPa for steel: common practice, no source.",
    asks=(
        Ask("load", "force", unit="kN", optional=True),
        Ask("stretched", "length", unit="mm", optional=True),
        Ask("length", "length", unit="mm", many=True, optional=True, row="section"),
        Ask("diameter", "length", unit="mm", many=True, optional=True, row="section"),
        Ask("thread", "designation", optional=True),
        Ask("free-thread", "length", unit="mm", optional=True),
        bolts.CLASS,
        Ask("modulus", "pressure", unit="GPa", default="205"),
    ),
    work=work,
    blames=bolts.BLAMES,
)
