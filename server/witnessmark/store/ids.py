"""Names nobody can guess or make twice: ids, device keys, moments as text."""

import hashlib
import secrets
from datetime import UTC, datetime, timedelta

from witnessmark.log.ids import uuid7


def fresh_id(now_ms: int) -> str:
    """An id that nobody has made before."""
    return uuid7(now_ms, secrets.token_bytes(10))


def device_key() -> str:
    """256 random bits as text for an Authorization header."""
    return secrets.token_urlsafe(32)


def key_hash(key: str) -> str:
    """What is stored of a key; a random key of 256 bits needs no salt."""
    return hashlib.sha256(key.encode("utf-8", "surrogatepass")).hexdigest()


def moment(now_ms: int, *, fine: bool = False) -> str:
    """RFC 3339 in UTC, to the second or to the millisecond."""
    time = datetime.fromtimestamp(0, UTC) + timedelta(milliseconds=now_ms)
    text = time.isoformat(timespec="milliseconds" if fine else "seconds")
    return text.replace("+00:00", "Z")
