"""The rows that follow from one subject: itself, its links, and typed rows for SQL users."""

import json
from collections.abc import Iterator
from typing import Any

from sqlalchemy import Table

from witnessmark.log.values import Fact, Subject
from witnessmark.log.workshop import links, standing, value
from witnessmark.store import tables

Row = dict[str, Any]


def rows_of(found: Subject) -> Iterator[tuple[Table, Row]]:
    """Every row this subject gives, without the workshop, each with its table."""
    yield tables.subject, _subject(found)
    for link in links(found):
        row = {"origin": found["id"], "role": link["role"], "target": _text(link["to"])}
        yield tables.link, row
    typed = _TYPED.get(found["heading"] or "")
    if typed:
        yield typed[0], typed[1](found)
    if found["heading"] == "label":
        yield from _labels(found)
    for fact in found["facts"]:
        yield from _facts(found, fact)


def _subject(found: Subject) -> Row:
    return {
        "id": found["id"],
        "heading": found["heading"],
        "name": _said(found, "name"),
        "hidden": found["hidden"],
        "state": json.dumps(found, ensure_ascii=False, sort_keys=True, separators=(",", ":")),
    }


def _part(found: Subject) -> Row:
    verdicts = [fact["body"].get("verdict") for fact in standing(found, "verdict")]
    return {
        "id": found["id"],
        "name": _said(found, "name"),
        "kind": _said(found, "kind"),
        "quantity": _whole(value(found, "quantity")),
        "donor": _said(found, "donor"),
        "build": _said(found, "build"),
        "holder": _lies_in(found),
        "verdict": _text(verdicts[0]) if len(verdicts) == 1 else None,
        "hidden": found["hidden"],
    }


def _holder(found: Subject) -> Row:
    return {
        "id": found["id"],
        "name": _said(found, "name"),
        "form": _said(found, "form"),
        "holder": _lies_in(found),
        "hidden": found["hidden"],
    }


def _joint(found: Subject) -> Row:
    programme = _object(value(found, "programme"))
    fasteners = value(found, "fasteners")
    return {
        "id": found["id"],
        "name": _said(found, "name"),
        "build": _said(found, "build"),
        "lubricant": _text(programme.get("lubricant")),
        "source": _text(programme.get("source")),
        "fasteners": len(fasteners) if isinstance(fasteners, list) else 0,
        "hidden": found["hidden"],
    }


_TYPED = {
    "part": (tables.part, _part),
    "holder": (tables.holder, _holder),
    "joint": (tables.joint, _joint),
}


def _labels(found: Subject) -> Iterator[tuple[Table, Row]]:
    told: dict[str, str | None] = {}
    for fact in standing(found, "label"):
        told[_text(fact["body"].get("marks")) or ""] = _text(fact["body"].get("state"))
    for marks, state in told.items():
        yield tables.label, {"code": found["id"], "marks": marks, "state": state}


def _facts(found: Subject, fact: Fact) -> Iterator[tuple[Table, Row]]:
    body = fact["body"]
    told = {
        "id": fact["id"],
        "made": _text(fact["made"]),
        "by": _text(fact["by"]),
        "device": _text(fact["device"]),
        "struck": fact["struck"] is not None,
    }
    if fact["heading"] == "pull":
        target, reading = _object(body.get("target")), _object(body.get("reading"))
        words = {name: _text(body.get(name)) for name in ("run", "fastener", "pass", "wrench")}
        measured = {
            "target": _text(target.get("value")),
            "reading": _text(reading.get("value")),
            "unit": _text((reading or target).get("unit")),
        }
        yield tables.pull, {**told, "joint": found["id"], **words, **measured}
    elif fact["heading"] == "inspection":
        words = {name: _text(body.get(name)) for name in ("verdict", "reason", "note")}
        yield tables.inspection, {**told, "part": found["id"], **words}
    elif fact["heading"] == "sheet":
        for code in sorted({_text(code) or "" for code in body.get("codes") or []}):
            yield tables.printed, {"code": code, "sheet": found["id"]}


def _lies_in(found: Subject) -> str | None:
    lies = [fact["body"].get("in") for fact in standing(found, "place")]
    return _text(lies[0]) if len(lies) == 1 else None


def _said(found: Subject, name: str) -> str | None:
    return _text(value(found, name))


def _text(given: object) -> str | None:
    """Text as it may stand in a column: PostgreSQL takes no zero sign."""
    return given.replace("\0", "\ufffd") if isinstance(given, str) else None


def _whole(given: object) -> int | None:
    return given if type(given) is int else None


def _object(given: object) -> dict[str, Any]:
    return given if isinstance(given, dict) else {}
