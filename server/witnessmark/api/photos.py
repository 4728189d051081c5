"""Photos by their digest."""

from flask import Response, request

from witnessmark.api.body import json_object, read_at_most
from witnessmark.api.keys import bearer, store
from witnessmark.api.routing import CREATED, Routes, tell
from witnessmark.api.shapes import PhotoKept, PhotoList, PhotosMissing
from witnessmark.errors import RequestMissing, RequestShape, WrongType
from witnessmark.store.photos import SHA

MOST_BYTES = 2 * 1024 * 1024
MOST_ASKED = 1_000
PICTURE = "image/*"
ANY_FILE = "application/octet-stream"

routes = Routes("photos", "Pictures, named by their SHA-256.")


@routes.post("/photos/missing", wanted=PhotoList, told=PhotosMissing)
def missing() -> Response:
    """Say which of these photos have not arrived."""
    wanted = json_object()
    if "photos" not in wanted:
        raise RequestMissing(what="photos")
    asked = wanted["photos"]
    if type(asked) is not list or len(asked) > MOST_ASKED:
        raise RequestShape(what="photos", trouble=f"is no list of up to {MOST_ASKED} digests")
    shas = [_sha(one) for one in asked]
    return tell({"missing": store().missing_photos(bearer().workshop, shas)})


@routes.put("/photos/<sha>", wanted=ANY_FILE, told=PhotoKept, number=CREATED, had=True)
def keep(sha: str) -> Response:
    """Keep a whole photo under its digest: 201, or 200 when it was here."""
    name = _sha(sha)
    if (request.content_encoding or "identity").lower() != "identity":
        raise WrongType(type="An encoded picture", wanted="the file as it is")
    news = store().keep_photo(bearer().workshop, name, read_at_most(MOST_BYTES))
    return tell({"photo": name}, CREATED if news else 200)


@routes.get("/photos/<sha>", told=PICTURE)
def photo(sha: str) -> Response:
    """Give a photo; it never changes, so it may be kept for good."""
    found = store().photo(bearer().workshop, _sha(sha))
    answer = Response(found.file.read_bytes(), mimetype=found.mime)
    answer.headers["Cache-Control"] = "private, max-age=31536000, immutable"
    answer.headers["Content-Security-Policy"] = "default-src 'none'; sandbox"
    return answer


def _sha(given: object) -> str:
    if type(given) is not str or not SHA.fullmatch(given):
        raise RequestShape(what="The name of a picture", trouble="is no digest of 64 hex digits")
    return given
