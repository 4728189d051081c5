"""The compiled checker and the marshmallow schema it is made from take and refuse the same."""

import copy
import json
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from marshmallow import Schema, ValidationError, fields
from witnessmark.errors import FieldMissing, FieldShape
from witnessmark.log.checker import Check, compiled, finder
from witnessmark.log.entry import EntrySchema, take
from witnessmark.log.registry import HEADINGS
from witnessmark.log.shapes import Leaf, Lines, Word

VECTORS = Path(__file__).parents[2] / "fixtures" / "vectors" / "log_entry.json"
MANY = settings(max_examples=300, deadline=None, derandomize=True, database=None)
SHAPES = {"entry": EntrySchema, **{word: found.schema for word, found in HEADINGS.items()}}
ODD: tuple[Any, ...] = (
    None, True, 0, 1, -1, "", " ", "x", "45", "4x", "a" * 65, [], [1], [None], {}, {"value": "1"},
    "use", "click", "bag", "hand", "0" * 64, "7K3MQ2RJ", [{}], ["x"], [{"photo": "0" * 64}],
    "01c185379c5f-0003", "01c18537-9c5f-7b3a-9e55-2f6f5c1f0a11", ["e"] * 9,
    ["0.5000", "1.0000"], ["0.5000"], ["0.5000", 1],
)  # fmt: skip


def taken_by_schema(shape: type[Schema], value: Any) -> bool:
    try:
        shape().load(value)
    except ValidationError:
        return False
    return True


def taken_by_checker(check: Check, find: Check, value: Any) -> bool:
    """What the fast check says, which must be what asking field after field says."""
    trouble = check(value)
    assert find(value) == trouble
    return trouble is None


def good(field: fields.Field[Any]) -> Any:
    """A value the field takes."""
    if isinstance(field, Lines):
        return [good(field.inner)]
    if isinstance(field, fields.Nested):
        return whole(type(field.schema))
    if isinstance(field, Word):
        return min(field.words)
    assert isinstance(field, Leaf)
    taken = (value for value in ODD if value is not None and field.trouble(value) is None)
    return copy.deepcopy(next(taken))  # what is made wrong afterwards is not the one in the list


def whole(shape: type[Schema]) -> dict[str, Any]:
    """A value of the shape with every field filled."""
    return {field.data_key or name: good(field) for name, field in shape().fields.items()}


def places(value: Any) -> list[tuple[Any, Any]]:
    """Every container inside a value with each of its keys."""
    pairs = list(value.items()) if isinstance(value, dict) else list(enumerate(value))
    found = [(value, key) for key, _ in pairs]
    for _, inner in pairs:
        if isinstance(inner, dict | list):
            found += places(inner)
    return found


@pytest.mark.parametrize("word", SHAPES)
def test_both_take_a_value_with_every_field_filled(word: str) -> None:
    value = whole(SHAPES[word])
    assert taken_by_schema(SHAPES[word], value)
    assert compiled(SHAPES[word])(value) is None


@pytest.mark.parametrize("word", SHAPES)
def test_both_say_the_same_of_any_value_in_any_place(word: str) -> None:
    schema, value = SHAPES[word], whole(SHAPES[word])
    check, find = compiled(schema), finder(schema)
    for box, key in places(value):
        good_one = box[key]
        for odd in ODD:
            box[key] = odd
            assert taken_by_schema(schema, value) is taken_by_checker(check, find, value), value
        if isinstance(box, dict):
            del box[key]
            assert taken_by_schema(schema, value) is taken_by_checker(check, find, value), value
        box[key] = good_one


@MANY
@given(st.sampled_from(sorted(SHAPES)), st.integers(0, 400), st.integers(0, 400), st.data())
def test_both_say_the_same_of_two_troubles(word: str, one: int, two: int, data: Any) -> None:
    value = whole(SHAPES[word])
    for spot in (one, two):
        found = places(value)
        box, key = found[spot % len(found)]
        box[key] = copy.deepcopy(data.draw(st.sampled_from(ODD)))
    assert taken_by_schema(SHAPES[word], value) is (compiled(SHAPES[word])(value) is None)


def test_both_say_the_same_of_the_shared_cases() -> None:
    groups = json.loads(VECTORS.read_text(encoding="utf-8"))["groups"]
    cases = [case for group in groups for case in group["tests"] if "rule" not in case]
    compared = 0
    for case in cases:
        facts = None if "pad" in case["given"] else case["given"].get("entry")
        if facts is None or case.get("refused") not in {None, "field-missing", "field-shape"}:
            continue
        heading = HEADINGS.get(facts.get("heading", ""))
        both = taken_by_schema(EntrySchema, facts)
        if both and heading and facts["v"] <= heading.v:
            both = taken_by_schema(heading.schema, facts["body"])
        assert both is (case.get("refused") is None), case["description"]
        compared += 1
    assert compared > 60


def test_a_refusal_names_the_field_and_the_fastener() -> None:
    facts = whole(EntrySchema) | {"heading": "pull", "v": 1, "after": []}
    facts["body"] = whole(HEADINGS["pull"].schema) | {"fastener": "f7"}
    facts["body"]["reading"] = {"value": "4x", "unit": "N·m"}
    with pytest.raises(FieldShape, match=r"^The reading of fastener f7 is no number\.$"):
        take(facts)
    del facts["body"]["run"]
    with pytest.raises(FieldMissing, match=r"^The run of fastener f7 is missing\.$"):
        take(facts)
