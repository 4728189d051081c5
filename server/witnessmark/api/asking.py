"""Routes that answer a person's question: part, holder, joint, search."""

from typing import Any

from flask import Response, request

from witnessmark.api.errors import HolderUnknown
from witnessmark.api.keys import bearer, store
from witnessmark.api.routing import Routes, tell
from witnessmark.api.rows import found_rows
from witnessmark.api.shapes import Answer
from witnessmark.errors import JointUnknown, PartUnknown, RequestShape
from witnessmark.log.workshop import Workshop
from witnessmark.store import slices
from witnessmark.trade.label import LabelLength, LabelSign, parse
from witnessmark.views.find import find
from witnessmark.views.holder import holder
from witnessmark.views.joint import joint
from witnessmark.views.part import part

LONGEST_QUERY = 200
_QUERY = {"name": "q", "required": True, "schema": {"type": "string", "maxLength": LONGEST_QUERY}}
_RUN = {"name": "run", "required": False, "schema": {"type": "string"}}

routes = Routes("asking", "A person's questions.")


@routes.get("/parts/<name>", told=Answer)
def parts(name: str) -> Response:
    """Give a part by its id or by the code of a label that marks it."""
    workshop = bearer().workshop
    known = store().slice(workshop, lambda c, w: slices.part_slice(c, w, name))
    if not _is(known, name, "part"):
        code = _code(name)
        marked = _marked(workshop, code) if code else None
        if marked is None:
            raise PartUnknown(id=name)
        name = marked
        known = store().slice(workshop, lambda c, w: slices.part_slice(c, w, name))
    return tell(part(known, name))


@routes.get("/joints/<name>", told=Answer, query=(_RUN,))
def joints(name: str) -> Response:
    """Give a joint: its programme, and how its run stands."""
    known = store().slice(bearer().workshop, lambda c, w: slices.joint_slice(c, w, name))
    if not _is(known, name, "joint"):
        raise JointUnknown(id=name)
    return tell(joint(known, name, request.args.get("run")))


@routes.get("/holders/<name>", told=Answer)
def holders(name: str) -> Response:
    """Give a holder and what lies in it."""
    known = store().slice(bearer().workshop, lambda c, w: slices.holder_slice(c, w, name))
    if not _is(known, name, "holder"):
        raise HolderUnknown(id=name)
    return tell(holder(known, name))


@routes.get("/search", told=Answer, query=(_QUERY,))
def search() -> Response:
    """Find by word or code."""
    query = request.args.get("q", "")
    if len(query) > LONGEST_QUERY:
        raise RequestShape(what="q", trouble=f"is longer than {LONGEST_QUERY} signs")
    return tell(find(found_rows(bearer().workshop), query))


def _is(known: Workshop, name: str, heading: str) -> bool:
    found = known.subject(name)
    return found is not None and found["heading"] == heading


def _code(name: str) -> str | None:
    """The label code that was asked for; None when it looks like no code at all.

    raises: LabelCheck
    """
    try:
        return parse(name)
    except (LabelLength, LabelSign):
        return None


def _marked(workshop: str, code: str) -> str | None:
    known: Any = store().slice(workshop, lambda c, w: slices.code_slice(c, w, code))
    marked = [found["id"] for found in known.all("part") if _marks(known, code, found["id"])]
    return marked[0] if marked else None


def _marks(known: Workshop, code: str, part_id: str) -> bool:
    return any(label["id"] == code for label in known.linked(part_id, "marks"))
