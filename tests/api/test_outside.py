"""What a program found that knew the contract only and spoke to a real server."""

import json
import socket
from collections.abc import Iterator
from typing import Any

import pytest
from garage import Garage, garage

MEBIBYTE = 1024 * 1024
PATIENCE_SECONDS = 10  # far below the 30 s after which a slow sender is dropped


@pytest.fixture(scope="module")
def here(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Garage]:
    """A running server."""
    with garage(tmp_path_factory.mktemp("outside")) as running:
        yield running


def exchange(here: Garage, path: str, headers: dict[str, str], body: bytes = b"") -> Any:
    """Write bytes as they are, and read the problem document that comes back."""
    host, port = here.address.removeprefix("http://").split(":")
    named = {"Host": host, "Content-Type": "application/json", "Connection": "close", **headers}
    top = "".join(f"{name}: {value}\r\n" for name, value in named.items())
    with socket.create_connection((host, int(port)), timeout=PATIENCE_SECONDS) as line:
        line.sendall(f"POST /api/v1{path} HTTP/1.1\r\n{top}\r\n".encode() + body)
        heard = line.makefile("rb").read()
    said, told = heard.split(b"\r\n\r\n", 1)
    assert b"application/problem+json" in said
    return json.loads(told)


@pytest.mark.parametrize("body", [b"zz\r\n{}\r\n0\r\n\r\n", b"2\r\n{}xx0\r\n\r\n"])
def test_chunks_that_nobody_can_read_are_the_senders_fault(here: Garage, body: bytes) -> None:
    told = exchange(here, "/pair", {"Transfer-Encoding": "chunked"}, body)
    assert (told["status"], told["code"]) == (400, "not-json")


def test_who_announces_a_boundless_body_is_answered_before_it_comes(here: Garage) -> None:
    told = exchange(here, "/pair", {"Content-Length": "99999999999"})
    assert (told["status"], told["code"]) == (413, "too-much")


@pytest.mark.parametrize("room", ["5001", "9007199254740993", "1" + "0" * 400])
def test_room_for_more_than_a_page_is_room_for_a_page(phone: Any, room: str) -> None:
    assert phone.raw(b'{"room":' + room.encode() + b"}").status_code == 200


@pytest.mark.parametrize("room", ["-9007199254740993", "1.0", "1e3", "-0", "NaN", "true", "null"])
def test_room_that_is_no_whole_number_from_nought_on_is_refused(phone: Any, room: str) -> None:
    answer = phone.raw(b'{"room":' + room.encode() + b"}")
    assert (answer.status_code, answer.json["code"]) == (422, "field-shape")


@pytest.mark.parametrize("digits", [16, 20, 40, 5000])
def test_a_cursor_beyond_any_log_is_forked(phone: Any, digits: int) -> None:
    answer = phone.post("/sync", {"cursor": "9" * digits + ".00000000"})
    assert (answer.status_code, answer.json["code"]) == (409, "log-forked")


def test_the_log_after_any_number_is_empty_there(phone: Any) -> None:
    answer = phone.get(f"/log?after={'9' * 40}&limit={'9' * 40}")
    assert (answer.status_code, answer.json["entries"]) == (200, [])
