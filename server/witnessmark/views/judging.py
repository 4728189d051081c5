"""A pull held against its target: what was read, with which wrench, and whether it is stale."""

from __future__ import annotations

from witnessmark.errors import TradeError
from witnessmark.log.values import Fact, Subject
from witnessmark.log.workshop import Workshop, value
from witnessmark.trade import torque, wrench
from witnessmark.trade.units import Measured
from witnessmark.views import plain, setting
from witnessmark.views.programme import Pass, Programme, same

Fits = dict[tuple[str, Measured], str | None]


def against_target(
    fact: Fact, target_now: dict[str, str] | None, joint: Subject, workshop: Workshop, fits: Fits
) -> list[str]:
    """Flags about what was read and which wrench was used; what cannot be read is not judged.

    fits: what range_fit said already, as a pass asks it often.
    """
    body = fact["body"]
    target = target_now and (plain.quantity(body.get("target")) or plain.quantity(target_now))
    if not target:
        return []
    tool = workshop.subject(plain.as_id(body.get("wrench")))
    flags = []
    reading = plain.quantity(body.get("reading"))
    adapter = setting.adapter(joint, before=fact["order"])
    if reading is not None and adapter is not None and body.get("read_at") == "set":
        reading = setting.at_bolt(reading, adapter)
    if reading is not None:
        try:
            said = torque.against(reading, target, permitted(tool))
            flags += [] if said == "within" else [said]
        except TradeError:
            pass
    wanted = setting.at_wrench(target, adapter)
    asked = (plain.as_id(body.get("wrench")), wanted)
    if asked not in fits:
        fits[asked] = range_fit(tool, wanted)
    return flags + (["wrong-range"] if fits[asked] not in (None, "takes") else [])


def permitted(tool: Subject | None) -> float | None:
    """The wrench's permitted deviation as a share, or None where it is not known."""
    try:
        return wrench.permitted(_end(tool, "most"), plain.text(value(tool, "deviation")))
    except TradeError:
        return None


def range_fit(tool: Subject | None, target: Measured | None) -> str | None:
    """takes, starts-at or ends-at; None where the range is not known or measures another thing."""
    least, most = _end(tool, "least"), _end(tool, "most")
    if target is None or (least is None and most is None):
        return None
    try:
        return wrench.fit(target, least, most)
    except TradeError:
        return None


def _end(tool: Subject | None, name: str) -> Measured | None:
    return plain.quantity({"value": value(tool, name), "unit": value(tool, "unit")})


def stale(
    fact: Fact, target_now: dict[str, str] | None, pass_: Pass, programme: Programme
) -> list[str]:
    """Whether value, unit or lubricant are no longer those of the programme."""
    if not pass_.wants_value:
        return []
    body = fact["body"]
    lubricant = plain.text(body.get("lubricant"))
    changed = lubricant is not None and lubricant != programme.lubricant
    return ["stale"] if changed or not same(body.get("target"), target_now) else []
