"""A line between phone and computer that breaks in the ways lines break."""

import http.client
import socket
import struct
import threading
from collections.abc import Iterator
from contextlib import contextmanager
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from typing import Any, ClassVar
from urllib.parse import urlsplit

Answer = tuple[int, list[tuple[str, str]], bytes]
HOP = {"connection", "transfer-encoding", "keep-alive"}


class Line:
    """Where the computer is, and what happens to the next requests of the sync."""

    def __init__(self, target: str) -> None:
        self.target = target
        self.plan: list[str] = []
        self.done: list[str] = []
        self.late: list[tuple[str, dict[str, str], bytes]] = []
        self.guard = threading.Lock()
        self.let_go = threading.Event()
        self.down = False
        self.address = ""
        self.photo_seconds = 0.0
        self.photos: list[tuple[str, int]] = []
        self.under_way = self.most_under_way = 0

    def next_fault(self, path: str) -> str:
        """Only the sync meets faults; the page's files come through."""
        with self.guard:
            if self.down and path.startswith("/api"):
                return "reset"
            if not path.endswith("/sync") or not self.plan:
                return "none"
            fault = self.plan.pop(0)
            self.done.append(fault)
            return fault

    @contextmanager
    def photo(self, path: str, size: int) -> Iterator[None]:
        """A photo takes its time; how many are sent at once is counted, not those fetched."""
        sent = 1 if size else 0
        with self.guard:
            self.under_way += sent
            self.most_under_way = max(self.most_under_way, self.under_way)
        self.let_go.wait(self.photo_seconds)
        yield
        with self.guard:
            self.under_way -= sent
            self.photos.append((path.rsplit("/", 1)[1], size))

    def ask(self, method: str, path: str, headers: dict[str, str], body: bytes) -> Answer:
        """One request to the computer, answered whole."""
        link = http.client.HTTPConnection(urlsplit(self.target).netloc, timeout=30)
        try:
            link.request(
                method, path, body=body or None, headers={**headers, "Connection": "close"}
            )
            said = link.getresponse()
            return said.status, said.getheaders(), said.read()
        finally:
            link.close()

    def send_half(self, path: str, headers: dict[str, str], body: bytes) -> None:
        """The computer hears half of a request, then the line is cut."""
        place = urlsplit(self.target)
        with socket.create_connection((place.hostname, place.port or 80), timeout=10) as link:
            head = "".join(f"{name}: {value}\r\n" for name, value in headers.items())
            link.sendall(f"POST {path} HTTP/1.1\r\n{head}\r\n".encode() + body[: len(body) // 2])


class Relay(BaseHTTPRequestHandler):
    """Hands one request on, or breaks it."""

    protocol_version = "HTTP/1.1"
    line: ClassVar[Line]

    def relay(self) -> None:
        body = self.rfile.read(int(self.headers.get("Content-Length") or 0))
        headers = {name: value for name, value in self.headers.items() if name.lower() not in HOP}
        fault = self.line.next_fault(self.path)
        carry = getattr(self, fault.replace(" ", "_"))
        if "/photos/" in self.path and self.command in {"PUT", "GET"} and fault == "none":
            with self.line.photo(self.path, len(body)):
                carry(headers, body)
        else:
            carry(headers, body)

    do_GET = do_POST = do_PUT = do_PATCH = relay  # noqa: N815

    def none(self, headers: dict[str, str], body: bytes) -> None:
        try:
            answer = self.line.ask(self.command, self.path, headers, body)
        except OSError:
            return self.reset(headers, body)
        return self.pass_on(answer)

    def pass_on(self, answer: Answer, share: float = 1.0) -> None:
        status, headers, body = answer
        self.send_response_only(status)
        for name, value in headers:
            if name.lower() not in HOP:
                self.send_header(name, value)
        self.end_headers()
        self.wfile.write(body[: int(len(body) * share)])

    def reset(self, headers: dict[str, str], body: bytes) -> None:
        self.close_connection = True
        hard = struct.pack("ii", 1, 0)
        self.connection.setsockopt(socket.SOL_SOCKET, socket.SO_LINGER, hard)
        self.connection.close()

    def answer_lost(self, headers: dict[str, str], body: bytes) -> None:
        self.line.ask(self.command, self.path, headers, body)
        self.reset(headers, body)

    def answer_cut(self, headers: dict[str, str], body: bytes) -> None:
        self.pass_on(self.line.ask(self.command, self.path, headers, body), share=0.5)
        self.reset(headers, body)

    def request_cut(self, headers: dict[str, str], body: bytes) -> None:
        self.line.send_half(self.path, headers, body)
        self.reset(headers, body)

    def doubled(self, headers: dict[str, str], body: bytes) -> None:
        self.line.ask(self.command, self.path, headers, body)
        self.none(headers, body)

    def late(self, headers: dict[str, str], body: bytes) -> None:
        self.line.late.append((self.path, headers, body))
        self.reset(headers, body)

    def after_the_late_one(self, headers: dict[str, str], body: bytes) -> None:
        self.none(headers, body)
        while self.line.late:
            path, old, text = self.line.late.pop(0)
            self.line.ask("POST", path, old, text)

    def stranger(self, headers: dict[str, str], body: bytes) -> None:
        page = b"<html>Welcome to the guest network</html>"
        self.pass_on((200, [("Content-Type", "text/html"), ("Content-Length", "41")], page))

    def wall(self, headers: dict[str, str], body: bytes) -> None:
        self.pass_on((403, [("Content-Type", "text/html"), ("Content-Length", "4")], b"Wall"))

    def hang(self, headers: dict[str, str], body: bytes) -> None:
        """The connection is taken and nothing is said, as a computer does that fell asleep."""
        self.line.let_go.wait(60)
        self.reset(headers, body)

    def trouble(self, headers: dict[str, str], body: bytes) -> None:
        self.pass_on((503, [("Retry-After", "1"), ("Content-Length", "0")], b""))

    def log_message(self, *_: Any) -> None:
        """Nobody reads it."""


class Relays(ThreadingHTTPServer):
    """Phones that hang up are no fault of the line."""

    daemon_threads = True

    def handle_error(self, *_: Any) -> None:
        """A broken line breaks here too."""


@contextmanager
def line_to(target: str) -> Iterator[tuple[Line, str]]:
    """The line, and the address a phone uses."""
    line = Line(target)
    server = Relays(("127.0.0.1", 0), type("OneRelay", (Relay,), {"line": line}))
    thread = threading.Thread(target=server.serve_forever, daemon=True)
    thread.start()
    try:
        yield line, f"http://127.0.0.1:{server.server_port}"
    finally:
        server.shutdown()
        server.server_close()
        thread.join()
