"""Opening a store: the folder, the database, its tables, and an answer when one is not fit."""

import os
from collections.abc import Callable
from pathlib import Path

from sqlalchemy import Engine, make_url
from sqlalchemy.exc import ArgumentError, DBAPIError

from witnessmark.store.engine import database_url, named_faults, open_engine, with_habits, writing
from witnessmark.store.errors import DatabaseNotFit, FolderNotFit
from witnessmark.store.migrating import migrated
from witnessmark.store.opened import Store, clock_ms


def open_store(
    data: Path, database: str | None = None, *, now_ms: Callable[[], int] | None = None
) -> Store:
    """The store of a data folder, made at the first use, with its tables up to date.

    raises: FolderNotFit, DatabaseNotFit, NoRoom, StoreBusy
    """
    made_folder(data)
    try:
        engine = open_engine(str_url(database_url(data, database)))
    except (ArgumentError, ImportError) as fault:
        raise DatabaseNotFit(trouble="its address is not understood") from fault
    return Store(ready(engine), data, now_ms or clock_ms)


def adopted(engine: Engine, data: Path, now_ms: Callable[[], int] | None = None) -> Store:
    """A store on an engine that somebody else has made (flask-sqlalchemy, for the server)."""
    return Store(ready(with_habits(engine)), data, now_ms or clock_ms)


def ready(engine: Engine) -> Engine:
    """The engine, once its database answers and has the newest tables."""
    try:
        with writing(engine) as connection:
            # Two processes may start at once: the second waits here and then finds all done.
            if engine.dialect.name == "postgresql":
                connection.exec_driver_sql("SELECT pg_advisory_xact_lock(7733512)")
            migrated(connection)
    except DBAPIError as fault:
        raise DatabaseNotFit(trouble=str(fault.orig).splitlines()[0]) from fault
    return engine


def made_folder(data: Path) -> None:
    """The data folder, readable by its owner only.

    raises: FolderNotFit, NoRoom
    """
    try:
        with named_faults():
            (data / "photos").mkdir(mode=0o700, parents=True, exist_ok=True)
    except OSError as fault:
        raise FolderNotFit(folder=data) from fault
    if not os.access(data, os.W_OK | os.X_OK):
        raise FolderNotFit(folder=data)


def str_url(url: str) -> str:
    """The URL as SQLAlchemy reads it.

    raises: ArgumentError
    """
    return make_url(url).render_as_string(hide_password=False)
