"""Ids of entries and things: UUID version 7, lower case, made on the device."""

from __future__ import annotations

import re
from dataclasses import dataclass

from witnessmark.errors import TimeBeyond

MOST_MS = 2**48 - 1
UUID7 = re.compile(r"[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}")


@dataclass(frozen=True, slots=True)
class IdFacts:
    """What can be read off a UUID; the moment only means something in version 7."""

    unix_ms: int
    version: int
    variant: int


def uuid7(unix_ms: int, random: bytes) -> str:
    """An id from a moment in milliseconds and ten random bytes, six bits of which are unused.

    raises: TimeBeyond when the moment does not fit 48 bits.
    source: RFC 9562, section 5.7
    """
    if not 0 <= unix_ms <= MOST_MS:
        raise TimeBeyond(ms=unix_ms)
    above = 0x7000 | int.from_bytes(random[:2], "big") & 0x0FFF
    below = 0x8000 << 48 | int.from_bytes(random[2:10], "big") & (1 << 62) - 1
    digits = f"{unix_ms:012x}{above:04x}{below:016x}"
    return "-".join((digits[:8], digits[8:12], digits[12:16], digits[16:20], digits[20:]))


def is_uuid7(text: str) -> bool:
    """Whether this is a UUID of version 7 written in lower case.

    source: RFC 9562, sections 4 and 5.7
    """
    return UUID7.fullmatch(text) is not None


def id_facts(text: str) -> IdFacts:
    """Moment, version and variant of a UUID of any case.

    source: RFC 9562, sections 4.1, 4.2 and 5.7
    """
    digits = text.replace("-", "")
    return IdFacts(int(digits[:12], 16), int(digits[12], 16), int(digits[16], 16) >> 2)
