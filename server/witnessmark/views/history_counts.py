"""How many of each verdict, the share thrown out with its band, and how many to bring home."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

from witnessmark.errors import TradeError
from witnessmark.log.values import Subject
from witnessmark.log.workshop import standing
from witnessmark.views import how_many, plain, things

MARKS = (*things.VERDICTS, "look", "ask")
FEW = 10
"""A band from fewer judged ones than this says little (ours)."""
_DIGITS = 6


def counts_of(parts: Iterable[Subject]) -> dict[str, Any]:
    """Pieces by verdict, how many were judged, how many of these are scrap, and the share.

    A handful that is counted together counts as many as it is.
    """
    found = dict.fromkeys(MARKS, 0)
    for part in parts:
        mark = things.mark(part)
        if mark in found:
            found[mark] += _pieces(part)
    judged = sum(found[word] for word in things.VERDICTS)
    return {
        "pieces": sum(found.values()),
        "verdicts": found,
        "judged": judged,
        "rejected": found["scrap"],
        "few": judged < FEW,
        "share": share(judged, found["scrap"]),
    }


def _pieces(part: Subject) -> int:
    return max(0, how_many.quantity(part) or 0)


def share(judged: int, rejected: int) -> dict[str, float] | None:
    """The share rejected, and the band it lies in with 95 % credibility; flat prior.

    observed is what was counted, mean what is to be expected of the next ones.
    """
    from witnessmark.trade import yields  # noqa: PLC0415 - its distributions are slow to load

    try:
        found = yields.share_rejected(judged, rejected)
    except TradeError:
        return None
    if judged == 0:
        return None
    ends = {"observed": rejected / judged, "mean": found.mean, "low": found.low, "high": found.high}
    return {name: round(end, _DIGITS) for name, end in ends.items()}


def bring_home(judged: int, rejected: int, wanted: int, chance: float) -> dict[str, Any]:
    """How many to bring home so that with that chance so many of them may be used.

    What was judged here is all that is known of the share; where no number can be told, why.
    """
    from witnessmark.trade import yields  # noqa: PLC0415 - as above

    try:
        found = yields.bring_learned(wanted, judged, rejected, chance)
    except TradeError as refused:
        return {"bring": None, "chance": None, "why": refused.code}
    return {"bring": found.bring, "chance": round(found.chance_reached, _DIGITS), "why": None}


def reasons_of(parts: Iterable[Subject]) -> list[dict[str, Any]]:
    """Why not: each reason of a standing verdict but use, the most frequent first."""
    found: dict[tuple[str, str], int] = {}
    for part in parts:
        mark = things.mark(part)
        if mark not in things.VERDICTS[1:]:
            continue
        said = (plain.text(each["body"].get("reason")) for each in standing(part, "verdict"))
        for reason in plain.once(each for each in said if each):
            key = (mark, reason)
            found[key] = found.get(key, 0) + _pieces(part)
    lines: list[dict[str, Any]] = [
        {"verdict": mark, "reason": reason, "count": count}
        for (mark, reason), count in found.items()
        if count
    ]
    lines.sort(key=lambda line: (-line["count"], line["verdict"], plain.natural(line["reason"])))
    return lines
