"""Power cuts, a full disk, a held database, six writers: nothing answered is ever lost."""

import os
import signal
import sqlite3
import subprocess
import sys
from collections.abc import Iterator
from contextlib import ExitStack, closing, contextmanager
from pathlib import Path

import pytest
from servers import Postgres
from witnessmark.errors import NoRoom, StoreBusy
from witnessmark.store import Bearer, Store, engine, open_store
from written import Clock, Writer, digest_of, offers

ROOT = Path(__file__).resolve().parents[2]
CHILD = Path(__file__).with_name("child_writer.py")
ENVIRONMENT = {**os.environ, "PYTHONPATH": f"{ROOT / 'server'}{os.pathsep}{ROOT / 'tests'}"}


@contextmanager
def writing_process(*words: object) -> Iterator["subprocess.Popen[str]"]:
    command = [sys.executable, str(CHILD), *map(str, words)]
    with subprocess.Popen(command, stdout=subprocess.PIPE, text=True, env=ENVIRONMENT) as child:
        try:
            yield child
        finally:
            child.kill()


def numbers(lines: list[str]) -> list[int]:
    return [int(word) for line in lines if line.endswith("\n") for word in line.split()]


def whole(store: Store) -> int:
    """Assert that the log has no hole and its figures are true; how many entries it has."""
    workshop = store.ensure_workshop()
    rows, after = list[tuple[int, str | None, str]](), 0
    while page := store.log(workshop, after, 5000).page.rows:
        rows += page
        after = page[-1][0]
    assert [row[0] for row in rows] == list(range(1, len(rows) + 1))
    assert store.rebuild().differences == []
    return len(rows)


@pytest.mark.parametrize(("when", "kept"), [("before", 40), ("after", 60)])
def test_a_kill_around_the_commit_keeps_all_of_a_push_or_nothing(
    tmp_path: Path, when: str, kept: int
) -> None:
    with writing_process(tmp_path, "-", "00000000d001", 9, when) as child:
        assert child.stdout
        answered = numbers(child.stdout.readlines())
        assert child.wait() == -signal.SIGKILL
    assert answered == list(range(1, 41))
    with closing(open_store(tmp_path)) as store:
        assert whole(store) == kept
        # The phone sends again what it has no answer for, and gets the numbers of the first time.
        writer = Writer("01c18537-0000-7000-8000-00000000d001")
        one = Bearer("phone", store.ensure_workshop(), None)
        again = store.sync(one, None, offers(*writer.entries(60)), 0)
        assert [answer.seq for answer in again.answers] == list(range(1, 61))  # type: ignore[union-attr]
        assert again.head.count == 60


@pytest.mark.parametrize("lines", [1, 4, 11, 23])
def test_a_kill_in_the_midst_of_pushing_loses_nothing_answered(tmp_path: Path, lines: int) -> None:
    with writing_process(tmp_path, "-", "00000000d001", 10_000) as child:
        assert child.stdout
        heard = [child.stdout.readline() for _ in range(lines)]
        child.kill()
        heard += child.stdout.readlines()
    with closing(open_store(tmp_path)) as store:
        answered = numbers(heard)
        assert whole(store) >= len(answered) >= lines * 20


def test_a_full_disk_keeps_what_was_answered_and_says_so(tmp_path: Path, clock: Clock) -> None:
    store = open_store(tmp_path, now_ms=clock)
    one = Bearer("phone", store.ensure_workshop(), None)
    writer = Writer()
    taken = store.sync(one, None, offers(*writer.entries(5)), 0)
    with store.engine.connect() as connection:
        pages = connection.exec_driver_sql("PRAGMA page_count").scalar_one()
    store.engine.dispose()
    limit = f"PRAGMA max_page_count={pages + 4}"
    engine.event.listen(store.engine, "connect", lambda dbapi, _: dbapi.execute(limit).close())
    big = [writer.entry(body={"text": "x" * 60_000}) for _ in range(3)]
    with pytest.raises(NoRoom):
        store.sync(one, None, offers(*big), 0)
    assert store.sync(one, taken.page.cursor, [], 10).head == taken.head
    store.close()
    with closing(open_store(tmp_path, now_ms=clock)) as roomy:
        assert roomy.sync(one, taken.page.cursor, offers(*big), 0).head.count == 8
        assert whole(roomy) == 8


def test_a_held_database_is_busy_for_writers_and_open_for_readers(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(engine, "PATIENCE_SECONDS", 0.05)
    with closing(open_store(tmp_path)) as store:
        one = Bearer("phone", store.ensure_workshop(), None)
        writer = Writer()
        store.sync(one, None, offers(writer.entry()), 0)
        with closing(sqlite3.connect(tmp_path / engine.FILE_NAME)) as holder:
            holder.execute("BEGIN IMMEDIATE")
            with pytest.raises(StoreBusy):
                store.sync(one, None, offers(writer.entry()), 0)
            assert len(store.sync(one, None, [], 10).page.rows) == 1
            holder.execute("ROLLBACK")
        assert store.sync(one, None, offers(writer.entry()), 0).head.count == 2


def test_every_commit_reaches_the_disk_before_the_answer(store: Store) -> None:
    if store.engine.dialect.name == "sqlite":
        with store.engine.connect() as connection:
            read = connection.exec_driver_sql
            assert read("PRAGMA journal_mode").scalar() == "wal"
            assert read("PRAGMA synchronous").scalar() == 2
            assert read("PRAGMA busy_timeout").scalar() == 10_000


def test_six_processes_write_one_workshop_and_a_reader_misses_nothing(
    tmp_path: Path, running_postgres: Postgres
) -> None:
    database = running_postgres.database()
    pushes, writers = 12, 6
    expected = pushes * writers * 20
    with closing(open_store(tmp_path, database)) as store, ExitStack() as children:
        one = Bearer("reader", store.ensure_workshop(), "2999-01-01T00:00:00Z")
        started = [
            children.enter_context(
                writing_process(tmp_path, database, f"00000000d00{number}", pushes)
            )
            for number in range(writers)
        ]
        seen: list[tuple[int, str | None, str]] = []
        cursor = None
        while len(seen) < expected:
            page = store.sync(one, cursor, [], 50).page
            seen += page.rows
            cursor = page.cursor
            assert page.rows or any(child.poll() is None for child in started)
        assert [row[0] for row in seen] == list(range(1, expected + 1))
        assert whole(store) == expected


def test_two_starts_at_once_make_one_workshop(tmp_path: Path) -> None:
    with ExitStack() as children:
        started = [
            children.enter_context(writing_process(tmp_path, "-", f"00000000d00{number}", 2))
            for number in range(3)
        ]
        heard = [numbers(child.stdout.readlines()) for child in started if child.stdout]
    assert sorted(number for some in heard for number in some) == list(range(1, 121))


def test_the_digest_kept_up_is_the_digest_of_the_log(
    store: Store, one: Bearer, writer: Writer
) -> None:
    entries = writer.entries(30)
    for start in range(0, 30, 7):
        synced = store.sync(one, None, offers(*entries[start : start + 7]), 0)
    assert synced.head.digest == digest_of([(entry, None) for entry in entries])
