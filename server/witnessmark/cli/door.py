"""The ways into the workshop: which ports, which address, with what trust."""

import ssl
from argparse import Namespace
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from urllib.parse import urlsplit

from witnessmark.cli.arguments import PORT
from witnessmark.cli.errors import AddressNotRead
from witnessmark.cli.ports import LOOPBACK, everywhere, first_free_port, free_port
from witnessmark.trust import addresses
from witnessmark.trust.addresses import host_of
from witnessmark.trust.announce import Announcement, is_taken
from witnessmark.trust.authority import kept_authority, now_utc
from witnessmark.trust.contact import Contact
from witnessmark.trust.folder import trust_folder, write_whole
from witnessmark.trust.keeper import Keeper, Outside
from witnessmark.trust.leaf import first_name, server_context
from witnessmark.trust.names import kept_name


@dataclass(frozen=True, slots=True)
class Door:
    """Where the workshop is reached, and what stands in the door."""

    host: str
    port: int
    address: str
    label_address: str
    tls: ssl.SSLContext | None = None
    keeper: Keeper | None = None
    contact: Callable[[], Contact] | None = None
    contact_port: int = 0
    desk_port: int | None = None


def _name(wished: Namespace, data: Path) -> str:
    """The computer's name; the network is asked only when one must be chosen."""
    return kept_name(trust_folder(data), wished.name, is_taken)


def open_door(wished: Namespace, data: Path) -> Door:
    """The door that was asked for."""
    if wished.localhost:
        return _loopback(wished, data, None)
    if wished.behind_proxy is not None:
        return _loopback(wished, data, _outer(wished.behind_proxy))
    if wished.cert is not None:
        return _own_certificate(wished, data)
    return _own_authority(wished, data)


def _outer(address: str) -> str:
    """The address a proxy gives to the outside."""
    parts = urlsplit(address)
    if parts.scheme not in {"http", "https"} or not parts.hostname or parts.path.strip("/"):
        raise AddressNotRead(address=address)
    return f"{parts.scheme}://{parts.netloc}"


def _loopback(wished: Namespace, data: Path, outer: str | None) -> Door:
    """Plain HTTP that only this computer can reach."""
    port = free_port(LOOPBACK, wished.port)
    name = kept_name(trust_folder(data), wished.name)
    label = outer or f"https://{name}.local:{PORT}"
    return Door(LOOPBACK, port, outer or f"http://{LOOPBACK}:{port}", label)


def _own_certificate(wished: Namespace, data: Path) -> Door:
    """TLS with a certificate that the owner brought."""
    tls = server_context(wished.cert, wished.key)
    host = everywhere()
    port = free_port(host, wished.port)
    named = None if wished.name else first_name(wished.cert)
    address = f"https://{named or _name(wished, data) + '.local'}:{port}"
    return Door(host, port, address, address, tls=tls)


def _own_authority(wished: Namespace, data: Path) -> Door:
    """TLS with the workshop's own authority, its name announced, first contact explained."""
    host = everywhere()
    port = free_port(host, wished.port)
    folder = trust_folder(data)
    name = _name(wished, data)
    authority = kept_authority(folder, name, now_utc())
    write_whole(folder.path / "ca.pem", authority.pem)
    outside = Outside(now_utc, lambda: addresses.at_home(addresses.found()))
    keeper = Keeper(folder, authority, name, outside, Announcement(name, port))
    address = f"https://{name}.local:{port}"

    def contact() -> Contact:
        found = (item for item in outside.addresses() if not item.is_link_local)
        return Contact(
            authority, address, tuple(f"https://{host_of(item)}:{port}" for item in found)
        )

    contact_port = first_free_port(host, wished.contact_port) or free_port(host, 0)
    desk = first_free_port(LOOPBACK, port - 1) if port > 1 else None
    return Door(
        host, port, address, address, keeper.context, keeper, contact, contact_port, desk
    )  # fmt: skip
