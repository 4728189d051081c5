"""The workshop's wrenches, those first that take the target."""

from __future__ import annotations

from typing import Any

from witnessmark.log.values import Subject
from witnessmark.log.workshop import Workshop, value
from witnessmark.views import plain, setting
from witnessmark.views.judging import permitted, range_fit
from witnessmark.views.programme import Programme
from witnessmark.views.progress import Progress

TEXTS = ("name", "sort", "unit", "least", "most", "graduation", "calibrated", "lies")


def wrenches(
    joint: Subject | None, target: dict[str, str] | None, workshop: Workshop
) -> list[dict[str, Any]]:
    """Every wrench; one whose range does not take the target is not offered first."""
    usual = plain.text(value(joint, "wrench"))
    through = setting.adapter(joint)
    lines = [_line(each, target, through) for each in workshop.all("wrench")]
    lines.sort(
        key=lambda line: (
            line["takes"] is False,
            line["id"] != usual,
            plain.natural(line["name"]),
            line["id"],
        )
    )
    return lines


def wrench_in_hand(joint: Subject | None, now: Progress | None) -> str | None:
    """The wrench used last in this run, else the one it began with, else the usual one."""
    pulled = [plain.text(each.fact["body"].get("wrench")) for each in now.pulls] if now else []
    begun = [plain.text(each["body"].get("wrench")) for each in now.run.of("begin")] if now else []
    known = [each for each in [*reversed(pulled), *reversed(begun)] if each]
    return known[0] if known else plain.text(value(joint, "wrench"))


def _line(
    wrench: Subject, target: dict[str, str] | None, through: dict[str, Any] | None
) -> dict[str, Any]:
    wanted = plain.quantity(target)
    fit = range_fit(wrench, wanted and setting.at_wrench(wanted, through))
    share = permitted(wrench)
    own = plain.text(value(wrench, "deviation"))
    texts = {name: plain.text(value(wrench, name)) for name in TEXTS}
    return {
        "id": wrench["id"],
        **texts,
        **setting.setting_line(texts, target, through),
        "permitted": None if share is None else own or str(round(share * 100)),
        "takes": None if fit is None else fit == "takes",
        "why": fit if fit in ("starts-at", "ends-at") else None,
    }


def wanted_of_wrench(following: list[dict[str, Any]], plan: Programme) -> dict[str, str] | None:
    """The torque a wrench is wanted for: the next one, else the first of the programme."""
    coming = [each["target"] for each in following if each["how"] == "torque"]
    first = [
        each.target(fastener)
        for each in plan.passes.values()
        if each.how == "torque"
        for fastener in plan.fasteners.values()
    ]
    return next((each for each in coming + first if each), None)
