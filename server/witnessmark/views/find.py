"""Where is that thing? Words or a code, ranked; when nothing is found, what sounds like it."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import Any

from witnessmark.errors import TradeError
from witnessmark.trade import label
from witnessmark.views import plain
from witnessmark.views.find_row import HEADINGS, Row
from witnessmark.views.near import near

MOST = 20
_WORD = re.compile(r"[^ \t\r\n\u00a0.,;:/()\[\]\"'|–-]+")
_CODE, _EXACT, _BEGINS, _WORDS_OF_NAME, _WORDS, _INSIDE = range(6)
_WHY = ("code", "name", "name", "name", "words", "words")
_RANKS = len(_WHY)


@dataclass(frozen=True, slots=True)
class Found:
    """A row made ready: its name and words folded, so that "Ölpumpe" is found by "olp"."""

    row: Row
    name: str
    names: tuple[str, ...]
    words: str
    """All words with a blank before each, name first: a word begins where " word" is found."""


@dataclass(frozen=True, slots=True)
class Index:
    """Rows made ready, by name."""

    found: tuple[Found, ...]


def folded(text: str) -> str:
    """Small letters without accents."""
    apart = unicodedata.normalize("NFD", text.lower())
    return "".join(sign for sign in apart if not "\u0300" <= sign <= "\u036f")


def prepare(rows: Iterable[Row]) -> Index:
    """Rows made ready once, for many questions; by name, so that hits need no sorting."""
    ready = []
    for each in rows:
        name = folded(each.get("name") or "")
        names = tuple(_WORD.findall(name))
        rest = _WORD.findall(folded(each.get("words") or ""))
        ready.append(Found(each, name, names, " " + " ".join([*names, *rest])))
    ready.sort(key=lambda found: (plain.natural(found.name or None), found.row["id"]))
    return Index(tuple(ready))


def find(rows: Sequence[Row] | Index, query: str) -> dict[str, Any]:
    """Hits in groups, the best first, scrap last; rows as row() makes them, or prepared."""
    ready = (rows if isinstance(rows, Index) else prepare(rows)).found
    typed = query if isinstance(query, str) else ""
    wanted = _WORD.findall(folded(typed))
    code = _code(typed)
    hits: dict[str, list[list[tuple[Found, str]]]] = {}
    for each in ready:
        rank = _rank(each, wanted, code)
        if rank is not None and each.row["heading"] in HEADINGS:
            place = rank + (_RANKS if each.row.get("scrap") is True else 0)
            groups = hits.setdefault(each.row["heading"], [[] for _ in range(2 * _RANKS)])
            groups[place].append((each, _WHY[rank]))
    return {
        "query": typed,
        "code": code,
        "count": sum(len(rank) for ranks in hits.values() for rank in ranks),
        "groups": [_group(each, hits[each]) for each in HEADINGS if each in hits],
        "near": []
        if hits or not wanted
        else near(((each.row, each.name, each.names) for each in ready), wanted, HEADINGS),
    }


def _code(typed: str) -> str | None:
    try:
        return label.code_from_text(typed)
    except TradeError:
        return None


def _rank(each: Found, wanted: list[str], code: str | None) -> int | None:
    """How well a row fits, 0 best; None when a word is missing. A code comes before all."""
    if code is not None and code in plain.listed(each.row.get("codes")):
        return _CODE
    if not wanted:
        return None
    if not all(f" {word}" in each.words for word in wanted):
        inside = all(len(word) > 2 and word in each.words for word in wanted)  # noqa: PLR2004
        return _INSIDE if inside else None
    if list(each.names) == wanted:
        return _EXACT
    if each.name.startswith(" ".join(wanted)):
        return _BEGINS
    in_name = all(any(name.startswith(word) for name in each.names) for word in wanted)
    return _WORDS_OF_NAME if in_name else _WORDS


def _group(heading: str, ranks: list[list[tuple[Found, str]]]) -> dict[str, Any]:
    hits = [hit for rank in ranks for hit in rank]
    return {
        "heading": heading,
        "count": len(hits),
        "hits": [
            {
                "id": found.row["id"],
                "heading": heading,
                "name": found.row.get("name"),
                "at": found.row.get("at"),
                "verdict": found.row.get("verdict"),
                "scrap": found.row.get("scrap") is True,
                "why": why,
            }
            for found, why in hits[:MOST]
        ],
    }
