"""GET /log: the entries as they are kept, a page at a time."""

import json
import re

from flask import Response, request

from witnessmark.api.keys import bearer, store
from witnessmark.api.routing import JSON, Routes
from witnessmark.api.shapes import LogPageShape
from witnessmark.api.sync import numbered
from witnessmark.errors import RequestShape
from witnessmark.store.log_read import PAGE_ENTRIES

_WHOLE = re.compile(r"\d+", re.ASCII)
_MOST_DIGITS = 20  # longer numbers are cut, and still lie beyond any log
_INTEGER = {"type": "integer", "minimum": 0}
_AFTER = {"name": "after", "required": False, "schema": _INTEGER}
_LIMIT = {"name": "limit", "required": False, "schema": _INTEGER}

routes = Routes("log", "The entries themselves.")


@routes.get("/log", told=LogPageShape, query=(_AFTER, _LIMIT))
def log() -> Response:
    """Give the entries after a number, up to a limit."""
    after = whole("after", 0)
    limit = min(whole("limit", PAGE_ENTRIES), PAGE_ENTRIES)
    found = store().log(bearer().workshop, after, limit)
    entries = ",".join(numbered(found.page.rows))
    cursor = json.dumps(str(found.page.cursor) if found.page.cursor else None)
    text = f'{{"entries":[{entries}],"cursor":{cursor},"head":{found.head}}}'
    return Response(text, mimetype=JSON)


def whole(name: str, otherwise: int) -> int:
    """A whole number from 0 on, from the query of the address.

    raises: RequestShape
    """
    given = request.args.get(name)
    if given is None:
        return otherwise
    if not _WHOLE.fullmatch(given):
        raise RequestShape(what=name, trouble="is no whole number from 0 on")
    return int(given[:_MOST_DIGITS])
