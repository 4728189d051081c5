"""Ratio: compression ratio from measured volumes, quench, and what would give another ratio."""

from __future__ import annotations

from witnessmark.trade import compression_ratio, dimension, geometry, rule_of_thumb, units
from witnessmark.trade.compression_ratio import Compression, Cylinder, Unsure
from witnessmark.trade.units import Quantity
from witnessmark.trade.workings import lines
from witnessmark.trade.workings.cautions import Caution, caution
from witnessmark.trade.workings.given import Given
from witnessmark.trade.workings.working import Ask, Line, Result, Working

_MEASURED = (
    "bore",
    "stroke",
    "chamber",
    "gasket-thickness",
    "piston-below-deck",
    "gasket-bore",
    "dish",
    "ring-land",
)
_VOLUMES = ("chamber", "dish", "ring-land")


def work(given: Given) -> Result:
    """Ratio with its band, volumes, quench; displacement and changes where they are asked for."""
    cylinder = Cylinder(**{_key(name): given.amount_or_none(name) for name in _MEASURED})  # type: ignore[arg-type]
    unsure = Unsure(**{_key(name): _standard(given, name) for name in _MEASURED})
    found = compression_ratio.measured(cylinder, unsure)
    volume, length = given.unit("chamber"), given.unit("gasket-thickness")
    band = None if found.low is None or found.high is None else (found.low, found.high)
    quench = _in(found.quench, length)
    return Result(
        (
            lines.amount("ratio", found.ratio, decimals=2, band=band),
            lines.amount("swept", units.magnitude(found.swept, volume), volume, figures=4),
            lines.amount(
                "clearance-volume", units.magnitude(found.clearance_volume, volume), volume
            ),
            *(() if quench is None else (lines.amount("quench", quench, length),)),
            *_displacement(given, cylinder, volume),
            *_changes(given, cylinder, volume, length),
            *_matters(found),
        ),
        (*_cautions(found), *_digits(given), caution("ratio-volumes")),
    )


def _key(name: str) -> str:
    return name.replace("-", "_")


def _in(amount: Quantity | None, unit: str) -> float | None:
    return None if amount is None else units.magnitude(amount, unit)


def _standard(given: Given, name: str) -> Quantity | None:
    """Half of what it is sure to; where that is not typed, only its last digit is doubted."""
    if not given.has(name):
        return None
    sure, unit = "volume-sure-to" if name in _VOLUMES else "length-sure-to", given.unit(name)
    if given.has(sure):
        own = given.inside(sure, unit) / compression_ratio.COVERAGE
        return units.quantity(own, unit)
    return dimension.from_resolution(units.quantity(10.0 ** -given.decimals(name), unit))


def _displacement(given: Given, cylinder: Cylinder, volume: str) -> tuple[Line, ...]:
    if not given.has("cylinders"):
        return ()
    whole = geometry.displacement(cylinder.bore, cylinder.stroke, given.count("cylinders"))
    return (lines.amount("displacement", units.magnitude(whole, volume), volume, figures=4),)


def _changes(given: Given, cylinder: Cylinder, volume: str, length: str) -> tuple[Line, ...]:
    """What each thing alone would have to be; left out where it cannot bring the ratio."""
    if not given.has("wanted-ratio"):
        return ()
    found = compression_ratio.change_for(cylinder, given.number("wanted-ratio"))
    cut = found.deck_cut if units.magnitude(found.deck_cut, "mm") > 0 else None
    wanted = (
        ("gasket-for", found.gasket_thickness, length),
        ("chamber-for", found.chamber, volume),
        ("deck-cut-for", cut, length),
        ("dish-for", found.dish, volume),
    )
    return tuple(
        lines.amount(name, units.magnitude(size, unit), unit)
        for name, size, unit in wanted
        if size is not None
    )


def _matters(found: Compression) -> tuple[Line, ...]:
    if not found.matters or not found.standard_uncertainty:
        return ()
    return (lines.word("matters-most", found.matters[0][0].replace("_", "-")),)


def _digits(given: Given) -> tuple[Caution, ...]:
    typed = given.has("length-sure-to") and given.has("volume-sure-to")
    return () if typed else (caution("only-digits"),)


def _cautions(found: Compression) -> tuple[Caution, ...]:
    if found.quench is None:
        return (caution("ratio-strikes"),)
    if rule_of_thumb.plausible("quench", found.quench).plausible:
        return ()
    return (caution("ratio-quench"),)


RATIO = Working(
    name="ratio",
    says="Compression ratio from measured volumes, quench, and what gives another ratio.",
    formula="ratio = (swept + clearance) ÷ clearance; "
    "clearance = chamber + gasket + deck + dish (− dome) + ring land; quench = deck + gasket",
    source="Definition of the ratio. Sure to: JCGM 100:2008 (GUM), 5.1.2. Usual quench: common "
    "practice, no source.",
    asks=(
        Ask("bore", "length", unit="mm"),
        Ask("stroke", "length", unit="mm"),
        Ask("chamber", "volume", unit="cm³"),
        Ask("gasket-thickness", "length", unit="mm"),
        Ask("piston-below-deck", "length", unit="mm", signed=True),
        Ask("wanted-ratio", "number", optional=True),
        Ask("gasket-bore", "length", unit="mm", optional=True),
        Ask("dish", "volume", unit="cm³", optional=True, signed=True),
        Ask("ring-land", "volume", unit="cm³", optional=True),
        Ask("cylinders", "count", optional=True),
        Ask("length-sure-to", "length", unit="mm", optional=True),
        Ask("volume-sure-to", "volume", unit="cm³", optional=True),
    ),
    work=work,
    blames={"ratio-not-above-one": "wanted-ratio", "ratio-no-clearance-volume": "chamber"},
)
