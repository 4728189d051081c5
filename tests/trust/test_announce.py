"""The name on the network, asked back by a second party on loopback."""

from collections.abc import Iterator
from contextlib import contextmanager
from ipaddress import ip_address
from queue import Queue

import pytest
from witnessmark.trust.addresses import Address, at_home, host_of
from witnessmark.trust.announce import SERVICE, Announcement, is_taken
from witnessmark.trust.names import names
from zeroconf import AddressResolver, ServiceBrowser, Zeroconf

LOOPBACK = ["127.0.0.1"]
HOME: tuple[Address, ...] = (ip_address("192.168.1.20"), ip_address("fd00::2"))


@pytest.fixture
def name() -> str:
    """A name of this test's own: other servers may be announced on this computer meanwhile."""
    return next(names())


@contextmanager
def announced(name: str) -> Iterator[Announcement]:
    announcement = Announcement(name, 8443, LOOPBACK)
    try:
        assert announcement.say(HOME)
        yield announcement
    finally:
        announcement.end()


def resolved(name: str) -> set[str]:
    with Zeroconf(interfaces=LOOPBACK) as network:
        resolver = AddressResolver(f"{name}.local.")
        resolver.request(network, 3000)
        return set(resolver.parsed_addresses())


def test_another_party_finds_every_address_under_the_name(name: str) -> None:
    with announced(name):
        assert resolved(name) == {"192.168.1.20", "fd00::2"}


def test_when_the_addresses_change_the_name_leads_to_the_new_ones(name: str) -> None:
    with announced(name) as announcement:
        announcement.say((ip_address("10.0.0.7"),))
        assert resolved(name) == {"10.0.0.7"}


def test_a_name_in_use_is_seen_and_a_free_one_too(name: str) -> None:
    with announced(name):
        assert is_taken(name, LOOPBACK)
        assert not is_taken(next(names()), LOOPBACK)


def test_the_service_can_be_browsed_for(name: str) -> None:
    seen: Queue[str] = Queue()

    class Ear:
        def add_service(self, network: Zeroconf, kind: str, name: str) -> None:
            info = network.get_service_info(kind, name, 3000)
            if info is not None and info.server is not None:
                seen.put(f"{info.server}:{info.port}")

        def update_service(self, *_: object) -> None: ...
        def remove_service(self, *_: object) -> None: ...

    with announced(name), Zeroconf(interfaces=LOOPBACK) as network:
        browser = ServiceBrowser(network, SERVICE, Ear())
        mine = f"{name}.local.:8443"
        while seen.get(timeout=20) != mine:
            """Other servers may be announced on this computer meanwhile."""
        browser.cancel()


def test_a_computer_without_a_network_starts_all_the_same(monkeypatch: pytest.MonkeyPatch) -> None:
    def shut(**_: object) -> None:
        raise OSError("Network is unreachable")

    monkeypatch.setattr("witnessmark.trust.announce.Zeroconf", shut)
    assert not Announcement("bokal", 8443).say(HOME)
    assert not is_taken("bokal")


def test_only_addresses_at_home_are_told_and_always_in_one_order() -> None:
    found = [
        ip_address(text) for text in ("fe80::5", "8.8.8.8", "fd00::2", "127.0.0.1", "10.0.0.7")
    ]
    assert [str(item) for item in at_home(found)] == ["10.0.0.7", "fd00::2", "fe80::5"]
    assert at_home(reversed(found)) == at_home(found)
    assert [host_of(item) for item in at_home(found)[:2]] == ["10.0.0.7", "[fd00::2]"]
