"""What the HTTP server says by itself, before the app is asked: a problem document as well."""

import json
from http import HTTPStatus

from cheroot import server as cheroot_server

from witnessmark.api.problems import PROBLEM, document
from witnessmark.errors import NotJson, RequestProblem, StoreBusy, TooMuch

_LENGTH = "Content-Length"


class Request(cheroot_server.HTTPRequest):
    """A request whose faults of HTTP are answered like all others."""

    def simple_response(self, status: str, msg: str = "") -> None:
        """Answer that the request cannot be read, and end the connection."""
        number = int(str(status)[:3])
        body = json.dumps(document(_fault(number, msg), number)).encode()
        head = (
            f"{self.server.protocol} {number} {HTTPStatus(number).phrase}\r\n"
            f"Content-Length: {len(body)}\r\nContent-Type: {PROBLEM}\r\nConnection: close\r\n\r\n"
        )
        self.close_connection = True
        try:
            self.conn.wfile.write(head.encode("latin-1") + body)
        except OSError as trouble:
            self.server.error_log(f"nobody hears that the request is not read: {trouble}")


def _fault(number: int, says: str) -> RequestProblem:
    if number in {HTTPStatus.REQUEST_ENTITY_TOO_LARGE, HTTPStatus.REQUEST_URI_TOO_LONG}:
        return TooMuch(trouble="its address or its head is too long")
    if number == HTTPStatus.SERVICE_UNAVAILABLE:
        return StoreBusy()
    return NotJson(trouble="its length is no number") if _LENGTH in says else RequestProblem()
