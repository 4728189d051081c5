"""An app on a data folder of its own, and phones that speak to it in the process."""

import gzip
import json
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import pytest
from flask import Flask
from flask.testing import FlaskClient
from werkzeug.test import TestResponse
from witnessmark.api import Config, create_app
from witnessmark.store import Store
from written import Clock, Writer

API = "/api/v1"


@dataclass
class Phone:
    """A paired device: its key, and what it asks."""

    browser: FlaskClient
    key: str
    id: str

    @property
    def headers(self) -> dict[str, str]:
        """Its key as a header."""
        return {"Authorization": f"Bearer {self.key}"}

    def get(self, path: str) -> TestResponse:
        """Ask for a path under the API."""
        return self.browser.get(API + path, headers=self.headers)

    def post(self, path: str, facts: object = None) -> TestResponse:
        """Send JSON to a path under the API."""
        return self.browser.post(API + path, json=facts, headers=self.headers)

    def raw(self, body: bytes, path: str = "/sync", **headers: str) -> TestResponse:
        """Send bytes; header names with underscores for dashes."""
        named = {name.replace("_", "-"): value for name, value in headers.items()}
        given = {"Content-Type": "application/json", **self.headers, **named}
        return self.browser.post(API + path, data=body, headers=given)

    def sync(self, *entries: object, **facts: Any) -> dict[str, Any]:
        """One round trip that must succeed; the cursor is null unless given."""
        answer = self.post("/sync", {"cursor": None, "entries": list(entries), **facts})
        assert answer.status_code == 200, answer.text
        told: dict[str, Any] = json.loads(answer.text)
        return told


@pytest.fixture
def clock() -> Clock:
    """The server's clock."""
    return Clock()


@pytest.fixture
def pages(tmp_path: Path) -> Path:
    """A small page in place of the real one."""
    folder = tmp_path / "pages"
    folder.mkdir()
    shell = '<!doctype html><title>x</title><script type="importmap">{"imports":{}}</script>\n'
    (folder / "index.html").write_text(shell + "<p>shell</p>" * 100)
    return folder


@pytest.fixture
def config(tmp_path: Path, pages: Path, clock: Clock) -> Config:
    """What the app is started with."""
    demo = tmp_path / "demo"
    demo.mkdir()
    (demo / "waiting.jsonl").write_text("{}\n")
    address = "https://bokal.local:8443"
    return Config(tmp_path / "data", address=address, pages=pages, demo_files=demo, now_ms=clock)


@pytest.fixture
def app(config: Config) -> Iterator[Flask]:
    """The app, as a server runs it."""
    made = create_app(config)
    yield made
    made.extensions["witnessmark"].close()


@pytest.fixture
def store(app: Flask) -> Store:
    """The app's store."""
    opened: Store = app.extensions["witnessmark"]
    return opened


@pytest.fixture
def phone(app: Flask, store: Store) -> Phone:
    """A paired phone."""
    return paired(app, store)


@pytest.fixture
def stranger(app: Flask) -> FlaskClient:
    """Somebody without a key."""
    return app.test_client()


@pytest.fixture
def writer() -> Writer:
    """What the phone writes."""
    return Writer()


def paired(app: Flask, store: Store, workshop: str | None = None) -> Phone:
    """One more phone, of the folder's workshop or another."""
    made = store.pair(store.pairing_code(workshop).code, "phone")
    return Phone(app.test_client(), made.key, made.device)


def unzipped(answer: TestResponse) -> bytes:
    """The body of an answer that came zipped."""
    assert answer.headers["Content-Encoding"] == "gzip"
    return gzip.decompress(answer.data)


@pytest.fixture
def another_phone(app: Flask, store: Store) -> Phone:
    """A second phone of the same workshop."""
    return paired(app, store)
