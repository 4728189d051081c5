"""What looks after the certificate while the server runs."""

from collections.abc import Sequence
from datetime import UTC, datetime, timedelta
from ipaddress import ip_address
from pathlib import Path
from threading import Event

import pytest
from trust.hand_shake import shake
from witnessmark.trust.addresses import Address
from witnessmark.trust.announce import Announcement
from witnessmark.trust.authority import kept_authority
from witnessmark.trust.folder import trust_folder
from witnessmark.trust.keeper import Keeper, Outside


class World:
    """A clock and addresses that a test can move."""

    def __init__(self) -> None:
        self.now = datetime.now(UTC)
        self.addresses: tuple[Address, ...] = (ip_address("192.168.1.20"),)


class Voice(Announcement):
    """An announcement that only remembers."""

    def __init__(self) -> None:
        super().__init__("bokal", 8443)
        self.said: list[tuple[Address, ...]] = []
        self.heard = Event()

    def say(self, addresses: Sequence[Address]) -> bool:
        self.said.append(tuple(addresses))
        self.heard.set()
        return True


@pytest.fixture
def world() -> World:
    return World()


@pytest.fixture
def keeper(tmp_path: Path, world: World) -> Keeper:
    folder = trust_folder(tmp_path)
    authority = kept_authority(folder, "bokal", world.now)
    (tmp_path / "ca.pem").write_bytes(authority.pem)
    outside = Outside(lambda: world.now, lambda: world.addresses)
    return Keeper(folder, authority, "bokal", outside, Voice())


def voice(keeper: Keeper) -> Voice:
    found = keeper._announcement
    assert isinstance(found, Voice)
    return found


def test_from_the_start_it_shows_a_good_certificate(keeper: Keeper, tmp_path: Path) -> None:
    assert shake(keeper.context, tmp_path / "ca.pem", "bokal.local")
    assert not keeper.look()


def test_a_new_address_is_in_the_certificate_and_on_the_network_after_one_look(
    keeper: Keeper, world: World, tmp_path: Path
) -> None:
    keeper.look()
    world.addresses = (ip_address("10.0.0.7"),)
    assert keeper.look()
    assert shake(keeper.context, tmp_path / "ca.pem", "10.0.0.7")
    assert voice(keeper).said == [(ip_address("192.168.1.20"),), (ip_address("10.0.0.7"),)]


def test_a_server_that_runs_for_a_year_renews_without_a_restart(
    keeper: Keeper, world: World
) -> None:
    looks = []
    for _ in range(366):
        world.now += timedelta(days=1)
        looks.append(keeper.look())
    assert looks.count(True) == 1
    assert 336 <= looks.index(True) <= 338


def test_the_thread_looks_at_once_and_ends_with_the_server(keeper: Keeper) -> None:
    keeper.start(every=3600)
    assert voice(keeper).heard.wait(10)
    keeper.stop()
