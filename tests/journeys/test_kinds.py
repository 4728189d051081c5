"""Kinds: made from the ready list, changed, inspected with; the ready list is whole."""

import json
import re
import subprocess
from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest
from journeys.bench_scene import KIND, bag, kept
from journeys.hands import Hand, act, press
from playwright.sync_api import Page, expect
from tools import node

Opener = Callable[..., Page]
ROOT = Path(__file__).parents[2]
BLANK = "7K3MQ2RJ"
READY = """
const {READY} = await import(process.argv[1] + '/pwa/app/kinds/ready.js');
const {WORN} = await import(process.argv[1] + '/pwa/app/drawing/worn_paths.js');
const {headings} = await import(process.argv[1] + '/pwa/log/headings/index.js');
const read = headings.get('kind').check;
const troubles = READY.map(({fields}) => read({fields})).filter(Boolean);
console.log(JSON.stringify({READY, WORN, troubles}));
"""


@pytest.fixture(scope="module")
def ready() -> dict[str, Any]:
    told = subprocess.run(
        [node(), "--input-type=module", "-e", READY, str(ROOT)],
        capture_output=True, text=True, check=True,
    )  # fmt: skip
    found: dict[str, Any] = json.loads(told.stdout)
    return found


def test_a_kind_made_ready_and_changed_is_what_a_part_is_inspected_by(
    open_bench: Opener, workshop: Any
) -> None:
    page = open_bench(bag(), path="/kind/new")
    press(page, "All ready kinds")
    page.get_by_label("Name or word").fill("spring")
    press(page, "Valve spring")
    expect(page.get_by_label("Name", exact=True)).to_have_value("Valve spring")
    expect(page.get_by_label("Source of the questions")).to_have_value("common practice, no source")
    page.locator("summary", has_text="Stands upright?").click()
    page.get_by_label("Question", exact=True).fill("Stands straight?")
    act(page)
    page.wait_for_url(re.compile("/kind/(?!new)"))
    page.goto(f"{workshop.address}/kinds")
    page.get_by_role("link", name="Valve spring no part yet · 3 questions").click()
    expect(page.locator("summary", has_text="Stands straight?")).to_be_visible()
    kind = page.url.rsplit("/", 1)[1]
    page.goto(f"{workshop.address}/new/{BLANK}")
    press(page, "Valve spring")
    page.get_by_label("Name", exact=True).fill("Spring 1")
    act(page)
    expect(page.locator("h1")).to_have_text("Spring 1")
    expect(page.get_by_role("link", name="Kind: Valve spring")).to_have_attribute(
        "href", f"/kind/{kind}"
    )
    part = page.url.rsplit("/", 1)[1]
    page.goto(f"{workshop.address}/inspect/{part}")
    expect(page.locator(".looks .shown")).to_contain_text("Stands straight?")
    expect(page.locator(".plate svg")).to_have_attribute(
        "aria-label", "good: no gap; not good: leans"
    )
    hand = Hand(page)
    hand.settle()
    for row, word in enumerate(("Yes", "No", "Yes")):
        hand.press(page.locator(".looks li").nth(row).get_by_role("button", name=word))
        hand.pass_time(170)
    press(page, "Scrap")
    press(page, "broken")
    act(page)
    expect(page.locator("h1")).to_have_text("Spring 1")
    (inspection,) = kept(page, "inspection", part)
    assert [look["good"] for look in inspection["body"]["looks"]] == [True, False, True]
    assert inspection["body"]["reason"] == "broken"


def test_a_new_part_offers_the_ready_kinds(open_bench: Opener) -> None:
    page = open_bench(bag(), path=f"/new/{BLANK}")
    press(page, "All kinds")
    page.get_by_label("Name or word").fill("rocker a")
    press(page, "Start from: Rocker arm")
    act(page)
    expect(page.locator("h1")).to_have_text("Rocker arm")
    page.get_by_role("link", name="Kind: Rocker arm").click()
    expect(page.locator("summary", has_text="Tip even?")).to_be_visible()
    expect(page.locator("summary", has_text="Tip wear")).to_contain_text("no limits yet")


def test_a_limit_is_kept_with_its_source_and_nothing_else_is_written(open_bench: Opener) -> None:
    page = open_bench(bag(), path=f"/kind/{KIND}")
    press(page, "Add a measure")
    expect(page.locator(".act")).to_be_disabled()
    page.get_by_label("What is measured").fill("Length")
    expect(page.locator(".act")).to_contain_text("Length: no unit that is known.")
    page.get_by_label("Unit", exact=True).fill("mm")
    page.get_by_label("Positions").fill("front, rear")
    page.get_by_label("Least").fill("lots")
    expect(page.locator(".act")).to_contain_text("A limit is no number")
    page.get_by_label("Least").fill("123456789012345678")
    expect(page.locator(".act")).to_contain_text("Length: a limit has too many digits.")
    page.get_by_label("Least").fill("187,02")
    page.get_by_label("Most").fill("186,98")
    expect(page.locator(".act")).to_contain_text("Length: the least is above the most.")
    expect(page.locator(".act")).to_be_disabled()
    page.get_by_label("Most").fill("")
    page.get_by_label("Source of the limits").fill("manual p. 4")
    act(page)
    expect(page.locator(".act")).to_contain_text("Kept.")
    assert page.url.endswith(f"/kind/{KIND}")
    said = page.evaluate(
        """async (id) => { const { openStore } = await import('/store/index.js');
        const kinds = await (await openStore()).allOf('kind');
        return kinds.subject(id).fields.measures.value }""",
        KIND,
    )
    (measure,) = said
    del measure["id"]
    assert measure == {
        "name": "Length", "unit": "mm", "positions": ["front", "rear"],
        "least": "187.02", "source": "manual p. 4",
    }  # fmt: skip


def test_at_least_25_ready_kinds_have_questions_and_no_limits(ready: dict[str, Any]) -> None:
    assert len(ready["READY"]) >= 25
    assert ready["troubles"] == []
    for one in ready["READY"]:
        fields = one["fields"]
        assert fields["source"] == "common practice, no source"
        assert 2 <= len(fields["criteria"]) <= 4, one["name"]
        for criterion in fields["criteria"]:
            assert criterion["asks"].endswith("?"), criterion
            assert {"hint", "good", "bad"} <= set(criterion), criterion
            assert criterion.get("drawing", "crack") in ready["WORN"], criterion
        for measure in fields["measures"]:
            assert {"quantity", "unit", "instrument"} <= set(measure), measure
            assert not {"least", "most"} & set(measure)


def test_every_drawing_belongs_to_a_ready_question(ready: dict[str, Any]) -> None:
    drawn = {
        criterion.get("drawing")
        for one in ready["READY"]
        for criterion in one["fields"]["criteria"]
    }
    assert len(ready["WORN"]) >= 12
    assert drawn - {None} == set(ready["WORN"])
