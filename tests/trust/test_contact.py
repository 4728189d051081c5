"""First contact: the explanation and the certificate, nothing else, safe to look at."""

import re
from collections.abc import Iterable
from datetime import UTC, datetime
from html.parser import HTMLParser
from typing import Any

import pytest
from cryptography import x509
from witnessmark.trust.authority import make_authority
from witnessmark.trust.contact import Contact, contact_app, contact_page
from witnessmark.trust.steps import WAYS, ways_for

AUTHORITY = make_authority("bokal", datetime(2031, 3, 7, tzinfo=UTC))
CONTACT = Contact(AUTHORITY, "https://bokal.local:8443", ("https://192.168.1.20:8443",))
PHONE = "Mozilla/5.0 (Linux; Android 14; Pixel 7) AppleWebKit/537.36 Chrome/120 Mobile"
BROWSERS = {
    "android": PHONE,
    "ios": "Mozilla/5.0 (iPhone; CPU iPhone OS 17_0 like Mac OS X) Safari/604.1",
    "windows": "Mozilla/5.0 (Windows NT 10.0; Win64; x64) Chrome/120",
    "macos": "Mozilla/5.0 (Macintosh; Intel Mac OS X 10_15_7) Safari/605",
    "linux": "Mozilla/5.0 (X11; Linux x86_64) Firefox/120",
}


def ask(path: str, method: str = "GET", browser: str = PHONE) -> tuple[str, dict[str, str], bytes]:
    told: dict[str, Any] = {}

    def start(status: str, headers: Iterable[tuple[str, str]]) -> None:
        told.update(status=status, headers=dict(headers))

    asked = {"PATH_INFO": path, "REQUEST_METHOD": method, "HTTP_USER_AGENT": browser}
    body = b"".join(contact_app(lambda: CONTACT)(asked, start))
    return told["status"], told["headers"], body


class Seen(HTMLParser):
    """What a page is made of: tags with their attributes, and its words."""

    def __init__(self, page: bytes) -> None:
        super().__init__()
        self.tags: list[tuple[str, dict[str, str | None]]] = []
        self.words = ""
        self.feed(page.decode())

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.tags.append((tag, dict(attrs)))

    def handle_data(self, data: str) -> None:
        self.words += data


def test_the_certificate_comes_as_phones_install_it() -> None:
    status, headers, body = ask("/ca.crt")
    assert status == "200 OK"
    assert headers["Content-Type"] == "application/x-x509-ca-cert"
    assert x509.load_der_x509_certificate(body) == AUTHORITY.certificate


def test_the_page_tells_address_fingerprint_and_every_system() -> None:
    seen = Seen(ask("/")[2])
    signs = re.sub(r"\s", "", seen.words)
    assert AUTHORITY.fingerprint.replace(":", "") in signs
    links = {facts.get("href") for tag, facts in seen.tags if tag == "a"}
    assert links == {"/ca.crt", "https://bokal.local:8443"}
    assert "https://192.168.1.20:8443" in seen.words
    for way in WAYS:
        assert way.title in seen.words


def test_the_page_needs_nothing_from_elsewhere_and_runs_nothing() -> None:
    seen = Seen(ask("/")[2])
    tags = {tag for tag, _ in seen.tags}
    assert not tags & {"script", "iframe", "form", "input", "img", "object"}
    assert not any(name.startswith("on") for _, facts in seen.tags for name in facts)
    assert not any("style" in facts for _, facts in seen.tags)
    assert [facts["href"] for tag, facts in seen.tags if tag == "link"] == ["/look.css"]


@pytest.mark.parametrize(("word", "browser"), BROWSERS.items())
def test_the_browsers_own_system_stands_first_and_open(word: str, browser: str) -> None:
    folded = [facts for tag, facts in Seen(ask("/", browser=browser)[2]).tags if tag == "details"]
    assert folded[0]["id"] == word
    assert ["open" in facts for facts in folded] == [True, False, False, False, False]


def test_an_unknown_browser_sees_all_ways() -> None:
    assert [way.word for way in ways_for("something else")] == [way.word for way in WAYS]


@pytest.mark.parametrize("path", ["/api/v1/log", "/index.html", "/ca.crt/", "/../authority.pem"])
def test_nothing_else_is_there(path: str) -> None:
    assert ask(path)[0] == "404 Not Found"


def test_it_takes_nothing() -> None:
    assert ask("/", method="POST")[0] == "405 Method Not Allowed"
    status, headers, body = ask("/", method="HEAD")
    assert (status, body) == ("200 OK", b"")
    assert int(headers["Content-Length"]) > 1000


def test_every_answer_carries_the_guards() -> None:
    for path in ("/", "/ca.crt", "/look.css", "/nothing"):
        headers = ask(path)[1]
        assert headers["X-Content-Type-Options"] == "nosniff"
        assert "default-src 'none'" in headers["Content-Security-Policy"]
        assert headers["Cache-Control"] == "no-store"


def test_a_page_without_other_addresses_leaves_the_place_out() -> None:
    page = contact_page(Contact(AUTHORITY, "https://bokal.local:8443"))
    assert b"<div hidden>" in page


def test_steps_are_text_and_never_markup() -> None:
    told = " ".join(step for way in WAYS for step in way.steps)
    assert not set(told) & set("<>")
    assert b"Security &amp; privacy" in ask("/")[2]
