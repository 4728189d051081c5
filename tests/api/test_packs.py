"""Packs of the page: what is in them, for which version, how coded, and how long they last."""

import gzip
import json
import re
from pathlib import Path
from typing import Any

import pytest
from flask.testing import FlaskClient
from pwa.list_page_files import PWA
from witnessmark.api.packing import linked_sheets, tight, with_one_sheet
from witnessmark.api.packs import Packs

ZIPS = {"Accept-Encoding": "gzip"}
SHELL = (
    "<!doctype html>\n"
    '<link rel="stylesheet" href="/a.css">\n<link rel="stylesheet" href="/b.css">\n'
    '<script type="importmap">{"imports":{}}</script>\n'
)
WORKER = (
    "const VERSION = 'abc123';\n"
    "const SHELL_FILES = [\n  '/a.css',\n  '/b.css',\n  '/',\n  '/x.js',\n];\n"
    "const SCREEN_FILES = [\n  '/y.js',\n];\n"
    "const DECODER = 'def456';\nconst DECODER_FILES = [\n  '/reader.wasm',\n];\n"
)


@pytest.fixture
def small(pages: Path) -> Path:
    """A page of two sheets, a module that starts it, one of a screen, and a decoder."""
    (pages / "index.html").write_text(SHELL)
    (pages / "a.css").write_text("/* first */\na { color: red; }\n")
    (pages / "b.css").write_text("b { color: blue; }\n")
    (pages / "x.js").write_text("/** Says it. */\nexport const said = 'é';\n")
    (pages / "y.js").write_text("export const later = 1;\n")
    (pages / "reader.wasm").write_bytes(b"\0asm")
    (pages / "sw.js").write_text(WORKER)
    return pages


def unpacked(body: bytes, order: list[str]) -> tuple[dict[str, Any], dict[str, tuple[str, bytes]]]:
    """What a stream tells, and its files with their types."""
    head, _, rest = body.partition(b"\n")
    told = json.loads(head)
    files = {}
    for address, length in zip(order, told["lengths"], strict=True):
        if length is not None:
            files[address] = (told["types"][address[address.rfind(".") :]], rest[:length])
            rest = rest[length:]
    assert rest == b""
    return told, files


def stream(packs: Packs, part: str) -> tuple[dict[str, Any], dict[str, tuple[str, bytes]]]:
    made = packs.pack(part)
    assert made is not None
    wanted = packs.wanted(part)
    assert wanted is not None
    return unpacked(made.coded("stream", [])[0], [address for address, _ in wanted.files])


def test_a_pack_holds_what_the_worker_lists_with_the_sheets_joined(
    stranger: FlaskClient, small: Path
) -> None:
    zipped = stranger.get("/pack/abc123/shell", headers=ZIPS).data
    told, files = unpacked(gzip.decompress(zipped), ["/a.css", "/b.css", "/", "/x.js"])
    assert (list(files), told["joined"]) == (["/", "/x.js"], ["/a.css", "/b.css"])
    assert told["beside"] == ["/pack/abc123/look.css"]
    assert files["/x.js"][0] == "text/javascript; charset=utf-8"
    assert "é" in files["/x.js"][1].decode()
    assert b"Says it" not in files["/x.js"][1]
    sheet = stranger.get("/pack/abc123/look.css").text
    assert sheet.index("red") < sheet.index("b{")
    later = stranger.get("/pack/abc123/screens").data
    told, files = unpacked(later, ["/y.js"])
    assert (list(files), "beside" in told) == (["/y.js"], False)
    _, reader = unpacked(stranger.get("/pack/def456/decoder").data, ["/reader.wasm"])
    assert reader == {"/reader.wasm": ("application/wasm", b"\0asm")}


def test_the_shell_names_the_joined_sheet_once_it_is_made(
    stranger: FlaskClient, small: Path
) -> None:
    stranger.get("/pack/abc123/shell")
    shell = stranger.get("/L/7K3MQ2RJ")
    assert linked_sheets(shell.text) == ["/pack/abc123/look.css"]
    assert shell.headers["Cache-Control"] == "no-cache"
    known = {"If-None-Match": shell.headers["ETag"]}
    assert stranger.get("/", headers=known).status_code == 304
    (small / "index.html").write_text(SHELL + "<p>changed</p>")
    assert "changed" in stranger.get("/", headers=known).text


def test_a_pack_lasts_and_is_of_one_version_only(stranger: FlaskClient, small: Path) -> None:
    answer = stranger.get("/pack/abc123/shell", headers={"Accept-Encoding": "br, gzip"})
    assert "immutable" in answer.headers["Cache-Control"]
    assert answer.headers["Content-Encoding"] == "br"
    assert answer.headers["Vary"] == "Accept-Encoding"
    for path in (
        "/pack/def456/shell",
        "/pack/abc123/decoder",
        "/pack/abc123/other",
        "/pack/x/y.js",
    ):
        assert stranger.get(path).status_code == 404
    (small / "sw.js").write_text(WORKER.replace("abc123", "bcd234"))
    assert stranger.get("/pack/abc123/shell").status_code == 404
    assert stranger.get("/pack/bcd234/shell").status_code == 200


def test_a_list_that_names_a_missing_file_has_no_pack(stranger: FlaskClient, small: Path) -> None:
    (small / "x.js").unlink()
    assert stranger.get("/pack/abc123/shell").status_code == 404
    assert linked_sheets(stranger.get("/").text) == ["/a.css", "/b.css"]


def test_a_pack_is_found_again_by_the_next_start(small: Path, tmp_path: Path) -> None:
    kept = tmp_path / "kept"
    first = Packs(small, kept).pack("shell")
    again = Packs(small, kept)
    assert again.shell() == first
    (small / "x.js").write_text("export const said = 'something else';\n")
    assert again.pack("shell") != first
    assert len(list(kept.iterdir())) == 1


def test_the_pack_of_the_page_is_the_folder(tmp_path: Path) -> None:
    packs = Packs(PWA, None)
    listed = re.findall(r"^  '(/[^']*)',$", (PWA / "sw.js").read_text("utf-8"), re.MULTILINE)
    page, shell = stream(packs, "shell")
    _, screens = stream(packs, "screens")
    assert "/app/main.js" in shell
    assert "/app/screens/scan.js" in screens
    files = {**shell, **screens}
    _, reader = stream(packs, "decoder")
    apart = {one for one in listed if one.endswith(".woff2")}
    assert {*files, *reader, *page["joined"], *apart} == set(listed)
    for address, (_, body) in {**files, **reader}.items():
        plain = (PWA / (address[1:] or "index.html")).read_bytes()
        if address.startswith("/vendor/zxing-wasm/") or not address.endswith((".js", "/")):
            assert body == plain, address
        else:
            assert 0 < len(body) <= len(plain), address
    named = linked_sheets((PWA / "index.html").read_text("utf-8"))
    assert page["joined"] == named


def test_where_no_library_is_there_texts_stay_as_they_are(monkeypatch: pytest.MonkeyPatch) -> None:
    text = "// says why\nexport const asked = (what) => what;\n"
    assert len(tight(text, "text/javascript")) < len(text)
    monkeypatch.setattr("witnessmark.api.packing.tighteners", lambda _: iter(()))
    assert tight(text, "text/javascript") == text


def test_a_module_that_exports_nothing_stays_a_module() -> None:
    assert "{}" in tight("/** Types only. */\nexport {};\n", "text/javascript")


def test_a_shell_keeps_all_but_its_links() -> None:
    assert with_one_sheet(SHELL, "/one.css") == SHELL.replace("/a.css", "/one.css").replace(
        '<link rel="stylesheet" href="/b.css">\n', ""
    )
