"""What a joint that is done was really tightened to, as far as its wrenches can tell."""

from __future__ import annotations

from witnessmark.log.values import Subject
from witnessmark.log.workshop import Workshop
from witnessmark.views import plain, setting
from witnessmark.views.judging import permitted
from witnessmark.views.progress import Progress


def applied(
    joint: Subject | None, now: Progress | None, workshop: Workshop
) -> dict[str, str] | None:
    """From the least to the most of its last torque pass, by the deviation of its wrenches."""
    if joint is None or now is None:
        return None
    passes = [each for each in now.programme.passes.values() if each.how == "torque"]
    if not passes:
        return None
    latest = [now.cell(passes[-1], each).latest for each in now.programme.fasteners]
    bodies = [each.fact for each in latest if each]
    if len(bodies) < len(latest):
        return None
    return setting.span(
        setting.applied(
            fact["body"],
            setting.adapter(joint, before=fact["order"]),
            permitted(workshop.subject(plain.as_id(fact["body"].get("wrench")))),
        )
        for fact in bodies
    )
