"""Every heading has its parts on both sides, and every error a code, a sentence, a next step."""

import re
from pathlib import Path

import pytest
from witnessmark import errors
from witnessmark.log import headings
from witnessmark.log.heading import Heading
from witnessmark.log.merge import keep_both
from witnessmark.log.registry import HEADINGS, HeadingDoubled, collected
from witnessmark.log.shapes import Shape

ROOT = Path(__file__).parents[2]
PHONE = ROOT / "pwa" / "log" / "headings"


@pytest.mark.parametrize("word", sorted(HEADINGS))
def test_each_heading_has_all_its_parts(word: str) -> None:
    stem = word.replace("-", "_")
    assert (Path(headings.__path__[0]) / f"{stem}.py").is_file()
    assert (PHONE / f"{stem}.js").is_file()
    assert f"'./{stem}.js'" in (PHONE / "index.js").read_text(encoding="utf-8")


def test_no_heading_stands_on_the_phone_alone() -> None:
    stems = {path.stem for path in PHONE.glob("*.js")} - {"index"}
    assert {word.replace("-", "_") for word in HEADINGS} == stems


def test_a_word_claimed_twice_stops_the_start() -> None:
    twice = [Heading("pull", schema=Shape, merge=keep_both) for _ in range(2)]
    with pytest.raises(HeadingDoubled, match="under the heading pull"):
        collected(twice)


def subclasses(kind: type[errors.WitnessmarkError]) -> list[type[errors.WitnessmarkError]]:
    own = [found for found in kind.__subclasses__() if found.__module__ == errors.__name__]
    return [*own, *(inner for found in own for inner in subclasses(found))]


def test_every_error_of_the_floor_is_told_whole_and_known_to_the_phone() -> None:
    phone = (ROOT / "pwa" / "errors.js").read_text(encoding="utf-8")
    known = set(re.findall(r"'([a-z]+(?:-[a-z]+)*)'", phone))
    for kind in subclasses(errors.WitnessmarkError):
        assert kind.says.endswith("."), kind
        assert kind.next_step.endswith("."), kind
        assert kind.code in known, kind.code


def test_codes_differ_but_for_a_field_of_an_entry_and_of_a_request() -> None:
    codes = [kind.code for kind in subclasses(errors.WitnessmarkError)]
    twice = {code for code in codes if codes.count(code) > 1}
    assert twice == {"field-shape", "field-missing"}
