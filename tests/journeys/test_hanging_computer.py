"""A computer that takes the connection and then says nothing: the page goes on without it."""

from pathlib import Path

from garage import PHONE, garage
from journeys.bench_scene import JOINT, half_way, keep, kept
from journeys.test_two_at_one_joint import go_on
from playwright.sync_api import Browser, expect
from sync.proxy import line_to

# The page's half minute of patience, cut to a quarter so that the test need not take it all.
HASTE = """const given = AbortSignal.timeout;
AbortSignal.timeout = (ms) => given.call(AbortSignal, ms / 4);"""


def test_a_computer_that_hangs_holds_nothing_up_and_is_tried_again(
    chrome: Browser, tmp_path: Path
) -> None:
    with garage(tmp_path / "data") as house, line_to(house.address) as (line, address):
        context = chrome.new_context(**PHONE)
        context.add_init_script(HASTE)
        page = context.new_page()
        house.address = address
        code = house.pairing()["code"]
        page.goto(f"{address}/pair#{code}")
        expect(page.locator(".sync")).to_contain_text("all home", timeout=20_000)
        keep(page, half_way())
        page.goto(f"{address}/joint/{JOINT}")
        go_on(page)
        expect(page.locator(".act")).to_contain_text("Confirm 9")
        expect(page.locator(".sync")).to_contain_text("all home", timeout=20_000)
        line.plan = ["hang"]
        page.locator(".act").click()
        expect(page.locator(".act")).to_contain_text("Confirm 10")
        expect(page.locator(".sync")).to_contain_text("1 waiting")
        page.locator(".sync").click()
        slow = page.get_by_text("The computer does not answer yet.")
        expect(slow).to_be_visible(timeout=15_000)
        assert line.done == ["hang"]
        expect(page.get_by_text("It is tried again by itself.")).to_be_visible(timeout=15_000)
        expect(page.locator(".sync")).to_contain_text("all home", timeout=40_000)
        expect(slow).to_be_hidden()
        assert len(kept(page, "pull")) == 37
        line.let_go.set()
        context.close()
