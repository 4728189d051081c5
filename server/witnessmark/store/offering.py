"""What may be appended: a checked entry with its canonical text."""

from typing import Any, NamedTuple

from witnessmark.log import entry


class Offered(NamedTuple):
    """An entry whose shape is good, its canonical text, and the order it had before a restore.

    A tuple, because a push makes thousands.
    """

    facts: dict[str, Any]
    text: str
    order: str | None = None


def offered(taken: entry.Taken, order: str | None) -> Offered:
    """A checked entry, ready to be appended."""
    return Offered(taken.facts, taken.text, order)
