"""The fast parser is believed only where the careful one would give the same."""

import json
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st
from witnessmark.errors import NotJson, Refusal
from witnessmark.log import clean
from witnessmark.log.clean import Flaw

SIGNS = st.sampled_from(
    [*'ab0{}[]:,"\\/·é\u2028\x7f 1.e-E', "\\u0061", "\\ud83d\\ude00", "\\ud800"]
)
NUMBERS = st.sampled_from(
    [
        "0",
        "7",
        "-7",
        "-0",
        "1.0",
        "1e3",
        "1E3",
        "0.5",
        "-1e-2",
        "12",
        "NaN",
        "-Infinity",
        "9007199254740991",
        "9007199254740992",
        "-9007199254740991",
        "123456789012345",
        "1111111111111111111111111111111111111111",
    ]
)
BLANKS = st.sampled_from(["", " ", "\t", "\r\n "])


@st.composite
def strings(draw: Any) -> str:
    body = "".join(draw(st.lists(SIGNS, max_size=5)))
    if draw(st.booleans()):
        return json.dumps(body, ensure_ascii=draw(st.booleans()))
    return f'"{body}"'


@st.composite
def objects(draw: Any, inner: st.SearchStrategy[str]) -> str:
    keys = st.sampled_from(['"a"', '"b"', '"\\u0061"', '"é"', '":"', '"é:b"', '"a\\"b"'])
    pairs = draw(st.lists(st.tuples(keys, BLANKS, inner), max_size=4))
    return "{" + ",".join(f"{key}{blank}:{blank}{value}" for key, blank, value in pairs) + "}"


LEAVES = NUMBERS | strings() | st.sampled_from(["true", "false", "null"])
TEXTS = st.recursive(
    LEAVES,
    lambda inner: objects(inner) | st.lists(inner, max_size=4).map(lambda x: f"[{', '.join(x)}]"),
    max_leaves=12,
)


def shown(value: object) -> object:
    """A parsed value in which types and flaws can be compared."""
    match value:
        case Flaw():
            return ["flaw", value.refusal.answer()]
        case dict():
            return {key: shown(inner) for key, inner in value.items()}
        case list():
            return [shown(inner) for inner in value]
        case _:
            return [type(value).__name__, value]


def outcome(parser: Any, raw: bytes) -> object:
    try:
        value = parser(raw)
    except NotJson as error:
        return error.code
    try:
        return [shown(value), clean.written(value)]
    except Refusal as refusal:
        return [shown(value), refusal.answer()]


@given(TEXTS)
def test_both_parsers_give_the_same_values_texts_and_flaws(text: str) -> None:
    raw = text.encode("utf-8", "surrogatepass")
    assert outcome(clean.careful, raw) == outcome(clean.parse, raw)


@given(TEXTS)
def test_the_two_writers_give_the_same_text(text: str) -> None:
    try:
        value = clean.parse(text.encode("utf-8", "surrogatepass"))
        slow = clean.ENCODER.encode(value).encode()
    except (NotJson, Refusal, UnicodeEncodeError):
        return
    assert slow == clean.written(value) == clean.canonical(value).encode()


@pytest.mark.parametrize(
    "text",
    [
        '{"a":1,"a":1}',
        '{"a":{"b":1,"b":":"}}',
        '[":",{"a":1,"\\u0061":":"}]',
        '{"\\u00e9":1}',
        '{"é:b":1}',
        "[-0]",
        "[1e3]",
        "[1.0]",
        "[9007199254740992]",
        "[true,1e1]",
    ],
)
def test_what_the_fast_parser_cannot_see_is_still_a_flaw(text: str) -> None:
    with pytest.raises(Refusal):
        clean.canonical(clean.parse(text.encode()))


def test_a_common_entry_takes_the_fast_way() -> None:
    text = '{"cursor": null, "entries": [{"n": 12, "body": {"unit": "lbf·ft", "of": [1, true]}}]}'
    assert clean.fast(text.encode(), text.count('"')) == json.loads(text)
