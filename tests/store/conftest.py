"""A store on SQLite and, for the same test again, on PostgreSQL."""

from collections.abc import Iterator
from pathlib import Path

import pytest
from servers import Postgres, postgres
from witnessmark.store import Bearer, Store, open_store
from written import Clock, Writer


@pytest.fixture(scope="session")
def running_postgres() -> Iterator[Postgres]:
    """One server for all tests."""
    with postgres() as server:
        yield server


@pytest.fixture(params=["sqlite", "postgresql"])
def database(request: pytest.FixtureRequest) -> str | None:
    """The URL to open; None for the file in the data folder."""
    if request.param == "sqlite":
        return None
    server: Postgres = request.getfixturevalue("running_postgres")
    return server.database()


@pytest.fixture
def clock() -> Clock:
    """The server's clock."""
    return Clock()


@pytest.fixture
def store(tmp_path: Path, database: str | None, clock: Clock) -> Iterator[Store]:
    """An open store with its workshop."""
    opened = open_store(tmp_path / "data", database, now_ms=clock)
    opened.ensure_workshop()
    yield opened
    opened.close()


@pytest.fixture
def one(store: Store) -> Bearer:
    """A paired phone."""
    return store.bearer(store.pair(store.pairing_code().code, "bench phone").key)


@pytest.fixture
def writer() -> Writer:
    """What the phone writes."""
    return Writer()
