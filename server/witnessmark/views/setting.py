"""What a wrench is set to for a target: through the adapter, at its marks, and what arrives."""

from __future__ import annotations

from collections.abc import Iterable
from functools import lru_cache
from typing import Any

from witnessmark.errors import TradeError
from witnessmark.log.values import Subject
from witnessmark.log.workshop import value
from witnessmark.trade import adapter as through
from witnessmark.trade import units, wrench
from witnessmark.trade.units import Measured
from witnessmark.views import plain

LENGTHS = ("adapter_length", "wrench_length", "angle")
EXACT = 6
MOST_DECIMALS = 4
COARSE_FROM = 10


def adapter(joint: Subject | None, before: str | None = None) -> dict[str, Any] | None:
    """The adapter of a joint, or the one that stood before an order; text alone has no lengths."""
    if before is None or joint is None:
        return _read(value(joint, "adapter"))
    field = joint["fields"].get("adapter")
    if not field:
        return None
    claims: list[Any] = [field, *field["lost"]]
    return _read(next((each["value"] for each in claims if each["order"] <= before), None))


def _read(kept: object) -> dict[str, Any] | None:
    if isinstance(kept, str):
        name = plain.text(kept)
        return {"name": name, **dict.fromkeys(LENGTHS)} if name else None
    facts = plain.mapping(kept)
    if not facts:
        return None
    lengths = {name: plain.measured(facts.get(name)) for name in LENGTHS}
    return {"name": plain.text(facts.get("name")), **lengths}


def ratio(found: dict[str, Any] | None) -> float | None:
    """Setting at the wrench over torque at the bolt; None where the lengths say nothing."""
    if found is None:
        return None
    sizes = [plain.quantity(found[name]) for name in LENGTHS]
    return _ratio(*sizes) if all(sizes) else None


@lru_cache(maxsize=256)
def _ratio(adapter_length: Measured, wrench_length: Measured, angle: Measured) -> float | None:
    try:
        set_to = through.setting(
            units.quantity(1, "N·m"),
            units.quantity(wrench_length.number, wrench_length.unit),
            units.quantity(adapter_length.number, adapter_length.unit),
            units.quantity(angle.number, angle.unit),
        )
    except TradeError:
        return None
    return units.magnitude(set_to, "N·m")


def at_wrench(target: Measured, found: dict[str, Any] | None) -> Measured:
    """What to set for a target at the bolt; the target itself where no lengths are known."""
    times = ratio(found)
    if times is None or times == 1 or units.quantity_of(target.unit) != "torque":
        return target
    return Measured(units.rounded(target.number * times, EXACT), target.unit)


def at_bolt(reading: Measured, found: dict[str, Any] | None) -> Measured | None:
    """What a reading at the wrench was at the bolt; None where no lengths are known."""
    times = ratio(found)
    if times is None:
        return None
    if times == 1 or units.quantity_of(reading.unit) != "torque":
        return reading
    return Measured(units.rounded(reading.number / times, EXACT), reading.unit)


def setting_line(
    tool: dict[str, str | None], target: dict[str, str] | None, found: dict[str, Any] | None
) -> dict[str, Any]:
    """What this wrench is set to, its nearest mark, and what the mark is at the bolt.

    tool: the texts unit, least, most and graduation of a wrench.
    """
    nothing = {"set": None, "mark": None, "at_bolt": None, "off": None}
    wanted, unit = plain.quantity(target), tool["unit"]
    if wanted is None or unit not in units.TORQUE_WORDS:
        return nothing
    try:
        exact = at_wrench(wanted, found)
        aim = units.convert(exact.number, exact.unit, unit)
        return nothing | _marked(tool, wanted, aim, ratio(found) or 1.0)
    except TradeError:
        return nothing


def _marked(
    tool: dict[str, str | None], wanted: Measured, aim: float, times: float
) -> dict[str, Any]:
    unit = tool["unit"] or ""
    line: dict[str, Any] = {"set": {"value": shown(aim), "unit": unit}}
    ends = {name: plain.quantity({"value": tool[name], "unit": unit}) for name in _SCALE}
    step = ends["graduation"]
    if step is None:
        return line
    least, most = (_torque(ends[name]) for name in ("least", "most"))
    found = wrench.settable(units.quantity(aim, unit), _torque(step), least, most)
    mark = units.magnitude(found.settable, unit)
    decimals = [len(each.value.partition(".")[2]) for each in (step, ends["least"]) if each]
    bolt = units.convert(mark / times, unit, wanted.unit)
    return line | {
        "mark": {"value": units.rounded(mark, min(max(decimals), MOST_DECIMALS)), "unit": unit},
        "at_bolt": {"value": shown(bolt), "unit": wanted.unit},
        "off": units.rounded(found.error * 100, 1),
    }


_SCALE = ("least", "most", "graduation")


def _torque(end: Measured | None) -> Any:
    return None if end is None else units.quantity(end.number, end.unit)


def shown(amount: float) -> str:
    """A torque that was worked out, with the digits it is worth reading."""
    return units.rounded(amount, 1 if abs(amount) >= COARSE_FROM else 2)


def applied(
    body: dict[str, Any], found: dict[str, Any] | None, share: float | None
) -> dict[str, str] | None:
    """Least and most a pull may really have applied at the bolt, by its wrench's deviation.

    found: the adapter that stood when it was pulled. None where wrench or value are not known.
    """
    target = plain.quantity(body.get("target"))
    if share is None or target is None or target.unit not in units.TORQUE_WORDS:
        return None
    reading = plain.quantity(body.get("reading"))
    if reading is not None and found is not None and body.get("read_at") == "set":
        reading = at_bolt(reading, found)
    try:
        band = wrench.applied(_torque(reading or target), share)
    except TradeError:
        return None
    low, high = (units.magnitude(each, target.unit) for each in (band.low, band.high))
    return {"low": shown(low), "high": shown(high), "unit": target.unit}


def span(bands: Iterable[dict[str, str] | None]) -> dict[str, str] | None:
    """From the least to the most of several bands in one unit; None where one is not known."""
    found = list(bands)
    known = [each for each in found if each]
    if not known or len(known) < len(found) or len({each["unit"] for each in known}) > 1:
        return None
    low = min((each["low"] for each in known), key=float)
    high = max((each["high"] for each in known), key=float)
    return {"low": low, "high": high, "unit": known[0]["unit"]}
