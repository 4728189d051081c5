"""What sounds like a word that was not found."""

from __future__ import annotations

import re
from collections.abc import Iterable
from typing import Any

MOST_NEAR, SHORTEST = 5, 3
_FIGURES = re.compile("[0-9]+")


def near(
    ready: Iterable[tuple[dict[str, Any], str, tuple[str, ...]]],
    wanted: list[str],
    headings: tuple[str, ...],
) -> list[dict[str, Any]]:
    """Things whose name has a word nearly like the longest typed; nearest first, scrap last."""
    longest = max(wanted, key=len)
    if len(longest) < SHORTEST:
        return []
    most = 1 if len(longest) < 5 else 2  # noqa: PLR2004
    letters = not _FIGURES.fullmatch(longest)
    far: dict[str, int] = {}
    by_distance: list[dict[str, dict[str, Any]]] = [{} for _ in range(2 * (most + 1))]
    for row, folded, names in ready:
        for name in names:
            if letters and _FIGURES.fullmatch(name):
                continue
            if name not in far:
                far[name] = distance(longest, name, most)
            if far[name] <= most and row["heading"] in headings:
                line = {"id": row["id"], "heading": row["heading"], "name": row.get("name")}
                place = 2 * far[name] + (row.get("scrap") is True)
                by_distance[place].setdefault(folded, line)
                break
    nearest = [line for lines in by_distance for line in lines.values()]
    return nearest[:MOST_NEAR]


def distance(one: str, other: str, most: int) -> int:
    """Signs to change, add, leave out or swap with a neighbour; most + 1 when it is more.

    A longer word is compared by its beginning too, as the typed one may not be finished.
    """
    if abs(len(one) - len(other)) > most:
        if len(other) < len(one):
            return most + 1
        other = other[: len(one)]
    two_ago: list[int] = []
    above = list(range(len(other) + 1))
    for i, sign in enumerate(one, 1):
        line = [i]
        for j, against in enumerate(other, 1):
            cost = min(above[j] + 1, line[j - 1] + 1, above[j - 1] + (sign != against))
            swapped = i > 1 and j > 1 and sign == other[j - 2] and one[i - 2] == against
            line.append(min(cost, two_ago[j - 2] + 1) if swapped else cost)
        if min(line) > most:
            return most + 1
        two_ago, above = above, line
    return min(above[-1], most + 1)
