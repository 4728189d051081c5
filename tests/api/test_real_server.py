"""What only a real server process shows: answers heard over a socket, and a kill at any moment."""

import http.client
import json
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
from garage import Garage, garage
from written import Writer

API = "/api/v1"
MEBIBYTE = 1024 * 1024


def ask(here: Garage, body: bytes | list[bytes], **headers: str) -> tuple[int, dict[str, Any]]:
    """POST /sync over a connection of its own."""
    named = {name.replace("_", "-"): value for name, value in headers.items()}
    line = http.client.HTTPConnection(here.address.removeprefix("http://"), timeout=30)
    try:
        chunked = isinstance(body, list)
        line.request(
            "POST",
            API + "/sync",
            iter(body) if isinstance(body, list) else body,
            {"Content-Type": "application/json", **named},
            encode_chunked=chunked,
        )
        answer = line.getresponse()
        return answer.status, json.loads(answer.read())
    finally:
        line.close()


def paired(here: Garage) -> str:
    line = http.client.HTTPConnection(here.address.removeprefix("http://"), timeout=30)
    body = json.dumps({"code": here.pairing()["code"], "name": "phone"})
    line.request("POST", API + "/pair", body, {"Content-Type": "application/json"})
    key: str = json.loads(line.getresponse().read())["key"]
    line.close()
    return f"Bearer {key}"


@pytest.fixture(scope="module")
def here(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Garage]:
    """A running server."""
    with garage(tmp_path_factory.mktemp("garage")) as running:
        yield running


@pytest.fixture(scope="module")
def key(here: Garage) -> str:
    """A key it gave."""
    return paired(here)


def test_a_body_that_is_too_long_is_heard_to_be(here: Garage, key: str) -> None:
    for size in (9, 20):
        status, told = ask(here, b" " * size * MEBIBYTE, Authorization=key)
        assert (status, told["code"]) == (413, "too-much")
        status, told = ask(here, b" " * size * MEBIBYTE)
        assert (status, told["code"]) == (401, "device-unknown")
    pieces = [b" " * 65_536] * 200
    status, told = ask(here, pieces, Authorization=key, Transfer_Encoding="chunked")
    assert (status, told["code"]) == (413, "too-much")


def test_a_body_in_chunks_is_read(here: Garage, key: str) -> None:
    told = ask(here, [b'{"room"', b":0}"], Authorization=key, Transfer_Encoding="chunked")
    assert told[0] == 200


@pytest.mark.parametrize("length", ["-5", "x", "1e3"])
def test_a_length_that_is_no_number_is_turned_away(here: Garage, key: str, length: str) -> None:
    line = http.client.HTTPConnection(here.address.removeprefix("http://"), timeout=30)
    line.putrequest("POST", API + "/sync")
    headers = {"Content-Type": "application/json", "Authorization": key}
    for name, value in {**headers, "Content-Length": length}.items():
        line.putheader(name, value)
    line.endheaders()
    assert line.getresponse().status == 400
    line.close()
    assert ask(here, b"{}", Authorization=key)[0] == 200


def test_a_killed_server_has_all_it_answered_and_the_repeat_gets_the_same_numbers(
    tmp_path: Path,
) -> None:
    writer = Writer(ms=1_600_000_000_000)  # behind any clock, so that no order is made
    sent: list[dict[str, Any]] = []
    with garage(tmp_path) as here:
        key = paired(here)
        for size in (1, 50, 700):
            entries = writer.entries(size)
            sent += entries
            told = ask(here, json.dumps({"entries": entries}).encode(), Authorization=key)[1]
            assert told["answers"] == list(range(len(sent) - size + 1, len(sent) + 1))
            here.kill()
            here.start()
            again = ask(here, json.dumps({"entries": sent}).encode(), Authorization=key)[1]
            assert again["answers"] == list(range(1, len(sent) + 1))
            assert (again["head"], again["digest"]) == (len(sent), told["digest"])
