"""A shelf made on a phone: spares, labelled scrap, a part for the machine shop."""

from typing import Any

KIND, BUILD, SPARE, SCRAP, HEAD, DONOR, SHELF = (
    f"33333333-0000-7000-8000-00000000000{n}" for n in range(1, 8)
)
OTHER = "33333333-0000-7000-8000-000000000008"
KEEP = "await store.keep(given);"
# Labels whose check sign fits are made by the page's own rule.
LABEL = """
const { check } = await import('/trade/label.js');
const made = (body) => `${body}${check(body)}`;
const [scrap, head] = [made('0000SC1'), made('0000HD1')];
await store.keep([
  { heading: 'label', about: scrap, body: { marks: given[0] } },
  { heading: 'label', about: head, body: { marks: given[1] } },
]);
return [scrap, head];
"""


def described(at: str, about: str, **fields: Any) -> dict[str, Any]:
    return {"heading": at, "about": about, "body": {"fields": fields}}


def judged(about: str, verdict: str, reason: str) -> dict[str, Any]:
    return {"heading": "verdict", "about": about, "body": {"verdict": verdict, "reason": reason}}


def scene() -> list[dict[str, Any]]:
    """A kind with a measure, three lifters of it, and a head."""
    length = {"id": "m1", "name": "Length", "quantity": "length", "unit": "mm"}
    size = {"measure": "m1", "value": {"value": "41.97", "unit": "mm"}}
    seen = {"verdict": "spare", "readings": [size]}
    return [
        described("kind", KIND, name="Tappet", plural="tappets", measures=[length]),
        described("build", BUILD, name="Kelderby for the boat"),
        described("donor", DONOR, name="Donor 9"),
        described("holder", SHELF, name="Spare shelf 2", form="shelf"),
        described("part", SPARE, name="Tappet 4", kind=KIND, donor=DONOR),
        described("part", OTHER, name="Tappet 6", kind=KIND, donor=DONOR),
        described("part", SCRAP, name="Tappet 5", kind=KIND, donor=DONOR),
        described("part", HEAD, name="Rear head", donor=DONOR),
        {"heading": "place", "about": SPARE, "body": {"in": SHELF}},
        {"heading": "inspection", "about": SPARE, "body": seen},
        judged(SPARE, "spare", "light wear"),
        judged(OTHER, "spare", "spare"),
        judged(SCRAP, "scrap", "face pitted"),
        judged(HEAD, "machine", "face warped"),
    ]
