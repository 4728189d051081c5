"""The HTTP server: cheroot, with the hand-shake moved off the loop that accepts connections.

As it comes, cheroot shakes hands in the accepting thread and gives every new connection a worker
at once; one silent caller would then hold up everybody for half a minute. Here a connection waits
in the selector until it says something, and the hand-shake is done by the worker.
"""

import logging
import socket
import ssl
from collections.abc import Callable, Iterable
from contextlib import suppress
from threading import Thread
from time import monotonic
from typing import Any

from cheroot import server as cheroot_server
from cheroot import wsgi
from cheroot.makefile import StreamReader, StreamWriter

from witnessmark.cli.plain_trouble import Request

Application = Callable[[dict[str, Any], Callable[..., Any]], Iterable[bytes]]

SLOWEST = 30  # seconds a sender may take for one request
WORKERS = 24
HELLO = b"\x16"  # first byte of a TLS hand-shake
ELSEWHERE = (
    "HTTP/1.1 301 Moved Permanently\r\nLocation: {address}/\r\n"
    "Content-Length: 0\r\nConnection: close\r\n\r\n"
)
trace = logging.getLogger("witnessmark.serving")


class TimedIO(socket.SocketIO):
    """Reads from a socket until a moment; a sender that only trickles is cut off then as well."""

    until = 0.0

    def readinto(self, room: Any) -> int | None:
        """Read what is there, waiting no longer than until the moment."""
        left = self.until - monotonic()
        if left <= 0:
            raise TimeoutError("timed out")
        self._sock.settimeout(left)  # type: ignore[attr-defined]  # typeshed hides the socket
        try:
            return super().readinto(room)
        finally:
            self._sock.settimeout(SLOWEST)  # type: ignore[attr-defined]


class TimedReader(StreamReader):
    """What cheroot reads requests from, with a last moment."""

    def __init__(self, sock: socket.socket, mode: str = "rb", bufsize: int = 65536) -> None:
        self.timed = TimedIO(sock, "rb")
        # Past StreamReader, which would make a reader without a last moment.
        super(StreamReader, self).__init__(self.timed, bufsize)
        self.bytes_read = 0

    def begin(self) -> None:
        """Give the sender its time for the next request."""
        self.timed.until = monotonic() + SLOWEST


class Connection(cheroot_server.HTTPConnection):
    """A connection that is new until it has said something, and shakes hands in its worker."""

    RequestHandlerClass = Request
    is_new = True
    rfile: TimedReader

    def __init__(self, server: Any, sock: socket.socket, makefile: Any = None) -> None:
        super().__init__(server, sock)
        self.rfile = TimedReader(sock)

    def communicate(self) -> bool:
        """Answer one request; tells whether the connection stays open."""
        if not self.is_ready():
            return False
        self.rfile.begin()
        return bool(super().communicate())  # type: ignore[no-untyped-call]

    def is_ready(self) -> bool:
        """Shake hands where TLS is spoken and has not begun; tells whether requests may come."""
        context: ssl.SSLContext | None = self.server.tls
        if context is None or isinstance(self.socket, ssl.SSLSocket):
            return True
        try:
            if self.socket.recv(1, socket.MSG_PEEK) != HELLO:
                self.socket.sendall(ELSEWHERE.format(address=self.server.address).encode())
                return False
            self.socket = context.wrap_socket(
                self.socket, server_side=True, do_handshake_on_connect=False
            )
            self.socket.do_handshake()
        except OSError as trouble:
            trace.info("hand-shake with %s not done: %s", self.remote_addr, trouble)
            return False
        self.rfile = TimedReader(self.socket)
        self.wfile = StreamWriter(self.socket, "wb", self.wbufsize)
        return True

    def close(self) -> None:
        """Close the connection; one that the other side broke off is closed already."""
        with suppress(OSError):
            super().close()


class Listening(wsgi.Server):
    """One port with an application behind it, with or without TLS."""

    ConnectionClass = Connection

    def __init__(
        self,
        host: str,
        port: int,
        application: Application,
        tls: ssl.SSLContext | None = None,
        address: str = "",
    ) -> None:
        super().__init__(
            (host, port),
            application if tls is None else over_tls(application),
            numthreads=WORKERS,
            server_name="witnessmark",
            request_queue_size=128,
            timeout=SLOWEST,
            shutdown_timeout=2,
        )
        self.software = "witnessmark"
        self.tls = tls
        self.address = address
        self.max_request_header_size = 64 * 1024
        # Waiting connections cost no worker; a page of many small files keeps several open.
        self.keep_alive_conn_limit = 1000

    def process_conn(self, conn: Any) -> None:
        """Give a connection that has something to say to a worker; let a new one wait for that."""
        if conn.is_new:
            conn.is_new = False
            self.put_conn(conn)
        else:
            super().process_conn(conn)

    def error_log(self, msg: str = "", level: int = logging.INFO, traceback: bool = False) -> None:
        """Put what cheroot tells into the trace."""
        trace.log(level, "%s", msg, exc_info=traceback)

    def serve_aside(self) -> None:
        """Serve in a thread of its own until stopped."""
        Thread(target=self.serve, name=f"port {self.bind_addr[1]}", daemon=True).start()


def over_tls(application: Application) -> Application:
    """The application, told that its requests came over TLS."""

    def answer(environ: dict[str, Any], start: Callable[..., Any]) -> Iterable[bytes]:
        environ["wsgi.url_scheme"] = "https"
        environ["HTTPS"] = "on"
        return application(environ, start)

    return answer
