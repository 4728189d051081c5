"""Preload: what a torque does to its bolt, and whether it can be meant as it stands."""

from __future__ import annotations

from witnessmark.trade import lubricant, plausibility, preload, strength, units
from witnessmark.trade.lubricant import NutFactors
from witnessmark.trade.thread import Thread
from witnessmark.trade.units import Quantity
from witnessmark.trade.workings import bolts, lines
from witnessmark.trade.workings.cautions import Caution, caution
from witnessmark.trade.workings.given import Given
from witnessmark.trade.workings.working import Ask, Line, Result, Working

_SHARES = {"share", "share_as_typed", "share_high", "change"}


def work(given: Given) -> Result:
    """Band of the preload, its share of proof where the class is known, and cautions."""
    threaded, factors = bolts.threaded(given), _factors(given)
    ends = preload.band(
        given.amount("torque"),
        given.share("deviation"),
        factors.low,
        factors.high,
        threaded.diameter,
    )
    band = (ends.low, ends.mid, ends.high)
    mark = None if given.has("nut-factor") else "rule-of-thumb"
    unit = bolts.force_unit(given, "torque")
    low, mid, high = (units.magnitude(each, unit) for each in band)
    return Result(
        (
            lines.amount("preload", mid, unit, band=(low, high), mark=mark),
            *_of_proof(given, threaded, band, mark),
            *_nut_factors(given, factors),
        ),
        (*_cautions(given, threaded), caution("preload-thumb")),
    )


def _state(given: Given, name: str) -> str | None:
    """The lubricant state as the rules name it; None where it is not known."""
    return lubricant.state_of(given.word(name)) if given.has(name) else None


def _factors(given: Given) -> NutFactors:
    if given.has("nut-factor"):
        return NutFactors("given", given.number("nut-factor"), given.number("nut-factor"))
    state = _state(given, "lubricant")
    return (state and lubricant.find(state)) or lubricant.ANY


def _of_proof(
    given: Given, threaded: Thread, band: tuple[Quantity, ...], mark: str | None
) -> tuple[Line, ...]:
    if not given.has("class"):
        return ()
    proof = strength.loads(threaded, given.word("class")).proof_load
    load = units.magnitude(proof, "N")
    low, mid, high = (units.magnitude(each, "N") / load for each in band)
    unit = bolts.force_unit(given, "torque")
    return (
        lines.share("share-of-proof", mid, band=(low, high), mark=mark),
        lines.amount("proof-load", units.magnitude(proof, unit), unit, mark="table-value"),
    )


def _nut_factors(given: Given, factors: NutFactors) -> tuple[Line, ...]:
    if given.has("nut-factor"):
        return ()
    return (lines.span("nut-factor", (factors.low, factors.high), None, 2, mark="rule-of-thumb"),)


def _cautions(given: Given, threaded: Thread) -> tuple[Caution, ...]:
    if not given.has("class"):
        return (caution("preload-no-class"),)
    known = given.has("nut-factor")
    judged = plausibility.plausibility(
        given.measured("torque"),
        threaded,
        given.word("class"),
        state=None if known else _state(given, "lubricant"),
        nut_factor=given.number("nut-factor") if known else None,
        value_for=_state(given, "value-for"),
        then_angle=given.word("then-angle") == "yes",
    )
    return tuple(_said(given, each) for each in judged.cautions)


def _said(given: Given, found: plausibility.Caution) -> Caution:
    """A caution of the rule in the words of the workings."""
    facts = {name: _text(name, fact) for name, fact in found.facts.items() if name not in ("unit",)}
    typed = given.typed("torque")
    facts["typed"] = f"{typed.value} {typed.unit}"
    if "unit" in found.facts:
        facts["value"] = lines.text(float(found.facts["value"]), str(found.facts["unit"]))
    return caution(f"preload-{found.code}", word=found.word, facts=facts)


def _text(name: str, fact: float | str) -> str:
    if isinstance(fact, str):
        return fact
    sign = "+" if name == "change" and fact > 0 else ""
    return f"{sign}{lines.shown(fact * 100, 0)} %" if name in _SHARES else ""


PRELOAD = Working(
    name="preload",
    says="What a torque does to its bolt, and whether the number may be a slip.",
    formula="preload = torque ÷ (nut factor × diameter); "
    "band: wrench and friction at their worst together",
    source="T = K F d. Proof loads: tables of ISO 898-1:2013 and SAE J429; pitches: ISO 261 and "
    "ASME B1.1, quoted from memory. Nut factors: common practice, no source.",
    asks=(
        Ask("thread", "designation"),
        bolts.CLASS,
        Ask("torque", "torque", unit="N·m"),
        Ask("lubricant", "choice", choices=bolts.STATES, default="unknown"),
        Ask("deviation", "share", default="4"),
        Ask("value-for", "choice", choices=bolts.STATES, default="unknown"),
        Ask("then-angle", "choice", choices=("no", "yes"), default="no"),
        Ask("nut-factor", "number", optional=True),
    ),
    work=work,
    blames=bolts.BLAMES,
)
