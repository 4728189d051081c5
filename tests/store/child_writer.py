"""A process that pushes notes as fast as it can and says after each push what was answered.

Run as: child_writer.py DATA DATABASE|- DEVICE PUSHES [before|after], the last to be killed by its
own hand, as by a power cut, just before or just after the third commit.
"""

import os
import signal
import sys
from pathlib import Path

from sqlalchemy import event
from witnessmark.store import Bearer, open_store
from written import Writer, offers

AT_ONCE = 20
FATAL_COMMIT = 3


def die(*_: object) -> None:
    """End as nothing in the process can hold up."""
    os.kill(os.getpid(), signal.SIGKILL)


def main(data: str, database: str, device: str, pushes: str, when: str = "") -> None:
    """Push, and tell."""
    store = open_store(Path(data), None if database == "-" else database)
    one = Bearer(device, store.ensure_workshop(), "2999-01-01T00:00:00Z")
    writer = Writer(f"01c18537-0000-7000-8000-{device}")
    for push in range(1, int(pushes) + 1):
        if push == FATAL_COMMIT and when == "before":
            event.listen(store.engine, "commit", die)
        answers = store.sync(one, None, offers(*writer.entries(AT_ONCE)), 0).answers
        if push == FATAL_COMMIT and when == "after":
            die()
        print(*(answer.seq for answer in answers), flush=True)  # type: ignore[union-attr]


if __name__ == "__main__":
    main(*sys.argv[1:])
