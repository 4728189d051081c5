"""Looking after certificate and name while the server runs: new addresses, an end that nears."""

import ssl
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import datetime
from threading import Event, Thread

from witnessmark.trust.addresses import Address
from witnessmark.trust.announce import Announcement
from witnessmark.trust.authority import Authority
from witnessmark.trust.folder import TrustFolder
from witnessmark.trust.leaf import Standing, keep_leaf, load, server_context

# A laptop that wakes in another network has new addresses; looking costs a few milliseconds.
EVERY = 60.0


@dataclass(frozen=True, slots=True)
class Outside:
    """What the keeper asks about the world, passed in so that tests can answer."""

    clock: Callable[[], datetime]
    addresses: Callable[[], tuple[Address, ...]]


class Keeper:
    """Holds the server's TLS context and renews what it shows, without a restart."""

    def __init__(
        self,
        folder: TrustFolder,
        authority: Authority,
        name: str,
        outside: Outside,
        announcement: Announcement | None = None,
    ) -> None:
        self._folder = folder
        self._authority = authority
        self._name = name
        self._outside = outside
        self._announcement = announcement
        self._stopping = Event()
        self._said: Sequence[Address] | None = None
        keep_leaf(folder, authority, self._standing(), outside.clock())
        self.context: ssl.SSLContext = server_context(str(folder.leaf))

    def _standing(self) -> Standing:
        return Standing(self._name, self._outside.addresses())

    def look(self) -> bool:
        """Look once; tells whether a new certificate was made and put in use."""
        standing = self._standing()
        if self._announcement is not None and standing.addresses != self._said:
            self._announcement.say(standing.addresses)
            self._said = standing.addresses
        renewed = keep_leaf(self._folder, self._authority, standing, self._outside.clock())
        if renewed:
            load(self.context, str(self._folder.leaf))
        return renewed

    def start(self, every: float = EVERY) -> None:
        """Look now, and again every minute, in a thread that ends with the server."""

        def watch() -> None:
            self.look()
            while not self._stopping.wait(every):
                self.look()

        Thread(target=watch, name="trust", daemon=True).start()

    def stop(self) -> None:
        """End the looking and take the name back."""
        self._stopping.set()
        if self._announcement is not None:
            self._announcement.end()
