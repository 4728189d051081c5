"""What a gauge study is turned away for."""

from __future__ import annotations

from witnessmark.errors import TradeError


class StudyTooSmall(TradeError):
    """Too few people, repeats or parts."""

    code = "gauge-study-small"
    says = "A gauge study needs at least two people, two repeats and two parts."
    next_step = "Let somebody else measure the same parts, twice each."


class StudyTooLarge(TradeError):
    """More than the factors reach."""

    code = "gauge-study-large"
    says = "A gauge study here has at most 25 people, repeats or parts."
    next_step = "Leave some out."


class StudyUneven(TradeError):
    """Somebody measured more or fewer."""

    code = "gauge-study-uneven"
    says = "Everybody must measure the same parts equally often."
    next_step = "Complete the missing readings, or leave that part out for all."


class NoSpread(TradeError):
    """Every reading is the same."""

    code = "gauge-study-no-spread"
    says = "All readings are the same: the steps of this gauge are too coarse to study it."
    next_step = "Use parts that differ, or a gauge with finer steps."


class MethodUnknown(TradeError):
    """Neither kept nor pooled."""

    code = "gauge-study-method"
    says = "{interaction} is no way to treat the interaction."
    next_step = "Choose kept or pooled."
