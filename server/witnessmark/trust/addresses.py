"""The addresses under which other devices at home can reach this computer."""

from collections.abc import Iterable
from ipaddress import IPv4Address, IPv4Network, IPv6Address, IPv6Network, ip_address

import ifaddr

Address = IPv4Address | IPv6Address
Network = IPv4Network | IPv6Network

# Private and link-local ranges and loopback: the authority may vouch for these and no others
# (RFC 1918, RFC 3927, RFC 4193, RFC 4291).
HOME: tuple[Network, ...] = (
    IPv4Network("10.0.0.0/8"),
    IPv4Network("172.16.0.0/12"),
    IPv4Network("192.168.0.0/16"),
    IPv4Network("169.254.0.0/16"),
    IPv4Network("127.0.0.0/8"),
    IPv6Network("fc00::/7"),
    IPv6Network("fe80::/10"),
    IPv6Network("::1/128"),
)
LOOPBACK: tuple[Address, ...] = (IPv4Address("127.0.0.1"), IPv6Address("::1"))


def is_at_home(address: Address) -> bool:
    """Whether the address lies in a range that the authority may vouch for."""
    return any(address in network for network in HOME)


def found() -> list[Address]:
    """Every address of this computer's adapters."""
    texts = [
        ip.ip if isinstance(ip.ip, str) else ip.ip[0]
        for adapter in ifaddr.get_adapters()
        for ip in adapter.ips
    ]
    return [ip_address(text.partition("%")[0]) for text in texts]


def at_home(addresses: Iterable[Address]) -> tuple[Address, ...]:
    """The addresses a phone may use, in a fixed order, loopback left out."""
    kept = {address for address in addresses if is_at_home(address) and not address.is_loopback}
    return tuple(
        sorted(kept, key=lambda address: (address.version, address.is_link_local, address))
    )


def host_of(address: Address) -> str:
    """The address as it stands in a link."""
    return f"[{address}]" if isinstance(address, IPv6Address) else str(address)
