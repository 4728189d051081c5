"""What the workings about bolts ask alike: thread, class, lubricant, and the unit of force."""

from __future__ import annotations

from witnessmark.trade import lubricant, strength, thread_text
from witnessmark.trade.thread import Thread
from witnessmark.trade.workings.given import Given
from witnessmark.trade.workings.working import Ask

CLASSES = (*strength.METRIC, *strength.INCH)
STATES = ("unknown", *(state.replace(" ", "-") for state in lubricant.STATES))

CLASS = Ask("class", "designation", choices=CLASSES, optional=True)
BLAMES = {
    "thread-unread": "thread",
    "thread-pitch-missing": "thread",
    "thread-two-meanings": "thread",
    "thread-pitch-impossible": "thread",
    "thread-series-differs": "thread",
    "class-unknown": "class",
    "class-size": "class",
    "class-thread": "class",
    "friction-impossible": "nut-factor",
    "lower-nut-factor": "nut-factor",
    "length-of-a-section": "length",
    "area-of-a-section": "diameter",
}


def threaded(given: Given) -> Thread:
    """The thread as it was typed.

    raises: as thread_text.parse.
    """
    return thread_text.parse(given.word("thread"))


def force_unit(given: Given, name: str) -> str:
    """Pounds for who thinks in pounds, else kilonewtons."""
    return "lbf" if given.unit(name) in {"lbf·ft", "lbf·in", "lbf", "in", "thou"} else "kN"
