"""Ring gap: what it is where the ring will run, and what is still to be filed."""

from __future__ import annotations

from witnessmark.trade import fit, units
from witnessmark.trade.units import Quantity
from witnessmark.trade.workings import lines
from witnessmark.trade.workings.cautions import Caution, caution
from witnessmark.trade.workings.given import Given
from witnessmark.trade.workings.working import Ask, Line, Result, Working

USUAL = (0.003, 0.006)
"""Share of the bore; common practice, no source."""


def work(given: Given) -> Result:
    """The gap at the lowest travel, what is to be filed, and the band that is usual."""
    unit, bore = given.unit("gap"), given.amount("bore")
    gap = given.amount("gap")
    if given.has("bore-change"):
        gap = fit.ring_gap_after(gap, given.amount("bore-change"))
    size = units.magnitude(gap, unit)
    places = max(given.decimals("gap"), lines.decimals_for(size, 2))
    usual = [units.convert(given.inside("bore", "mm") * each, "mm", unit) for each in USUAL]
    per_bore = fit.gap_per_bore(gap, bore)
    filing = _to_file(given, gap, unit, places)
    return Result(
        (
            lines.amount("gap", size, unit, figures=2, decimals=places),
            *filing,
            lines.amount("per-bore", per_bore, decimals=4),
            lines.span("usual", (usual[0], usual[1]), unit, 2, mark="rule-of-thumb"),
        ),
        _cautions(given, per_bore, left=any(each.value for each in filing)),
    )


def _to_file(given: Given, gap: Quantity, unit: str, places: int) -> tuple[Line, ...]:
    if not given.has("wanted-gap"):
        return ()
    off = units.magnitude(fit.to_file(gap, given.amount("wanted-gap")), unit)
    return (lines.amount("to-file", off, unit, figures=2, decimals=places),)


def _cautions(given: Given, per_bore: float, *, left: bool) -> tuple[Caution, ...]:
    """left: something is still to be filed, so that the gap is not yet what it will be."""
    found = []
    if per_bore < USUAL[0] and not left:
        found.append(caution("ring-gap-small"))
    if per_bore > USUAL[1]:
        found.append(caution("ring-gap-large"))
    if not given.has("wanted-gap"):
        found.append(caution("ring-gap-manual"))
    return tuple(found)


RING_GAP = Working(
    name="ring-gap",
    says="The gap where the ring will run, and what is still to be filed.",
    formula="gap there = gap + π × bore change; to file = wanted − gap",
    source="geometry of the circle; 0.003 to 0.006 of the bore is common practice, no source",
    asks=(
        Ask("gap", "length", unit="mm"),
        Ask("bore", "length", unit="mm"),
        Ask("wanted-gap", "length", unit="mm", optional=True),
        Ask("bore-change", "length", unit="mm", optional=True, signed=True),
    ),
    work=work,
    blames={"fit-gap-closed": "bore-change"},
)
