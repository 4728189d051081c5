"""A program that started the server may read one line and then listen no more."""

import subprocess
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]


def test_a_server_whose_reader_has_gone_still_ends_calmly(tmp_path: Path) -> None:
    command = [sys.executable, "server", "--data", str(tmp_path / "data"), "--port", "0"]
    process = subprocess.Popen(
        [*command, "--localhost", "--no-open"],
        cwd=ROOT,
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
        text=True,
    )
    assert process.stdout
    assert process.stderr
    assert any(line.startswith("ready ") for line in process.stdout)
    process.stdout.close()
    process.terminate()
    assert (process.wait(30), process.stderr.read()) == (0, "")
    process.stderr.close()
