"""The best set is the one that trying every choice finds, ties, wear, donors and pins with it."""

import itertools
import json
import random
import subprocess
from typing import Any

from tools import ROOT, node
from witnessmark.trade import sets
from witnessmark.trade.units import quantity

CASES = 80
TRIED = """
const { best } = await import(process.argv[1] + '/pwa/trade/sets.js');
const lines = (await import('node:fs')).readFileSync(0, 'utf8').trim().split('\\n');
for (const line of lines) {
  const { pieces, measures, choose, pinned } = JSON.parse(line);
  const { cost, wear, donors, chosen } = best(pieces, measures, choose, { pinned });
  console.log(JSON.stringify([Number(cost.toFixed(9)), wear, donors, chosen]));
}
"""


def pool(some: random.Random) -> dict[str, Any]:
    """Few sizes, so that many sets cost the same."""
    count, many = some.choice([1, 2, 2, 3]), some.randint(3, 9)
    choose = some.randint(1, many)
    pieces = [
        {
            "name": str(place),
            "sizes": [some.randint(0, 6) / 2 for _ in range(count)],
            "wear": some.choice([0, 1, 2]),
            "donor": some.choice("abc"),
        }
        for place in range(many)
    ]
    measures = [{"name": f"m{at}", "weight": some.choice([1, 0.5, 2])} for at in range(count)]
    pinned = [str(at) for at in some.sample(range(many), some.choice([0, 1, min(2, choose)]))]
    return {"pieces": pieces, "measures": measures, "choose": choose, "pinned": pinned}


def by_force(given: dict[str, Any]) -> tuple[float, float, int]:
    def rank(chosen: tuple[dict[str, Any], ...]) -> tuple[float, float, int]:
        columns = zip(*(each["sizes"] for each in chosen), strict=True)
        spreads = [max(column) - min(column) for column in columns]
        cost = sum(
            measure["weight"] * spread
            for measure, spread in zip(given["measures"], spreads, strict=True)
        )
        donors = len({each["donor"] for each in chosen})
        return round(cost, 9), sum(each["wear"] for each in chosen), donors

    pinned = set(given["pinned"])
    choices = itertools.combinations(given["pieces"], given["choose"])
    return min(rank(each) for each in choices if pinned <= {piece["name"] for piece in each})


def in_python(given: dict[str, Any]) -> sets.Choice:
    pieces = [
        sets.Piece(
            each["name"],
            tuple(quantity(size, "mm") for size in each["sizes"]),
            each["wear"],
            each["donor"],
        )
        for each in given["pieces"]
    ]
    measures = [sets.Measure(each["name"], each["weight"]) for each in given["measures"]]
    return sets.best(pieces, measures, given["choose"], pinned=given["pinned"])


def test_both_sides_choose_what_trying_every_choice_finds() -> None:
    some = random.Random(11)  # noqa: S311 - a fixed seed, so that a fault comes again
    pools = [pool(some) for _ in range(CASES)]
    wanted = [list(by_force(each)) for each in pools]
    ours = [in_python(each) for each in pools]
    assert [[round(each.cost, 9), each.wear, each.donors] for each in ours] == wanted
    done = subprocess.run(
        [node(), "--input-type=module", "-e", TRIED, ROOT.as_uri()],
        input="\n".join(json.dumps(each) for each in pools),
        capture_output=True, text=True, check=True, timeout=60,
    )  # fmt: skip
    theirs = [json.loads(line) for line in done.stdout.splitlines()]
    assert [each[:3] for each in theirs] == wanted
    assert [each[3] for each in theirs] == [list(each.chosen) for each in ours]
