"""Where the outside tools of the tests are: browser, Node, the page's checkers, PostgreSQL.

`python3 tests` finds or installs them and hands their places on in the environment; a test run
by hand falls back to what lies on PATH.
"""

import json
import os
import shutil
import subprocess
from collections.abc import Iterable
from pathlib import Path
from typing import Any

ROOT = Path(__file__).resolve().parent.parent
JS_TOOLS = ROOT / ".tools" / "js"
BROWSERS = ("chromium", "chromium-browser", "google-chrome")


class ToolMissing(Exception):
    """A tool the test needs is not on this computer."""


def _found(variable: str, *names: str) -> str:
    """The tool's path, from the environment, else from PATH."""
    named = os.environ.get(variable)
    if named:
        return named
    for name in names:
        path = shutil.which(name)
        if path:
            return path
    raise ToolMissing(f"{names[0]} is not on this computer; python3 tests looks after that")


def chromium() -> str:
    """Path of the browser."""
    return _found("WITNESSMARK_CHROMIUM", *BROWSERS)


def node() -> str:
    """Path of Node."""
    return _found("WITNESSMARK_NODE", "node")


def under_node(script: Path, calls: Iterable[Any], within: float = 120) -> list[Any]:
    """What a script of the tests answers to each call; both go as lines of JSON."""
    done = subprocess.run(
        [node(), str(script)],
        input="".join(json.dumps(call) + "\n" for call in calls),
        capture_output=True, text=True, timeout=within, check=False,
    )  # fmt: skip
    assert done.returncode == 0, done.stderr[-3000:]
    return [json.loads(line) for line in done.stdout.splitlines()]


def js_tools() -> Path:
    """Folder with the page's own checkers, a node_modules inside."""
    folder = Path(os.environ.get("WITNESSMARK_JS_TOOLS") or JS_TOOLS)
    if not (folder / "node_modules").is_dir():
        raise ToolMissing("the page's checkers are not installed; python3 tests does it")
    return folder


def js_tool(name: str) -> str:
    """Path of one of the page's checkers: tsc, biome, lighthouse."""
    ending = ".cmd" if os.name == "nt" else ""
    return str(js_tools() / "node_modules" / ".bin" / (name + ending))


def postgres_bin() -> Path:
    """Folder of PostgreSQL's programs: initdb, postgres, pg_ctl."""
    named = os.environ.get("WITNESSMARK_POSTGRES_BIN")
    if named:
        return Path(named)
    debian = Path("/usr/lib/postgresql")
    found = sorted(debian.glob("*/bin/initdb"), key=lambda path: int(path.parts[-3]))
    if found:
        return found[-1].parent
    return Path(_found("WITNESSMARK_POSTGRES_BIN", "initdb")).parent


def certutil() -> str:
    """Path of the program that puts a certificate where Chromium on Linux looks."""
    return _found("WITNESSMARK_CERTUTIL", "certutil")
