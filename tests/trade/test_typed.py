"""Amounts as people type them: kept as typed, read as wanted, refused where two readings exist."""

from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from witnessmark.errors import TradeError
from witnessmark.trade import typed, units
from witnessmark.trade.unit_errors import NumberTwoMeanings, UnitMissing, UnitTwoMeanings
from witnessmark.trade.unit_spellings import SPELLINGS, TWO_MEANINGS

WANTED = st.sampled_from(sorted(units.UNIT_WORDS))
NUMBERS = st.decimals(min_value="0.001", max_value=9999, places=2).map(str)


@st.composite
def amounts_and_words(draw: st.DrawFn) -> tuple[str, str, str]:
    wanted = draw(WANTED)
    return draw(NUMBERS), draw(st.sampled_from(sorted(units.UNIT_WORDS[wanted]))), wanted


@settings(deadline=None)
@given(amounts_and_words(), st.sampled_from(["", " ", "\u00a0"]))
def test_every_word_of_the_lists_is_read_behind_its_number(
    amount: tuple[str, str, str], between: str
) -> None:
    number, word, wanted = amount
    between = " " if word.startswith("1/") else between
    read = typed.read(f"{number}{between}{word}", wanted)
    assert (read.value, read.unit) == (number, word)
    assert Fraction(read.number) == Fraction(number)


@settings(deadline=None)
@given(amounts_and_words())
def test_a_comma_reads_as_a_point(amount: tuple[str, str, str]) -> None:
    number, word, wanted = amount
    with_comma = typed.read(f"{number.replace('.', ',')} {word}", wanted)
    assert with_comma.number == typed.read(f"{number} {word}", wanted).number
    assert with_comma.value == number.replace(".", ",")


@settings(deadline=None)
@given(st.integers(0, 40), st.integers(0, 11), st.integers(0, 63))
def test_feet_and_inches_come_out_exactly(feet: int, inches: int, parts: int) -> None:
    read = typed.read(f"{feet}' {inches} {parts}/64\"", "length")
    assert Fraction(read.number) == feet * 12 + inches + Fraction(parts, 64)
    assert read.unit == "in"


@settings(deadline=None)
@given(st.text(max_size=14), WANTED)
def test_any_text_is_read_or_refused_with_a_code(text: str, wanted: str) -> None:
    read, code = None, "unit"
    try:
        read = typed.read(text, wanted)
    except TradeError as refused:
        code = refused.code
    assert code.split("-")[0] in {"number", "unit", "units", "temperature"}
    if read:
        assert units.quantity_of(read.unit) == wanted
        assert read.measured.number == float(read.number)


def test_no_spelling_of_one_unit_is_a_spelling_of_another() -> None:
    for wanted, words in SPELLINGS.items():
        listed = [each for spellings in words.values() for each in spellings]
        either = [each for pair in TWO_MEANINGS.get(wanted, {}).values() for each in pair]
        assert len(listed) == len(set(listed)), wanted
        assert not set(listed) & set(either), wanted
        assert set(words) <= set(units.UNIT_WORDS[wanted])


def test_pounds_alone_are_no_torque_and_both_meanings_are_named() -> None:
    with pytest.raises(UnitTwoMeanings) as refused:
        typed.read("35 lb", "torque")
    assert "lbf·ft or lbf·in" in refused.value.sentence


def test_digits_in_threes_are_named_both_ways_with_their_unit() -> None:
    with pytest.raises(NumberTwoMeanings) as refused:
        typed.read("1,250 mm", "length")
    assert "1.250 mm or 1250 mm" in refused.value.sentence


@pytest.mark.parametrize(
    ("text", "style", "mm"), [("3.850 in", None, 97.79), ("1,250 mm", ",", 1.25)]
)
def test_an_amount_that_was_read_is_not_asked_about_again(
    text: str, style: str | None, mm: float
) -> None:
    read = typed.read(text, "length", decimal_sign=style)
    assert units.magnitude(read.quantity, "mm") == pytest.approx(mm, rel=1e-12)


def test_a_bare_number_is_asked_for_one_of_the_units() -> None:
    with pytest.raises(UnitMissing) as refused:
        typed.read("35", "torque")
    assert "N·m, lbf·ft, lbf·in, kgf·m" in refused.value.next
