"""What a proof can be refused for."""

from __future__ import annotations

from witnessmark.errors import TradeError


class GaugesCrossed(TradeError):
    """More pressure held than supplied."""

    code = "leak-down-gauges-crossed"
    says = "The cylinder gauge reads more than the supply gauge."
    next_step = "Check which gauge is which, then read both again."


class NoReadings(TradeError):
    """Nothing was measured."""

    code = "proof-no-readings"
    says = "There are no readings of {what}."
    next_step = "Measure at least once."


class TimeRunsBack(TradeError):
    """A trace whose times do not rise."""

    code = "proof-time-back"
    says = "The times of the trace do not rise."
    next_step = "Put the readings in the order they were taken."


class LimitsCrossed(TradeError):
    """A lower limit above its upper one."""

    code = "proof-limits-crossed"
    says = "The least {what} lies above the most."
    next_step = "Look which is which in the manual."


class PlaceUnknown(TradeError):
    """A place that the engine does not have."""

    code = "proof-place-unknown"
    says = "There is no place {place} among {places}."
    next_step = "Count the places again."
