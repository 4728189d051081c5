"""Finding out whether a port can be had, before anything else is begun."""

import errno
import socket

from witnessmark.cli.errors import PortNotAllowed, PortTaken

LOOPBACK = "127.0.0.1"


def everywhere() -> str:
    """The address that means all of this computer's, both kinds where the system has both."""
    return "::" if socket.has_dualstack_ipv6() else "0.0.0.0"  # noqa: S104  # phones come from outside


def free_port(host: str, port: int) -> int:
    """The port itself if it is free there; a free one for 0.

    raises: PortTaken, PortNotAllowed.
    """
    family = socket.AF_INET6 if ":" in host else socket.AF_INET
    try:
        with socket.create_server(
            (host, port), family=family, dualstack_ipv6=family == socket.AF_INET6
        ) as trial:
            found: int = trial.getsockname()[1]
            return found
    except OSError as trouble:
        if trouble.errno in {errno.EACCES, errno.EPERM}:
            raise PortNotAllowed(port=port) from trouble
        raise PortTaken(port=port) from trouble


def first_free_port(host: str, port: int) -> int | None:
    """The port if it is free there, else nothing: for doors that are a convenience."""
    try:
        return free_port(host, port)
    except (PortTaken, PortNotAllowed):
        return None
