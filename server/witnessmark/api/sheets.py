"""Label sheets: fresh codes are made and remembered here, the drawing is done by ``labels``."""

from dataclasses import asdict
from typing import Any
from urllib.parse import urlsplit

from flask import Response, request

from witnessmark.api.body import json_object
from witnessmark.api.errors import SheetUnknown
from witnessmark.api.keys import bearer, store
from witnessmark.api.pages import label_address
from witnessmark.api.routing import CREATED, Routes, tell
from witnessmark.api.shapes import Answer, SheetMade, SheetRequest
from witnessmark.errors import NumberNotWhole, RequestMissing, RequestShape
from witnessmark.labels.face import LabelText
from witnessmark.labels.layout import PRESETS, layout_from
from witnessmark.labels.sheet import sheet_pdf, test_page
from witnessmark.log.clean import Flaw
from witnessmark.log.workshop import Workshop, standing, value
from witnessmark.store import slices
from witnessmark.trade import label

MOST_LABELS = 5_000
PDF = "application/pdf"
_TEXT = {"required": False, "schema": {"type": "string"}}
_MEASURES = (
    "page_width", "page_height", "left", "top", "columns", "rows", "width", "height",
    "pitch_x", "pitch_y",
)  # fmt: skip
_GRID = tuple({"name": name, **_TEXT} for name in ("layout", *_MEASURES))

routes = Routes("sheets", "Label sheets.")


@routes.get("/sheets/presets", told=Answer)
def presets() -> Response:
    """List the ready grids, named by their measures, in millimetres."""
    ready = [{"id": id_, **asdict(it), "places": it.places} for id_, it in PRESETS.items()]
    return tell({"presets": ready})


@routes.get("/sheets/test.pdf", told=PDF, query=_GRID)
def test_sheet() -> Response:
    """Give a page with outlines and a rule, to lay over a sheet: a ready grid, or its measures."""
    asked = request.args.to_dict()
    return Response(test_page(layout_from(asked.get("layout") or asked)), mimetype=PDF)


@routes.post("/sheets", wanted=SheetRequest, told=SheetMade, number=CREATED)
def make() -> Response:
    """Make codes that were never printed, or print given ones again."""
    wanted = json_object()
    if "layout" not in wanted:
        raise RequestMissing(what="layout")
    kept = _kept(wanted["layout"])
    layout_from(kept.get("preset") or kept["grid"])
    kept["start"] = _whole(wanted, "start", 1)
    kept["cut_marks"] = wanted.get("cut_marks") is True
    again = wanted.get("reprint")
    workshop = bearer().workshop
    codes = (
        _codes(again)
        if again is not None
        else store().fresh_codes(_whole(wanted, "count", None), workshop)
    )
    sheet = store().record_sheet(codes, kept, reprint=again is not None, workshop=workshop)
    return tell({"id": sheet, "codes": codes}, CREATED)


@routes.get("/sheets/<sheet>.pdf", told=PDF)
def drawn(sheet: str) -> Response:
    """Draw a sheet; names and holders are those of today."""
    known = store().slice(bearer().workshop, lambda c, w: slices.sheet_slice(c, w, sheet))
    found = known.subject(sheet)
    facts = [fact for fact in found["facts"] if fact["heading"] == "sheet"] if found else []
    if not facts:
        raise SheetUnknown(id=sheet)
    body = facts[-1]["body"]
    layout = body["layout"]
    made = sheet_pdf(
        layout_from(layout.get("preset") or layout.get("grid") or ""),
        [_text_of(known, code) for code in body["codes"]],
        host=urlsplit(label_address()).netloc.upper(),
        start=layout.get("start", 1),
        cut_marks=layout.get("cut_marks") is True,
    )
    return Response(made, mimetype=PDF)


def _kept(wanted: object) -> dict[str, Any]:
    """The layout as an entry may hold it: fractions as text."""
    if isinstance(wanted, str):
        return {"preset": wanted}
    if type(wanted) is dict:
        return {"grid": {name: _plain(measure) for name, measure in wanted.items()}}
    raise RequestShape(what="layout", trouble="is neither the id of a ready grid nor a grid")


def _plain(measure: object) -> object:
    if isinstance(measure, Flaw) and isinstance(measure.refusal, NumberNotWhole):
        return str(measure.refusal.facts["number"])
    return measure


def _whole(wanted: dict[str, Any], name: str, otherwise: int | None) -> int:
    found = wanted.get(name, otherwise)
    if type(found) is not int or not 1 <= found <= MOST_LABELS:
        raise RequestShape(what=name, trouble=f"is no whole number from 1 to {MOST_LABELS}")
    return found


def _codes(again: object) -> list[str]:
    if type(again) is not list or not 1 <= len(again) <= MOST_LABELS:
        raise RequestShape(what="reprint", trouble=f"is no list of 1 to {MOST_LABELS} codes")
    return [_code(one) for one in again]


def _code(given: object) -> str:
    if type(given) is not str:
        raise RequestShape(what="reprint", trouble="holds something that is no code")
    return label.parse(given)


def _text_of(known: Workshop, code: str) -> LabelText:
    """What a label says: the name of the one thing it marks, and the holder that lies in."""
    marked = [fact["body"]["marks"] for fact in standing(known.subject(code), "label")]
    thing = known.subject(marked[0]) if len(marked) == 1 and marked[0] else None
    lies = [fact["body"]["in"] for fact in standing(thing, "place")] if thing else []
    holder = known.subject(lies[0]) if len(lies) == 1 and lies[0] else None
    return LabelText(code, _said(thing), _said(holder))


def _said(thing: Any) -> str:
    name = value(thing, "name")
    return name if isinstance(name, str) else ""
