"""Ending calmly: Ctrl-C or the system's request is heard at once, and acted on where that is safe.

While doors are being opened or closed a request only waits; raised in the middle of that, it
would leave the threads of a half-opened door behind, and the program would never end.
"""

import signal
from collections.abc import Iterator
from contextlib import contextmanager


class Stopping:
    """A request to stop, and whether it may break in now."""

    def __init__(self) -> None:
        self._is_asked = False
        self._may_break_in = False

    def ask(self, number: int = 0, frame: object = None) -> None:
        """Ask for the end."""
        self._is_asked = True
        if self._may_break_in:
            self._may_break_in = False
            raise KeyboardInterrupt

    @contextmanager
    def at_once(self) -> Iterator[None]:
        """In this block a request breaks in; one that waited does so right away."""
        self._may_break_in = True
        if self._is_asked:
            self.ask()
        try:
            yield
        finally:
            self._may_break_in = False


@contextmanager
def told_to_stop() -> Iterator[Stopping]:
    """Hear requests to stop; one leaves the block without a trace."""
    stopping = Stopping()
    for number in (signal.SIGINT, signal.SIGTERM):
        signal.signal(number, stopping.ask)
    try:
        yield stopping
    except KeyboardInterrupt:
        return
