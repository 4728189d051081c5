"""Backup, restore, export, import: what leaves the computer comes back as it was."""

import hashlib
import json
import zipfile
from pathlib import Path

import pytest
from servers import Postgres
from sqlalchemy import select
from witnessmark.errors import PhotoUnknown
from witnessmark.log.stamp import write_stamp
from witnessmark.store import Bearer, Store, open_store, restore, tables
from witnessmark.store.errors import FileNotWritten, FileUnreadable, FolderNotEmpty
from written import Clock, Writer, offers

PICTURE = b"\xff\xd8\xff\xe0" + b"a bearing shell" * 50
SHA = hashlib.sha256(PICTURE).hexdigest()


def filled(store: Store, one: Bearer, writer: Writer, clock: Clock) -> None:
    entries = writer.entries(5)
    entries[3]["stamp"] = write_stamp(clock.ms + 10_000_000)
    store.sync(one, None, offers(*entries), 0)
    store.keep_photo(one.workshop, SHA, PICTURE)
    store.set_setting("address", "https://bokal.local:8443")
    trust = store.data / "trust"
    trust.mkdir(exist_ok=True)
    (trust / "ca-key.pem").write_text("a key")


@pytest.fixture
def fresh(tmp_path: Path, database: str | None, request: pytest.FixtureRequest) -> str | None:
    """Another empty database of the same sort."""
    if database is None:
        return None
    server: Postgres = request.getfixturevalue("running_postgres")
    return server.database()


def test_a_backup_comes_back_number_for_number(
    store: Store, one: Bearer, writer: Writer, clock: Clock, *, tmp_path: Path, fresh: str | None
) -> None:
    filled(store, one, writer, clock)
    before = store.sync(one, None, [], 5000)
    assert store.backup(tmp_path / "copy.zip").entries == 5
    back = restore(tmp_path / "copy.zip", tmp_path / "new", fresh)
    assert (back.entries, back.photos, back.devices) == (5, 1, 2)
    other = open_store(tmp_path / "new", fresh, now_ms=clock)
    after = other.sync(one, before.page.cursor, [], 5000)
    assert other.sync(one, None, [], 5000).page == before.page
    assert (after.head.digest, after.head.count) == (before.head.digest, 5)
    assert other.devices() == store.devices()
    assert other.setting("address") == "https://bokal.local:8443"
    assert other.photo(one.workshop, SHA).file.read_bytes() == PICTURE
    assert (tmp_path / "new" / "trust" / "ca-key.pem").read_text() == "a key"
    assert (tmp_path / "new" / "trust" / "ca-key.pem").stat().st_mode & 0o777 == 0o600
    with other.engine.connect() as connection:
        carriers = connection.execute(select(tables.entry.c.carrier)).scalars().all()
    assert carriers == [one.device] * 5
    assert other.rebuild().differences == []
    other.close()


def test_a_backup_is_only_brought_back_into_an_empty_folder(store: Store, tmp_path: Path) -> None:
    store.backup(tmp_path / "copy.zip")
    (tmp_path / "full").mkdir()
    (tmp_path / "full" / "letter.txt").write_text("mine")
    with pytest.raises(FolderNotEmpty):
        restore(tmp_path / "copy.zip", tmp_path / "full")
    assert [found.name for found in (tmp_path / "full").iterdir()] == ["letter.txt"]


@pytest.mark.parametrize("spoilt", ["cut", "text", "gap", "no-log", "missing"])
def test_a_spoilt_backup_leaves_the_folder_as_empty_as_it_was(
    store: Store, one: Bearer, writer: Writer, *, tmp_path: Path, spoilt: str, fresh: str | None
) -> None:
    store.sync(one, None, offers(*writer.entries(3)), 0)
    copy = tmp_path / "copy.zip"
    store.backup(copy)
    if spoilt == "cut":
        copy.write_bytes(copy.read_bytes()[:-40])
    elif spoilt == "text":
        copy.write_text("no copy")
    elif spoilt == "missing":
        copy.unlink()
    else:
        with zipfile.ZipFile(copy) as old:
            kept = {name: old.read(name) for name in old.namelist()}
        lines = kept.pop("log.jsonl").splitlines(keepends=True)
        with zipfile.ZipFile(copy, "w") as new:
            for name, raw in kept.items():
                new.writestr(name, raw)
            if spoilt == "gap":
                new.writestr("log.jsonl", lines[0] + lines[2])
    with pytest.raises(FileUnreadable):
        restore(copy, tmp_path / "new", fresh)
    assert not (tmp_path / "new").is_dir() or not any((tmp_path / "new").iterdir())


def test_an_export_is_json_lines_and_photos(
    store: Store, one: Bearer, writer: Writer, clock: Clock, tmp_path: Path
) -> None:
    filled(store, one, writer, clock)
    store.export_(tmp_path / "export.zip")
    with zipfile.ZipFile(tmp_path / "export.zip") as found:
        assert sorted(found.namelist()) == ["log.jsonl", f"photos/{SHA}"]
        assert found.read(f"photos/{SHA}") == PICTURE
        lines = [json.loads(line) for line in found.read("log.jsonl").splitlines()]
    assert [line["seq"] for line in lines] == [1, 2, 3, 4, 5]
    assert [sorted(line) for line in lines][2:4] == [["entry", "seq"], ["entry", "order", "seq"]]


def test_a_copy_that_cannot_be_written_leaves_nothing(store: Store, tmp_path: Path) -> None:
    with pytest.raises(FileNotWritten):
        store.export_(tmp_path / "nowhere" / "export.zip")
    assert not (tmp_path / "nowhere").exists()


def test_an_import_goes_by_the_rules_of_a_sync(
    store: Store, one: Bearer, writer: Writer, clock: Clock, *, tmp_path: Path, fresh: str | None
) -> None:
    filled(store, one, writer, clock)
    store.export_(tmp_path / "export.zip")
    other = open_store(tmp_path / "new", fresh, now_ms=clock)
    done = other.import_(tmp_path / "export.zip")
    assert (done.taken, done.had, done.photos, done.refused) == (5, 0, 1, [])
    again = other.import_(tmp_path / "export.zip")
    assert (again.taken, again.had, again.photos) == (0, 5, 0)
    theirs = other.sync(one.__class__(one.device, other.ensure_workshop(), None), None, [], 0)
    assert theirs.head.digest == store.sync(one, None, [], 0).head.digest
    other.close()


def test_a_line_nobody_can_read_does_not_stop_an_import(
    store: Store, writer: Writer, tmp_path: Path
) -> None:
    good = json.dumps(writer.entry())
    lines = ["{", good, "[]", json.dumps({**writer.entry(), "n": 1.5}), "", good]
    (tmp_path / "lines.jsonl").write_text("\n".join(lines))
    done = store.import_(tmp_path / "lines.jsonl")
    assert (done.taken, done.had) == (1, 1)
    told = [(refused.line, refused.code) for refused in done.refused]
    assert told == [(1, "not-json"), (3, "not-an-object"), (4, "number-not-whole")]


@pytest.mark.parametrize("text", ["name,torque\nM8,25\n", "{\n}\n", '{"n": 1}\n{"n": 2}', "\0\xff"])
def test_a_file_that_is_no_log_is_named_in_one_sentence(
    store: Store, tmp_path: Path, text: str
) -> None:
    (tmp_path / "table.csv").write_text(text)
    with pytest.raises(FileUnreadable) as told:
        store.import_(tmp_path / "table.csv")
    assert "table.csv" in told.value.sentence


def test_a_log_without_entries_is_taken(store: Store, tmp_path: Path) -> None:
    store.export_(tmp_path / "empty.zip")
    assert store.import_(tmp_path / "empty.zip").taken == 0


def test_invented_entries_stay_out_of_a_real_workshop_and_are_counted(
    store: Store, writer: Writer, tmp_path: Path, fresh: str | None
) -> None:
    part = writer.part("rocker", invented=True)
    joint = writer.entry("joint", body={"fields": {"programme": _invented_programme()}})
    note = writer.entry("note", part["about"], body={"text": "about an invented part"})
    entries = [
        part,
        joint,
        note,
        writer.entry("label", "7K3MQ2RJ", body={"marks": part["about"]}),
        writer.strike(note["id"]),
        writer.entry(),
    ]
    (tmp_path / "demo.jsonl").write_text("\n".join(map(json.dumps, entries)))
    done = store.import_(tmp_path / "demo.jsonl")
    assert (done.taken, done.invented, done.refused) == (1, 5, [])
    demo = open_store(tmp_path / "demo", fresh)
    assert demo.import_(tmp_path / "demo.jsonl", demo=True).taken == 6
    assert demo.import_(tmp_path / "demo.jsonl").invented == 0
    demo.close()


def _invented_programme() -> dict[str, object]:
    return {"invented": True, "passes": [], "lubricant": "oil", "source": None}


def test_a_photo_is_only_seen_in_its_own_workshop(store: Store, one: Bearer) -> None:
    assert store.keep_photo(one.workshop, SHA, PICTURE)
    assert not store.keep_photo(one.workshop, SHA, PICTURE)
    assert store.missing_photos(one.workshop, [SHA, "0" * 64, SHA]) == ["0" * 64]
    assert store.missing_photos("another", [SHA]) == [SHA]
    with pytest.raises(PhotoUnknown):
        store.photo("another", SHA)
    store.photo(one.workshop, SHA).file.unlink()
    assert store.missing_photos(one.workshop, [SHA]) == [SHA]
    assert not store.keep_photo(one.workshop, SHA, PICTURE)
    assert store.photo(one.workshop, SHA).file.read_bytes() == PICTURE


def test_the_computer_is_a_device_of_its_own_and_stamps_above_the_log(
    store: Store, one: Bearer, writer: Writer, clock: Clock
) -> None:
    ahead = {**writer.entry(), "stamp": write_stamp(clock.ms + 500_000)}
    store.sync(one, None, offers(ahead), 0)
    assert store.append_own("note", "a part", {"text": "from the desk"}) == 2
    row = store.sync(one, None, [], 10).page.rows[1]
    made = json.loads(row[2])
    assert (made["n"], made["stamp"] > ahead["stamp"], row[1]) == (1, True, None)
    assert next(d for d in store.devices() if d.own).highest == 1


def test_no_code_is_printed_twice(store: Store, monkeypatch: pytest.MonkeyPatch) -> None:
    codes = store.fresh_codes(20)
    assert len(set(codes)) == 20
    store.record_sheet(codes, {"preset": "a4-3x8"})
    signs = iter(codes[0][:7] + codes[1][:7] + "0000000")
    monkeypatch.setattr("witnessmark.store.own.secrets.choice", lambda _: next(signs))
    assert store.fresh_codes(1) == ["00000000"]
