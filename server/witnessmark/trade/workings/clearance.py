"""Clearance: the room between a bore and a shaft, how sure it is, and whether it is in a window."""

from __future__ import annotations

from witnessmark.trade import dimension, fit, rule_of_thumb, units
from witnessmark.trade.units import Quantity
from witnessmark.trade.workings import lines
from witnessmark.trade.workings.cautions import Caution, caution
from witnessmark.trade.workings.given import Given
from witnessmark.trade.workings.working import Ask, Line, Result, Working

_READINGS = ("bore", "shaft")
_KINDS = (
    "oil-clearance",
    "piston-to-wall-cast",
    "piston-to-wall-forged",
    "pin",
    "lifter-in-bore",
    "stem-in-guide",
    "ring-side-clearance",
    "rod-side-clearance",
)


def work(given: Given) -> Result:
    """Clearance or interference with its band, and the verdict where there is a window."""
    unit = given.unit("bore")
    sure = [_standard(given, name) for name in _READINGS]
    found = fit.clearance(given.amount("bore"), given.amount("shaft"), *sure)
    room = units.magnitude(found.clearance, unit)
    deviation = 0.0
    if found.standard_uncertainty is not None:
        deviation = fit.COVERAGE * units.magnitude(found.standard_uncertainty, unit)
    places = _places(given, room)
    told, cautions = _verdict(given, found, places)
    thumb, unusual = _usual(given, found, places)
    typed = all(given.has(f"{name}-sure-to") for name in _READINGS)
    return Result(
        (*told, _room(room, deviation, unit, places), *thumb),
        (*cautions, *unusual, *(() if typed else (caution("only-digits"),))),
    )


def _standard(given: Given, name: str) -> Quantity:
    """The standard uncertainty of a reading; half of what it is sure to, or of its last digit."""
    unit = given.unit(name)
    if given.has(f"{name}-sure-to"):
        return units.quantity(given.inside(f"{name}-sure-to", unit) / fit.COVERAGE, unit)
    step = units.quantity(10.0 ** -given.decimals(name), unit)
    return dimension.from_resolution(step)


def _places(given: Given, room: float) -> int:
    """Decimals of the finer of the readings."""
    if given.unit("bore") != given.unit("shaft"):
        return lines.decimals_for(room, 2)
    return max(given.decimals(name) for name in _READINGS)


def _room(room: float, deviation: float, unit: str, places: int) -> Line:
    name, size = ("clearance", room) if room >= 0 else ("interference", -room)
    band = (size - deviation, size + deviation)
    return lines.amount(name, size, unit, figures=2, decimals=places, band=band)


def _verdict(
    given: Given, found: fit.Clearance, places: int
) -> tuple[tuple[Line, ...], tuple[Caution, ...]]:
    if not given.has("least") and not given.has("most"):
        return (), ()
    decision = fit.judge(found, given.amount_or_none("least"), given.amount_or_none("most"))
    unit, window = given.unit("bore"), _window(given)
    cautions = []
    if decision.lies == "outside":
        value = lines.shown(units.magnitude(found.clearance, unit), places)
        cautions.append(caution("clearance-outside", value=f"{value} {unit}", window=window))
    if decision.lies == "too-close-to-call" and found.standard_uncertainty is not None:
        sure = fit.COVERAGE * units.magnitude(found.standard_uncertainty, unit)
        cautions.append(caution("clearance-close", sure=lines.text(sure, unit, 2)))
    if not decision.provable:
        cautions.append(caution("clearance-narrow", window=window))
    return (lines.word("verdict", decision.lies),), tuple(cautions)


def _usual(
    given: Given, found: fit.Clearance, places: int
) -> tuple[tuple[Line, ...], tuple[Caution, ...]]:
    """What such a fit usually has, and a notice where this one does not."""
    if not given.has("kind"):
        return (), ()
    band = rule_of_thumb.plausible(given.word("kind"), found.clearance, given.amount("shaft"))
    unit = given.unit("bore")
    line = lines.usual(band, unit)
    if band.plausible:
        return (line,), ()
    value = lines.shown(units.magnitude(found.clearance, unit), places)
    facts = {"value": f"{value} {unit}", "usual": f"{line.shown} {unit}"}
    return (line,), (caution("fit-unusual", facts=facts),)


def _window(given: Given) -> str:
    """The window as it was typed: "0.03 mm to 0.06 mm", or one end of it."""
    ends = [given.typed(name) if given.has(name) else None for name in ("least", "most")]
    least, most = (f"{end.value} {end.unit}" if end else "" for end in ends)
    if least and most:
        return f"{least} to {most}"
    return f"from {least}" if least else f"up to {most}"


CLEARANCE = Working(
    name="clearance",
    says="Bore less shaft, how sure that is, and whether it lies in the manual’s window.",
    formula="clearance = bore − shaft; U = √(U of bore² + U of shaft²); "
    "inside when at least U away from both ends",
    source="Sure to: JCGM 100:2008 (GUM), 5.1.2. Verdict: decision rule of ISO 14253-1, quoted "
    "from memory. The window is the owner’s. What is usual: common practice, no source.",
    asks=(
        Ask("bore", "length", unit="mm"),
        Ask("shaft", "length", unit="mm"),
        Ask("least", "length", unit="mm", optional=True, signed=True),
        Ask("most", "length", unit="mm", optional=True, signed=True),
        Ask("kind", "choice", choices=_KINDS, optional=True),
        Ask("bore-sure-to", "length", unit="mm", optional=True),
        Ask("shaft-sure-to", "length", unit="mm", optional=True),
    ),
    work=work,
    blames={"limits-crossed": "most"},
)
