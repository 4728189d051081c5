"""Shared cases of wrenches and instruments: their records, their list, their calibration."""

from collections.abc import Callable
from typing import Any

from vector_rules.story import picked, workshop
from witnessmark.log.workshop import Workshop
from witnessmark.views.calibration import age, calibration
from witnessmark.views.instrument import instrument, instruments, troubles

Given = dict[str, Any]

VIEWS: dict[str, Callable[[Workshop, Given], Any]] = {
    "instrument": lambda w, g: instrument(w, g["id"], g["today"]),
    "instruments": lambda w, g: instruments(w, g["today"]),
}


def told(name: str) -> Callable[[Given], Any]:
    return lambda given: picked(VIEWS[name](workshop(given), given), given.get("pick"))


RULES: dict[str, Callable[[Given], Any]] = {
    **{name: told(name) for name in VIEWS},
    "calibration": lambda g: calibration(g.get("calibrated"), g.get("due"), g["today"]),
    "calibration.age": lambda g: age(g["then"], g["today"]),
    "instrument.troubles": lambda g: troubles(g["said"], g["today"]),
}
