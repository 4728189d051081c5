"""First contact: a plain page that explains and hands out the certificate, and does nothing else.

It is the one thing served without TLS. It carries no data of the workshop and takes none.
"""

import re
from collections.abc import Callable, Iterable
from dataclasses import dataclass
from html import escape
from pathlib import Path
from string import Template
from typing import Any

from witnessmark.trust.authority import Authority
from witnessmark.trust.qr import svg_qr
from witnessmark.trust.steps import Way, ways_for

HERE = Path(__file__).parent
PAGE = Template((HERE / "contact.html").read_text(encoding="utf-8"))
LOOK = (HERE / "contact.css").read_bytes()

Start = Callable[[str, list[tuple[str, str]]], object]
Answer = tuple[str, str, bytes]
Application = Callable[[dict[str, Any], Start], Iterable[bytes]]

GUARDS = [
    ("Content-Security-Policy", "default-src 'none'; style-src 'self'; base-uri 'none'; "
     "form-action 'none'; frame-ancestors 'none'"),
    ("X-Content-Type-Options", "nosniff"),
    ("Referrer-Policy", "no-referrer"),
    ("Cache-Control", "no-store"),
]  # fmt: skip


@dataclass(frozen=True, slots=True)
class Contact:
    """What the page tells: whom to trust, and where to go then."""

    authority: Authority
    address: str
    other_addresses: tuple[str, ...] = ()


def contact_page(contact: Contact, browser: str = "") -> bytes:
    """The page, the browser's own system first and unfolded."""
    ways = ways_for(browser)
    link = f'<a href="{escape(contact.address)}">{escape(contact.address)}</a>'
    folded = "".join(_way(way, link, is_open=place == 0) for place, way in enumerate(ways))
    others = "".join(f"<li>{escape(address)}</li>" for address in contact.other_addresses)
    pairs = contact.authority.fingerprint.split(":")
    lines = (" ".join(pairs[at : at + 8]) for at in range(0, len(pairs), 8))
    text = PAGE.substitute(
        address=escape(contact.address),
        link=link,
        symbol=svg_qr(contact.address),
        fingerprint="".join(f"<span>{line}</span> " for line in lines).rstrip(),
        ways=folded,
        others=f'<ul class="others">{others}</ul>' if others else "",
        others_hidden="" if others else " hidden",
    )
    return text.encode()


def _way(way: Way, link: str, *, is_open: bool) -> str:
    """One system's steps, folded but for the browser's own."""
    steps = "".join(f"<li>{_marked(step).replace('{address}', link)}</li>" for step in way.steps)
    note = f'<p class="soft">{escape(way.note)}</p>' if way.note else ""
    return (
        f'<details id="{way.word}"{" open" if is_open else ""}>'
        f"<summary>{escape(way.title)}</summary><ol>{steps}</ol>{note}</details>"
    )


def _marked(step: str) -> str:
    """A step as HTML: two stars for weight, one for the words of a menu."""
    text = re.sub(r"\*\*(.+?)\*\*", r"<strong>\1</strong>", escape(step))
    return re.sub(r"\*(.+?)\*", r"<em>\1</em>", text)


def contact_app(contact: Callable[[], Contact]) -> Application:
    """The page as a WSGI application; asks anew each time, for the addresses may change."""

    def answer(path: str, browser: str) -> Answer:
        if path == "/":
            return "200 OK", "text/html; charset=utf-8", contact_page(contact(), browser)
        if path == "/ca.crt":
            return "200 OK", "application/x-x509-ca-cert", contact().authority.der
        if path == "/look.css":
            return "200 OK", "text/css; charset=utf-8", LOOK
        return "404 Not Found", "text/plain; charset=utf-8", b"Only / and /ca.crt are here.\n"

    def application(environ: dict[str, Any], start: Start) -> Iterable[bytes]:
        method = environ["REQUEST_METHOD"]
        if method not in {"GET", "HEAD"}:
            said: Answer = ("405 Method Not Allowed", "text/plain; charset=utf-8", b"Read only.\n")
        else:
            said = answer(environ["PATH_INFO"], environ.get("HTTP_USER_AGENT", ""))
        status, kind, body = said
        start(status, [("Content-Type", kind), ("Content-Length", str(len(body))), *GUARDS])
        return [b""] if method == "HEAD" else [body]

    return application
