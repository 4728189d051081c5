"""The server under callers that are silent, slow or speak the wrong language."""

import json
import socket
import ssl
from collections.abc import Callable, Iterable, Iterator
from datetime import UTC, datetime
from pathlib import Path
from typing import Any
from urllib.request import urlopen

import pytest
from witnessmark.cli import listening
from witnessmark.cli.listening import Listening
from witnessmark.cli.ports import LOOPBACK
from witnessmark.trust.authority import kept_authority
from witnessmark.trust.folder import trust_folder
from witnessmark.trust.leaf import Standing, keep_leaf, server_context

ADDRESS = "https://bokal.local:8443"


def echo(environ: dict[str, Any], start: Callable[..., Any]) -> Iterable[bytes]:
    """Answers with the scheme and what was sent."""
    sent = environ["wsgi.input"].read(int(environ.get("CONTENT_LENGTH") or 0))
    answer = environ["wsgi.url_scheme"].encode() + b":" + sent
    start("200 OK", [("Content-Type", "text/plain"), ("Content-Length", str(len(answer)))])
    return [answer]


@pytest.fixture
def trusted(tmp_path: Path) -> Path:
    """A certificate for this computer; gives the folder with it."""
    folder, now = trust_folder(tmp_path), datetime.now(UTC)
    authority = kept_authority(folder, "bokal", now)
    (folder.path / "ca.pem").write_bytes(authority.pem)
    keep_leaf(folder, authority, Standing("bokal", ()), now)
    return folder.path


def serving(tls: ssl.SSLContext | None = None) -> Iterator[Listening]:
    server = Listening(LOOPBACK, 0, echo, tls, ADDRESS)
    server.prepare()
    server.serve_aside()
    yield server
    server.stop()


@pytest.fixture
def plain() -> Iterator[Listening]:
    yield from serving()


@pytest.fixture
def secure(trusted: Path) -> Iterator[Listening]:
    yield from serving(server_context(str(trusted / "server.pem")))


def call(server: Listening) -> socket.socket:
    return socket.create_connection((LOOPBACK, server.bind_addr[1]), timeout=10)


def fetch(server: Listening, authority: Path) -> bytes:
    context = ssl.create_default_context(cafile=str(authority))
    with urlopen(f"https://localhost:{server.bind_addr[1]}/", context=context, timeout=10) as told:
        return bytes(told.read())


def heard(caller: socket.socket) -> bytes:
    """Everything until the server hangs up."""
    told = b""
    try:
        while piece := caller.recv(4096):
            told += piece
    except ConnectionResetError:
        pass
    return told


def test_over_tls_the_application_knows_it(secure: Listening, trusted: Path) -> None:
    assert fetch(secure, trusted / "ca.pem") == b"https:"


def test_silent_callers_in_any_number_hold_up_nobody(secure: Listening, trusted: Path) -> None:
    silent = [call(secure) for _ in range(3 * listening.WORKERS)]
    assert fetch(secure, trusted / "ca.pem") == b"https:"
    for caller in silent:
        caller.close()


def test_a_caller_who_breaks_off_the_hand_shake_leaves_the_server_well(
    secure: Listening, trusted: Path
) -> None:
    for _ in range(2 * listening.WORKERS):
        with call(secure) as caller:
            caller.sendall(b"\x16\x03\x01")
    with pytest.raises(ssl.SSLCertVerificationError), call(secure) as caller:
        ssl.create_default_context().wrap_socket(caller, server_hostname="localhost")
    assert fetch(secure, trusted / "ca.pem") == b"https:"


def test_plain_http_on_the_tls_port_is_shown_the_way(secure: Listening) -> None:
    with call(secure) as caller:
        caller.sendall(b"GET /anything HTTP/1.1\r\nHost: x\r\n\r\n")
        told = heard(caller)
    assert told.startswith(b"HTTP/1.1 301 ")
    assert f"Location: {ADDRESS}/\r\n".encode() in told


@pytest.mark.parametrize(
    "said",
    [
        b"POST / HTTP/1.1\r\nHost: x\r\nContent-Length: 9\r\n\r\nhal",
        b"POST / HTTP/1.1\r\nHost: x\r\nContent-",
        b"P",
    ],
)
def test_a_sender_who_stops_half_way_is_dropped(
    plain: Listening, said: bytes, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(listening, "SLOWEST", 0.3)
    with call(plain) as caller:
        caller.sendall(said)
        assert b" 200 " not in heard(caller)


def test_a_sender_who_only_trickles_is_dropped_as_well(
    plain: Listening, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(listening, "SLOWEST", 0.5)
    with call(plain) as caller:
        caller.sendall(b"POST / HTTP/1.1\r\nHost: x\r\nContent-Length: 100000\r\n\r\n")
        caller.settimeout(0.05)
        dropped_after = None
        for drop in range(200):
            try:
                caller.sendall(b".")
                if not caller.recv(1000).startswith(b"HTTP/1.1 200"):
                    dropped_after = drop
                    break
            except TimeoutError:
                continue
            except OSError:
                dropped_after = drop
                break
    assert dropped_after is not None


def test_one_connection_serves_many_requests(plain: Listening) -> None:
    with call(plain) as caller:
        for _ in range(3):
            caller.sendall(b"POST / HTTP/1.1\r\nHost: x\r\nContent-Length: 3\r\n\r\nabc")
            told = b""
            while not told.endswith(b"http:abc"):
                piece = caller.recv(4096)
                assert piece
                told += piece


@pytest.mark.parametrize(
    ("said", "number", "code"),
    [
        (b"POST / HTTP/1.1\r\nHost: x\r\nContent-Length: many\r\n\r\n", 400, "not-json"),
        (b"GET //api/v1/health HTTP/1.1\r\nHost: x\r\n\r\n", 400, "request"),
        (b"GET nowhere HTTP/1.1\r\nHost: x\r\n\r\n", 400, "request"),
        (b"GET / HTTP/1.1\r\nHost: x\r\nX: " + b"y" * 70_000 + b"\r\n\r\n", 413, "too-much"),
    ],
)
def test_what_http_itself_cannot_read_is_answered_as_a_problem_too(
    plain: Listening, said: bytes, number: int, code: str
) -> None:
    with call(plain) as caller:
        caller.sendall(said)
        head, _, body = heard(caller).partition(b"\r\n\r\n")
    assert head.startswith(b"HTTP/1.1 %d " % number)
    assert b"Content-Type: application/problem+json" in head
    told = json.loads(body)
    assert (told["status"], told["code"]) == (number, code)
    assert told["title"]
    assert told["next"]
