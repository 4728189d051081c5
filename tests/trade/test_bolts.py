"""What torque does to a bolt: there and back, in proportion, and in the right direction."""

import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from witnessmark.trade import (
    angle,
    lubricant,
    preload,
    single_use,
    strength,
    stretch,
    thread,
    torque_form,
)
from witnessmark.trade.plausibility import LIKELY_LEAST, LIKELY_MOST, plausibility
from witnessmark.trade.thread_tables import COARSE
from witnessmark.trade.thread_text import parse
from witnessmark.trade.units import TORQUE_WORDS, Measured, magnitude, quantity

FORCES = st.floats(10, 1e6)
FACTORS = st.floats(0.05, 0.5)
DIAMETERS = st.floats(2, 64)
RUBS = st.builds(torque_form.Friction, st.floats(0, 0.4), st.floats(0, 0.4))
BOLTS = st.sampled_from([f"M{each:g}" for each in COARSE if 3 <= each <= 39])
CLASSES = st.sampled_from(["4.6", "5.8", "8.8", "10.9", "12.9"])
STATES = st.sampled_from(sorted(lubricant.BANDS))


@settings(deadline=None)
@given(FORCES, FACTORS, DIAMETERS)
def test_nut_factor_form_goes_there_and_back(force: float, factor: float, across: float) -> None:
    diameter = quantity(across, "mm")
    torque = torque_form.torque_by_nut_factor(quantity(force, "N"), factor, diameter)
    back = torque_form.preload_by_nut_factor(torque, factor, diameter)
    assert magnitude(back, "N") == pytest.approx(force, rel=1e-12)


@settings(deadline=None)
@given(FORCES, BOLTS, RUBS)
def test_long_forms_go_there_and_back(force: float, bolt: str, rub: torque_form.Friction) -> None:
    read = parse(bolt)
    screw = torque_form.screw_of(read, quantity(read.diameter_mm * 1.25, "mm"))
    for out, back in (
        (torque_form.torque_by_friction, torque_form.preload_by_friction),
        (torque_form.torque_by_guide, torque_form.preload_by_guide),
    ):
        torque = out(quantity(force, "N"), screw, rub)
        assert magnitude(back(torque, screw, rub), "N") == pytest.approx(force, rel=1e-12)


@settings(deadline=None)
@given(FORCES, BOLTS, RUBS)
def test_the_guidelines_form_is_a_little_below_the_exact_one(
    force: float, bolt: str, rub: torque_form.Friction
) -> None:
    read = parse(bolt)
    screw = torque_form.screw_of(read, quantity(read.diameter_mm * 1.25, "mm"))
    exact = magnitude(torque_form.torque_by_friction(quantity(force, "N"), screw, rub), "N·m")
    guide = magnitude(torque_form.torque_by_guide(quantity(force, "N"), screw, rub), "N·m")
    assert guide <= exact * (1 + 1e-12)
    assert guide >= exact * 0.96


@settings(deadline=None)
@given(BOLTS, CLASSES, st.floats(0, 0.5), st.floats(0.001, 0.4))
def test_more_friction_in_the_thread_leaves_less_preload_at_yield(
    bolt: str, name: str, rub: float, more: float
) -> None:
    read = parse(bolt)
    once = magnitude(preload.at_share_of_yield(read, name, rub), "N")
    less = magnitude(preload.at_share_of_yield(read, name, rub + more), "N")
    assert less < once


@settings(deadline=None)
@given(FORCES, st.floats(0, 0.3), FACTORS, FACTORS, DIAMETERS)
def test_a_band_holds_its_middle_and_grows_with_the_wrench(
    newton_metres: float, off: float, one: float, other: float, across: float
) -> None:
    low, high = sorted((one, other))
    torque, diameter = quantity(newton_metres, "N·m"), quantity(across, "mm")
    found = preload.band(torque, off, low, high, diameter)
    wider = preload.band(torque, off + 0.1, low, high, diameter)
    ends = [magnitude(each, "N") for each in (found.low, found.mid, found.high)]
    assert ends == sorted(ends)
    assert magnitude(wider.low, "N") < ends[0]
    assert magnitude(wider.high, "N") > ends[2]


@settings(deadline=None)
@given(FACTORS, FACTORS)
def test_a_change_of_lubricant_and_back_is_no_change(one: float, other: float) -> None:
    torque, diameter = quantity(50, "N·m"), quantity(10, "mm")
    there = preload.change(torque, diameter, one, other).change
    back = preload.change(torque, diameter, other, one).change
    assert (1 + there) * (1 + back) == pytest.approx(1, rel=1e-12)


@settings(deadline=None)
@given(st.lists(st.floats(1000, 1e5), min_size=2, max_size=20), st.floats(0.1, 10))
def test_scatter_grows_in_proportion(forces: list[float], times: float) -> None:
    one = preload.scatter([quantity(each, "N") for each in forces])
    other = preload.scatter([quantity(each * times, "N") for each in forces])
    assert magnitude(other.mean, "N") == pytest.approx(magnitude(one.mean, "N") * times)
    spread = magnitude(one.standard_deviation, "N") * times
    assert magnitude(other.standard_deviation, "N") == pytest.approx(spread, abs=1e-6)
    assert one.lowest_over_mean <= 1 + 1e-12
    assert one.highest_over_mean >= 1 - 1e-12


SECTIONS = st.lists(
    st.builds(
        lambda length, area: stretch.Section(quantity(length, "mm"), quantity(area, "mm²")),
        st.floats(1, 200),
        st.floats(5, 2000),
    ),
    min_size=1,
    max_size=6,
)


@settings(deadline=None)
@given(FORCES, SECTIONS)
def test_stretch_and_load_go_there_and_back(force: float, bolt: list[stretch.Section]) -> None:
    steel = quantity(205, "GPa")
    longer = stretch.stretch(quantity(force, "N"), steel, bolt)
    assert magnitude(stretch.load(longer, steel, bolt), "N") == pytest.approx(force, rel=1e-12)
    stiff = magnitude(stretch.stiffness(steel, bolt), "N/mm")
    assert stiff * magnitude(longer, "mm") == pytest.approx(force, rel=1e-12)


@settings(deadline=None)
@given(SECTIONS, SECTIONS)
def test_a_longer_bolt_is_softer(bolt: list[stretch.Section], more: list[stretch.Section]) -> None:
    assert stretch.give(bolt + more) == pytest.approx(stretch.give(bolt) + stretch.give(more))


@settings(deadline=None)
@given(st.floats(0.2, 6), st.floats(1, 720), st.floats(0, 0.95))
def test_angle_and_stretch_go_there_and_back(pitch: float, turned: float, joint: float) -> None:
    step = quantity(pitch, "mm")
    longer = angle.stretch_by_angle(step, quantity(turned, "°"), joint)
    assert magnitude(longer, "mm") <= pitch * turned / 360 * (1 + 1e-12)
    back = angle.angle_by_stretch(longer, step, joint)
    assert magnitude(back, "°") == pytest.approx(turned, rel=1e-12)


@settings(deadline=None)
@given(st.floats(1, 2000).map(lambda each: f"{each:.2f}"), BOLTS, CLASSES, STATES)
def test_a_torque_is_judged_alike_in_every_unit(
    number: str, bolt: str, name: str, state: str
) -> None:
    read = parse(bolt)
    in_newtons = plausibility(Measured(number, "N·m"), read, name, state=state)
    for word in TORQUE_WORDS:
        same = magnitude(quantity(float(number), "N·m"), word)
        again = plausibility(Measured(f"{same:.8f}", word), read, name, state=state)
        assert again.share_of_proof == pytest.approx(in_newtons.share_of_proof, rel=1e-6)


@settings(deadline=None)
@given(st.floats(0.1, 5000).map(lambda each: f"{each:.2f}"), BOLTS, CLASSES, STATES)
def test_every_meaning_named_is_a_likely_one_and_stands_beside_a_caution(
    number: str, bolt: str, name: str, state: str
) -> None:
    found = plausibility(Measured(number, "N·m"), parse(bolt), name, state=state)
    for meaning in found.meanings:
        assert LIKELY_LEAST <= meaning.share <= LIKELY_MOST
    assert (found.code == "plausible") == (found.verdict == "plausible")
    assert found.code == "plausible" or found.cautions
    assert found.share_low <= found.share_of_proof <= found.share_high
    assert math.isclose(found.preload_newtons, found.share_of_proof * found.proof_load_newtons)


@settings(deadline=None)
@given(BOLTS, CLASSES, st.floats(0.4, 0.9))
def test_a_usual_torque_is_plausible_and_ten_times_it_is_not(
    bolt: str, name: str, share: float
) -> None:
    read = parse(bolt)
    proof = magnitude(strength.loads(read, name).proof_load, "N")
    torque = share * 0.2 * proof * read.diameter_mm / 1000
    once = plausibility(Measured(f"{torque:.4f}", "N·m"), read, name, nut_factor=0.2)
    tenfold = plausibility(Measured(f"{torque * 10:.4f}", "N·m"), read, name, nut_factor=0.2)
    assert once.code == "plausible"
    assert tenfold.code in ("out-by-ten", "wrong-unit")
    assert "out-by-ten" in {meaning.code for meaning in tenfold.meanings}


@settings(deadline=None)
@given(BOLTS, st.floats(0.36, 0.94))
def test_a_lost_nought_is_named_before_the_unit_that_is_nearly_ten(bolt: str, share: float) -> None:
    tenth = share * 0.2 / 10
    proof = magnitude(strength.loads(parse(bolt), "8.8").proof_load, "N")
    newton_metres = tenth * proof * parse(bolt).diameter_mm / 1000
    found = plausibility(
        Measured(f"{newton_metres:.9f}", "N·m"), parse(bolt), "8.8", nut_factor=0.2
    )
    assert found.verdict == "out by ten?"


def test_a_fastener_used_once_is_not_used_again() -> None:
    assert single_use.use_caution(single_use=True, uses_before=0) is None
    assert single_use.use_caution(single_use=False, uses_before=7) is None
    caution = single_use.use_caution(single_use=True, uses_before=1)
    assert caution is not None
    assert caution.word == "warning"


def test_both_published_area_formulas_are_near_each_other() -> None:
    read = parse("1/2-13")
    metric = thread.stress_area_mm2(read, "metric")
    assert metric == pytest.approx(thread.stress_area_mm2(read, "unified"), rel=0.015)
