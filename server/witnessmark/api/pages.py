"""The page's own files: whatever lies in pwa/ is served, and the shell for every other address.

No data is in them, so they need no key. Each is served as it lies there; a phone that keeps the
page asks for the packs instead.
"""

import hashlib
from dataclasses import dataclass
from pathlib import Path

from flask import Blueprint, Flask, Response, current_app, request
from werkzeug.routing import PathConverter
from werkzeug.security import safe_join

from witnessmark.api.config import Config
from witnessmark.api.packs import SHELL, TYPES, coded_answer, packs
from witnessmark.api.zipped import gzip_of
from witnessmark.errors import AddressUnknown

_LEVEL = 9
_PAYS_FROM = 512
_TIGHT_ALREADY = {".png", ".jpg", ".webp", ".woff2"}

routes = Blueprint("pages", __name__)


@dataclass(frozen=True, slots=True)
class _Held:
    """A file as it was read: bytes, zipped bytes where that pays, and its mark."""

    seen: tuple[int, int]
    plain: bytes
    zipped: bytes | None
    mark: str


class _PagePath(PathConverter):
    """Any path but those of the API: an unknown route there is no address of the page."""

    regex = "(?!api/)[^/].*?"


class Pages:
    """The files of a folder, kept in memory until they change on disk."""

    def __init__(self, config: Config) -> None:
        self.config = config
        self._held: dict[Path, _Held] = {}

    def find(self, path: str) -> Path | None:
        """The file at an address inside the folder; None when there is none."""
        if self.config.demo and path == "demo/waiting.jsonl":
            return self.config.demo_files / "waiting.jsonl"
        joined = safe_join(str(self.config.pages), path)
        found = Path(joined) if joined else None
        return found if found and found.is_file() and not hidden(path) else None

    def held(self, file: Path) -> _Held:
        """The file's bytes, read again only when it changed."""
        facts = file.stat()
        seen = (facts.st_mtime_ns, facts.st_size)
        held = self._held.get(file)
        if held is None or held.seen != seen:
            held = self._held[file] = _read(file, seen)
        return held


def install(app: Flask, config: Config) -> None:
    """Serve the folder."""
    app.extensions["witnessmark-pages"] = Pages(config)
    app.url_map.converters["page"] = _PagePath
    app.register_blueprint(routes)


def address() -> str:
    """Where people reach this server, as they would type it."""
    pages: Pages = current_app.extensions["witnessmark-pages"]
    return (pages.config.address or request.host_url).rstrip("/")


def label_address() -> str:
    """The address that labels carry."""
    pages: Pages = current_app.extensions["witnessmark-pages"]
    return pages.config.label_address or address()


def hidden(path: str) -> bool:
    """Whether a part of the path begins with a dot."""
    return any(step.startswith(".") for step in path.split("/"))


@routes.get("/")
@routes.get("/<page:path>")
def page(path: str = SHELL) -> Response:
    """A file of the page; the shell for an address that names none."""
    pages: Pages = current_app.extensions["witnessmark-pages"]
    file = pages.find(path)
    if file is None and "." in path.rsplit("/", 1)[-1]:
        raise AddressUnknown
    if file is None or path == SHELL:
        return _shell(pages)
    return _answer(pages, file)


def _shell(pages: Pages) -> Response:
    """The shell with its sheets joined, as soon as that was made."""
    packed = packs().shell()
    if packed is None:
        return _answer(pages, pages.config.pages / SHELL)
    answer = coded_answer(packed, "shell", TYPES[".html"])
    answer.headers["Cache-Control"] = "no-cache"
    answer.make_conditional(request)
    return answer


def _answer(pages: Pages, file: Path) -> Response:
    if not file.is_file():
        raise AddressUnknown
    held = pages.held(file)
    zips = held.zipped is not None and bool(request.accept_encodings["gzip"])
    answer = Response((held.zipped if zips else held.plain) or b"")
    answer.headers["Content-Type"] = TYPES.get(file.suffix, "application/octet-stream")
    # Ask each time whether it changed: a page of yesterday must not meet a worker of today.
    answer.headers["Cache-Control"] = "no-cache"
    if held.zipped is not None:
        answer.vary.add("Accept-Encoding")
    if zips:
        answer.content_encoding = "gzip"
    answer.set_etag(f"{held.mark}-z" if zips else held.mark)
    answer.make_conditional(request)
    return answer


def _read(file: Path, seen: tuple[int, int]) -> _Held:
    plain = file.read_bytes()
    tight = file.suffix in _TIGHT_ALREADY or len(plain) < _PAYS_FROM
    zipped = None if tight else gzip_of(plain, _LEVEL)
    return _Held(seen, plain, zipped, hashlib.sha256(plain).hexdigest()[:32])
