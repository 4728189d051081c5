"""Writes the file list and the version that pwa/sw.js keeps; a test compares both with the folder.

Run it after any change of a file that the page loads: `python3 tests/pwa/list_page_files.py`.
"""

import hashlib
import re
from pathlib import Path

PWA = Path(__file__).parents[2] / "pwa"
NEVER = ("sw.js", "vendor/types/", "vendor/VENDORED.json")
ENDINGS = {".js", ".css", ".html", ".json", ".webmanifest", ".png", ".svg", ".woff2", ".wasm"}


def page_files() -> list[Path]:
    """Everything the page may load, decoder included, in the order of their paths."""
    found = []
    for path in sorted(PWA.rglob("*"), key=lambda one: one.relative_to(PWA).as_posix()):
        name = path.relative_to(PWA).as_posix()
        if path.is_file() and path.suffix in ENDINGS and not name.startswith(NEVER):
            found.append(path)
    return found


def addresses(files: list[Path]) -> list[str]:
    """The paths as the page asks for them; the shell is asked for as /."""
    names = [path.relative_to(PWA).as_posix() for path in files]
    return ["/" if name == "index.html" else f"/{name}" for name in names]


def version(files: list[Path]) -> str:
    """Twelve hex digits that change when any file, or the worker's own rules, change."""
    total = hashlib.sha256(rules().encode())
    for path in files:
        name = path.relative_to(PWA).as_posix()
        total.update(f"{name} {hashlib.sha256(path.read_bytes()).hexdigest()}\n".encode())
    return total.hexdigest()[:12]


def rules() -> str:
    """The worker without the two constants."""
    text = (PWA / "sw.js").read_text(encoding="utf-8")
    text = re.sub(r"const VERSION = '[^']*';", "", text)
    return re.sub(r"const FILES = \[[^\]]*\];", "", text)


def written() -> str:
    """The worker as it should be."""
    files = page_files()
    listed = "".join(f"  '{address}',\n" for address in addresses(files))
    text = (PWA / "sw.js").read_text(encoding="utf-8")
    text = re.sub(r"const VERSION = '[^']*';", f"const VERSION = '{version(files)}';", text)
    return re.sub(r"const FILES = \[[^\]]*\];", f"const FILES = [\n{listed}];", text)


if __name__ == "__main__":
    (PWA / "sw.js").write_text(written(), encoding="utf-8")
