"""The screens of kinds on the demo workshop: at every size, in every theme."""

from collections.abc import Iterator

import pytest
from journeys.demo_phone import SIZES, DemoPhone, demo_phone, size

MAKE = """
const { startOf } = await import('/app/kinds/ready.js');
const [kind, part] = given;
await store.keep([
  { heading: 'kind', about: kind, body: { fields: startOf('Valve', []) } },
  { heading: 'part', about: part, body: { fields: { name: 'Valve 3', kind } } },
]);
"""
VALVE = "11111111-0000-7000-8000-000000000901"
VALVE_3 = "11111111-0000-7000-8000-000000000902"
PLACES = {
    "kinds": "/kinds",
    "new": "/kind/new",
    "kind": f"/kind/{VALVE}",
    "inspect": f"/inspect/{VALVE_3}",
}


@pytest.fixture(scope="module")
def phone(tmp_path_factory: pytest.TempPathFactory) -> Iterator[DemoPhone]:
    with demo_phone(tmp_path_factory.mktemp("kinds")) as one:
        one.store(MAKE, [VALVE, VALVE_3])
        one.sent()
        yield one


@pytest.mark.parametrize("at", SIZES)
@pytest.mark.parametrize("screen", PLACES)
def test_a_screen_of_kinds_holds_in_every_theme_and_with_larger_and_longer_words(
    phone: DemoPhone, screen: str, at: str
) -> None:
    size(phone, at)
    phone.open(PLACES[screen])
    jumps = phone.jumps() if screen in ("kinds", "inspect") else []
    for fold in phone.page.locator(".kind-rows summary").all()[:1]:
        fold.click()
        phone.page.locator(".kind-rows select").wait_for()
    assert phone.wrong(at, jumps) == {}
