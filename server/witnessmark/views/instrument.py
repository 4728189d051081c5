"""A wrench or an instrument: what it measures, how sure, when it was calibrated, its labels."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from witnessmark.errors import TradeError
from witnessmark.log.values import Subject
from witnessmark.log.workshop import Workshop, value
from witnessmark.trade import units
from witnessmark.trade.units import Measured
from witnessmark.views import plain, things
from witnessmark.views.away import days
from witnessmark.views.calibration import calibration
from witnessmark.views.joint_lines import note_lines
from witnessmark.views.judging import permitted

TEXTS = ("name", "sort", "unit", "least", "most", "deviation", "uncertainty", "lies", "note")
POSITIVE = ("resolution", "deviation", "uncertainty")
SMALL_SHARE = 0.06


def instruments(workshop: Workshop, today: str) -> dict[str, list[dict[str, Any]]]:
    """Wrenches and instruments by name, each as its line says it."""
    return {
        group: sorted(
            (_line(subject, today) for subject in workshop.all(heading)),
            key=lambda line: (plain.natural(line["name"]), line["id"]),
        )
        for group, heading in (("wrenches", "wrench"), ("instruments", "instrument"))
    }


def instrument(workshop: Workshop, id_: str, today: str) -> dict[str, Any]:
    """The record of a wrench or an instrument."""
    subject = workshop.subject(id_)
    line = {**_line(subject, today), "id": id_}
    return {
        **line,
        **things.described(subject),
        **things.labels(workshop, id_),
        "invented": value(subject, "invented") is True,
        "troubles": troubles(line, today),
        "before": _before(subject),
        "made": subject["made"] if subject else None,
        "changes": _changes(subject),
        "strikes": things.strikes(subject),
        "lost": things.lost(subject),
        "notes": note_lines(subject, ("note", "photo", "purchase")),
        "unread": subject["unread"] if subject else [],
    }


def troubles(said: Mapping[str, Any], today: str) -> list[str]:
    """What does not go together in a description, though each field can be read.

    A form holds such a one back; two devices that each change one field may still meet in it.
    said: the fields as text, and of an instrument its calibration or both days.
    """
    found = [*_unit_trouble(plain.text(said.get("quantity")), plain.text(said.get("unit")))]
    if _above(said.get("least"), said.get("most")):
        found.append("least-above-most")
    nothing = (name for name in POSITIVE if _number(said.get(name)) and not _above(said[name], "0"))
    found += [f"{name}-not-above-zero" for name in nothing]
    written = said.get("calibration") or said
    calibrated, due = written.get("calibrated"), written.get("due")
    if (days(calibrated, today) or 0) < 0:
        found.append("calibrated-to-come")
    if (days(calibrated, due) or 0) < 0:
        found.append("due-before-calibrated")
    return found


def _unit_trouble(quantity: str | None, unit: str | None) -> list[str]:
    if unit is None:
        return []
    measures = _quantity(unit)
    if measures is None:
        return ["unit-unknown"]
    return ["unit-of-another"] if quantity not in (None, measures) else []


def _quantity(unit: str | None) -> str | None:
    try:
        return units.quantity_of(unit or "")
    except TradeError:
        return None


def _number(said: object) -> Measured | None:
    """Two numbers of one scale are compared, whatever its unit is."""
    return plain.quantity({"value": said, "unit": "mm"})


def _above(one: object, other: object) -> bool:
    left, right = _number(one), _number(other)
    return left is not None and right is not None and units.compare(left, right) > 0


def _line(subject: Subject | None, today: str) -> dict[str, Any]:
    said = {name: plain.text(value(subject, name)) for name in TEXTS}
    heading = subject["heading"] if subject else None
    wrench = heading == "wrench"
    own = None if wrench else plain.text(value(subject, "quantity"))
    return {
        "id": subject["id"] if subject else "",
        "heading": heading,
        **said,
        "quantity": own or _quantity(said["unit"]),
        "resolution": plain.text(value(subject, "graduation" if wrench else "resolution")),
        "permitted": _permitted(subject, said["deviation"]) if wrench else None,
        "calibration": calibration(value(subject, "calibrated"), value(subject, "due"), today),
    }


def _permitted(wrench: Subject | None, own: str | None) -> dict[str, str] | None:
    """How far a wrench may be off in per cent, and by which rule."""
    share = permitted(wrench)
    if share is None:
        return None
    if own:
        return {"percent": own, "rule": "own"}
    rule = "small" if share == SMALL_SHARE else "larger"
    return {"percent": str(round(share * 100)), "rule": rule}


def _before(subject: Subject | None) -> list[str]:
    """Days it was calibrated on before, newest first, each once."""
    field = subject["fields"].get("calibrated") if subject else None
    now = plain.text(field["value"]) if field else None
    said = [plain.text(claim["value"]) for claim in field["lost"]] if field else []
    return [day for day in plain.once(said) if day and day != now]


def _changes(subject: Subject | None) -> list[dict[str, Any]]:
    """Later descriptions that count, newest first, with what each says; each can be struck out."""
    found: dict[str, dict[str, Any]] = {}
    for name, field in sorted(subject["fields"].items()) if subject else ():
        for claim in (field, *field["lost"]):
            entry = claim["entry"]
            about = {"id": entry, "order": claim["order"], "device": claim["device"]}
            line = found.setdefault(entry, {**about, "fields": []})
            line["fields"].append({"field": name, "value": claim["value"]})
    later = [line for id_, line in found.items() if subject and id_ != subject["made"]]
    return sorted(later, key=lambda line: (line["order"], line["id"]), reverse=True)
