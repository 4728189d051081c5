"""Threads: written any way they are one thread, and their areas lie where they must."""

import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from witnessmark.errors import TradeError
from witnessmark.trade import strength, thread
from witnessmark.trade.thread_errors import ClassSize, ThreadTwoMeanings
from witnessmark.trade.thread_tables import COARSE, FINE, SERIES
from witnessmark.trade.thread_text import parse
from witnessmark.trade.units import magnitude, quantity

METRIC = [f"M{d:g}" for d in COARSE] + [f"M{d:g}×{p:g}" for d, each in FINE.items() for p in each]
INCH = [f"{size}-{tpi:g}" for table in SERIES.values() for size, tpi in table.items()]


@pytest.mark.parametrize("designation", METRIC + INCH)
def test_a_designation_read_and_written_is_the_same_thread(designation: str) -> None:
    read = parse(designation)
    assert parse(read.designation) == read


@pytest.mark.parametrize("designation", METRIC + INCH)
def test_the_stress_area_lies_between_root_and_pitch_diameter(designation: str) -> None:
    read = parse(designation)
    mean = math.sqrt(thread.stress_area_mm2(read) * 4 / math.pi)
    assert thread.root_diameter_mm(read) < mean < thread.pitch_diameter_mm(read)
    assert thread.minor_diameter_mm(read) > thread.root_diameter_mm(read)


@settings(deadline=None)
@given(st.floats(3, 60), st.floats(0.25, 0.9), st.floats(1.01, 2))
def test_a_finer_pitch_leaves_more_area(diameter: float, pitch: float, times: float) -> None:
    fine = thread.Thread("metric", "M", "fine", diameter, pitch)
    coarse = thread.Thread("metric", "M", "fine", diameter, pitch * times)
    assert thread.stress_area_mm2(fine) > thread.stress_area_mm2(coarse)


@settings(deadline=None)
@given(st.floats(3, 60), st.floats(1.1, 4))
def test_a_thread_twice_as_large_has_four_times_the_area(diameter: float, times: float) -> None:
    one = thread.Thread("metric", "M", "fine", diameter, diameter / 10)
    other = thread.Thread("metric", "M", "fine", diameter * times, diameter / 10 * times)
    expected = thread.stress_area_mm2(one) * times**2
    assert thread.stress_area_mm2(other) == pytest.approx(expected, rel=1e-12)


@settings(deadline=None)
@given(st.text(max_size=20))
def test_any_text_is_a_thread_or_refused_with_a_code(text: str) -> None:
    code = "thread-"
    try:
        parse(text)
    except TradeError as refused:
        code = refused.code
    assert code.startswith("thread-")


@settings(deadline=None)
@given(st.from_regex(r"\A[Mm]? ?[0-9]{1,2}([.,/][0-9]{1,2})? ?[-x×]? ?[0-9]{0,2}\Z"))
def test_what_looks_like_a_thread_is_one_or_refused_with_a_code(text: str) -> None:
    code = "thread-"
    try:
        parse(text)
    except TradeError as refused:
        code = refused.code
    assert code.startswith("thread-")


def test_a_bare_inch_size_names_both_threads_it_can_be() -> None:
    with pytest.raises(ThreadTwoMeanings) as refused:
        parse("7/16")
    assert "7/16-14 or 7/16-20" in refused.value.sentence


@pytest.mark.parametrize("name", [*strength.METRIC, *strength.INCH])
def test_proof_is_below_yield_and_yield_below_tensile(name: str) -> None:
    rows = strength.METRIC.get(name) or strength.INCH[name]
    for row in rows:
        assert row.proof < row.yields < row.tensile
        assert row.over < row.most


def test_a_class_is_refused_by_name_beyond_its_sizes() -> None:
    with pytest.raises(ClassSize, match=r"9\.8 is not made in 18 mm"):
        strength.stresses("9.8", quantity(18, "mm"))


@pytest.mark.parametrize("name", strength.METRIC)
def test_a_load_is_stress_times_area(name: str) -> None:
    read = parse("M10")
    stress = magnitude(strength.stresses(name, read.diameter).proof, "MPa")
    load = magnitude(strength.loads(read, name).proof_load, "N")
    assert load == pytest.approx(stress * thread.stress_area_mm2(read), rel=1e-12)
