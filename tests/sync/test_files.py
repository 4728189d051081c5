"""What a phone saves to a file, the computer takes in; and after a restore their numbers agree."""

import base64
import json
import shutil
import zipfile
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
from garage import Garage, garage
from playwright.sync_api import Browser, Page
from pwa.bare import bare_page
from sync.evening import come_home, exported, keep, pair
from sync.proxy import line_to

SAVED = """async () => {
  const bytes = new Uint8Array(await (await window.store.saveToFile()).arrayBuffer());
  let text = '';
  for (const byte of bytes) text += String.fromCharCode(byte);
  return btoa(text);
}"""
PHOTO = """async () => {
  const bytes = new Uint8Array([255, 216, 255, 1, 2, 3]);
  const photo = await window.store.keepPhoto(new Blob([bytes], { type: 'image/jpeg' }));
  await window.store.keep([{ heading: 'photo', about: 'joint-1', body: { photo } }]);
  return photo;
}"""


@pytest.fixture
def computer(tmp_path: Path) -> Iterator[Garage]:
    with garage(tmp_path / "data") as found:
        yield found


@pytest.fixture
def phone(chrome: Browser, computer: Garage) -> Iterator[Page]:
    with line_to(computer.address) as (_, address):
        context = chrome.new_context()
        page = bare_page(context, address)
        pair(page, computer)
        yield page
        context.close()


def saved(page: Page, to: Path) -> Path:
    to.write_bytes(base64.b64decode(page.evaluate(SAVED)))
    return to


def entries(rows: list[tuple[int, str | None, str]]) -> dict[str, Any]:
    return {entry["id"]: entry for entry in (json.loads(text) for _, _, text in rows)}


def test_a_phones_own_file_is_taken_in_by_another_computer_with_its_photo(
    computer: Garage, phone: Page, tmp_path: Path
) -> None:
    kept = keep(phone, 5, "home")
    come_home(phone)
    phone.context.set_offline(True)
    kept += keep(phone, 3, "waiting")
    sha = phone.evaluate(PHOTO)
    file = saved(phone, tmp_path / "phone.zip")
    assert zipfile.ZipFile(file).testzip() is None
    other = Garage(tmp_path / "other")
    told = other.command("import", str(file))
    assert "9" in told
    taken = entries(exported(other, tmp_path))
    assert set(kept) <= set(taken)
    assert len(taken) == 9
    assert len(list((tmp_path / "other").rglob(f"{sha}*"))) == 1
    held = phone.evaluate("() => window.tables()")["entry"]
    for id_, entry in taken.items():
        assert json.loads(held[id_]["text"]) == entry if "text" in held[id_] else held[id_]


def test_the_same_file_twice_and_then_the_phone_itself_leave_each_entry_once(
    computer: Garage, phone: Page, tmp_path: Path
) -> None:
    phone.context.set_offline(True)
    kept = keep(phone, 4, "apart")
    file = saved(phone, tmp_path / "phone.zip")
    for _ in range(2):
        computer.command("import", str(file))
    phone.context.set_offline(False)
    state = come_home(phone)
    assert (state["waiting"], state["refused"]) == (0, 0)
    assert set(entries(exported(computer, tmp_path))) == set(kept)


def test_after_a_restore_the_numbers_of_phone_and_computer_agree(
    computer: Garage, phone: Page, tmp_path: Path
) -> None:
    keep(phone, 6, "before")
    come_home(phone)
    backup = tmp_path / "backup"
    computer.command("backup", str(backup))
    keep(phone, 5, "after")
    come_home(phone)
    port = int(computer.address.rsplit(":", 1)[1])
    computer.stop()
    shutil.rmtree(computer.data)
    computer.command("restore", str(backup))
    computer.start(port)
    keep(phone, 2, "again")
    state = come_home(phone)
    log = exported(computer, tmp_path)
    assert [number for number, _, _ in log] == list(range(1, 14))
    assert (state["agreed"], state["held"], state["head"]) == (13, 13, 13)
    assert state["waiting"] == 0
