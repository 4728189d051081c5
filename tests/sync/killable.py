"""A Chromium that can be killed with kill -9, and watched by strace, with a profile that stays."""

import os
import re
import signal
import subprocess
from pathlib import Path

from garage import QUIET
from playwright.sync_api import Page, Playwright
from pwa.bare import bare_page
from tools import chromium


class Killable:
    """One profile; each start is a browser process of its own."""

    def __init__(self, player: Playwright, profile: Path, *watch: str) -> None:
        self.player, self.profile, self.watch = player, profile, watch
        self.process: subprocess.Popen[str] | None = None

    def start(self, address: str) -> Page:
        """A tab with the store open."""
        flags = ["--headless", "--remote-debugging-port=0", f"--user-data-dir={self.profile}"]
        command = [*self.watch, chromium(), *QUIET, *flags, "about:blank"]
        self.process = subprocess.Popen(
            command, stderr=subprocess.PIPE, text=True, start_new_session=True
        )
        self.browser = self.player.chromium.connect_over_cdp(self._address())
        return bare_page(self.browser.contexts[0], address)

    def _address(self) -> str:
        assert self.process
        assert self.process.stderr
        for line in self.process.stderr:
            found = re.search(r"DevTools listening on (ws://\S+)", line)
            if found:
                return found[1]
        raise AssertionError("the browser did not start")

    def kill(self) -> None:
        """All its processes at once, as they are."""
        if self.process:
            os.killpg(self.process.pid, signal.SIGKILL)
            self.process.wait()
            if self.process.stderr:
                self.process.stderr.close()
            self.process = None
