"""The screens of sets with 32 invented pushrods: at every size, in every theme."""

from collections.abc import Iterator

import pytest
from journeys import rods
from journeys.demo_phone import SIZES, DemoPhone, demo_phone, size

SET = "22222222-0000-7000-8000-0000000000ff"
PLACES = {"sets": "/sets", "choose": f"/set/new?kind={rods.KIND}", "set": f"/set/{SET}"}
MADE = {
    "heading": "set",
    "about": SET,
    "body": {
        "fields": {
            "name": "2 pushrods",
            "kind": rods.KIND,
            "pieces": [{"part": rods.rod(n), "place": str(n)} for n in (1, 2)],
            "spares": [rods.rod(3)],
            "measures": [{"measure": "m1", "weight": "1"}],
            "says": "These 2 span 0.01 mm.",
            "invented": True,
        }
    },
}


@pytest.fixture(scope="module")
def phone(tmp_path_factory: pytest.TempPathFactory) -> Iterator[DemoPhone]:
    with demo_phone(tmp_path_factory.mktemp("sets")) as one:
        one.store(rods.KEEP, [*rods.bag(), *rods.inspected(), MADE])
        one.sent()
        yield one


@pytest.mark.parametrize("at", SIZES)
@pytest.mark.parametrize("screen", PLACES)
def test_a_screen_of_sets_holds_in_every_theme_and_with_larger_and_longer_words(
    phone: DemoPhone, screen: str, at: str
) -> None:
    size(phone, at)
    phone.open(PLACES[screen])
    jumps = phone.jumps()
    if screen == "choose":
        phone.page.locator(".set-pieces .row").nth(1).click()
        phone.page.locator(".set-wish").wait_for()
    findings = {"jumps": jumps, **phone.swept(at)}
    assert {name: found for name, found in findings.items() if found} == {}
