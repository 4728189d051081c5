"""What a thread or a property class can be refused for."""

from __future__ import annotations

from witnessmark.errors import TradeError


class ThreadUnread(TradeError):
    """Signs that are no designation of a metric or unified thread."""

    code = "thread-unread"
    says = "{typed} is no thread that is known here."
    next_step = "Write it as M8, M10×1.25, 7/16-20 or #10-32."


class ThreadPitchMissing(TradeError):
    """A size that no table gives one pitch for."""

    code = "thread-pitch-missing"
    says = "{typed} alone does not say its pitch."
    next_step = "Write the pitch behind it, as in {example}."


class ThreadTwoMeanings(TradeError):
    """A size or series that stands for two threads."""

    code = "thread-two-meanings"
    says = "{typed} can be {one} or {other}."
    next_step = "Write the pitch or the threads per inch behind it."


class ThreadPitchImpossible(TradeError):
    """A pitch that does not go with its diameter."""

    code = "thread-pitch-impossible"
    says = "{size} cannot have {pitch}."
    next_step = "If that number is the length of the bolt, leave it out."


class ThreadSeriesDiffers(TradeError):
    """Threads per inch and series that contradict each other."""

    code = "thread-series-differs"
    says = "{typed} is {one}, not {other}."
    next_step = "Count the threads on the bolt, then write it again."


class ClassUnknown(TradeError):
    """No property class of the tables."""

    code = "class-unknown"
    says = "{typed} is no property class that is known here."
    next_step = "Read the head: 8.8, 10.9, 12.9, or SAE 2, SAE 5, SAE 8 by its lines."


class ClassSize(TradeError):
    """A property class in a size its standard does not have."""

    code = "class-size"
    says = "{name} is not made in {size}: its table goes from {least} to {most}."
    next_step = "Look at the head again, or take the value from the manual."


class ClassThread(TradeError):
    """A class of metric bolts on an inch thread, or the other way round."""

    code = "class-thread"
    says = "{name} does not belong to {thread}."
    next_step = "Metric threads have classes like 8.8, inch threads have SAE 2, 5 and 8."
