"""What a server is started with."""

from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

_HOUSE = Path(__file__).resolve().parents[3]


@dataclass(frozen=True, slots=True)
class Config:
    """Where the records lie, what is served, and by which clock."""

    data: Path
    database: str | None = None
    demo: bool = False
    address: str = ""  # where this server is reached
    label_address: str = ""  # what labels carry, also when the server is reached another way
    pages: Path = _HOUSE / "pwa"
    demo_files: Path = _HOUSE / "fixtures" / "demo"
    now_ms: Callable[[], int] | None = None
