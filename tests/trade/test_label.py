"""The check sign of a label catches what hands and eyes get wrong, proved by trying all of it."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from witnessmark.trade import label

SEVENS = st.text(alphabet=label.ALPHABET, min_size=7, max_size=7)


def fits(code: str) -> bool:
    try:
        return label.parse(code) == code
    except label.LabelCheck:
        return False


def single_changes(code: str) -> list[str]:
    return [
        code[:place] + sign + code[place + 1 :]
        for place in range(8)
        for sign in label.ALPHABET
        if sign != code[place]
    ]


def neighbour_swaps(code: str) -> list[str]:
    return [
        code[:place] + code[place + 1] + code[place] + code[place + 2 :]
        for place in range(7)
        if code[place] != code[place + 1]
    ]


@settings(deadline=None)
@given(SEVENS)
def test_every_single_wrong_sign_and_every_swap_of_neighbours_is_caught(seven: str) -> None:
    code = seven + label.check(seven)
    assert fits(code)
    assert len(single_changes(code)) == 248
    assert not [each for each in single_changes(code) if fits(each)]
    assert not [each for each in neighbour_swaps(code) if fits(each)]


def test_no_two_signs_at_two_neighbouring_places_swap_unseen() -> None:
    """Proof over all pairs: the arithmetic is linear, so the other signs may all be noughts."""
    pairs = [(a, b) for a in label.ALPHABET for b in label.ALPHABET if a != b]
    for place in range(6):
        for one, other in pairs:
            seven = "0" * place + one + other + "0" * (5 - place)
            code = seven + label.check(seven)
            swapped = code[:place] + other + one + code[place + 2 :]
            assert not fits(swapped)


@settings(deadline=None)
@given(SEVENS)
def test_a_code_is_read_whatever_way_people_write_it(seven: str) -> None:
    code = seven + label.check(seven)
    typed = label.grouped(code).lower().replace("1", "l").replace("0", "o").replace(" ", "-")
    assert label.parse(typed) == code
    assert label.code_from_text(f"HTTPS://BENCH.LOCAL:8443/L/{code}") == code


def test_the_worked_examples_are_good() -> None:
    assert [fits(code) for code in ("0000001J", "7K3MQ2RJ", "WTNSMRK4")] == [True] * 3


def test_the_sign_that_stands_in_no_code_is_named_with_its_place() -> None:
    with pytest.raises(label.LabelSign) as refused:
        label.parse("7K3M Q2U J")
    assert refused.value.sentence == "U, sign 7, stands in no code."
