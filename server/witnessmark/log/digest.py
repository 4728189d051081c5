"""Digests by which a phone and the computer see that both hold the same entries."""

from __future__ import annotations

from collections.abc import Iterable
from hashlib import sha256

MODULUS = 1 << 256


def digest(text: str, order: str | None = None) -> int:
    """SHA-256 of an entry's canonical text, a line feed, and its order if it has one.

    source: FIPS 180-4 for the hash; the layout is ours
    """
    end = f"\n{order}".encode() if order else b"\n"
    return int.from_bytes(sha256(text.encode() + end).digest(), "big")


def added(total: int, more: Iterable[int]) -> int:
    """Digest of a set after more entries: the sum modulo 2^256, whatever their order.

    source: definition
    """
    return (total + sum(more)) % MODULUS


def as_hex(total: int) -> str:
    """A digest as 64 lower-case hex digits.

    source: definition
    """
    return f"{total:064x}"
