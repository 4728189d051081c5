"""The screens of a bag of used parts as a screen reader meets them."""

import re
from collections.abc import Iterator
from datetime import UTC, datetime
from pathlib import Path

import pytest
from journeys import rods
from journeys.demo_phone import DemoPhone, demo_phone, size

SPOKEN = Path(__file__).parent / "spoken"
SENT = {"to": "Grinder by the river", "for": "polish", "due": "2031-05-06"}
PLACES = {
    "inspect": f"/inspect/{rods.rod(9)}",
    "bag": f"/holder/{rods.BAG}",
    "shelf": "/shelf",
    "scrap": "/shelf?scrap=1",
    "away": "/away",
    "send": "/send",
    "kind": f"/kind/{rods.KIND}",
    "donors": "/donors",
    "history_part": f"/history/part/{rods.rod(12)}",
    "history_kind": f"/history/kind/{rods.KIND}",
    "history_donor": f"/history/donor/{rods.DONORS[0]}",
}


@pytest.fixture(scope="module")
def phone(tmp_path_factory: pytest.TempPathFactory) -> Iterator[DemoPhone]:
    with demo_phone(tmp_path_factory.mktemp("spoken")) as one:
        one.store(rods.KEEP, [*rods.bag(), *rods.inspected()])
        out = [{"heading": "sent", "about": rods.rod(n), "body": SENT} for n in (1, 2, 3)]
        one.store(rods.KEEP, out)
        one.sent()
        size(one, "phone")
        yield one


def dayless(told: str) -> str:
    """The same on any day: what was kept a moment ago was kept today."""
    return re.sub(rf"\b{datetime.now(UTC):%-d %b}\b(?! \d{{4}})", "today", told)


@pytest.mark.parametrize("screen", PLACES)
def test_a_screen_of_the_bag_is_read_aloud_as_kept(phone: DemoPhone, screen: str) -> None:
    phone.open(PLACES[screen])
    if screen == "kind":
        phone.page.get_by_role("link", name="on the shelf").wait_for()
    assert dayless(phone.aloud()) == (SPOKEN / f"bag_{screen}.txt").read_text("utf-8")
