"""A real server process in a folder of its own, and phones that are real Chromium profiles."""

import json
import os
import shutil
import signal
import subprocess
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

from playwright.sync_api import BrowserContext, Playwright
from tools import chromium

ROOT = Path(__file__).resolve().parent.parent
PHONE = {"viewport": {"width": 390, "height": 844}, "has_touch": True, "is_mobile": True}
DESK = {"viewport": {"width": 1280, "height": 800}}
QUIET = (
    "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run",
    "--disable-background-networking", "--disable-component-update", "--disable-sync",
)  # fmt: skip


class Garage:
    """The owner's computer: one data folder, one server process at a time."""

    def __init__(self, data: Path, *options: str) -> None:
        self.data, self.options = data, options
        self.process: subprocess.Popen[str] | None = None
        self.address = ""
        self.told: list[str] = []

    def start(self, port: int = 0) -> str:
        """Start the server and wait for its line; gives the address."""
        command = [sys.executable, "server", "--data", str(self.data), "--no-open"]
        command += ["--port", str(port), *self.options]
        self.process = subprocess.Popen(
            command, cwd=ROOT, stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True
        )
        assert self.process.stdout
        told = self.told = []
        for line in self.process.stdout:
            told.append(line)
            if line.startswith("ready "):
                self.address = line.split()[1]
                return self.address
        raise AssertionError("the server did not start:\n" + "".join(told))

    def command(self, *words: str) -> str:
        """Run a `witnessmark` command beside the server; gives what it printed."""
        done = subprocess.run(
            [sys.executable, "server", *words, "--data", str(self.data)],
            cwd=ROOT, capture_output=True, text=True, check=False,
        )  # fmt: skip
        assert done.returncode == 0, done.stdout + done.stderr
        return done.stdout

    def pairing(self) -> dict[str, str]:
        """A fresh one-time code: {"url", "code", "expires"}."""
        answer: dict[str, str] = json.loads(self.command("pair", "--json"))
        return answer

    def kill(self) -> None:
        """As a power cut does."""
        if self.process:
            self.process.send_signal(signal.SIGKILL)
            self._ended()

    def stop(self) -> None:
        """As Ctrl-C does."""
        if self.process:
            self.process.send_signal(signal.SIGINT)
            self._ended()

    def _ended(self) -> None:
        """Wait for the end and close what the process wrote to."""
        assert self.process
        self.process.wait(20)
        if self.process.stdout:
            self.process.stdout.close()
        self.process = None


@contextmanager
def garage(data: Path, *options: str, port: int = 0) -> Iterator[Garage]:
    """A running server; plain HTTP on loopback unless other options are given."""
    here = Garage(data, *(options or ("--localhost",)))
    try:
        here.start(port)
        yield here
    finally:
        here.kill()


def trust(home: Path, certificate: Path) -> None:
    """Install an authority where Chromium on Linux looks, under a HOME of its own."""
    store = home / ".pki" / "nssdb"
    store.mkdir(parents=True, exist_ok=True)
    certutil = shutil.which("certutil")
    assert certutil, "certutil is missing (Debian's package libnss3-tools)"
    base = f"sql:{store}"
    subprocess.run([certutil, "-N", "-d", base, "--empty-password"], check=True)
    subprocess.run(
        [certutil, "-A", "-d", base, "-n", "garage", "-t", "C,,", "-i", str(certificate)],
        check=True,
    )


def phone(
    player: Playwright, profile: Path, *flags: str, home: Path | None = None, **options: Any
) -> BrowserContext:
    """Chromium with a profile that outlives it; phone-sized unless `viewport` says otherwise."""
    environment = {**os.environ, **({"HOME": str(home)} if home else {})}
    return player.chromium.launch_persistent_context(
        str(profile), executable_path=chromium(), args=[*QUIET, *flags],
        env=environment, **{**PHONE, **options},
    )  # fmt: skip


def kill_browser(profile: Path) -> None:
    """As a phone does that is short of memory: the process of a profile ends at once."""
    for entry in Path("/proc").glob("[0-9]*"):
        try:
            words = (entry / "cmdline").read_bytes().decode(errors="replace")
        except OSError:
            continue
        if str(profile) in words and "--type=" not in words:
            os.kill(int(entry.name), signal.SIGKILL)
            return
    raise AssertionError("no browser runs on this profile")


def camera_flags(film: Path) -> list[str]:
    """What makes Chromium play `film` (MJPEG) as its camera."""
    return [
        "--use-fake-device-for-media-stream",
        "--use-fake-ui-for-media-stream",
        f"--use-file-for-fake-video-capture={film}",
    ]


def film(stills: list[Any], to: Path, hold: int = 15) -> Path:
    """Write BGR pictures of one size as JPEGs end to end, each held for `hold` frames."""
    import cv2  # noqa: PLC0415 - only journeys with a camera need it

    with to.open("wb") as file:
        for still in stills:
            done, packed = cv2.imencode(".jpg", still, [cv2.IMWRITE_JPEG_QUALITY, 90])
            assert done
            file.write(packed.tobytes() * hold)
    return to
