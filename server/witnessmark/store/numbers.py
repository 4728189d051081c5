"""Every device counts its own entries 1, 2, 3…; here holes and doubles in that count show."""

import json
from bisect import bisect_right
from collections.abc import Iterable, Mapping

from sqlalchemy import Connection, insert, select, update

from witnessmark.store import tables

_DOUBLES_KEPT = 100  # the smallest ones, so that the order of arrival makes no difference

Runs = list[list[int]]


def note_numbers(connection: Connection, workshop: str, made: Mapping[str, list[int]]) -> None:
    """Add the own numbers of newly taken entries, by device, to what is known of these."""
    table = tables.numbered.c
    for device, numbers in sorted(made.items()):
        where = (table.workshop == workshop, table.device == device)
        row = connection.execute(select(table.runs, table.doubles).where(*where)).first()
        runs, doubles = (json.loads(row[0]), json.loads(row[1])) if row else ([], [])
        runs, again = with_numbers(runs, numbers)
        doubles = sorted({*doubles, *again})[:_DOUBLES_KEPT]
        facts = {
            "highest": runs[-1][1],
            "runs": json.dumps(runs),
            "doubles": json.dumps(doubles),
        }
        if row:
            connection.execute(update(tables.numbered).where(*where).values(facts))
        else:
            whose = {"workshop": workshop, "device": device}
            connection.execute(insert(tables.numbered).values({**whose, **facts}))


def with_numbers(runs: Runs, numbers: Iterable[int]) -> tuple[Runs, list[int]]:
    """The runs with ``numbers`` added, and those that were there before."""
    numbers = sorted(numbers)
    last = runs[-1][1] if runs else 0
    if numbers == list(range(last + 1, last + 1 + len(numbers))):
        # The usual case: the device goes on where it was.
        return _joined([*runs, [numbers[0], numbers[-1]]]), []
    starts = [low for low, _ in runs]
    doubles: list[int] = []
    fresh: Runs = []
    for number in numbers:
        before = bisect_right(starts, number) - 1
        known = before >= 0 and runs[before][1] >= number
        if known or (fresh and fresh[-1][1] == number):
            doubles.append(number)
        elif fresh and fresh[-1][1] + 1 == number:
            fresh[-1][1] = number
        else:
            fresh.append([number, number])
    return _joined([*runs, *fresh]), doubles


def _joined(spans: Runs) -> Runs:
    joined: Runs = []
    for low, high in sorted(spans):
        if joined and joined[-1][1] + 1 >= low:
            joined[-1][1] = max(joined[-1][1], high)
        else:
            joined.append([low, high])
    return joined


def holes(runs: Runs) -> Runs:
    """The numbers from 1 to the highest that never came, as [[from, to], …]."""
    edges = [0, *(high for _, high in runs)]
    gaps = [[edge + 1, low - 1] for edge, (low, _) in zip(edges, runs, strict=False)]
    return [gap for gap in gaps if gap[0] <= gap[1]]
