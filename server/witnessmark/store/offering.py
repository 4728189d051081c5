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
        filed(facts["heading"]),
        filed(facts["about"]),
        filed(facts["device"]),
        facts["n"],
        facts["stamp"],
        taken.text,
        order,
    )


def filed(text: str) -> str:
    """A text as it may stand in a column; the stored entry itself keeps every sign.

    PostgreSQL takes no zero sign in a text, and an id may hold one.
    """
    return text.replace("\0", "\ufffd") if "\0" in text else text
