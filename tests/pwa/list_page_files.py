"""Writes the lists and marks that pwa/sw.js keeps; a test compares them with the folder.

Run it after any change of a file that the page loads: `python3 tests/pwa/list_page_files.py`.
"""

import hashlib
import json
import re
from pathlib import Path

PWA = (Path(__file__).parents[2] / "pwa").resolve()
# The system fetches icons when it installs the page; the rest is no part of the page.
NEVER = ("sw.js", "icons/", "vendor/types/", "vendor/VENDORED.json")
ENDINGS = {".js", ".css", ".html", ".json", ".webmanifest", ".png", ".svg", ".woff2", ".wasm"}
LIBRARY = "vendor/zxing-wasm/"
IMPORTED = re.compile(r"""(?:^|;)(?:import|export)\b[^'"`;=(]*['"]([^'"]+)['"]""", re.MULTILINE)


def imported(path: Path, folder: Path) -> set[Path]:
    """The files that a module names in its imports, also through the import map."""
    told = re.search(
        r"importmap\">(.*?)</script>", (folder / "index.html").read_text("utf-8"), re.S
    )
    named = json.loads(told[1])["imports"] if told else {}
    found = set()
    for word in IMPORTED.findall(path.read_text(encoding="utf-8")):
        if word in named:
            found.add(folder / named[word][1:])
        elif word.startswith("."):
            found.add((path.parent / word).resolve())
    return found


def reached(starts: list[Path], folder: Path) -> set[Path]:
    """The modules and all that they import."""
    seen: set[Path] = set()
    todo = list(starts)
    while todo:
        path = todo.pop()
        if path not in seen:
            seen.add(path)
            todo += imported(path, folder) if path.is_file() else ()
    return {path for path in seen if path.is_file()}


def page_scripts(folder: Path) -> set[Path]:
    """The modules of the page itself: its start, every screen, and what these import."""
    starts = [folder / "app" / name for name in ("start.js", "main.js", "read_ahead.js")]
    return reached([*starts, *(folder / "app" / "screens").glob("*.js")], folder)


def reader_scripts(folder: Path) -> set[Path]:
    """The modules that the readers' workers load."""
    return reached([folder / "scan" / "worker.js"], folder)


def page_files(folder: Path = PWA) -> list[Path]:
    """Everything the page may load, decoder included, in the order of their paths.

    A module that neither the page nor a worker reaches is not listed: no phone has a use for it.
    """
    folder = folder.resolve()
    scripts = page_scripts(folder) | reader_scripts(folder)
    found = []
    for path in sorted(folder.rglob("*"), key=lambda one: one.relative_to(folder).as_posix()):
        name = path.relative_to(folder).as_posix()
        wanted = path.suffix in ENDINGS and not name.startswith(NEVER)
        if wanted and (path in scripts or path.suffix != ".js" or name.startswith(LIBRARY)):
            found.append(path)
    return found


def shell_files(folder: Path = PWA) -> list[Path]:
    """What the page needs to start: all but screens, what only they import, and the decoder."""
    folder = folder.resolve()
    starts = reached([folder / "app" / "start.js", folder / "app" / "main.js"], folder)
    return [
        path
        for path in page_files(folder)
        if path in starts or path.suffix in {".html", ".css", ".woff2", ".webmanifest"}
    ]


def decoder_files(folder: Path = PWA) -> list[Path]:
    """The library, and what the readers' workers load that nothing on the page does."""
    folder = folder.resolve()
    only = reader_scripts(folder) - page_scripts(folder)
    return [
        path
        for path in page_files(folder)
        if path in only or path.relative_to(folder).as_posix().startswith(LIBRARY)
    ]


def addresses(files: list[Path], folder: Path = PWA) -> list[str]:
    """The paths as the page asks for them; the shell is asked for as /."""
    folder = folder.resolve()
    names = [path.relative_to(folder).as_posix() for path in files]
    return ["/" if name == "index.html" else f"/{name}" for name in names]


def mark(files: list[Path], folder: Path, more: str = "") -> str:
    """Twelve hex digits that change when any of the files, or what is given besides, changes."""
    total = hashlib.sha256(more.encode())
    for path in files:
        name = path.relative_to(folder).as_posix()
        total.update(f"{name} {hashlib.sha256(path.read_bytes()).hexdigest()}\n".encode())
    return total.hexdigest()[:12]


def rules(folder: Path = PWA) -> str:
    """The worker without what is written here."""
    text = (folder / "sw.js").read_text(encoding="utf-8")
    text = re.sub(r"const (VERSION|DECODER) = '[^']*';", "", text)
    return re.sub(r"const (SHELL|SCREEN|DECODER)_FILES = \[[^\]]*\];", "", text)


def written(folder: Path = PWA) -> str:
    """The worker as it should be."""
    folder = folder.resolve()
    files, shell, decoder = page_files(folder), shell_files(folder), decoder_files(folder)
    text = (folder / "sw.js").read_text(encoding="utf-8")
    marks = {"VERSION": mark(files, folder, rules(folder)), "DECODER": mark(decoder, folder)}
    for name, digits in marks.items():
        text = re.sub(rf"const {name} = '[^']*';", f"const {name} = '{digits}';", text)
    screens = [path for path in files if path not in {*shell, *decoder}]
    for name, listed in (("SHELL", shell), ("SCREEN", screens), ("DECODER", decoder)):
        rows = "".join(f"  '{address}',\n" for address in addresses(listed, folder))
        listing = f"const {name}_FILES = [\n{rows}];"
        text = re.sub(rf"const {name}_FILES = \[[^\]]*\];", listing, text)
    return text


if __name__ == "__main__":
    (PWA / "sw.js").write_text(written(), encoding="utf-8")
