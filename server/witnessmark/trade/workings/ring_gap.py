"""Ring gap: what it is where the ring will run, and what is still to be filed."""

from __future__ import annotations

from witnessmark.trade import fit, rule_of_thumb, units
from witnessmark.trade.units import Quantity
from witnessmark.trade.workings import lines
from witnessmark.trade.workings.cautions import Caution, caution
from witnessmark.trade.workings.given import Given
from witnessmark.trade.workings.working import Ask, Line, Result, Working


def work(given: Given) -> Result:
    """The gap at the lowest travel, what is to be filed, and the band that is usual."""
    unit, bore = given.unit("gap"), given.amount("bore")
    gap = given.amount("gap")
    if given.has("bore-change"):
        gap = fit.ring_gap_after(gap, given.amount("bore-change"))
    size = units.magnitude(gap, unit)
    places = max(given.decimals("gap"), lines.decimals_for(size, 2))
    usual = rule_of_thumb.plausible("ring-gap", gap, bore)
    per_bore = fit.gap_per_bore(gap, bore)
    filing = _to_file(given, gap, unit, places)
    return Result(
        (
            lines.amount("gap", size, unit, figures=2, decimals=places),
            *filing,
            lines.amount("per-bore", per_bore, decimals=4),
            lines.usual(usual, unit),
        ),
        _cautions(given, usual, gap, left=any(each.value for each in filing)),
    )


def _to_file(given: Given, gap: Quantity, unit: str, places: int) -> tuple[Line, ...]:
    if not given.has("wanted-gap"):
        return ()
    off = units.magnitude(fit.to_file(gap, given.amount("wanted-gap")), unit)
    return (lines.amount("to-file", off, unit, figures=2, decimals=places),)


def _cautions(
    given: Given, usual: rule_of_thumb.Band, gap: Quantity, *, left: bool
) -> tuple[Caution, ...]:
    """left: something is still to be filed, so that the gap is not yet what it will be."""
    found = []
    small = usual.low is not None and bool(gap < usual.low)
    if not usual.plausible and not (small and left):
        found.append(caution("ring-gap-small" if small else "ring-gap-large"))
    if not given.has("wanted-gap"):
        found.append(caution("ring-gap-manual"))
    return tuple(found)


RING_GAP = Working(
    name="ring-gap",
    says="The gap where the ring will run, and what is still to be filed.",
    formula="gap there = gap + π × bore change; to file = wanted − gap",
    source="Geometry of the circle. Usual gap, 0.003 to 0.006 of the bore: common practice, no "
    "source.",
    asks=(
        Ask("gap", "length", unit="mm"),
        Ask("bore", "length", unit="mm"),
        Ask("wanted-gap", "length", unit="mm", optional=True),
        Ask("bore-change", "length", unit="mm", optional=True, signed=True),
    ),
    work=work,
    blames={"fit-gap-closed": "bore-change"},
)
