"""Telling the home network this computer's name, by multicast DNS."""

from collections.abc import Sequence

import zeroconf
from zeroconf import Error, InterfaceChoice, ServiceInfo, Zeroconf

from witnessmark.trust.addresses import Address

SERVICE = "_https._tcp.local."
PATIENCE_MS = 1500
Interfaces = InterfaceChoice | list[str]


def is_taken(name: str, interfaces: Interfaces = InterfaceChoice.Default) -> bool:
    """Whether some computer of the network already answers to the name."""
    try:
        with Zeroconf(interfaces=interfaces) as network:
            # Exported by the package, only not in the way that type checkers ask for.
            resolver = zeroconf.AddressResolver(f"{name}.local.")  # type: ignore[attr-defined]
            return bool(resolver.request(network, PATIENCE_MS))
    except (OSError, Error):
        return False


class Announcement:
    """The name as the network hears it; follows when the addresses change."""

    def __init__(self, name: str, port: int, interfaces: Interfaces = InterfaceChoice.All) -> None:
        self._name = name
        self._port = port
        self._interfaces = interfaces
        self._network: Zeroconf | None = None

    def say(self, addresses: Sequence[Address]) -> bool:
        """Announce these addresses in place of earlier ones; tells whether a network listened."""
        self.end()
        service = ServiceInfo(
            SERVICE,
            f"Witnessmark {self._name}.{SERVICE}",
            port=self._port,
            addresses=[address.packed for address in addresses],
            server=f"{self._name}.local.",
            properties={"path": "/"},
        )
        try:
            self._network = Zeroconf(interfaces=self._interfaces)
            self._network.register_service(service, cooperating_responders=True)
        except (OSError, Error):
            self.end()
            return False
        return True

    def end(self) -> None:
        """Take the name back from the network."""
        network, self._network = self._network, None
        if network is not None:
            network.close()
