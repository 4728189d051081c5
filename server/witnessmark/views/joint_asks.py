"""What only a person can say about a joint, and which entries the next one must name."""

from __future__ import annotations

from typing import Any

from witnessmark.log.values import Subject
from witnessmark.log.workshop import Workshop
from witnessmark.views.held import JointPart
from witnessmark.views.programme import programme
from witnessmark.views.progress import Progress, progress
from witnessmark.views.runs import Run, covers, fastener_of, knew_of

MOST_NAMED = 8


def asks(
    joint: Subject,
    found: list[Run],
    now: Progress | None,
    parts: list[JointPart],
    workshop: Workshop,
) -> list[dict[str, Any]]:
    """Questions: two runs begun apart, pulls on what was loosened, verdicts that differ."""
    return [
        *_two_runs(joint, found, workshop),
        *(_on_loosened(now) if now else []),
        *(
            {"ask": "verdict", "part": each.id, "name": each.name, "verdicts": each.verdicts}
            for each in parts
            if len(each.verdicts) > 1
        ),
    ]


def after(found: list[Run], run: Run | None) -> list[str]:
    """What the next begin, pull or loosening names: begins and loosenings seen when it is made."""
    begun = [each.begun for each in found if each.begun]
    named = [*(run.of("loosening") if run else []), *begun]
    named.sort(key=lambda fact: (fact["order"], fact["id"]))
    return [fact["id"] for fact in named[-MOST_NAMED:]]


def _two_runs(joint: Subject, found: list[Run], workshop: Workshop) -> list[dict[str, Any]]:
    begun = [each for each in found if each.begun]
    if len(begun) < 2:  # noqa: PLR2004
        return []
    earlier, later = begun[-2:]
    if not earlier.begun or not later.begun or knew_of(later.begun, earlier.begun):
        return []
    if _closed_before(joint, earlier, later.begun["order"], workshop):
        return []
    return [
        {
            "ask": "two-runs",
            "runs": [earlier.id, later.id],
            "begins": [earlier.begun["id"], later.begun["id"]],
        }
    ]


def _closed_before(joint: Subject, run: Run, order: str, workshop: Workshop) -> bool:
    """Whether a run was done, or all of it loosened, before another one began."""
    if any(
        each["order"] < order and each["body"].get("fasteners") is None
        for each in run.of("loosening")
    ):
        return True
    stood = progress(joint, run, programme(joint), workshop)
    return stood.complete and stood.last is not None and stood.last.fact["order"] < order


def _on_loosened(now: Progress) -> list[dict[str, Any]]:
    """Pulls of somebody who did not know that the fastener was loosened meanwhile."""
    pulled = [
        each
        for each in now.pulls
        if each.live and each.accepted is None and "loosened-meanwhile" in each.flags
    ]
    found = []
    for loosening in now.run.of("loosening"):
        over = [
            each
            for each in pulled
            if covers(loosening, fastener_of(each.fact)) and not knew_of(each.fact, loosening)
        ]
        if over:
            numbers = {each.fastener.number for each in over if each.fastener}
            found.append(
                {
                    "ask": "pulled-on-loosened",
                    "loosening": loosening["id"],
                    "pulls": [each.fact["id"] for each in over],
                    "numbers": sorted(numbers),
                }
            )
    return found
