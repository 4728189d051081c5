"""A run on small glass, and what belongs to one bolt or one joint only."""

from collections.abc import Callable
from typing import Any

from journeys.bench_scene import (
    BOLTS,
    HEAD,
    JOINT,
    bench_drafts,
    described,
    half_way,
    judged,
    kept,
    programme,
)
from journeys.hands import Hand
from playwright.sync_api import Page, expect

Opener = Callable[..., Page]
OTHER = JOINT.replace("000003", "000033")
UNDER = """() => {
  const act = document.querySelector('.act').getBoundingClientRect();
  return [...document.querySelectorAll('.pair .press, .keypad .press, .tool')]
    .filter(key => key.getBoundingClientRect().bottom > act.top)
    .map(key => `${key.textContent.trim()} ${key.getBoundingClientRect().bottom - act.top}`);
}"""


def glass(size: tuple[int, int]) -> dict[str, Any]:
    return {"viewport": {"width": size[0], "height": size[1]}, "has_touch": True, "is_mobile": True}


def test_the_whole_keypad_is_in_view_on_the_smallest_glass(open_bench: Opener) -> None:
    page = open_bench(half_way(), path=f"/joint/{JOINT}/reading", **glass((320, 640)))
    page.locator(".keypad").wait_for()
    page.keyboard.type("610")
    assert page.evaluate(UNDER) == []
    heights = page.locator(".keypad .press").evaluate_all("keys => keys.map(k => k.offsetHeight)")
    assert min(heights) >= 56


def test_a_half_typed_reading_belongs_to_its_bolt(open_bench: Opener) -> None:
    page = open_bench(half_way(), path=f"/joint/{JOINT}/reading")
    page.locator(".keypad").wait_for()
    page.keyboard.type("610")
    expect(page.locator(".typed .big")).to_have_text("610")
    page.reload()
    expect(page.locator(".typed .big")).to_have_text("610")
    page.goto(page.url.replace("/reading", ""))
    page.locator(".act").press("Enter")
    expect(page.locator(".act")).to_contain_text("Confirm 9")
    page.locator(".act").press("Enter")
    expect(page.locator(".act")).to_contain_text("Confirm 10")
    page.locator("#reading").click()
    expect(page.locator(".keypad")).to_be_visible()
    expect(page.locator(".typed .big")).to_have_text("")


def test_the_lubricant_of_one_joint_is_not_offered_at_another(open_bench: Opener) -> None:
    other = described(
        "joint", OTHER, **{
            **bench_drafts()[-1]["body"]["fields"],
            "name": "Sump bolts", "programme": programme(lubricant="dry"),
        },
    )  # fmt: skip
    page = open_bench([*bench_drafts(), other])
    page.get_by_role("button", name="moly paste").click()
    Hand(page).settle()
    Hand(page).press(page.locator(".act"))
    expect(page.locator(".act")).to_contain_text("Confirm 1")
    assert kept(page, "begin")[0]["body"]["lubricant"] == "moly"
    page.goto(page.url.replace(JOINT, OTHER))
    expect(page.get_by_role("button", name="dry")).to_have_attribute("aria-pressed", "true")
    expect(page.get_by_role("button", name="moly paste")).to_have_attribute("aria-pressed", "false")


def test_a_part_nobody_looked_at_is_offered_for_inspection(open_bench: Opener) -> None:
    drafts = [one for one in bench_drafts() if one != judged(BOLTS, "use")]
    page = open_bench(drafts)
    expect(page.locator(".act")).to_contain_text("Inspect head bolts M11")
    page.locator(".act").press("Enter")
    expect(page).to_have_url(page.url.split("/joint")[0].split("/inspect")[0] + f"/inspect/{BOLTS}")
    assert HEAD not in page.url
