"""What a set cannot be chosen for is said by name; limits that cross preselect nothing."""

import json
import subprocess
from pathlib import Path
from typing import Any

from tools import node

ROOT = Path(__file__).parents[1]
SETS = """
globalThis.navigator ??= {language: 'en', languages: ['en'], onLine: false};
globalThis.document ??= {documentElement: {}, addEventListener() {}};
globalThis.addEventListener ??= () => {};
const {FRESH, reckon} = await import(process.argv[1] + '/pwa/app/sets/model.js');
const {pool, draft} = JSON.parse(process.argv[2]);
console.log(JSON.stringify(reckon(pool, {...FRESH, ...draft}).trouble));
"""
JUDGED = """
globalThis.navigator ??= {language: 'en', languages: ['en'], onLine: false};
globalThis.document ??= {documentElement: {}, addEventListener() {}};
globalThis.addEventListener ??= () => {};
const {FRESH, judged} = await import(process.argv[1] + '/pwa/app/inspect/judging.js');
const {measures, readings} = JSON.parse(process.argv[2]);
const asked = {criteria: [], measures, tools: null};
console.log(JSON.stringify(judged(FRESH, asked, {readings}).verdict));
"""


def _told(script: str, given: Any) -> Any:
    told = subprocess.run(
        [node(), "--input-type=module", "-e", script, str(ROOT), json.dumps(given)],
        capture_output=True, text=True, check=True,
    )  # fmt: skip
    return json.loads(told.stdout)


def _measure(at: int, **limits: str | None) -> dict[str, Any]:
    return {"id": f"m{at}", "name": f"Length {at}", "unit": "mm", "least": None, "most": None,
            **limits}  # fmt: skip


def _pool(measures: list[dict[str, Any]], sizes: list[list[float | None]]) -> dict[str, Any]:
    return {
        "measures": measures,
        "pieces": [
            {"id": f"p{at}", "name": f"Pushrod {at}", "verdict": "use", "donor": None,
             "sizes": [None if size is None else {"size": size, "decimals": 2} for size in each]}
            for at, each in enumerate(sizes, 1)
        ],
    }  # fmt: skip


def test_a_pinned_piece_above_its_limit_is_named_with_its_measure() -> None:
    pool = _pool([_measure(1, most="187.03")], [[187.02], [187.05], [187.01]])
    said = _told(SETS, {"pool": pool, "draft": {"pinned": ["p2"], "count": 2}})
    assert said.startswith("Pushrod 2 is pinned but lies above the limit of Length 1.")


def test_crossed_limits_of_a_set_name_their_measure() -> None:
    pool = _pool([_measure(1, least="187.05", most="187.01")], [[187.02], [187.05]])
    said = _told(SETS, {"pool": pool, "draft": {"count": 1}})
    assert said.startswith("The lower limit of Length 1 is above the upper one.")


def test_at_most_three_measures_are_weighed() -> None:
    pool = _pool([_measure(at) for at in range(1, 5)], [[1, 1, 1, 1], [2, 2, 2, 2]])
    weights = {f"m{at}": 1 for at in range(1, 5)}
    said = _told(SETS, {"pool": pool, "draft": {"weights": weights, "count": 1}})
    assert said == "Weigh at most three measures."


def test_a_pinned_piece_that_was_not_read_is_named() -> None:
    pool = _pool([_measure(1), _measure(2)], [[1, 1], [2, None], [3, 3]])
    draft = {"weights": {"m1": 1, "m2": 1}, "pinned": ["p2"], "count": 1}
    said = _told(SETS, {"pool": pool, "draft": draft})
    assert said.startswith("Pushrod 2 must be in, but Length 2 was not read on it.")


def test_limits_that_cross_preselect_nothing() -> None:
    readings = [{"measure": "m1", "value": {"value": "30.00", "unit": "mm"}}]
    right = _measure(1, least="24.98", most="31")
    crossed = _measure(1, least="25.02", most="24.98")
    assert _told(JUDGED, {"measures": [right], "readings": readings}) == "use"
    assert _told(JUDGED, {"measures": [crossed], "readings": readings}) == ""
