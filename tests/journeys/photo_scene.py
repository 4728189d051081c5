"""A pushrod with photos made on a phone: its own, an inspection's, and those of its kind."""

import base64
import io
from typing import Any

from journeys.demo_phone import DemoPhone
from PIL import Image, ImageDraw

PART, KIND, BARE = (f"66666666-0000-7000-8000-00000000000{n}" for n in range(1, 4))
AWAY = "0" * 64
KEEP = """
const [part, kind, bare, away, pictures] = given;
const photos = [];
for (const one of pictures)
  photos.push(await store.keepPhoto(await (await fetch(`data:image/jpeg;base64,${one}`)).blob()));
const [own, found, good, bad] = photos;
const asked = { asks: 'Ends even and round?', good: 'even', bad: 'flat', drawing: 'ball-end' };
const criteria = [
  { id: 'c1', ...asked, good_photo: good, bad_photo: bad }, { id: 'c2', asks: 'Straight?' },
];
await store.keep([
  { heading: 'kind', about: kind, body: { fields: { name: 'Long pushrod', criteria } } },
  { heading: 'part', about: part, body: { fields: { name: 'Pushrod 3', kind } } },
  { heading: 'part', about: bare, body: { fields: { name: 'Flywheel 7' } } },
  { heading: 'photo', about: part, body: { photo: own, says: 'ball end under the lamp' } },
  { heading: 'photo', about: part, body: { photo: away } },
  { heading: 'inspection', about: part, body: { verdict: 'scrap', photos: [{ photo: found }] } },
]);
return photos;
"""
FACTS = """
const subject = (await store.partSlice(given[0])).subject(given[0]);
return subject.facts.filter((fact) => fact.heading === given[1]);
"""


def picture(seed: int, width: int = 1600, height: int = 1200) -> bytes:
    """A grey casting with a crack, different for each seed."""
    image = Image.new("RGB", (width, height), (90 + 20 * seed, 100, 110))
    pen = ImageDraw.Draw(image)
    pen.ellipse((width * 0.3, height * 0.25, width * 0.6, height * 0.65), fill=(180, 185, 190))
    pen.line((width * 0.42, height * 0.35, width * 0.5, height * 0.55), fill=(9, 9, 9), width=7)
    kept = io.BytesIO()
    image.save(kept, "JPEG", quality=80)
    return kept.getvalue()


def photographed(phone: DemoPhone) -> list[str]:
    """Keeps everything on the phone: digests of own, inspection's, good and bad photo."""
    sizes = [(1600, 1200), (1200, 1600), (1600, 1200), (1600, 1200)]
    made = [base64.b64encode(picture(n, *at)).decode() for n, at in enumerate(sizes)]
    photos: list[str] = phone.store(KEEP, [PART, KIND, BARE, AWAY, made])
    return photos


def facts(phone: DemoPhone, about: str, heading: str) -> list[dict[str, Any]]:
    """What the phone holds of a heading about a thing, oldest first."""
    found: list[dict[str, Any]] = phone.store(FACTS, [about, heading])
    return found
