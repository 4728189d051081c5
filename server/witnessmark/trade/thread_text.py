"""Designations of threads, read in the ways people write them."""

from __future__ import annotations

import re
from fractions import Fraction
from functools import lru_cache

from witnessmark.trade.thread import MM_AN_INCH, Thread, plain
from witnessmark.trade.thread_errors import (
    ThreadPitchImpossible,
    ThreadPitchMissing,
    ThreadSeriesDiffers,
    ThreadTwoMeanings,
    ThreadUnread,
)
from witnessmark.trade.thread_inches import FIRST_INCH_SIZES, inches, size_text
from witnessmark.trade.thread_tables import COARSE, FINE, SERIES

LONGEST = 40
STEEPEST = 0.3
"""No pitch of the tables is more than a quarter of its diameter."""
FINEST_MM = 0.2
LARGEST_MM = 1000
LARGEST_PITCH_MM = 8

_SIGNS = str.maketrans(
    {"½": " 1/2 ", "¼": " 1/4 ", "¾": " 3/4 ", "⅜": " 3/8 ", "⅝": " 5/8 ", "⅞": " 7/8 "}
    | {"×": "x", "*": "x", "″": '"', "”": '"', "–": "-", "−": "-", "‑": "-"}
)
_TOLERANCE = re.compile(
    r"[\s-]*\b(?:[3-9][ghe](?:[3-9][ghe])?(?:/[3-9][ghe])?|[123][ab])(?=$|\s*x)"
)
_SERIES = re.compile(r"(\d{1,2})?\s*-?\s*(un[rj]?(?:ef|c|f|s)?|nef|nc|nf|ns)\b", re.ASCII)
_LENGTH = r"(?:\s*x\s*[0-9][0-9 ./-]*(?:mm|\"|in)?)?"
_METRIC = re.compile(
    rf"(m?)\s*(\d+(?:\.\d+)?)\s*(?:mm)?(?:\s*([x/-])\s*(\d*\.?\d+)\s*(?:mm)?)?{_LENGTH}"
    r"\s*(coarse|fine)?",
    re.ASCII,
)
_INCH = re.compile(
    r"(#|no\.?|nr\.?)?\s*(\d+(?:\s+|\s*-\s*)\d+\s*/\s*\d+|\d+\s*/\s*\d+|\d*\.\d+|\d+)"
    rf"\s*(?:\"|inch|in)?(?:\s*[-x]\s*|\s+)?(\d{{1,2}}(?:\.\d+)?)?\s*(?:tpi)?{_LENGTH}",
    re.ASCII,
)
_SERIES_NAMES = {"nc": "UNC", "nf": "UNF", "nef": "UNEF", "ns": "UNS"}


def parse(typed: str) -> Thread:
    """The thread that a designation means.

    Metric as M8, M10×1.25, m10 x 1,25, M8-1.25, 8x1.25; unified as 7/16-20 UNF, 7/16"-20, #10-32,
    1/4 UNC, 0.3125-18, 1 1/8-7. A tolerance class (-6g, -2A) and a length behind (M8×1.25×40) are
    passed over.
    raises: ThreadUnread, ThreadPitchMissing, ThreadTwoMeanings, ThreadPitchImpossible,
    ThreadSeriesDiffers.
    source: ISO 261, ISO 965-1, ASME B1.1 (from memory); the ways of writing: common practice
    >>> parse("m10 x 1,25").designation, parse("1/4 UNC").designation
    ('M10×1.25', '1/4-20 UNC')
    """
    text = typed.strip() if isinstance(typed, str) else ""
    if not text or len(text) > LONGEST:
        raise ThreadUnread(typed=text[:LONGEST])
    return _read(text)


@lru_cache(maxsize=512)
def _read(text: str) -> Thread:
    squared = " ".join(text.lower().translate(_SIGNS).split())
    squared = re.sub("([0-9]),([0-9])", r"\1.\2", squared)
    squared = re.sub(r"[\s-]*\blh$", "", squared)
    squared = _TOLERANCE.sub("", squared)
    metric = _METRIC.fullmatch(squared)
    if metric and _is_metric(metric):
        return _metric(text, metric)
    series = _SERIES.search(squared)
    if series:
        squared = f"{squared[: series.start()]}{series[1] or ''}{squared[series.end() :]}".strip(
            " -"
        )
    inch = _INCH.fullmatch(squared)
    if not inch:
        raise ThreadUnread(typed=text)
    return _unified(text, inch, _series_name(series[2]) if series else None)


def _is_metric(found: re.Match[str]) -> bool:
    """With an M, or as 8x1.25: what stands behind the cross is too little for threads per inch."""
    if found[1] or found[5]:
        return True
    bare = found[3] == "x" or (found[3] == "-" and float(found[2]) > FIRST_INCH_SIZES)
    return bare and found[4] is not None and float(found[4]) <= LARGEST_PITCH_MM


def _metric(text: str, found: re.Match[str]) -> Thread:
    diameter, size = float(found[2]), f"M{plain(float(found[2]))}"
    if found[4] is not None:
        pitch = float(found[4])
    elif found[5] == "fine":
        pitch = _only_fine(text, diameter, size)
    elif diameter in COARSE:
        pitch = COARSE[diameter]
    else:
        raise ThreadPitchMissing(typed=text, example=f"{size}×1.5")
    _possible(size, diameter, pitch, f"a pitch of {plain(pitch)} mm")
    series = "coarse" if COARSE.get(diameter) == pitch else "fine"
    return Thread("metric", size, series, diameter, pitch)


def _only_fine(text: str, diameter: float, size: str) -> float:
    pitches = FINE.get(diameter, ())
    if len(pitches) == 1:
        return pitches[0]
    if not pitches:
        raise ThreadPitchMissing(typed=text, example=f"{size}×1")
    raise ThreadTwoMeanings(
        typed=text, one=f"{size}×{plain(pitches[0])}", other=f"{size}×{plain(pitches[1])}"
    )


def _possible(size: str, diameter: float, pitch: float, said: str) -> None:
    if not 0 < diameter <= LARGEST_MM or not FINEST_MM - 1e-9 <= pitch <= STEEPEST * diameter:
        raise ThreadPitchImpossible(size=size, pitch=said)


def _series_name(word: str) -> str:
    short = re.sub("^un[rj]", "un", word)
    return _SERIES_NAMES.get(short, short.upper())


def _unified(text: str, found: re.Match[str], series: str | None) -> Thread:
    tpi = float(found[3]) if found[3] else None
    parts = inches(text, found[2], bool(found[1]), tpi)
    size = size_text(parts)
    if tpi is None:
        tpi = _only_pitch(text, size, series)
    if not tpi:
        raise ThreadPitchImpossible(size=size, pitch="0 threads per inch")
    diameter, pitch = float(parts * Fraction("25.4")), MM_AN_INCH / tpi
    own = next((name for name, table in SERIES.items() if table.get(size) == tpi), None)
    if series in SERIES and own != series:
        raise ThreadSeriesDiffers(typed=text, one=own or "in no series", other=series)
    _possible(size, diameter, pitch, f"{plain(tpi)} threads per inch")
    return Thread("unified", size, own or "UN", diameter, pitch, tpi)


def _only_pitch(text: str, size: str, series: str | None) -> float:
    if series in SERIES:
        if size in SERIES[series]:
            return SERIES[series][size]
        raise ThreadPitchMissing(typed=text, example=f"{size}-20")
    usual = [f"{size}-{SERIES[name][size]}" for name in ("UNC", "UNF") if size in SERIES[name]]
    if len(usual) > 1:
        raise ThreadTwoMeanings(typed=text, one=usual[0], other=usual[1])
    raise ThreadPitchMissing(typed=text, example=usual[0] if usual else f"{size}-20")
