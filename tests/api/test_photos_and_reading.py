"""Photos by digest, the log, and the views that other programs may read."""

import hashlib
from typing import Any

import pytest
from werkzeug.test import TestResponse
from written import Writer

API = "/api/v1"
KINDS = {
    "image/jpeg": b"\xff\xd8\xff\xe0 jpeg",
    "image/png": b"\x89PNG\r\n\x1a\n png",
    "image/webp": b"RIFF\x10\0\0\0WEBPVP8 ",
}


def code_of(answer: Any) -> tuple[int, str]:
    return answer.status_code, answer.json["code"]


def sha(raw: bytes) -> str:
    return hashlib.sha256(raw).hexdigest()


def put(phone: Any, raw: bytes, name: str | None = None, **headers: str) -> TestResponse:
    path = f"{API}/photos/{name or sha(raw)}"
    answer: TestResponse = phone.browser.put(path, data=raw, headers={**phone.headers, **headers})
    return answer


@pytest.mark.parametrize("mime", sorted(KINDS))
def test_a_photo_is_kept_once_and_given_for_good(phone: Any, mime: str) -> None:
    raw = KINDS[mime]
    assert put(phone, raw).status_code == 201
    assert put(phone, raw).status_code == 200
    answer = phone.get(f"/photos/{sha(raw)}")
    assert (answer.data, answer.mimetype) == (raw, mime)
    assert "immutable" in answer.headers["Cache-Control"]
    assert answer.headers["X-Content-Type-Options"] == "nosniff"


@pytest.mark.parametrize(
    ("raw", "name", "expected"),
    [
        (b"GIF89a", None, (415, "type-unknown")),
        (b"<svg onload=x>", None, (415, "type-unknown")),
        (b"", None, (415, "type-unknown")),
        (KINDS["image/png"], "0" * 64, (422, "photo-differs")),
        (KINDS["image/png"], "A" * 64, (422, "field-shape")),
        (KINDS["image/png"], "..%2f..%2fx", (404, "address-unknown")),
        (KINDS["image/png"], "x", (422, "field-shape")),
        (b"\xff\xd8\xff" + bytes(2 * 1024 * 1024), None, (413, "too-much")),
    ],
)
def test_what_is_no_picture_of_that_name_is_not_kept(
    phone: Any, raw: bytes, name: str | None, expected: tuple[int, str]
) -> None:
    assert code_of(put(phone, raw, name)) == expected
    assert phone.get(f"/photos/{sha(raw)}").status_code == 404


def test_a_picture_of_two_mebibytes_is_kept(phone: Any) -> None:
    assert put(phone, b"\xff\xd8\xff" + bytes(2 * 1024 * 1024 - 3)).status_code == 201


def test_those_that_have_not_arrived_are_named(phone: Any) -> None:
    raw = KINDS["image/png"]
    put(phone, raw)
    asked = ["1" * 64, sha(raw), "2" * 64, "1" * 64]
    told = phone.post("/photos/missing", {"photos": asked}).json
    assert told == {"missing": ["1" * 64, "2" * 64]}
    for facts in ({"photos": ["x"]}, {"photos": "x"}, {"photos": ["1" * 64] * 1001}):
        assert code_of(phone.post("/photos/missing", facts)) == (422, "field-shape")
    assert code_of(phone.post("/photos/missing", {})) == (422, "field-missing")
    assert len(phone.post("/photos/missing", {"photos": ["1" * 64] * 1000}).json["missing"]) == 1


def test_the_log_is_read_after_a_number(phone: Any, writer: Writer) -> None:
    entries = writer.entries(5)
    phone.sync(*entries)
    told = phone.get("/log?after=3&limit=1").json
    assert told["entries"] == [{"seq": 4, "entry": entries[3]}]
    assert (told["cursor"], told["head"]) == (f"4.{entries[3]['id'][-8:]}", 5)
    assert len(phone.get("/log").json["entries"]) == 5
    assert phone.get("/log?limit=0&after=5").json["entries"] == []
    assert len(phone.get("/log?limit=99999").json["entries"]) == 5
    for query in ("after=-1", "after=x", "limit=1.5", "limit=", "after=%D9%A1"):
        assert code_of(phone.get(f"/log?{query}")) == (422, "field-shape")


@pytest.fixture
def bench(phone: Any, writer: Writer) -> dict[str, str]:
    """A part with a label in a tray, and the joint it belongs to."""
    part = writer.part("pushrod 4", quantity=1)
    tray = writer.entry("holder", body={"fields": {"name": "tray 4", "form": "tray"}})
    joint = writer.entry("joint", body={"fields": {"name": "rockers", "parts": [part["about"]]}})
    phone.sync(
        part,
        tray,
        joint,
        writer.entry("label", "7K3MQ2RJ", body={"marks": part["about"]}),
        writer.entry("place", part["about"], body={"in": tray["about"]}),
    )
    return {"part": part["about"], "tray": tray["about"], "joint": joint["about"]}


@pytest.mark.parametrize("name", ["{part}", "7K3MQ2RJ", "7k3m-q2rj"])
def test_a_part_is_found_by_id_or_label(phone: Any, bench: dict[str, str], name: str) -> None:
    told = phone.get(f"/parts/{name.format(**bench)}").json
    assert (told["id"], told["name"]) == (bench["part"], "pushrod 4")
    assert [lies["name"] for lies in told["lies"]] == ["tray 4"]
    assert [joint["name"] for joint in told["joints"]] == ["rockers"]


def test_what_is_not_here_says_so(phone: Any, bench: dict[str, str]) -> None:
    assert code_of(phone.get("/parts/nobody")) == (404, "part-unknown")
    assert code_of(phone.get(f"/parts/{bench['tray']}")) == (404, "part-unknown")
    assert code_of(phone.get("/parts/0000001J")) == (404, "part-unknown")
    assert code_of(phone.get("/parts/7K3MQ2RK")) == (422, "label-check")
    assert code_of(phone.get(f"/joints/{bench['part']}")) == (404, "joint-unknown")
    assert code_of(phone.get(f"/holders/{bench['part']}")) == (404, "holder-unknown")


def test_joints_and_holders_answer_as_their_views_do(phone: Any, bench: dict[str, str]) -> None:
    assert phone.get(f"/joints/{bench['joint']}").json["name"] == "rockers"
    told = phone.get(f"/holders/{bench['tray']}").json
    assert [row["name"] for row in told["rows"]] == ["pushrod 4"]


def test_a_search_finds_by_word_and_by_code_and_sees_news(
    phone: Any, bench: dict[str, str], writer: Writer
) -> None:
    def found(query: str) -> list[str]:
        groups = phone.get(f"/search?q={query}").json["groups"]
        return [hit["name"] for group in groups for hit in group["hits"]]

    assert found("pushrod") == ["pushrod 4"]
    assert found("7K3MQ2RJ") == ["pushrod 4"]
    assert found("camshaft") == []
    phone.sync(writer.part("camshaft"))
    assert found("camshaft") == ["camshaft"]
    assert code_of(phone.get("/search?q=" + "x" * 201)) == (422, "field-shape")
