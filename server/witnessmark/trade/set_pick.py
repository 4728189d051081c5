"""Which of the pieces in a box make the set: least wear, then fewest donors."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Pool:
    """Pieces by their place in the pool, all inside the limits."""

    columns: tuple[tuple[float, ...], ...]
    """The sizes of all pieces, measure by measure."""
    factors: tuple[float, ...]
    """Cost of each measure's spread: weight / scale."""
    choose: int
    pinned: frozenset[int]
    wear: tuple[float, ...]
    donors: tuple[str, ...]


def picked(pool: Pool, inside: list[int]) -> tuple[float, int, list[int]]:
    """The set of least wear in a box, of those the one of fewest donors: wear, donors, places.

    source: exact; proved against trying every choice
    >>> pool = Pool(((1.0, 1.0),), (1.0,), 1, frozenset(), (2.0, 1.0), ("", ""))
    >>> picked(pool, [0, 1])
    (1.0, 1, [1])
    """
    chosen = sorted(pool.pinned)
    left = sorted(
        (each for each in inside if each not in pool.pinned), key=lambda at: (pool.wear[at], at)
    )
    open_places = pool.choose - len(chosen)
    if open_places:
        most = pool.wear[left[open_places - 1]]
        chosen += [each for each in left if pool.wear[each] < most]
        alike = [each for each in left if pool.wear[each] == most]
        chosen += _fewest_donors(pool, alike, chosen)
    chosen.sort()
    donors = len({pool.donors[each] for each in chosen})
    return sum(pool.wear[each] for each in chosen), donors, chosen


def _fewest_donors(pool: Pool, alike: list[int], chosen: list[int]) -> list[int]:
    """Of pieces worn alike as many as are missing: donors already in, then the largest groups."""
    known = {pool.donors[each] for each in chosen}
    groups: dict[str, list[int]] = {}
    for each in alike:
        groups.setdefault(pool.donors[each], []).append(each)
    ranked = sorted(
        groups.items(), key=lambda each: (each[0] not in known, -len(each[1]), each[1][0])
    )
    return [each for _, group in ranked for each in group][: pool.choose - len(chosen)]
