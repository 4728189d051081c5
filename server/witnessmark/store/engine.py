"""How a database is opened: SQLite made durable and patient, PostgreSQL given the same habits."""

import errno
import sqlite3
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

from sqlalchemy import Connection, Engine, create_engine, event
from sqlalchemy.exc import OperationalError
from sqlalchemy.exc import TimeoutError as PoolTimeout
from sqlalchemy.pool import QueuePool

from witnessmark.errors import NoRoom, StoreBusy

PATIENCE_SECONDS = 10
FILE_NAME = "witnessmark.sqlite"
# SQLSTATEs of PostgreSQL: lock not available, deadlock, serialization, too many connections, full.
BUSY_STATES = {"55P03", "40P01", "40001", "53300", "57P03"}
FULL_STATES = {"53100", "53000"}
FULL_NUMBERS = {errno.ENOSPC, errno.EFBIG, errno.EDQUOT}


def database_url(data: Path, database: str | None) -> str:
    """The URL to open: the named database, else the file in the data folder."""
    return database or f"sqlite:///{(data / FILE_NAME).as_posix()}"


def engine_options(url: str) -> dict[str, Any]:
    """What create_engine is given besides the URL; flask-sqlalchemy gets the same."""
    if url.startswith("sqlite"):
        arguments: dict[str, Any] = {"timeout": PATIENCE_SECONDS, "check_same_thread": False}
    else:
        patience = PATIENCE_SECONDS * 1000
        arguments = {"options": f"-c lock_timeout={patience}", "connect_timeout": PATIENCE_SECONDS}
    return {
        "poolclass": QueuePool,
        "pool_size": 16,
        "max_overflow": 16,
        "pool_timeout": PATIENCE_SECONDS,
        "connect_args": arguments,
    }


def open_engine(url: str) -> Engine:
    """An engine with its habits; nothing is connected yet."""
    return with_habits(create_engine(url, **engine_options(url)))


def with_habits(engine: Engine) -> Engine:
    """Give an engine what SQLite needs to outlive a power cut and to wait its turn."""
    if engine.dialect.name == "sqlite":
        event.listen(engine, "connect", _on_connect)
        event.listen(engine, "begin", _on_begin)
    return engine


def _on_connect(connection: sqlite3.Connection, _record: object) -> None:
    # The driver must not begin by itself: a read that turns into a write fails at once in SQLite,
    # whatever the time-out, so writers say BEGIN IMMEDIATE (see _on_begin).
    connection.isolation_level = None
    for pragma in (
        f"busy_timeout={PATIENCE_SECONDS * 1000}",
        "journal_mode=WAL",
        "synchronous=FULL",
        "foreign_keys=ON",
    ):
        connection.execute(f"PRAGMA {pragma}").close()


def _on_begin(connection: Connection) -> None:
    writes = connection.get_execution_options().get("writes", False)
    connection.exec_driver_sql("BEGIN IMMEDIATE" if writes else "BEGIN")


@contextmanager
def reading(engine: Engine) -> Iterator[Connection]:
    """A transaction that sees one snapshot and writes nothing."""
    options: dict[str, Any] = {}
    if engine.dialect.name == "postgresql":
        options = {"isolation_level": "REPEATABLE READ", "postgresql_readonly": True}
    with named_faults(), engine.execution_options(**options).begin() as connection:
        yield connection


@contextmanager
def writing(engine: Engine) -> Iterator[Connection]:
    """A transaction that writes: it holds SQLite's write lock from the start."""
    with named_faults(), engine.execution_options(writes=True).begin() as connection:
        yield connection


@contextmanager
def named_faults() -> Iterator[None]:
    """Turn a busy or full database into the error a person can act on; let the rest through."""
    try:
        yield
    except PoolTimeout as fault:
        raise StoreBusy from fault
    except OSError as fault:
        if fault.errno in FULL_NUMBERS:
            raise NoRoom from fault
        raise
    except OperationalError as fault:
        if _full(fault.orig):
            raise NoRoom from fault
        if _busy(fault.orig):
            raise StoreBusy from fault
        raise


def _full(fault: BaseException | None) -> bool:
    if isinstance(fault, sqlite3.Error):
        # A quota or a file-size limit shows as a failed write rather than as a full disk.
        return fault.sqlite_errorcode in {sqlite3.SQLITE_FULL, sqlite3.SQLITE_IOERR_WRITE}
    return getattr(fault, "sqlstate", None) in FULL_STATES


def _busy(fault: BaseException | None) -> bool:
    if isinstance(fault, sqlite3.Error):
        return fault.sqlite_errorcode & 0xFF in {sqlite3.SQLITE_BUSY, sqlite3.SQLITE_LOCKED}
    return getattr(fault, "sqlstate", None) in BUSY_STATES
