"""The page in few answers: all its files in one stream, its sheets in one, at addresses that last.

The worker of the page names its files in three lists: the shell that starts the page and the
screens, both of one mark, and the decoder with its own. A pack is made once for what lies in the
folder and kept beside the program, so that later starts find it. Where none can be made the page
is served file by file, as it lies there.
"""

import gzip
import hashlib
import io
import json
import re
import subprocess
import sys
import threading
import zipfile
from dataclasses import dataclass
from pathlib import Path

from flask import Blueprint, Flask, Response, current_app, request

from witnessmark.api.config import Config
from witnessmark.errors import AddressUnknown

SHELL = "index.html"
# Named here, because the table of the operating system may know none of the newer ones.
TYPES = {
    ".html": "text/html; charset=utf-8",
    ".js": "text/javascript; charset=utf-8",
    ".mjs": "text/javascript; charset=utf-8",
    ".css": "text/css; charset=utf-8",
    ".json": "application/json",
    ".jsonl": "application/jsonl; charset=utf-8",
    ".webmanifest": "application/manifest+json",
    ".wasm": "application/wasm",
    ".svg": "image/svg+xml",
    ".png": "image/png",
    ".jpg": "image/jpeg",
    ".webp": "image/webp",
    ".ico": "image/x-icon",
    ".woff2": "font/woff2",
    ".txt": "text/plain; charset=utf-8",
    ".md": "text/plain; charset=utf-8",
}
_APART = {".woff2", ".png", ".jpg", ".webp"}
_PACKING = Path(__file__).with_name("packing.py")
_LASTING = "public, max-age=31536000, immutable"
# In the order in which a phone asks for them.
_LISTS = {
    "shell": ("VERSION", "SHELL_FILES"),
    "screens": ("VERSION", "SCREEN_FILES"),
    "decoder": ("DECODER", "DECODER_FILES"),
}
_SECONDS = 120

routes = Blueprint("packs", __name__)


@dataclass(frozen=True, slots=True)
class Wanted:
    """What a pack is made of: its mark, and each file with its address."""

    part: str
    mark: str
    files: tuple[tuple[str, Path], ...]

    @property
    def sheet(self) -> str:
        """Where the joined sheet is."""
        return f"/pack/{self.mark}/look.css"

    def key(self) -> str:
        """Changes when a file does, also when its list was not renewed."""
        facts = [_PACKING.read_bytes(), self.part.encode(), self.mark.encode()]
        for address, path in self.files:
            found = path.stat()
            facts.append(f"{address} {found.st_mtime_ns} {found.st_size}".encode())
        return hashlib.sha256(b"\n".join(facts)).hexdigest()[:32]

    def job(self, *, tight: bool) -> bytes:
        """What the packing program is told."""
        rows = [
            [address, TYPES.get(path.suffix, "application/octet-stream"), str(path)]
            for address, path in self.files
            if path.suffix not in _APART
        ]
        shell = "/" if any(row[0] == "/" for row in rows) else ""
        order = [address for address, _ in self.files]
        told = {"order": order, "files": rows, "shell": shell, "sheet": self.sheet, "tight": tight}
        return json.dumps(told).encode()


@dataclass(frozen=True, slots=True)
class Pack:
    """A pack that was made, by the names of its parts with their codings."""

    key: str
    parts: dict[str, bytes]

    def coded(self, name: str, codings: list[str]) -> tuple[bytes, str]:
        """A part in the first of the codings that there is; plain, with no coding, otherwise."""
        for coding, ending in (("br", ".br"), ("gzip", ".gz")):
            if coding in codings and name + ending in self.parts:
                return self.parts[name + ending], coding
        return gzip.decompress(self.parts[name + ".gz"]), ""


class Packs:
    """The packs of a folder, made when first wanted."""

    def __init__(self, pages: Path, keep: Path | None) -> None:
        self.pages, self.keep = pages, keep
        self._made: dict[str, Pack] = {}
        self._making = threading.Lock()

    def wanted(self, part: str) -> Wanted | None:
        """What the folder's worker lists for a part; None where it lists nothing."""
        worker = self.pages / "sw.js"
        text = worker.read_text(encoding="utf-8") if worker.is_file() else ""
        mark, files = _LISTS[part]
        named = re.search(rf"const {mark} = '([0-9a-f]+)';", text)
        listed = re.search(rf"const {files} = \[([^\]]*)\];", text)
        if not named or not listed:
            return None
        addresses = re.findall(r"'(/[^']*)'", listed[1])
        rows = tuple((one, self.pages / (one[1:] or SHELL)) for one in addresses)
        return Wanted(part, named[1], rows) if all(path.is_file() for _, path in rows) else None

    def pack(self, part: str, mark: str | None = None) -> Pack | None:
        """The pack of a part, made now if need be; None where it has another mark or none."""
        wanted = self.wanted(part)
        if wanted is None or mark not in {None, wanted.mark}:
            return None
        found = self._at_hand(wanted)
        if found is None:
            with self._making:
                found = self._at_hand(wanted) or self._make(wanted)
        return found

    def shell(self) -> Pack | None:
        """The shell's pack if it is at hand; otherwise it is begun aside, and nobody waits."""
        wanted = self.wanted("shell")
        if wanted is None or self._making.locked():
            return None
        found = self._at_hand(wanted)
        if found is None:
            self.begin()
        return found

    def begin(self) -> None:
        """Make what is missing aside."""
        threading.Thread(target=self._make_all, daemon=True, name="packs").start()

    def _make_all(self) -> None:
        for part in _LISTS:
            self.pack(part)

    def _at_hand(self, wanted: Wanted) -> Pack | None:
        key, known = wanted.key(), self._made.get(wanted.part)
        if known is not None and known.key == key:
            return known
        kept = self.keep / f"{wanted.part}-{key}.zip" if self.keep else None
        if kept is None or not kept.is_file():
            return None
        return self._remember(wanted.part, key, kept.read_bytes())

    def _remember(self, part: str, key: str, whole: bytes) -> Pack:
        with zipfile.ZipFile(io.BytesIO(whole)) as pack:
            parts = {name: pack.read(name) for name in pack.namelist()}
        made = self._made[part] = Pack(key, parts)
        return made

    def _make(self, wanted: Wanted) -> Pack | None:
        key = wanted.key()
        whole = _run(wanted.job(tight=True)) or _run(wanted.job(tight=False))
        if not whole:
            return None
        if self.keep:
            _keep(self.keep, wanted.part, key, whole)
        return self._remember(wanted.part, key, whole)


def _run(job: bytes) -> bytes:
    """What the packing program makes of a job; nothing when it stumbles."""
    # -I: the modules of this folder must not stand in for those of the standard library.
    command = [sys.executable, "-I", str(_PACKING)]
    try:
        done = subprocess.run(  # noqa: S603 - our own program, told by us
            command, input=job, capture_output=True, timeout=_SECONDS, check=False
        )
    except (OSError, subprocess.TimeoutExpired):
        return b""
    return done.stdout if done.returncode == 0 else b""


def _keep(folder: Path, part: str, key: str, whole: bytes) -> None:
    """Put a pack where the next start finds it; where that may not be, it is made again."""
    try:
        folder.mkdir(exist_ok=True)
        for older in folder.glob(f"{part}-*.zip"):
            older.unlink(missing_ok=True)
        made = folder / f"{part}-{key}.zip"
        fresh = made.with_suffix(f".{threading.get_native_id()}")
        fresh.write_bytes(whole)
        fresh.replace(made)
    except OSError:
        return


def place() -> Path | None:
    """Where packs outlive the server: the program's own environment, if it has one."""
    return Path(sys.prefix) / "pages" if sys.prefix != sys.base_prefix else None


def install(app: Flask, config: Config) -> None:
    """Serve the packs."""
    app.extensions["witnessmark-packs"] = Packs(config.pages, place())
    app.register_blueprint(routes)


def begin(app: Flask) -> None:
    """Make the packs aside, before the first phone comes."""
    app.extensions["witnessmark-packs"].begin()


def packs() -> Packs:
    """The packs of the app that answers."""
    found: Packs = current_app.extensions["witnessmark-packs"]
    return found


def coded_answer(pack: Pack, name: str, kind: str) -> Response:
    """A part of a pack in the best coding that the asker reads."""
    codings = [one for one in ("br", "gzip") if request.accept_encodings[one]]
    body, coding = pack.coded(name, codings)
    answer = Response(body, content_type=kind)
    answer.vary.add("Accept-Encoding")
    if coding:
        answer.content_encoding = coding
    answer.set_etag(f"{pack.key}-{coding or 'plain'}")
    return answer


@routes.get("/pack/<mark>/<name>")
def pack(mark: str, name: str) -> Response:
    """A pack of the version that lies here; of no other, so that versions are never mixed."""
    part, stands_for = ("shell", "sheet") if name == "look.css" else (name, "stream")
    found = packs().pack(part, mark) if part in _LISTS else None
    if found is None or f"{stands_for}.gz" not in found.parts:
        raise AddressUnknown
    kind = TYPES[".css"] if stands_for == "sheet" else "application/octet-stream"
    answer = coded_answer(found, stands_for, kind)
    answer.headers["Cache-Control"] = _LASTING
    answer.make_conditional(request)
    return answer
