"""What may be appended: a checked entry, and what is filed beside its text."""

from typing import NamedTuple

from witnessmark.log import entry


class Offered(NamedTuple):
    """An entry whose shape is good: its canonical text and what is filed beside it.

    A tuple, because a push makes thousands.
    """

    id: str
    heading: str
    about: str
    device: str
    n: int
    stamp: str
    text: str
    order: str | None = None


def offered(taken: entry.Taken, order: str | None) -> Offered:
    """A checked entry as the log files it, with the order it had before a restore."""
    facts = taken.facts
    return Offered(
        facts["id"],
        facts["heading"],
        facts["about"],
        facts["device"],
        facts["n"],
        facts["stamp"],
        taken.text,
        order,
    )
