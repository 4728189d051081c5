"""Headers that every answer carries: what a page may load, and from where."""

import base64
import hashlib
import re
from functools import lru_cache
from pathlib import Path

from flask import Flask, Response, request

_IMPORT_MAP = re.compile(rb"<script\s+type=[\"']importmap[\"']\s*>(.*?)</script>", re.DOTALL)
_FIXED = {
    "X-Content-Type-Options": "nosniff",
    "X-Frame-Options": "DENY",
    "Referrer-Policy": "no-referrer",
    "Cross-Origin-Opener-Policy": "same-origin",
    "Cross-Origin-Resource-Policy": "same-origin",
    "Permissions-Policy": (
        "camera=(self), screen-wake-lock=(self), microphone=(), geolocation=(), payment=(), usb=()"
    ),
}


def install(app: Flask, pages: Path) -> None:
    """Put the headers on everything the app answers."""
    shell = pages / "index.html"

    @app.after_request
    def _guard(answer: Response) -> Response:
        answer.headers.update(_FIXED)
        answer.headers.setdefault("Content-Security-Policy", page_rules(shell, _age(shell)))
        if request.path.startswith("/api/"):
            answer.headers.setdefault("Cache-Control", "no-store")
        return answer


def _age(shell: Path) -> int:
    return shell.stat().st_mtime_ns if shell.is_file() else 0


@lru_cache(maxsize=4)
def page_rules(shell: Path, _age: int) -> str:
    """The content security policy: nothing from elsewhere, no inline script but the import map.

    A hash lets that one text through; wasm-unsafe-eval lets the decoder of labels run.
    """
    shown = shell.read_bytes() if shell.is_file() else b""
    hashes = "".join(f" 'sha256-{_hash(text)}'" for text in _IMPORT_MAP.findall(shown))
    return "; ".join(
        (
            "default-src 'none'",
            f"script-src 'self' 'wasm-unsafe-eval'{hashes}",
            "style-src 'self'",
            "img-src 'self' blob: data:",
            "media-src 'self' blob:",
            "font-src 'self'",
            "connect-src 'self'",
            "worker-src 'self'",
            "manifest-src 'self'",
            "base-uri 'none'",
            "form-action 'none'",
            "frame-ancestors 'none'",
        )
    )


def _hash(text: bytes) -> str:
    # The parser of the page turns CR LF into LF before it hashes.
    clean = text.replace(b"\r\n", b"\n").replace(b"\r", b"\n")
    return base64.b64encode(hashlib.sha256(clean).digest()).decode()
