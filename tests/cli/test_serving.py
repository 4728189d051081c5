"""The server as a process: its doors, its trust over restarts, its calm end."""

import json
import os
import signal
import socket
import ssl
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path
from urllib.parse import urlsplit
from urllib.request import urlopen

import pytest
from cli.processes import ROOT, free_port, run
from cryptography import x509
from garage import Garage, garage
from witnessmark.trust.authority import Authority


@pytest.fixture(scope="module")
def contact_port() -> int:
    return free_port()


@pytest.fixture(scope="module")
def home(tmp_path_factory: pytest.TempPathFactory, contact_port: int) -> Iterator[Garage]:
    data = tmp_path_factory.mktemp("home") / "data"
    with garage(data, "--name", "bokal", "--contact-port", str(contact_port)) as here:
        yield here


def port_of(address: str) -> int:
    port = urlsplit(address).port
    assert port is not None
    return port


def shown(home: Garage, name: str = "bokal.local") -> x509.Certificate:
    """The certificate a phone is shown that trusts the workshop's authority."""
    context = ssl.create_default_context(cafile=str(home.data / "trust" / "ca.pem"))
    with (
        socket.create_connection(("127.0.0.1", port_of(home.address)), timeout=20) as line,
        context.wrap_socket(line, server_hostname=name) as talk,
    ):
        found = talk.getpeercert(binary_form=True)
        assert found is not None
        return x509.load_der_x509_certificate(found)


def test_the_ready_line_names_the_address_by_name(home: Garage) -> None:
    assert home.address == f"https://bokal.local:{port_of(home.address)}"


def test_a_phone_that_trusts_the_authority_is_answered(home: Garage) -> None:
    context = ssl.create_default_context(cafile=str(home.data / "trust" / "ca.pem"))
    address = f"https://localhost:{port_of(home.address)}/api/v1/health"
    with urlopen(address, context=context, timeout=20) as told:
        assert json.load(told) == {"ok": True}


def test_a_phone_that_does_not_trust_it_refuses(home: Garage) -> None:
    context = ssl.create_default_context()
    with (
        socket.create_connection(("127.0.0.1", port_of(home.address)), timeout=20) as line,
        pytest.raises(ssl.SSLCertVerificationError),
    ):
        context.wrap_socket(line, server_hostname="bokal.local")


def test_first_contact_hands_out_the_very_authority(home: Garage, contact_port: int) -> None:
    with urlopen(f"http://localhost:{contact_port}/ca.crt", timeout=20) as told:
        handed = x509.load_der_x509_certificate(told.read())
    shown(home).verify_directly_issued_by(handed)
    with urlopen(f"http://localhost:{contact_port}/", timeout=20) as told:
        page = told.read().decode()
    assert home.address in page
    pairs = Authority.fingerprint.fget(Authority(None, handed))  # type: ignore[attr-defined,arg-type]
    assert pairs.split(":")[0] in page


def test_first_contact_gives_nothing_of_the_workshop(home: Garage, contact_port: int) -> None:
    for path in ("api/v1/health", "api/v1/log", "L/7K3MQ2RJ", "index.html"):
        with pytest.raises(OSError, match="404"):
            urlopen(f"http://localhost:{contact_port}/{path}", timeout=20)


def test_this_computers_own_door_is_on_loopback_only(home: Garage) -> None:
    desk = port_of(home.address) - 1
    with urlopen(f"http://127.0.0.1:{desk}/api/v1/health", timeout=20) as told:
        assert json.load(told) == {"ok": True}


def test_killed_and_started_again_it_is_the_same_to_every_phone(tmp_path: Path) -> None:
    with garage(tmp_path / "data", "--contact-port", "0") as here:
        host = urlsplit(here.address).hostname
        assert host is not None
        before = shown(here, host)
        authority = (tmp_path / "data" / "trust" / "ca.pem").read_bytes()
        here.kill()
        here.start()
        assert urlsplit(here.address).hostname == host
        assert shown(here, host) == before
        assert (tmp_path / "data" / "trust" / "ca.pem").read_bytes() == authority


def test_a_server_killed_while_it_first_makes_its_trust_starts_well_afterwards(
    tmp_path: Path,
) -> None:
    trust = tmp_path / "data" / "trust"
    trust.mkdir(parents=True)
    for name in ("authority.pem.new", "server.pem.new", "name.new"):
        (trust / name).write_text("half a f", encoding="utf-8")
    with garage(tmp_path / "data", "--contact-port", "0", "--name", "nadir") as here:
        assert shown(here, "nadir.local")


def test_the_owners_own_certificate_is_shown_instead(tmp_path: Path, home: Garage) -> None:
    own = home.data / "trust" / "server.pem"
    with garage(tmp_path / "data", "--name", "bokal", "--cert", str(own)) as here:
        (tmp_path / "data" / "trust" / "ca.pem").write_bytes(
            (home.data / "trust" / "ca.pem").read_bytes()
        )
        assert shown(here) == shown(home)
        assert not (tmp_path / "data" / "trust" / "authority.pem").exists()


def test_behind_a_proxy_it_is_plain_on_loopback_and_known_by_the_outer_address(
    tmp_path: Path,
) -> None:
    port = free_port()
    with garage(tmp_path / "data", "--behind-proxy", "https://bench.example", port=port) as here:
        assert here.address == "https://bench.example"
        assert here.pairing()["url"].startswith("https://bench.example/pair#")
        with urlopen(f"http://127.0.0.1:{port}/api/v1/health", timeout=20) as told:
            assert json.load(told) == {"ok": True}


def test_a_taken_port_is_one_sentence_and_1(home: Garage, tmp_path: Path) -> None:
    port = port_of(home.address)
    told = run("--localhost", "--no-open", "--port", port, "--data", tmp_path / "data")
    assert told.number == 1
    assert told.err == (
        f"Port {port} is taken by another program, or by this one started before. "
        "End that one, or choose another with --port.\n"
    )


@pytest.mark.parametrize("number", [signal.SIGINT, signal.SIGTERM])
def test_it_ends_calmly_when_told_to(tmp_path: Path, number: int) -> None:
    with garage(tmp_path / "data") as here:
        process = here.process
        assert process is not None
        assert process.stdout is not None
        process.send_signal(number)
        assert process.wait(20) == 0
        assert process.stdout.read().strip().endswith("Everything that was taken is kept.")
        process.stdout.close()


def test_the_demo_serves_a_copy_and_leaves_nothing_behind(tmp_path: Path) -> None:
    process = subprocess.Popen(
        [sys.executable, "server", "--demo", "--no-open", "--port", "0"],
        cwd=ROOT, env={**os.environ, "TMPDIR": str(tmp_path)},
        stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True,
    )  # fmt: skip
    assert process.stdout is not None
    told = [process.stdout.readline()]
    while told[-1] and not told[-1].startswith("ready "):
        told.append(process.stdout.readline())
    address = told[-1].removeprefix("ready ").strip()
    assert any(f"{address}/pair#" in line and line.rstrip().endswith("&demo") for line in told)
    with urlopen(f"{address}/demo/waiting.jsonl", timeout=20) as waiting:
        assert len(waiting.read().splitlines()) == 3
    process.send_signal(signal.SIGINT)
    process.communicate(timeout=20)
    assert process.returncode == 0
    assert not list(tmp_path.glob("witnessmark-demo-*"))
