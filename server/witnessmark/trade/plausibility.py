"""Whether a typed torque can be meant as it stands: out by ten, another unit, another lubricant?

Plausibility only. A share of proof load by nut factor judges a slip of the keypad, never a manual.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from functools import cache
from typing import Literal

from witnessmark.trade import amounts, lubricant, strength, units
from witnessmark.trade.lubricant import NutFactors
from witnessmark.trade.thread import Thread, stress_area_mm2
from witnessmark.trade.torque_form import nut_factor as possible_nut_factor
from witnessmark.trade.unit_errors import UnitsDiffer
from witnessmark.trade.units import Measured

LEAST, MOST = 0.2, 1.0
"""Shares of proof load between which a torque may be meant as it stands (rule of thumb, ours)."""
LIKELY_LEAST, LIKELY_MOST = 0.35, 0.95
USUAL = 0.65
"""Of several meanings the one nearest to the usual share is named (rule of thumb, ours)."""
SLIP_FIRST = 0.02
"""So much nearer another unit must lie than a slipped decimal sign: kgf·m is nearly ten N·m."""
SLIPPERY = 0.2


@cache
def _newton_metres() -> dict[str, float]:
    return {word: units.convert(1, word, "N·m") for word in units.TORQUE_WORDS}


Word = Literal["notice", "caution", "warning"]
Facts = dict[str, float | str]


@dataclass(frozen=True, slots=True)
class Meaning:
    """Another thing the number may mean, its number and unit, and its share of proof load."""

    code: str
    says: str
    value: float
    unit: str
    share: float


@dataclass(frozen=True, slots=True)
class Caution:
    """A signal word of ISO 3864, a code, and the numbers for the sentence."""

    word: Word
    code: str
    facts: Facts = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class Plausibility:
    """The verdict in words and as a code, the shares of proof load, and what they rest on."""

    verdict: str
    code: str
    share_of_proof: float
    share_low: float
    share_high: float
    preload_newtons: float
    proof_load_newtons: float
    meanings: tuple[Meaning, ...]
    cautions: tuple[Caution, ...]


@dataclass(frozen=True, slots=True)
class _Case:
    torque: Measured
    number: float
    share: float
    factors: NutFactors
    then_angle: bool


def plausibility(
    torque: Measured,
    threaded: Thread,
    property_class: str,
    *,
    state: str | None = None,
    nut_factor: float | None = None,
    value_for: str | None = None,
    then_angle: bool = False,
) -> Plausibility:
    """What a typed torque would do to its bolt, and what else it may mean.

    state: the lubricant on the thread; nut_factor: instead of a state's band. Without both, or
    for a state that nobody has factors for, the band of all states. value_for: the lubricant
    state the manual gives the value for.
    then_angle: an angle follows, so a small torque is no surprise.
    raises: NotAboveZero; UnitsDiffer; FrictionImpossible; as strength.loads.
    source: T = K F d; proof loads of ISO 898-1 and SAE J429 (table values); limits ours
    >>> from witnessmark.trade.thread_text import parse
    >>> plausibility(Measured("600", "N·m"), parse("M10"), "10.9", nut_factor=0.2).verdict
    'out by ten?'
    """
    amounts.kind(threaded, Thread, "thread")
    if amounts.kind(torque, Measured, "torque").unit not in _newton_metres():
        raise UnitsDiffer(unit=torque.unit, other="N·m")
    number = amounts.above_zero(torque.number, "torque")
    factors = _factors(state, nut_factor)
    name = strength.class_of(property_class, threaded.standard)
    proof = strength.proof_stress_mpa(name, threaded.diameter_mm) * stress_area_mm2(threaded)
    over = number * _newton_metres()[torque.unit] * 1000 / threaded.diameter_mm / proof
    case = _Case(torque, number, over / factors.mid, factors, then_angle)
    return _judged(case, proof, state, value_for)


def _judged(case: _Case, proof: float, state: str | None, value_for: str | None) -> Plausibility:
    meanings, factors = _meanings(case), case.factors
    code, verdict = _verdict(case, meanings)
    high = case.share * factors.mid / factors.low
    return Plausibility(
        verdict,
        code,
        case.share,
        case.share * factors.mid / factors.high,
        high,
        case.share * proof,
        proof,
        meanings,
        (*_cautions(case, code, meanings, high), *_states(case, state, value_for)),
    )


def _factors(state: str | None, nut_factor: float | None) -> NutFactors:
    if nut_factor is not None:
        factor = possible_nut_factor(nut_factor)
        return NutFactors("given", factor, factor)
    known = None if state is None else lubricant.find(state)
    return lubricant.ANY if known is None else known


def _meanings(case: _Case) -> tuple[Meaning, ...]:
    """Nearest to the usual share first; none where the torque can be meant as it stands."""
    low = case.share < LEAST and not case.then_angle
    if not low and case.share <= MOST:
        return ()
    unit, number, found = case.torque.unit, case.number, []
    for times in (10.0, 0.1):
        found.append(Meaning("out-by-ten", "out by ten?", number * times, unit, case.share * times))
    for other, size in _newton_metres().items():
        if other != unit:
            times = size / _newton_metres()[unit]
            says = f"{other} taken for {unit}?"
            found.append(Meaning("wrong-unit", says, number, other, case.share * times))
    if case.factors.high <= SLIPPERY and case.factors.state != "given":
        times = case.factors.mid / lubricant.BANDS["dry"].mid
        says = "dry value on an oiled thread?"
        found.append(Meaning("dry-on-oiled", says, number, unit, case.share * times))
    likely = [each for each in found if LIKELY_LEAST <= each.share <= LIKELY_MOST]
    return tuple(sorted(likely, key=_farness))


def _farness(meaning: Meaning) -> float:
    far = abs(meaning.share - USUAL)
    return far + SLIP_FIRST if meaning.code == "wrong-unit" else far


def _verdict(case: _Case, meanings: tuple[Meaning, ...]) -> tuple[str, str]:
    if meanings:
        return meanings[0].code, meanings[0].says
    if case.share > MOST:
        return "above-proof", "above proof load"
    if case.share < LEAST and not case.then_angle:
        return "far-below", "far below the usual"
    return "plausible", "plausible"


def _cautions(
    case: _Case, code: str, meanings: tuple[Meaning, ...], high: float
) -> tuple[Caution, ...]:
    found: list[Caution] = []
    if meanings:
        first = meanings[0]
        facts: Facts = {"value": first.value, "unit": first.unit, "share": first.share}
        found.append(Caution("caution", code, {**facts, "share_as_typed": case.share}))
    if case.share > MOST:
        found.append(Caution("warning", "above-proof", {"share": case.share}))
    elif code == "far-below":
        found.append(Caution("caution", "far-below", {"share": case.share}))
    elif high > MOST:
        facts = {"share": case.share, "share_high": high, "state": case.factors.state}
        found.append(Caution("notice", "may-pass-proof", facts))
    return tuple(found)


def _states(case: _Case, state: str | None, value_for: str | None) -> tuple[Caution, ...]:
    """A caution where the value was given for another state, or nothing is known of the state."""
    if case.factors is lubricant.ANY:
        facts: Facts = {} if state is None else {"state": state}
        return (Caution("notice", "no-nut-factor", facts),)
    assumed, actual = None if value_for is None else lubricant.find(value_for), case.factors
    if actual.state == "given" or assumed is None or assumed.state == actual.state:
        return ()
    change = assumed.mid / actual.mid - 1
    word: Word = "warning" if change > 0 and case.share > MOST else "caution"
    facts = {"value_for": assumed.state, "state": actual.state, "change": change}
    return (Caution(word, "lubricant-differs", facts),)
