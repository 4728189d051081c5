"""The demo's files are what its script makes, and a workshop comes of them without a rest."""

import io
import json
import re
from collections import defaultdict
from hashlib import sha256
from typing import Any

import pytest
from PIL import Image, ImageChops, ImageStat
from witnessmark.errors import FieldShape
from witnessmark.log.entry import take
from witnessmark.log.workshop import Workshop, subject
from witnessmark.store.invented import belongs_to, invented_things
from witnessmark.trade import label
from witnessmark.views.joint import joint

from demo_workshop.make import DEMO, build

PHOTO = re.compile(r'"photo":"([0-9a-f]{64})"')
MOST_PICTURE = 30_000


def lines(name: str) -> list[str]:
    return (DEMO / name).read_text(encoding="utf-8").splitlines()


ENTRIES: list[dict[str, Any]] = [json.loads(line)["entry"] for line in lines("log.jsonl")]


def workshop() -> Workshop:
    about = {entry["id"]: entry["about"] for entry in ENTRIES}
    home = defaultdict(list)
    for entry in ENTRIES:
        thing = entry["about"]
        home[about[thing] if entry["heading"] == "strike-out" else thing].append(
            {"entry": entry, "order": entry["stamp"]}
        )
    return Workshop([subject(thing, found) for thing, found in home.items()])  # type: ignore[arg-type]


def pictures_in(text: list[str]) -> list[str]:
    return list(dict.fromkeys(PHOTO.findall("\n".join(text))))


def without_pictures(text: list[str]) -> list[str]:
    named = pictures_in(text)
    return [PHOTO.sub(lambda found: f"picture {named.index(found[1])}", line) for line in text]


def test_the_files_are_what_the_script_makes() -> None:
    made = build()
    assert without_pictures(made.log) == without_pictures(lines("log.jsonl"))
    assert made.waiting == lines("waiting.jsonl")
    assert made.devices == json.loads((DEMO / "devices.json").read_text(encoding="utf-8"))


def test_the_pictures_are_what_the_script_draws() -> None:
    made = build()
    pairs = zip(pictures_in(made.log), pictures_in(lines("log.jsonl")), strict=True)
    for drawn, kept in pairs:
        one = Image.open(io.BytesIO(made.pictures[drawn])).convert("L")
        other = Image.open(DEMO / "photos" / kept).convert("L")
        difference = ImageStat.Stat(ImageChops.difference(one, other)).mean[0]
        assert difference < 1, "edges may fall a pixel apart between computers, no more"


def test_every_picture_named_is_there_under_its_digest_and_small() -> None:
    named = set(pictures_in(lines("log.jsonl")))
    assert named == {path.name for path in (DEMO / "photos").iterdir()}
    for name in named:
        raw = (DEMO / "photos" / name).read_bytes()
        assert sha256(raw).hexdigest() == name
        assert len(raw) <= MOST_PICTURE


def test_every_entry_is_taken_as_it_stands_and_none_is_left_unread() -> None:
    for number, line in enumerate(lines("log.jsonl"), 1):
        text = take(json.loads(line)["entry"]).text
        assert line == f'{{"seq":{number},"entry":{text}}}'
    assert [found["unread"] for found in workshop().subjects if found["unread"]] == []


def test_both_devices_count_without_a_hole_and_stamps_rise() -> None:
    counts: dict[str, list[int]] = defaultdict(list)
    for entry in ENTRIES:
        counts[entry["device"]].append(entry["n"])
    assert len(counts) == 2
    assert all(found == list(range(1, len(found) + 1)) for found in counts.values())
    stamps = [entry["stamp"] for entry in ENTRIES]
    assert sorted(set(stamps)) == stamps
    assert len({entry["id"] for entry in ENTRIES}) == len(ENTRIES)


def test_it_holds_what_was_promised() -> None:
    shop = workshop()
    headings = [entry["heading"] for entry in ENTRIES]
    assert [len(shop.all(word)) for word in ("holder", "part", "joint", "donor")] == [
        59,
        151,
        14,
        2,
    ]
    assert headings.count("inspection") == 40


def test_every_code_has_its_check_sign_and_stands_on_one_sheet() -> None:
    printed = [
        code for entry in ENTRIES if entry["heading"] == "sheet" for code in entry["body"]["codes"]
    ]
    assert len(set(printed)) == len(printed)
    for code in printed:
        assert code[-1] == label.check(code[:7])
    marked = {entry["about"] for entry in ENTRIES if entry["heading"] == "label"}
    assert marked < set(printed)
    assert len(set(printed) - marked) >= 9


def test_all_of_it_is_marked_invented_and_stays_out_of_a_real_workshop() -> None:
    things = invented_things(ENTRIES)
    for entry in ENTRIES:
        assert belongs_to(entry, things), entry
        things.add(entry["id"])


def test_the_head_stopped_half_way_with_bolt_6_struck_out() -> None:
    shop = workshop()
    head = next(
        each for each in shop.all("joint") if each["fields"]["name"]["value"] == "Head bolts"
    )
    view = joint(shop, head["id"])
    assert (view["state"], view["pass_number"], view["next"]["number"]) == ("running", 2, 9)
    assert view["struck_note"] == 6
    assert view["held"] == []
    states = sorted(joint(shop, each["id"])["state"] for each in shop.all("joint"))
    assert states == ["done"] * 3 + ["no-value"] + ["not-begun"] * 9 + ["running"]


def test_one_waiting_entry_is_refused_and_says_what_to_repair() -> None:
    waiting = [json.loads(line)["entry"] for line in lines("waiting.jsonl")]
    refused = waiting.pop(1)
    for entry in waiting:
        take(entry)
    with pytest.raises(FieldShape, match=r"^The reading of fastener f2 is no number\.$"):
        take(refused)
    assert {entry["id"] for entry in [*waiting, refused]}.isdisjoint(
        entry["id"] for entry in ENTRIES
    )
