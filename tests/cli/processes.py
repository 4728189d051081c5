"""Commands as a person starts them: real processes, their ends and what they said."""

import socket
import subprocess
import sys
from dataclasses import dataclass
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]


@dataclass(frozen=True, slots=True)
class Ended:
    """How a command ended."""

    number: int
    out: str
    err: str


def run(*words: object) -> Ended:
    """Run `python3 server WORDS` to its end."""
    done = subprocess.run(
        [sys.executable, "server", *map(str, words)],
        cwd=ROOT, capture_output=True, text=True, check=False, timeout=120,
    )  # fmt: skip
    return Ended(done.returncode, done.stdout, done.stderr)


def free_port() -> int:
    """A port nobody has at the moment."""
    with socket.create_server(("127.0.0.1", 0)) as trial:
        port: int = trial.getsockname()[1]
        return port
