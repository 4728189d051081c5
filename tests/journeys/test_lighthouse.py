"""Lighthouse finds nothing to mend in accessibility and best practices."""

import json
import os
import subprocess
from pathlib import Path

import pytest
from garage import QUIET, garage
from tools import chromium, js_tools, node


@pytest.mark.parametrize("screen", ["/", "/settings"])
def test_lighthouse_gives_full_marks(tmp_path: Path, screen: str) -> None:
    report = tmp_path / "lighthouse.json"
    with garage(tmp_path / "data") as house:
        command = [
            node(),
            str(js_tools() / "node_modules" / "lighthouse" / "cli" / "index.js"),
            house.address + screen,
            "--quiet",
            "--output=json",
            f"--output-path={report}",
            "--only-categories=accessibility,best-practices",
            "--chrome-flags=--headless=new " + " ".join(QUIET),
        ]
        home = {"HOME": str(tmp_path), "CHROME_PATH": chromium()}
        done = subprocess.run(
            command, env={**os.environ, **home}, capture_output=True, text=True, check=False
        )
        assert done.returncode == 0, done.stdout[-2000:] + done.stderr[-2000:]
    found = json.loads(report.read_text(encoding="utf-8"))
    lacking = {
        name: audit["title"]
        for name, audit in found["audits"].items()
        if audit["score"] is not None and audit["score"] < 1
    }
    scores = {name: part["score"] for name, part in found["categories"].items()}
    assert scores == {"accessibility": 1, "best-practices": 1}, lacking
