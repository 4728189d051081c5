"""Adapter: what to set on a wrench so that the wanted torque arrives at the bolt."""

from __future__ import annotations

from witnessmark.trade import adapter, units
from witnessmark.trade.workings import lines
from witnessmark.trade.workings.cautions import Caution, caution
from witnessmark.trade.workings.given import Given
from witnessmark.trade.workings.working import Ask, Result, Working

_LENGTHS = ("wrench-length", "adapter-length", "angle")


def work(given: Given) -> Result:
    """Setting, nearest mark, what then arrives at the bolt with its band, and the lever."""
    unit = given.unit("wanted")
    lengths = [given.amount(name) for name in _LENGTHS]
    plan = adapter.plan(
        given.amount("wanted"),
        *lengths,
        graduation=given.amount_or_none("graduation"),
        share=given.share("deviation"),
        least=given.amount_or_none("least"),
        most=given.amount_or_none("most"),
    )
    setting, mark, applied, low, high = (
        units.magnitude(each, unit)
        for each in (plan.setting, plan.mark, plan.applied, plan.low, plan.high)
    )
    lever = units.magnitude(adapter.effective_length(*lengths), given.unit("wrench-length"))
    marked = (lines.amount("nearest-mark", mark, unit),) if given.has("graduation") else ()
    return Result(
        (
            lines.amount("setting", setting, unit),
            *marked,
            lines.amount("at-the-bolt", applied, unit, band=(low, high)),
            lines.amount("lever", lever, given.unit("wrench-length")),
        ),
        (*_range(given, plan.fits, lines.text(setting, unit)), caution("adapter-grip")),
    )


def _range(given: Given, fits: str, setting: str) -> tuple[Caution, ...]:
    if fits == "starts-at":
        least = given.typed("least")
        return (caution("adapter-starts-at", least=f"{least.value} {least.unit}", setting=setting),)
    if fits == "ends-at":
        most = given.typed("most")
        return (caution("adapter-ends-at", most=f"{most.value} {most.unit}", setting=setting),)
    return ()


ADAPTER = Working(
    name="adapter",
    says="What to set on a wrench with an adapter or crowfoot, at any angle.",
    formula="setting = wanted × L ÷ (L + E × cos angle); L wrench length, E adapter length",
    source="US Army TM 9-254, adapter length compensation, figures 45 and 46. Deviation: ISO "
    "6789-1:2017, quoted from memory.",
    asks=(
        Ask("wanted", "torque", unit="N·m"),
        Ask("wrench-length", "length", unit="mm"),
        Ask("adapter-length", "length", unit="mm"),
        Ask("angle", "angle", unit="°", default="0"),
        Ask("deviation", "share", default="4"),
        Ask("graduation", "torque", unit="N·m", optional=True),
        Ask("least", "torque", unit="N·m", optional=True),
        Ask("most", "torque", unit="N·m", optional=True),
    ),
    work=work,
    blames={
        "adapter-angle": "angle",
        "adapter-no-lever": "angle",
        "wrench-graduation": "graduation",
    },
)
