"""What is missing is never taken for nothing, and next to nothing is nothing; one is no list."""

import json
import subprocess
from collections.abc import Callable
from typing import Any

import pytest
from tools import ROOT, node
from witnessmark.errors import TradeError
from witnessmark.trade import (
    compression_ratio,
    geometry,
    preload,
    proof,
    stretch,
    wrench,
)
from witnessmark.trade.units import quantity

MEASURED: dict[str, Any] = {
    "bore": quantity(86, "mm"),
    "stroke": quantity(86, "mm"),
    "chamber": quantity(48, "cm³"),
    "gasket_thickness": quantity(1.2, "mm"),
    "piston_below_deck": quantity(0.3, "mm"),
}
TINY = 1e-320


@pytest.mark.parametrize("name", sorted(MEASURED))
def test_a_cylinder_without_one_of_its_measures_has_no_ratio(name: str) -> None:
    with pytest.raises(TradeError) as refused:
        compression_ratio.measured(compression_ratio.Cylinder(**(MEASURED | {name: None})))
    assert refused.value.code == "quantity-missing"


def test_sizes_next_to_nothing_are_nothing() -> None:
    full = quantity(500, "cm³")
    tried: list[Callable[[], object]] = [
        lambda: compression_ratio.ratio(full, quantity(TINY, "cm³")),
        lambda: geometry.deck_cut(quantity(TINY, "mm"), full, full),
        lambda: geometry.speed_for(quantity(18, "m/s"), quantity(TINY, "mm")),
        lambda: preload.share(quantity(600, "MPa"), quantity(TINY, "MPa")),
        lambda: wrench.settable(quantity(10, "N·m"), quantity(TINY, "N·m")),
        lambda: wrench.deviation(quantity(10, "N·m"), quantity(TINY, "N·m")),
    ]
    for rule in tried:
        with pytest.raises(TradeError):
            rule()


def test_one_thing_is_no_list() -> None:
    one: Any = quantity(5, "kPa")
    no_list: Any = 5
    tried: list[Callable[[], object]] = [
        lambda: stretch.stretch(quantity(5, "N"), quantity(5, "GPa"), no_list),
        lambda: preload.scatter(no_list),
        lambda: proof.evenness(one),
        lambda: proof.time_to(no_list, one),
        lambda: proof.missing_places(8, no_list),
    ]
    for rule in tried:
        with pytest.raises(TradeError):
            rule()


TRIED = """
const at = (stem) => import(`${process.argv[1]}/pwa/trade/${stem}.js`);
const [ratio, geometry, preload, wrench, stretch, proof] = await Promise.all(
  ['compression_ratio', 'geometry', 'preload', 'wrench', 'stretch', 'proof'].map(at),
);
const tried = [
  () => ratio.ratio(500, 1e-320),
  () => geometry.deckCut(1e-320, 500, 500),
  () => geometry.speedFor(18, 1e-320),
  () => preload.share(600, 1e-320),
  () => wrench.settable(10, 1e-320),
  () => wrench.deviation(10, 1e-320),
  () => stretch.stretch(5, 5, null),
  () => stretch.stretch(5, 5, 5),
  () => preload.scatter(5),
  () => proof.evenness(5),
  () => proof.timeTo(5, 5),
  () => proof.missingPlaces(8, 5),
];
const codes = tried.map((rule) => {
  try {
    return `gave ${JSON.stringify(rule())}`;
  } catch (refused) {
    return refused.code ?? `broke: ${refused}`;
  }
});
console.log(JSON.stringify(codes));
"""


def test_the_page_refuses_the_same_by_name() -> None:
    done = subprocess.run(
        [node(), "--input-type=module", "-e", TRIED, ROOT.as_uri()],
        capture_output=True, text=True, check=True, timeout=60,
    )  # fmt: skip
    codes = json.loads(done.stdout)
    assert [code for code in codes if code.startswith(("gave", "broke"))] == []
