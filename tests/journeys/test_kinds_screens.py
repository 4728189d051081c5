"""The screens of kinds on the demo workshop: at every size, in every theme."""

from collections.abc import Iterator
from typing import Any

import pytest
from journeys.demo_phone import DemoPhone, demo_phone
from journeys.test_screens import CONTRAST, LONGER, SIZES, THEMES, size

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
    desk = size(phone, at)
    phone.open(PLACES[screen])
    still = screen == "kinds"
    findings: dict[str, Any] = {"jumps": phone.jumps() if still else []}
    for fold in phone.page.locator(".kind-rows summary").all()[:1]:
        fold.click()
        phone.page.locator(".kind-rows select").wait_for()
    findings["measured"] = phone.measured(desk=desk)
    for theme in THEMES:
        phone.wear(theme)
        findings[f"axe, {theme}"] = phone.axe(*([] if at == "phone" else CONTRAST))
    if not desk:
        findings["larger"] = phone.cut_off("document.documentElement.style.fontSize = '200%'")
        phone.page.evaluate("document.documentElement.style.fontSize = ''")
        findings["longer"] = phone.cut_off(LONGER)
    assert {name: found for name, found in findings.items() if found} == {}
