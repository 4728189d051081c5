"""Screens of taking apart, of donors and of fitting: at every size, in every theme."""

import re
from collections.abc import Iterator
from pathlib import Path

import pytest
from journeys.demo_phone import SIZES, DemoPhone, demo_phone, size, wrong_at

MAKE = """
const [kind, part, bag, donor, build] = given;
const of = (heading, about, fields) => ({ heading, about, body: { fields } });
await store.keep([
  of('donor', donor, { name: 'Donor 9', engine: 'Kelderby 28', bought: 'at a yard' }),
  of('build', build, { name: 'Kelderby for the boat' }),
  of('kind', kind, { name: 'Lifter', plural: 'lifters', own_place: true }),
  of('part', part, { name: 'Lifter cylinder 3 intake', kind, donor, from: 'cylinder 3 intake' }),
  of('part', bag, { name: 'Lifter', kind, donor, quantity: 8 }),
  { heading: 'verdict', about: part, body: { verdict: 'use' } },
  { heading: 'purchase', about: donor, body: { price: { value: '120', unit: 'EUR' } } },
]);
const line = { id: part, name: 'Lifter cylinder 3 intake', code: 'VT4CX27V', quantity: 1 };
const bagged = [{ ...line, voids: [], at: Date.now() }];
await store.setDraft('strip', { donor, kind, place: 'lobe 4', code: '7K3MQ2RJ', bagged });
await store.setDraft('fit:' + part, { build, place: 'cylinder 4 intake', reason: '' });
"""
SPOKEN = Path(__file__).parent / "spoken"
KIND, PART, BAG, DONOR, BUILD = (f"11111111-0000-7000-8000-00000000095{n}" for n in range(5))
PLACES = {
    "strip": "/strip",
    "donors": "/donors",
    "donor": f"/donor/{DONOR}",
    "fit": f"/fit/{PART}",
    "counted": f"/part/{BAG}",
}


@pytest.fixture(scope="module")
def phone(tmp_path_factory: pytest.TempPathFactory) -> Iterator[DemoPhone]:
    with demo_phone(tmp_path_factory.mktemp("strip")) as one:
        one.store(MAKE, [KIND, PART, BAG, DONOR, BUILD])
        one.sent()
        yield one


@pytest.mark.parametrize("at", SIZES)
@pytest.mark.parametrize("screen", PLACES)
def test_a_screen_of_taking_apart_holds_in_every_theme_and_with_larger_and_longer_words(
    phone: DemoPhone, screen: str, at: str
) -> None:
    assert wrong_at(phone, at, PLACES[screen]) == {}


def test_bagging_reads_aloud_as_kept(phone: DemoPhone) -> None:
    size(phone, "phone")
    phone.open("/strip")
    phone.page.get_by_role("heading", name="Bagged this evening").wait_for()
    kept = (SPOKEN / "strip.txt").read_text("utf-8")
    told = re.sub(r"/part/[0-9a-f-]+", "/part/", phone.aloud())
    assert kept == told
