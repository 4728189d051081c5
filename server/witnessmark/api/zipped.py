"""Answers leave gzipped where the asker reads that and it pays."""

import zlib

from flask import Flask, Response, request

_PAYS_FROM = 512
_LEVEL = 5
_GZIP_WINDOW = 31
_ZIPPED_ALREADY = ("image/jpeg", "image/png", "image/webp", "font/woff2", "application/pdf")


def install(app: Flask) -> None:
    """Zip what the app answers; put before the other finishing touches."""
    app.after_request(_zip)


def _zip(answer: Response) -> Response:
    if answer.mimetype in _ZIPPED_ALREADY or answer.content_encoding:
        return answer
    answer.vary.add("Accept-Encoding")
    if answer.direct_passthrough or not request.accept_encodings["gzip"]:
        return answer
    plain = answer.get_data()
    if len(plain) >= _PAYS_FROM:
        answer.set_data(gzip_of(plain, _LEVEL))
        answer.content_encoding = "gzip"
    return answer


def gzip_of(plain: bytes, level: int) -> bytes:
    """The gzip text of some bytes, the same for the same bytes."""
    zipping = zlib.compressobj(level, zlib.DEFLATED, _GZIP_WINDOW)
    return zipping.compress(plain) + zipping.flush()
