"""What a choice of a set can be refused for."""

from __future__ import annotations

from witnessmark.errors import TradeError


class TooFewInPool(TradeError):
    """More wanted than there are."""

    code = "sets-too-few"
    says = "There are only {pieces} in the pool; {choose} are wanted."
    next_step = "Find {missing} more, or choose fewer."


class TooFewInside(TradeError):
    """Enough pieces, but not enough good ones."""

    code = "sets-too-few-inside"
    says = "Only {inside} of {pieces} lie inside the limits; {choose} are wanted."
    next_step = "Find {missing} more that keep the limits."


class TooManyPieces(TradeError):
    """More than is searched at a time."""

    code = "sets-too-many"
    says = "{pieces} pieces on {measures} measures are more than are searched at a time: {most}."
    next_step = "Leave out what is far off, or measure fewer things."


class MeasureMissing(TradeError):
    """A piece without a size for every measure."""

    code = "sets-measure-missing"
    says = "{name} has {sizes} sizes for {measures} measures."
    next_step = "Measure it, or leave it out."


class NoMeasure(TradeError):
    """Nothing to compare by."""

    code = "sets-no-measure"
    says = "There is nothing to compare the pieces by."
    next_step = "Name one measure at least."


class NameDoubled(TradeError):
    """Two pieces of one name."""

    code = "sets-name-doubled"
    says = "{name} stands in the pool twice."
    next_step = "Give each piece a name of its own."


class NameUnknown(TradeError):
    """Pinned or excluded, but not there."""

    code = "sets-name-unknown"
    says = "{name} is not in the pool."
    next_step = "Look for its name in the list."


class PinnedTwiceOver(TradeError):
    """More pinned than are chosen, or pinned and excluded at once."""

    code = "sets-pinned"
    says = "{pinned} are pinned and {choose} are wanted, or one is both pinned and left out."
    next_step = "Unpin some, or choose more."


class PinnedOutside(TradeError):
    """A pinned piece that does not keep a hard limit."""

    code = "sets-pinned-outside"
    says = "{name} is pinned but lies {side} the limit of {measure}."
    next_step = "Unpin it, or look at the limit again."


class LimitsCrossed(TradeError):
    """A window with its ends exchanged."""

    code = "sets-limits-crossed"
    says = "The lower limit of {measure} is above the upper one."
    next_step = "Look which is which, and type both again."
