"""The page's own files: types, marks, headers, the shell, and nothing beside the folder."""

import base64
import gzip
import hashlib
from dataclasses import replace
from pathlib import Path
from typing import Any

import pytest
from flask.testing import FlaskClient
from witnessmark.api import create_app

TYPES = {
    "main.js": "text/javascript; charset=utf-8",
    "part.mjs": "text/javascript; charset=utf-8",
    "look.css": "text/css; charset=utf-8",
    "manifest.webmanifest": "application/manifest+json",
    "reader.wasm": "application/wasm",
    "face.woff2": "font/woff2",
    "icon.svg": "image/svg+xml",
    "icon.png": "image/png",
    "changes.json": "application/json",
}


@pytest.mark.parametrize(("name", "mime"), sorted(TYPES.items()))
def test_types_are_ours_and_not_the_systems(
    stranger: FlaskClient, pages: Path, name: str, mime: str
) -> None:
    (pages / "app").mkdir()
    (pages / "app" / name).write_bytes(b"x")
    answer = stranger.get(f"/app/{name}")
    assert (answer.status_code, answer.headers["Content-Type"]) == (200, mime)
    assert answer.headers["X-Content-Type-Options"] == "nosniff"


@pytest.mark.parametrize(
    "path", ["/", "/L/7K3MQ2RJ", "/part/01c18537", "/pair", "/joint/x/reading", "/more/devices"]
)
def test_the_shell_answers_every_address_of_the_page(stranger: FlaskClient, path: str) -> None:
    answer = stranger.get(path)
    assert answer.status_code == 200
    assert "shell" in answer.text
    assert answer.mimetype == "text/html"
    assert answer.headers["Cache-Control"] == "no-cache"


@pytest.mark.parametrize(
    "path",
    [
        "/missing.js",
        "/../server/__main__.py",
        "/..%2f..%2fetc/passwd.txt",
        "/%2e%2e/data/witnessmark.sqlite",
        "/.hidden.js",
        "/app/.git/config.txt",
        "/index.html%00.js",
    ],
)
def test_nothing_beside_the_folder_is_served(stranger: FlaskClient, pages: Path, path: str) -> None:
    (pages / ".hidden.js").write_text("secret")
    answer = stranger.get(path)
    assert answer.status_code == 404
    assert answer.json["code"] == "address-unknown"


def test_a_file_is_asked_for_again_but_not_sent_again(stranger: FlaskClient, pages: Path) -> None:
    (pages / "sw.js").write_text("// first\n" * 200)
    first = stranger.get("/sw.js", headers={"Accept-Encoding": "gzip"})
    assert first.headers["Cache-Control"] == "no-cache"
    assert gzip.decompress(first.data) == b"// first\n" * 200
    known = {"If-None-Match": first.headers["ETag"], "Accept-Encoding": "gzip"}
    assert stranger.get("/sw.js", headers=known).status_code == 304
    assert stranger.get("/sw.js", headers={"If-None-Match": "x"}).data == b"// first\n" * 200
    (pages / "sw.js").write_text("// second, and longer\n" * 200)
    assert stranger.get("/sw.js", headers=known).status_code == 200


def test_the_policy_lets_the_import_map_through_by_its_hash_and_nothing_inline(
    stranger: FlaskClient, pages: Path
) -> None:
    text = '{"imports":{}}'
    expected = base64.b64encode(hashlib.sha256(text.encode()).digest()).decode()
    for path in ("/", "/api/v1/health", "/api/v1/nothing", "/x.js"):
        rules = stranger.get(path).headers["Content-Security-Policy"]
        assert f"script-src 'self' 'wasm-unsafe-eval' 'sha256-{expected}'" in rules
        for wanted in ("default-src 'none'", "frame-ancestors 'none'", "base-uri 'none'"):
            assert wanted in rules
        assert "unsafe-inline" not in rules
        assert "unsafe-eval'" not in rules.replace("wasm-unsafe-eval'", "")


@pytest.mark.parametrize("path", ["/", "/api/v1/health", "/api/v1/sync", "/x.js"])
def test_every_answer_is_guarded(stranger: FlaskClient, path: str) -> None:
    headers = stranger.get(path).headers
    assert headers["Referrer-Policy"] == "no-referrer"
    assert headers["X-Frame-Options"] == "DENY"
    assert "camera=(self)" in headers["Permissions-Policy"]
    assert "Strict-Transport-Security" not in headers
    assert not any(name.lower().startswith("access-control") for name, _ in headers)


def test_answers_with_data_are_not_kept_by_caches(phone: Any) -> None:
    assert phone.get("/log").headers["Cache-Control"] == "no-store"


def test_waiting_entries_of_the_demo_are_served_in_the_demo_only(
    config: Any, stranger: FlaskClient
) -> None:
    assert stranger.get("/demo/waiting.jsonl").status_code == 404
    demo = create_app(replace(config, demo=True)).test_client()
    assert demo.get("/demo/waiting.jsonl").text == "{}\n"


def test_a_head_request_and_a_post_to_a_page_are_answered(stranger: FlaskClient) -> None:
    assert stranger.head("/").status_code == 200
    assert stranger.post("/").status_code == 405
