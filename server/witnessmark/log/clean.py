"""JSON that both languages read and write alike, or a flaw that says why not.

A flaw in one entry must not spoil the batch it came in, so the parser puts a Flaw where the
value would stand and goes on; canonical() raises it when that entry's turn comes.

That careful parser is slow, so a fast one goes first. It says nothing about a key that stands
twice or a number both languages write differently; so what it gives is only believed where
counting quotes and looking at the figures proves that there is none of these.
"""

from __future__ import annotations

import json
import re
from dataclasses import dataclass

import orjson

from witnessmark.errors import NotJson, NumberNotWhole, Refusal, TextNotClean, TooMuch

MOST_WHOLE = 2**53 - 1
DEEPEST_REQUEST = 64
_STRICT = orjson.OPT_STRICT_INTEGER
_SORTED = (
    _STRICT
    | orjson.OPT_SORT_KEYS
    | orjson.OPT_PASSTHROUGH_DATACLASS
    | orjson.OPT_PASSTHROUGH_DATETIME
    | orjson.OPT_PASSTHROUGH_SUBCLASS
)


_FRAME = bytes.maketrans(b"[]123456789E", b"{}000000000e")
_NO_FRAME = bytes(range(256)).translate(None, b'[]{}",0123456789.eE-')
_FIGURES = b",0.e-"
_ODD_NUMBERS = (b".", b"0e", b"-", b"0" * 16)
_ABOVE_ASCII = bytes(range(128)) + b"\x80" * 128
_NO_KEY = bytes(range(128)).translate(None, b'":')
_KEY_ABOVE_ASCII = re.compile(rb'\x80[^"]*":')


@dataclass(frozen=True, slots=True)
class Flaw:
    """Stands in the parsed value where something could not be taken."""

    refusal: Refusal


def deepest(raw: bytes) -> int:
    """Levels of nesting of a JSON text, counted on bytes before any parser recurses.

    Text whose brackets do not match counts every open one, so a bomb is seen as deep.
    source: definition
    """
    return _levels(_frame(_no_escapes(raw)))


def _no_escapes(raw: bytes) -> bytes:
    """The text with no backslash before a quote, so that quotes are the ends of strings."""
    return raw.replace(b"\\\\", b"").replace(b'\\"', b"") if b"\\" in raw else raw


def _frame(plain: bytes) -> bytes:
    """What stands outside of strings, and matters: brackets, commas, and the signs of numbers.

    Every bracket is a brace and every digit a nought, so that little has to be told apart.
    """
    return b"".join(plain.translate(_FRAME, _NO_FRAME).split(b'"')[::2])


def _levels(frame: bytes) -> int:
    brackets = frame.translate(None, _FIGURES)
    levels = 0
    while (inner := brackets.replace(b"{}", b"")) != brackets:
        brackets = inner
        levels += 1
        if levels > DEEPEST_REQUEST:
            return levels
    return levels + brackets.count(b"{")


def parse(raw: bytes) -> object:
    """The JSON value of a text in UTF-8, with a Flaw in place of what cannot be kept.

    raises: NotJson when no parser could read it; TooMuch above 64 levels.
    """
    plain = _no_escapes(raw)
    frame = _frame(plain)
    if _levels(frame) > DEEPEST_REQUEST:
        raise TooMuch(trouble="it is more than 64 levels deep")
    found = None
    if not any(odd in frame for odd in _ODD_NUMBERS):
        found = fast(raw, plain.count(b'"'))
    return careful(raw) if found is None else found


def careful(raw: bytes) -> object:
    """The value by the parser that sees every key and number.

    raises: NotJson
    """
    try:
        return _DECODER.decode(raw.decode("utf-8"))
    except UnicodeDecodeError as error:
        raise NotJson(trouble="it is not UTF-8") from error
    except json.JSONDecodeError as error:
        raise NotJson(trouble=f"position {error.pos} cannot be read") from error


def fast(raw: bytes, quotes: int) -> object:
    """The value by the fast parser; None where the careful one has to look.

    A key that stands twice is lost with its quotes, and nothing else changes their number.
    """
    try:
        found: object = orjson.loads(raw)
        written = _no_escapes(orjson.dumps(found, option=_STRICT))
    except (orjson.JSONDecodeError, TypeError):
        return None
    if written.count(b'"') != quotes or _KEY_ABOVE_ASCII.search(
        written.translate(_ABOVE_ASCII, _NO_KEY)
    ):
        return None
    return found


def canonical(value: object) -> str:
    """The one text of a value: keys sorted, no spaces, nothing escaped that need not be.

    raises: the refusal of the first Flaw inside.
    """
    try:
        return orjson.dumps(value, option=_SORTED).decode()
    except TypeError:
        # The careful writer gives the same text, and says what is wrong where there is none.
        return ENCODER.encode(value)


def written(value: object) -> bytes:
    """The canonical text in UTF-8.

    raises: as canonical() does; TextNotClean where half a sign stands alone.
    """
    try:
        return orjson.dumps(value, option=_SORTED)
    except TypeError:
        try:
            return ENCODER.encode(value).encode()
        except UnicodeEncodeError as error:
            raise TextNotClean(trouble="half a sign stands alone in it") from error


def _pairs(pairs: list[tuple[str, object]]) -> object:
    facts = dict(pairs)
    if len(facts) != len(pairs):
        return Flaw(TextNotClean(trouble="a key stands twice in one object"))
    if not "".join(facts).isascii():
        return Flaw(TextNotClean(trouble="a key has other signs than ASCII"))
    return facts


def _whole(text: str) -> object:
    if len(text) < 16 and text != "-0":  # noqa: PLR2004  15 digits are always within 2**53
        return int(text)
    if text == "-0" or len(text) > 17 or abs(int(text)) > MOST_WHOLE:  # noqa: PLR2004  "-" and 16
        return _fraction(text)
    return int(text)


def _fraction(text: str) -> Flaw:
    return Flaw(NumberNotWhole(number=text if len(text) <= 24 else f"{text[:21]}…"))  # noqa: PLR2004


def _unwritable(value: object) -> object:
    if isinstance(value, Flaw):
        raise value.refusal
    raise TextNotClean(trouble="it holds something JSON has no sign for")


_DECODER = json.JSONDecoder(
    object_pairs_hook=_pairs, parse_float=_fraction, parse_int=_whole, parse_constant=_fraction
)
ENCODER = json.JSONEncoder(
    sort_keys=True,
    separators=(",", ":"),
    ensure_ascii=False,
    check_circular=False,
    allow_nan=False,
    default=_unwritable,
)
