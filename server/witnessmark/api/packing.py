"""Makes one pack of the page's files; a program of its own, so no fault of it stops the server.

What is wanted comes as JSON on the standard input, the pack leaves as a ZIP on the standard
output: `stream`, and with a shell also `sheet` and `shell`, each as `.gz` and, where the library
for it is there, as `.br`. A stream is one line of JSON (the length of each file in the order of
the worker's list, the types by ending) and then the files end to end.
"""

import io
import json
import os
import re
import sys
import zipfile
import zlib
from collections.abc import Callable, Iterator
from contextlib import suppress
from pathlib import Path
from typing import Any

SCRIPT, SHEET = "text/javascript", "text/css"
_SHEET_LINK = re.compile(r'<link rel="stylesheet" href="([^"]+)">\n?')
_BARE_EXPORT = re.compile(r"\bexport\s*(?:;|$)")
_GZIP_WINDOW = 31
# Tight as it comes, and the largest of all.
_AS_IT_IS = "/vendor/zxing-wasm/"


def tighteners(kind: str) -> Iterator[Callable[[str], str]]:
    """Ways to make a text of a kind shorter, the best one first; no library need be there."""
    with suppress(ImportError):
        import minify  # noqa: PLC0415 - has no wheel for some computers

        # Its short names may meet another variable's: one rule of the trade was made wrong so.
        minify.config({"js-keep-var-names": True})
        yield lambda text: _whole(str(minify.string(kind, text)))
    if kind == SCRIPT:
        with suppress(ImportError):
            import rjsmin  # noqa: PLC0415 - as above

            yield lambda text: str(rjsmin.jsmin(text))


def _whole(text: str) -> str:
    # The library makes a bare word of `export {}`, which no browser reads.
    if _BARE_EXPORT.search(text):
        raise ValueError
    return text


def tight(text: str, kind: str) -> str:
    """The same program or sheet with comments and indentation gone; every name stays."""
    for way in tighteners(kind):
        with suppress(ValueError):  # what one library cannot read goes on to the next
            return way(text)
    return text


def stream(order: list[str], files: dict[str, tuple[str, bytes]], **more: object) -> bytes:
    """One line that says how long each of the listed files is, null where it is not here."""
    lengths = [len(files[one][1]) if one in files else None for one in order]
    types = {ending(one): kind for one, (kind, _) in files.items()}
    head = json.dumps({"lengths": lengths, "types": types, **more}, separators=(",", ":"))
    bodies = [files[one][1] for one in order if one in files]
    return b"".join([head.encode(), b"\n", *bodies])


def ending(address: str) -> str:
    """What the type of a file is told by."""
    return address[address.rfind(".") :]


def zipped(body: bytes) -> Iterator[tuple[str, bytes]]:
    """The body in each coding that can be made here."""
    zipping = zlib.compressobj(9, zlib.DEFLATED, _GZIP_WINDOW, 9)
    yield ".gz", zipping.compress(body) + zipping.flush()
    with suppress(ImportError):
        import brotli  # noqa: PLC0415 - has no wheel for some computers

        yield ".br", brotli.compress(body, quality=11, lgwin=24)


def linked_sheets(shell: str) -> list[str]:
    """Addresses of the sheets that a shell names, in their order."""
    return _SHEET_LINK.findall(shell)


def with_one_sheet(shell: str, sheet: str) -> str:
    """The shell with one link to the joined sheet where its first one was."""
    links = [f'<link rel="stylesheet" href="{sheet}">\n']
    return _SHEET_LINK.sub(lambda _: links.pop() if links else "", shell)


def _body(address: str, kind: str, path: str, *, wanted: bool) -> bytes:
    raw = Path(path).read_bytes()
    kind = kind.partition(";")[0]
    if not wanted or kind not in {SCRIPT, SHEET} or address.startswith(_AS_IT_IS):
        return raw
    return tight(raw.decode(), kind).encode()


def packed(job: dict[str, Any]) -> dict[str, bytes]:
    """The parts of a pack by name.

    `order` are all addresses, `files` those that belong inside as [address, type, path], `shell`
    is one of them or empty.
    """
    files = {
        address: (kind, _body(address, kind, path, wanted=job["tight"]))
        for address, kind, path in job["files"]
    }
    if not job["shell"]:
        return {"stream": stream(job["order"], files)}
    kind, plain = files[job["shell"]]
    sheets = [one for one in linked_sheets(plain.decode()) if one in files]
    joined = b"\n".join(files.pop(one)[1] for one in sheets)
    shell = with_one_sheet(plain.decode(), job["sheet"]).encode() if sheets else plain
    files[job["shell"]] = (kind, shell)
    more = {"joined": sheets, "beside": [job["sheet"]]} if sheets else {}
    return {"stream": stream(job["order"], files, **more), "sheet": joined, "shell": shell}


def main() -> None:
    """Read the job, write the pack; whoever is at the server goes first."""
    if hasattr(os, "nice"):
        os.nice(5)
    parts = packed(json.load(sys.stdin))
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w") as pack:
        for name, body in parts.items():
            for ending, made in zipped(body):
                pack.writestr(name + ending, made)
    sys.stdout.buffer.write(out.getvalue())


if __name__ == "__main__":
    main()
