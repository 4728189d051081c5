"""Why a joint should not be tightened with the parts it has."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from witnessmark.log.values import Subject
from witnessmark.log.workshop import Workshop, standing, value
from witnessmark.views import plain
from witnessmark.views.programme import TURNED
from witnessmark.views.runs import Run, covers, fastener_of, pass_of

WORST_FIRST = ("scrap", "machine")


@dataclass(frozen=True, slots=True)
class JointPart:
    """A part a joint clamps or is held with, and why it should not be tightened."""

    id: str
    role: str
    name: str | None
    verdicts: list[str]
    held: str | None
    since: str
    """The order from which it is held; "" when from the beginning."""


def joint_parts(joint: Subject, run: Run | None, workshop: Workshop) -> list[JointPart]:
    """The clamped parts, then the fasteners' own, each once."""
    clamped = plain.texts(value(joint, "parts"))
    fastening = [value(joint, "fastener_part")]
    fastening += [each.get("part") for each in plain.mappings(value(joint, "fasteners"))]
    roles = dict.fromkeys((each for each in fastening if plain.text(each)), "holds-with")
    roles = dict.fromkeys(clamped, "clamps") | roles
    return [_part(id_, role, joint, run, workshop) for id_, role in roles.items()]


def _part(id_: str, role: str, joint: Subject, run: Run | None, workshop: Workshop) -> JointPart:
    part = workshop.subject(id_)
    said = [
        (plain.text(each["body"].get("verdict")) or "", each["order"])
        for each in standing(part, "verdict")
    ]
    held, since = _judged(said)
    if held is None and is_single_use(part, workshop) and _used_before(id_, joint, run, workshop):
        held, since = "used-already", ""
    name = plain.text(value(part, "name"))
    return JointPart(id_, role, name, plain.once(word for word, _ in said), held, since)


def _judged(said: list[tuple[str, str]]) -> tuple[str | None, str]:
    """The worst verdict decides, so that two that differ hold back too."""
    if not said:
        return "not-inspected", ""
    for word in WORST_FIRST:
        orders = [order for verdict, order in said if verdict == word]
        if orders:
            return word, orders[0]
    return None, ""


def is_single_use(part: Subject | None, workshop: Workshop) -> bool:
    """Whether a part is used once; what it says itself goes before what its kind says."""
    own = value(part, "single_use")
    kind = workshop.subject(plain.as_id(value(part, "kind")))
    return own is True or (own is not False and value(kind, "single_use") is True)


def _used_before(part: str, joint: Subject, run: Run | None, workshop: Workshop) -> bool:
    """Whether a torque or angle was pulled on it before: in another run, or before loosening."""
    joints = {joint["id"]: joint}
    for role in ("holds-with", "clamps"):
        joints |= {each["id"]: each for each in workshop.linked(part, role)}
    return any(_used_in(part, each, run) for _, each in sorted(joints.items()))


def _used_in(part: str, joint: Subject, run: Run | None) -> bool:
    hows = {
        plain.as_id(each.get("id")): each.get("how")
        for each in plain.mappings(plain.mapping(value(joint, "programme")).get("passes"))
    }
    for fact in joint["facts"]:
        body = fact["body"]
        if fact["heading"] != "pull" or fact["struck"] is not None:
            continue
        tightened = hows.get(pass_of(fact), "torque") in TURNED
        now = run is not None and body.get("run") == run.id and not _loosened(fact, run)
        if tightened and not now and part in _parts_at(joint, fastener_of(fact), fact["order"]):
            return True
    return False


def _loosened(pull: Any, run: Run) -> bool:
    return any(
        pull["id"] in plain.listed(each["body"].get("pulls"))
        or (covers(each, fastener_of(pull)) and each["order"] > pull["order"])
        for each in run.of("loosening")
    )


def _parts_at(joint: Subject, fastener: object, order: str) -> set[str]:
    """The parts that were in this fastener's place at an order."""
    own = [
        plain.text(each.get("part"))
        for each in plain.mappings(_value_at(joint, "fasteners", order))
        if plain.as_id(each.get("id")) == fastener
    ]
    bolt = next(iter(own), None) or plain.text(_value_at(joint, "fastener_part", order))
    return {*plain.texts(_value_at(joint, "parts", order)), *([bolt] if bolt else [])}


def _value_at(joint: Subject, name: str, order: str) -> Any:
    """What a description said at an order; before the first one, what that said."""
    now = joint["fields"].get(name)
    if now is None:
        return None
    claims = [now, *now["lost"]]
    said = [each for each in claims if each["order"] <= order]
    return (said[0] if said else claims[-1])["value"]
