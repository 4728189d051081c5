"""What a real browser makes of our authority, without any switch that hides a fault."""

from collections.abc import Iterator
from pathlib import Path
from urllib.parse import urlsplit

import pytest
from garage import Garage, garage, phone, trust
from playwright.sync_api import Error, Playwright, sync_playwright

REGISTER = """async () => {
  const worker = await navigator.serviceWorker.register('/sw.js');
  await navigator.serviceWorker.ready;
  return [isSecureContext, Boolean(worker.active || worker.waiting || worker.installing)];
}"""


@pytest.fixture(scope="module")
def player() -> Iterator[Playwright]:
    with sync_playwright() as found:
        yield found


@pytest.fixture(scope="module")
def home(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Garage]:
    data = tmp_path_factory.mktemp("home") / "data"
    with garage(data, "--name", "bokal", "--contact-port", "0") as here:
        yield here


def resolving(name: str) -> str:
    """The flag that stands in for the network's name service."""
    return f"--host-resolver-rules=MAP {name} 127.0.0.1"


def test_with_the_authority_installed_the_page_is_trusted_and_works_offline_later(
    player: Playwright, home: Garage, tmp_path: Path
) -> None:
    trust(tmp_path, home.data / "trust" / "ca.pem")
    with phone(player, tmp_path / "profile", resolving("bokal.local"), home=tmp_path) as context:
        page = context.new_page()
        answer = page.goto(home.address + "/")
        assert answer is not None
        assert answer.ok
        assert page.evaluate(REGISTER) == [True, True]


def test_without_it_the_browser_refuses(player: Playwright, home: Garage, tmp_path: Path) -> None:
    with phone(player, tmp_path / "profile", resolving("bokal.local"), home=tmp_path) as context:
        page = context.new_page()
        with pytest.raises(Error, match="ERR_CERT_AUTHORITY_INVALID"):
            page.goto(home.address + "/")


def test_under_a_name_that_is_not_ours_the_browser_refuses(
    player: Playwright, home: Garage, tmp_path: Path
) -> None:
    trust(tmp_path, home.data / "trust" / "ca.pem")
    with phone(player, tmp_path / "profile", resolving("other.local"), home=tmp_path) as context:
        page = context.new_page()
        with pytest.raises(Error, match="ERR_CERT_COMMON_NAME_INVALID"):
            page.goto(f"https://other.local:{urlsplit(home.address).port}/")
