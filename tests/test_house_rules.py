"""The house stays tidy: layers, lengths, words, vendored files, the same refusals on both sides."""

import ast
import hashlib
import json
import re
import subprocess
import sys
from pathlib import Path

import pytest
from tools import js_tool, node

ROOT = Path(__file__).resolve().parent.parent
PYTHON = sorted((ROOT / "server").rglob("*.py"))
SCRIPTS = sorted(p for p in (ROOT / "pwa").rglob("*.js") if "vendor" not in p.parts)
TESTS = sorted(p for p in (ROOT / "tests").rglob("*.py"))

# Longer than the limit, each for a reason.
LONG_ALLOWED = {"pwa/sw.js": "carries the list of the page's files, written by a script"}
LONG_FUNCTIONS_ALLOWED = {
    "server/witnessmark/store/migrations/versions/0001_the_first_tables.py:upgrade": (
        "a migration is a list of tables, and is never changed again"
    ),
}


def lines(path: Path) -> int:
    return len(path.read_text(encoding="utf-8").splitlines())


def short(path: Path) -> str:
    return path.relative_to(ROOT).as_posix()


def test_imports_go_one_way() -> None:
    from importlinter.cli import lint_imports  # noqa: PLC0415

    assert lint_imports(config_filename=str(ROOT / "pyproject.toml"), no_cache=True) == 0


def test_files_are_short() -> None:
    limits = ((PYTHON, 300), (SCRIPTS, 200), (TESTS, 400))
    too_long = {
        short(p): lines(p)
        for paths, most in limits
        for p in paths
        if lines(p) > most and short(p) not in LONG_ALLOWED
    }
    assert not too_long


def test_functions_are_short() -> None:
    too_long = {}
    for path in PYTHON:
        for node_ in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if isinstance(node_, ast.FunctionDef | ast.AsyncFunctionDef):
                length = (node_.end_lineno or 0) - node_.lineno + 1
                name = f"{short(path)}:{node_.name}"
                if length > 40 and name not in LONG_FUNCTIONS_ALLOWED:
                    too_long[name] = length
    assert not too_long


@pytest.mark.parametrize("command", [["ruff", "check", "."], ["ruff", "format", "--check", "."]])
def test_python_is_linted_and_formatted(command: list[str]) -> None:
    done = subprocess.run(
        [sys.executable, "-m", *command, "--no-cache"],
        cwd=ROOT,
        capture_output=True,
        text=True,
        check=False,
    )
    assert done.returncode == 0, done.stdout[-4000:]


def test_python_types_hold() -> None:
    done = subprocess.run(
        [sys.executable, "-m", "mypy", "--no-incremental", "--cache-dir", "/dev/null"],
        cwd=ROOT,
        capture_output=True,
        text=True,
        check=False,
    )
    assert done.returncode == 0, done.stdout[-4000:] + done.stderr[-1000:]


@pytest.mark.parametrize("project", ["tsconfig.json", "tsconfig.sw.json"])
def test_page_types_hold(project: str) -> None:
    done = subprocess.run(
        [js_tool("tsc"), "-p", str(ROOT / "tests" / "pwa" / project)],
        cwd=ROOT,
        capture_output=True,
        text=True,
        check=False,
    )
    assert done.returncode == 0, done.stdout[-4000:]


def test_page_scripts_are_linted_and_import_one_way() -> None:
    done = subprocess.run(
        [
            js_tool("biome"),
            "check",
            "--config-path=tests/pwa/js-rules.json",
            "--max-diagnostics=20",
            "pwa",
        ],
        cwd=ROOT,
        capture_output=True,
        text=True,
        check=False,
    )
    assert done.returncode == 0, done.stdout[-4000:] + done.stderr[-4000:]


def test_only_the_store_opens_the_browsers_database() -> None:
    offenders = [
        short(p) for p in SCRIPTS if "indexedDB" in p.read_text("utf-8") and "store" not in p.parts
    ]
    assert not offenders


def test_no_room_for_odds_and_ends() -> None:
    names = {"utils", "util", "misc", "common", "helpers"}
    assert not [short(p) for p in PYTHON + SCRIPTS if p.stem in names or names & set(p.parts)]


def test_trade_and_log_read_no_clock_and_no_file() -> None:
    banned = re.compile(
        r"\b(Date\.now|new Date\(\)|Math\.random|datetime\.now|time\.time\(|open\()"
    )
    pure = [
        p for p in PYTHON + SCRIPTS if {"trade", "log", "views"} & set(p.relative_to(ROOT).parts)
    ]
    assert not [short(p) for p in pure if banned.search(p.read_text("utf-8"))]


def test_a_public_trade_rule_names_its_source() -> None:
    missing = []
    for path in sorted((ROOT / "server/witnessmark/trade").glob("*.py")):
        for item in ast.parse(path.read_text("utf-8")).body:
            public = isinstance(item, ast.FunctionDef) and not item.name.startswith("_")
            if public and "source:" not in (ast.get_docstring(item) or ""):
                missing.append(f"{path.stem}.{item.name}")
    assert not missing


def test_vendored_files_are_the_ones_listed() -> None:
    listed = json.loads((ROOT / "pwa/vendor/VENDORED.json").read_text("utf-8"))
    there = {
        p.relative_to(ROOT / "pwa/vendor").as_posix()
        for p in (ROOT / "pwa/vendor").rglob("*")
        if p.is_file()
    }
    there.discard("VENDORED.json")
    assert {row["file"] for row in listed} == there
    for row in listed:
        data = (ROOT / "pwa/vendor" / row["file"]).read_bytes()
        assert hashlib.sha256(data).hexdigest() == row["sha256"], row["file"]
        assert row["version"]
        assert row["licence"]


def test_the_top_level_holds_only_what_was_agreed() -> None:
    tracked = subprocess.run(
        ["git", "ls-files"], cwd=ROOT, capture_output=True, text=True, check=True
    ).stdout.split()
    allowed = {
        "README.md",
        "DEVELOPERS.md",
        "pyproject.toml",
        "server",
        "pwa",
        "tests",
        "fixtures",
        "LICENSE",
        ".gitignore",
        ".ci",
    }
    assert {name.split("/")[0] for name in tracked} <= allowed


def test_node_is_there() -> None:
    assert node()
