"""Runs the scanner's own tests that need no browser."""

import subprocess
from pathlib import Path

from tools import node


def test_the_scanner_keeps_its_promises_without_a_browser() -> None:
    tests = sorted(str(path) for path in Path(__file__).parent.glob("*.test.js"))
    result = subprocess.run([node(), "--test", *tests], capture_output=True, text=True, check=False)
    assert result.returncode == 0, result.stdout + result.stderr
