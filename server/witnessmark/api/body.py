"""Reading a request's body: bounded before it is read, unzipped in pieces, parsed once."""

import zlib
from typing import IO, Any

from flask import request
from werkzeug.exceptions import HTTPException

from witnessmark.errors import NotJson, RequestShape, TooMuch, WrongType
from witnessmark.log.clean import Flaw, parse

MOST_SENT = 2 * 1024 * 1024
MOST_UNZIPPED = 8 * 1024 * 1024
_PIECE = 64 * 1024
_GZIP_WINDOW = 31
# The server drops a connection whose body was left unread, and the sender may then miss the
# answer; so a body that is a little too long is read to its end, and only then turned away.
_DRAINED = 32 * 1024 * 1024


def json_object() -> dict[str, Any]:
    """The body as a JSON object.

    raises: WrongType, TooMuch, NotJson, RequestShape
    """
    if request.mimetype != "application/json":
        raise WrongType(type=request.mimetype or "A body without a type", wanted="application/json")
    coding = (request.content_encoding or "identity").strip().lower()
    if coding in {"gzip", "x-gzip"}:
        raw = _unzipped()
    elif coding in {"", "identity"}:
        raw = read_at_most(MOST_UNZIPPED)
    else:
        raise WrongType(type=f"The encoding {coding[:40]}", wanted="gzip or nothing")
    found = parse(raw)
    if type(found) is dict:
        return found
    what = "a key stands twice in it" if isinstance(found, Flaw) else "is no JSON object"
    raise RequestShape(what="The body", trouble=what)


def read_at_most(most: int) -> bytes:
    """The whole body as it came.

    raises: TooMuch
    """
    if not (request.environ.get("CONTENT_LENGTH") or "0").strip().isdigit():
        raise NotJson(trouble="its length is no number")
    stream = request.stream
    if (request.content_length or 0) > most:
        raise TooMuch(trouble=f"it has more than {most} bytes")
    raw = bytearray()
    while piece := _piece(stream, min(_PIECE, most + 1 - len(raw))):
        raw += piece
        if len(raw) > most:
            raise TooMuch(trouble=f"it has more than {most} bytes")
    return bytes(raw)


def _piece(stream: IO[bytes], most: int) -> bytes:
    try:
        return stream.read(most)
    except (OSError, ValueError) as error:
        # So the server's reader says that chunks are broken, or that the sender fell silent.
        raise NotJson(trouble="it did not arrive as it was announced") from error


def _unzipped() -> bytes:
    sent = read_at_most(MOST_SENT)
    raw = bytearray()
    while sent:
        member = zlib.decompressobj(_GZIP_WINDOW)
        try:
            raw += member.decompress(sent, MOST_UNZIPPED + 1 - len(raw))
        except zlib.error as error:
            raise NotJson(trouble="its gzip coding is broken") from error
        if len(raw) > MOST_UNZIPPED:
            raise TooMuch(trouble=f"unzipped it has more than {MOST_UNZIPPED} bytes")
        if not member.eof:
            raise NotJson(trouble="its gzip coding breaks off")
        sent = member.unused_data
    return bytes(raw)


def drain() -> None:
    """Read on to the end of a body nobody wanted, so that the answer can be heard."""
    left = _DRAINED
    if (request.content_length or 0) > left:
        return  # Its end would not be reached; who only announced it is answered at once.
    try:
        while left > 0 and (piece := request.stream.read(_PIECE)):
            left -= len(piece)
    except (OSError, ValueError, HTTPException):
        return
