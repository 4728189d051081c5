"""Parts that go back to their own place are marked; elsewhere they are held back."""

from collections.abc import Callable
from typing import Any

from journeys.bench_scene import BAG, described, judged, kept
from journeys.hands import act, press
from playwright.sync_api import Page, expect

Opener = Callable[..., Page]
LIFTER = "11111111-0000-7000-8000-000000000401"
KIND = "11111111-0000-7000-8000-000000000402"
BUILD = "11111111-0000-7000-8000-000000000403"
OTHER = "11111111-0000-7000-8000-000000000404"


def scene(*more: dict[str, Any]) -> list[dict[str, Any]]:
    lifter = {"name": "Lifter", "kind": KIND, "from": "cylinder 3 intake"}
    return [
        described("kind", KIND, name="Lifter", plural="lifters", own_place=True),
        described("build", BUILD, name="Boat engine"),
        described("holder", BAG, name="Bag of lifters", form="bag"),
        described("part", LIFTER, **lifter),
        described("part", OTHER, name="Lifter", kind=KIND, **{"from": "cylinder 4 intake"}),
        *({"heading": "place", "about": part, "body": {"in": BAG}} for part in (LIFTER, OTHER)),
        *more,
    ]


def test_its_own_place_is_marked_on_the_record_and_in_the_bag(open_bench: Opener) -> None:
    page = open_bench(scene(), path=f"/part/{LIFTER}")
    fact = page.locator(".facts > div", has_text="Goes back to")
    expect(fact).to_contain_text("Cylinder 3 intake")
    page.goto(page.url.replace(f"/part/{LIFTER}", f"/holder/{BAG}"))
    page.get_by_role("button", name="lifters").click()
    expect(page.get_by_text("goes back to cylinder 4 intake")).to_be_visible()


def test_the_first_build_begins_with_the_first_part_fitted_to_it(open_bench: Opener) -> None:
    drafts = [one for one in scene(judged(LIFTER, "use")) if one["heading"] != "build"]
    page = open_bench(drafts, path=f"/fit/{LIFTER}")
    expect(page.locator(".act")).to_contain_text("Name the build")
    page.get_by_label("Name of the build").fill("Boat engine")
    press(page, "cylinder 3 intake")
    act(page)
    expect(page.locator(".facts > div", has_text="Fitted")).to_contain_text("Boat engine")


def test_a_part_goes_home_in_two_taps_and_is_taken_off_again(open_bench: Opener) -> None:
    page = open_bench(scene(judged(LIFTER, "use")), path=f"/part/{LIFTER}")
    page.context.set_offline(True)
    page.get_by_role("link", name="Fit or take off").click()
    press(page, "cylinder 3 intake")
    act(page)
    expect(page.locator(".facts > div", has_text="Fitted")).to_contain_text("Boat engine")
    (fact,) = kept(page, "fitted", LIFTER)
    assert fact["body"] == {"build": BUILD, "place": "cylinder 3 intake"}
    page.get_by_role("link", name="Fit or take off").click()
    press(page, "Taken off")
    expect(page.locator(".act")).to_contain_text("Keep: taken off")
    act(page)
    expect(page.locator(".facts > div", has_text="Fitted")).to_contain_text("Taken off")
    last = kept(page, "fitted", LIFTER)[-1]
    assert (last["body"], last["after"]) == ({"build": None}, [fact["id"]])


def test_elsewhere_is_held_back_until_a_reason_is_written(open_bench: Opener) -> None:
    page = open_bench(scene(judged(LIFTER, "use")), path=f"/fit/{LIFTER}")
    press(page, "Another place")
    page.get_by_label("Place in your words").fill("Cylinder 4 intake")
    expect(page.locator(".caution.danger")).to_contain_text("goes back to cylinder 3 intake")
    expect(page.locator(".act")).to_contain_text("Held back")
    act(page)
    expect(page.locator("#fit-why")).to_be_in_viewport()
    assert kept(page, "fitted", LIFTER) == []
    page.get_by_label("Fit it all the same, because").fill("new camshaft and lifters")
    act(page)
    expect(page.locator(".facts > div", has_text="Fitted")).to_contain_text("new camshaft")
    (fact,) = kept(page, "fitted", LIFTER)
    assert fact["body"]["reason"] == "new camshaft and lifters"


def test_case_and_blanks_do_not_make_another_place(open_bench: Opener) -> None:
    page = open_bench(scene(judged(LIFTER, "use")), path=f"/fit/{LIFTER}")
    press(page, "Another place")
    page.get_by_label("Place in your words").fill("Cylinder 03  Intake")
    expect(page.locator(".act")).to_contain_text("Fit it")
    expect(page.locator(".caution.danger")).to_have_count(0)


def test_scrap_and_what_nobody_inspected_are_held_back(open_bench: Opener) -> None:
    page = open_bench(scene(judged(OTHER, "scrap")), path=f"/fit/{LIFTER}")
    expect(page.locator(".caution.danger")).to_contain_text("has no verdict")
    expect(page.get_by_role("link", name="Inspect it")).to_be_visible()
    expect(page.locator(".act")).to_contain_text("Held back")
    page.goto(page.url.replace(LIFTER, OTHER))
    expect(page.locator(".caution.danger")).to_contain_text("Lifter is scrap")
    expect(page.locator(".act")).to_contain_text("Held back")
