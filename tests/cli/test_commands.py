"""Every command beside a running server, with what it prints and the number it ends with."""

import json
import re
from collections.abc import Iterator
from datetime import UTC, datetime, timedelta
from pathlib import Path
from urllib.request import Request, urlopen
from zipfile import ZipFile

import numpy as np
import pypdfium2
import pytest
import zxingcpp
from cli.processes import run
from garage import Garage, garage
from witnessmark.cli import main


@pytest.fixture(scope="module")
def home(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Garage]:
    with garage(tmp_path_factory.mktemp("home") / "data") as here:
        yield here


def paired(home: Garage, name: str) -> dict[str, str]:
    body = json.dumps({"code": home.pairing()["code"], "name": name}).encode()
    asked = Request(
        home.address + "/api/v1/pair", body, {"Content-Type": "application/json"}, method="POST"
    )
    with urlopen(asked, timeout=20) as told:
        answer: dict[str, str] = json.load(told)
        return answer


def test_pair_tells_a_program_link_code_and_end(home: Garage) -> None:
    told = home.pairing()
    assert set(told) == {"url", "code", "expires"}
    assert re.fullmatch(r"\d{4}-\d{4}", told["code"])
    assert told["url"] == f"{home.address}/pair#{told['code']}"
    left = datetime.fromisoformat(told["expires"]) - datetime.now(UTC)
    assert timedelta(minutes=9) < left <= timedelta(minutes=10)
    assert told["expires"].endswith("Z")


def test_pair_tells_a_person_the_same_with_a_symbol(home: Garage) -> None:
    told = home.command("pair")
    assert "█" in told
    assert f"open {home.address}/pair#" in told


def test_a_code_from_the_terminal_pairs_a_device_that_can_then_be_shut_out(home: Garage) -> None:
    device = paired(home, "bench phone")["device"]
    rows = {row["id"]: row for row in json.loads(home.command("devices", "--json"))}
    assert rows[device]["name"] == "bench phone"
    assert rows[device]["revoked"] is None
    assert "bench phone" in home.command("devices")
    assert "bench phone is shut out" in home.command("revoke", device)
    rows = {row["id"]: row for row in json.loads(home.command("devices", "--json"))}
    assert rows[device]["revoked"] is not None


def test_a_device_may_be_shut_out_by_a_name_only_it_has(home: Garage) -> None:
    paired(home, "tablet")
    assert "tablet is shut out" in home.command("revoke", "tablet")


def test_an_unknown_device_is_one_sentence_and_1(home: Garage) -> None:
    told = run("revoke", "nobody", "--data", home.data)
    assert told.number == 1
    assert "nobody" in told.err
    assert told.err.count("\n") == 1


def test_rebuild_finds_the_tables_as_the_log_says(home: Garage) -> None:
    assert home.command("rebuild").startswith("The tables are what the log says: ")


def test_a_backup_taken_while_serving_comes_back_elsewhere_with_its_trust(
    home: Garage, tmp_path: Path
) -> None:
    home.command("backup", str(tmp_path / "backup.zip"))
    told = run("restore", tmp_path / "backup.zip", "--data", tmp_path / "new")
    assert told.number == 0, told.err
    name = (home.data / "trust" / "name").read_bytes()
    assert (tmp_path / "new" / "trust" / "name").read_bytes() == name
    again = run("restore", tmp_path / "backup.zip", "--data", tmp_path / "new")
    assert again.number == 1
    assert again.err.count("\n") == 1


def test_what_is_exported_can_be_imported(home: Garage, tmp_path: Path) -> None:
    home.command("export", str(tmp_path / "out.zip"))
    assert "log.jsonl" in ZipFile(tmp_path / "out.zip").namelist()
    told = run("import", tmp_path / "out.zip", "--data", tmp_path / "other")
    assert (told.number, told.err) == (0, "")
    assert "taken" in told.out


def test_the_demo_is_left_out_of_a_real_workshop_and_that_is_said(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    demo = Path(__file__).resolve().parents[2] / "fixtures" / "demo" / "log.jsonl"
    assert main(["import", str(demo), "--data", str(tmp_path / "data")]) == 0
    assert "of the demo left out: they are invented" in capsys.readouterr().out


def test_labels_are_printed_and_no_code_twice(home: Garage, tmp_path: Path) -> None:
    codes: set[str] = set()
    for name in ("one.pdf", "two.pdf"):
        home.command(
            "labels", "--layout", "a4-3x8", "--count", "5", "--output", str(tmp_path / name)
        )
        page = pypdfium2.PdfDocument(tmp_path / name)[0].render(scale=4).to_numpy()
        found = zxingcpp.read_barcodes(np.ascontiguousarray(page))
        codes |= {symbol.text for symbol in found}
    assert len(codes) == 10
    host = (home.data / "trust" / "name").read_text(encoding="utf-8").upper()
    assert all(code.startswith(f"HTTPS://{host}.LOCAL:8443/L/") for code in codes)


OWN = ("--page", "210x297", "--grid", "2x5", "--label", "90×50", "--margins", "10x15,5")


def test_labels_lie_on_an_own_grid_and_its_test_page_prints_outlines_alone(
    home: Garage, tmp_path: Path
) -> None:
    sheet, outlines = tmp_path / "own.pdf", tmp_path / "outlines.pdf"
    home.command("labels", *OWN, "--count", "10", "--output", str(sheet))
    page = pypdfium2.PdfDocument(sheet)[0].render(scale=4).to_numpy()
    found = zxingcpp.read_barcodes(np.ascontiguousarray(page))
    assert len({symbol.text for symbol in found}) == 10
    home.command("labels", *OWN, "--test-page", "--output", str(outlines))
    dark = pypdfium2.PdfDocument(outlines)[0].render(scale=254 / 72, grayscale=True).to_numpy()
    dark = dark.reshape(dark.shape[0], -1) < 128
    # Ten pixels a millimetre: each label's left and top edge is where the grid says.
    edges = [dark[155 + row * 500 : 645 + row * 500, 100 + at * 900].mean() for row in range(5)
             for at in range(2)]  # fmt: skip
    assert min(edges) > 0.9
    assert pypdfium2.PdfDocument(outlines)[0].get_textpage().get_text_range().count("\n") <= 1


@pytest.mark.parametrize(
    "words",
    [
        ("labels", "--grid", "3x8"),
        ("labels", "--page", "210x297", "--grid", "9x8", "--label", "70x37"),
        ("labels", "--layout", "nothing"),
        ("labels", "--count", "0"),
        ("labels", "--start", "99"),
        ("import", "/nowhere/out.zip"),
        ("restore", "/nowhere/backup.zip"),
        ("backup", "/nowhere/backup.zip"),
        ("export", "/nowhere/out.zip"),
    ],
)
def test_what_cannot_be_done_is_one_sentence_and_1(
    tmp_path: Path, words: tuple[str, ...], capsys: pytest.CaptureFixture[str]
) -> None:
    assert main([*words, "--data", str(tmp_path / "data")]) == 1
    told = capsys.readouterr()
    assert told.out == ""
    assert told.err.count("\n") == 1
    assert told.err.rstrip().endswith(".")
