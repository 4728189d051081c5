"""JSON that both languages read and write alike, or a flaw that says why not.

A flaw in one entry must not spoil the batch it came in, so the parser puts a Flaw where the
value would stand and goes on; canonical() raises it when that entry's turn comes.
"""

from __future__ import annotations

import json
from dataclasses import dataclass

from witnessmark.errors import NotJson, NumberNotWhole, Refusal, TextNotClean, TooMuch

MOST_WHOLE = 2**53 - 1
DEEPEST_REQUEST = 64
_BRACKETS = bytes.maketrans(b"[]", b"{}")
_NO_BRACKET = bytes(range(256)).translate(None, b'[]{}"')


@dataclass(frozen=True, slots=True)
class Flaw:
    """Stands in the parsed value where something could not be taken."""

    refusal: Refusal


def deepest(raw: bytes) -> int:
    """Levels of nesting of a JSON text, counted on bytes before any parser recurses.

    Text whose brackets do not match counts every open one, so a bomb is seen as deep.
    source: definition
    """
    plain = raw.replace(b"\\\\", b"").replace(b'\\"', b"") if b"\\" in raw else raw
    marks = plain.translate(_BRACKETS, _NO_BRACKET)
    brackets = b"".join(marks.split(b'"')[::2])
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
    if deepest(raw) > DEEPEST_REQUEST:
        raise TooMuch(trouble="it is more than 64 levels deep")
    try:
        return _DECODER.decode(raw.decode("utf-8"))
    except UnicodeDecodeError as error:
        raise NotJson(trouble="it is not UTF-8") from error
    except json.JSONDecodeError as error:
        raise NotJson(trouble=f"position {error.pos} cannot be read") from error


def canonical(value: object) -> str:
    """The one text of a value: keys sorted, no spaces, nothing escaped that need not be.

    raises: the refusal of the first Flaw inside.
    """
    return _ENCODER.encode(value)


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
_ENCODER = json.JSONEncoder(
    sort_keys=True,
    separators=(",", ":"),
    ensure_ascii=False,
    check_circular=False,
    allow_nan=False,
    default=_unwritable,
)
