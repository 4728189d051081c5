"""PostgreSQL on loopback in a folder of its own, started by the tests that need it."""

import os
import shutil
import socket
import subprocess
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from itertools import count
from pathlib import Path

import psycopg
from tools import postgres_bin

# Nothing here has to outlive a power cut, and a test should not wait for the disk.
SPEEDY = ("fsync=off", "synchronous_commit=off", "full_page_writes=off")


@dataclass
class Postgres:
    """A running server; each test takes a database of its own."""

    port: int
    numbers: Iterator[int] = field(default_factory=lambda: count(1))

    def database(self) -> str:
        """The URL of a fresh, empty database."""
        name = f"workshop{next(self.numbers)}"
        where = f"host=127.0.0.1 port={self.port} user=owner dbname=postgres"
        with psycopg.connect(where, autocommit=True) as connection:
            connection.execute(f"CREATE DATABASE {name} TEMPLATE template0")
        return f"postgresql+psycopg://owner@127.0.0.1:{self.port}/{name}"


@contextmanager
def postgres() -> Iterator[Postgres]:
    """A server for as long as the block lasts. It refuses root, so root hands it to a lesser."""
    programs = postgres_bin()
    home = Path(tempfile.mkdtemp(prefix="postgres-"))
    try:
        as_owner = _lesser(home)
        data, port = home / "data", free_port()
        _run([*as_owner, programs / "initdb", "-D", data, "-U", "owner", "-A", "trust", "-N"])
        options = [word for setting in SPEEDY for word in ("-c", setting)]
        options += ["-c", "listen_addresses=127.0.0.1", "-p", str(port)]
        options += ["-c", f"unix_socket_directories={home}"]
        control = [*as_owner, programs / "pg_ctl", "-D", data, "-w", "-l", home / "trace"]
        _run([*control, "-o", " ".join(options), "start"])
        try:
            yield Postgres(port)
        finally:
            _run([*control, "-m", "immediate", "stop"])
    finally:
        shutil.rmtree(home, ignore_errors=True)


def _lesser(home: Path) -> list[str]:
    if os.name != "posix" or os.geteuid() != 0:
        return []
    shutil.chown(home, "postgres")
    return ["setpriv", "--reuid=postgres", "--regid=postgres", "--clear-groups", "--"]


def _run(command: list[str | Path]) -> None:
    done = subprocess.run(
        list(map(str, command)), capture_output=True, text=True, check=False, cwd="/"
    )
    assert done.returncode == 0, done.stdout + done.stderr


def free_port() -> int:
    """A port of loopback that nobody uses now."""
    with socket.socket() as one:
        one.bind(("127.0.0.1", 0))
        return int(one.getsockname()[1])
