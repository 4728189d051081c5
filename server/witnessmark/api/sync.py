"""POST /sync: the device's entries in, what it has not seen out, in one round trip."""

import json
import re
from collections.abc import Iterator
from typing import Any, cast

from flask import Response

from witnessmark.api.body import json_object
from witnessmark.api.keys import bearer, store
from witnessmark.api.routing import JSON, Routes
from witnessmark.api.shapes import SyncAnswer, SyncRequest
from witnessmark.errors import Refusal, RequestShape, TooMuch
from witnessmark.log.clean import Flaw
from witnessmark.log.entry import checked, unwrapped, wrapped
from witnessmark.store import Cursor, Offered, Synced, Taken
from witnessmark.store.ids import moment
from witnessmark.store.log_read import PAGE_ENTRIES

MOST_ENTRIES = 2_000
_CURSOR = re.compile(r"(\d+)\.([0-9a-f]{8})", re.ASCII)
_MOST_DIGITS = 20  # no log has as many entries; longer numbers are cut, and still lie beyond it

routes = Routes("sync", "Entries in and out, in one round trip.")


@routes.post("/sync", wanted=SyncRequest, told=SyncAnswer)
def sync() -> Response:
    """Take entries and hand out those after the cursor."""
    wanted = json_object()
    items = _entries(wanted)
    cursor, room = _cursor(wanted.get("cursor")), _room(wanted)
    offers = [_offer(item) for item in items]
    return _answer(store().sync(bearer(), cursor, offers, room))


def _entries(wanted: dict[str, Any]) -> list[object]:
    items = wanted.get("entries", [])
    if type(items) is not list:
        raise RequestShape(what="entries", trouble="is no list")
    if len(items) > MOST_ENTRIES:
        raise TooMuch(trouble=f"it has more than {MOST_ENTRIES} entries")
    return items


def _cursor(given: object) -> Cursor | None:
    if given is None:
        return None
    found = _CURSOR.fullmatch(given) if type(given) is str else None
    if found is None:
        raise RequestShape(what="cursor", trouble="is no number, dot and eight hex digits")
    return Cursor(int(found[1][:_MOST_DIGITS]), found[2])


def _room(wanted: dict[str, Any]) -> int:
    room = wanted.get("room", PAGE_ENTRIES)
    if _beyond(room):
        return PAGE_ENTRIES
    if type(room) is not int or room < 0:
        raise RequestShape(what="room", trouble="is no whole number from 0 on")
    return min(room, PAGE_ENTRIES)


def _beyond(room: object) -> bool:
    """Whether this is a whole number too great for an entry; as room it only means plenty."""
    if not isinstance(room, Flaw):
        return False
    number = str(room.refusal.facts.get("number", "")).rstrip("…")
    return number.isascii() and number.isdigit()


def _offer(item: object) -> Offered | Refusal:
    try:
        facts, order = unwrapped(item) if wrapped(item) else (item, None)
        return Offered(cast("dict[str, Any]", facts), checked(facts), order)
    except Refusal as refusal:
        return refusal


def _answer(synced: Synced) -> Response:
    answers = ",".join(map(_line, synced.answers))
    entries = ",".join(numbered(synced.page.rows))
    head = synced.head
    figures = {
        "cursor": str(synced.page.cursor) if synced.page.cursor else None,
        "head": head.head,
        "count": head.count,
        "digest": head.digest,
        "now": moment(store().now_ms(), fine=True),
    }
    rest = json.dumps(figures, separators=(",", ":"))[1:]
    text = f'{{"answers":[{answers}],"entries":[{entries}],{rest}'
    return Response(text, mimetype=JSON)


def _line(answer: Taken | Refusal) -> str:
    if isinstance(answer, Refusal):
        return json.dumps(answer.answer(), ensure_ascii=False)
    if answer.order is None:
        return str(answer.seq)
    return f'{{"seq":{answer.seq},"order":"{answer.order}"}}'


def numbered(rows: list[tuple[int, str | None, str]]) -> Iterator[str]:
    """Entries as they go out: the stored text joined, neither decoded nor made anew."""
    for seq, order, text in rows:
        given = f'"order":"{order}",' if order is not None else ""
        yield f'{{"seq":{seq},{given}"entry":{text}}}'
