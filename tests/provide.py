"""What the tests need besides Python: found, else installed the ordinary way, else named.

Nothing here is fetched from elsewhere than the system's packages, pip and npm. What stays missing
is told as *not run*; where the variable CI is true that is a failure.
"""

import hashlib
import os
import shutil
import subprocess
import sys
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

import tools

ROOT = Path(__file__).resolve().parent.parent
HERE = ROOT / "tests"
OLDEST_NODE = 20
# One file stays with one worker, so that a server started for a file is started once.
AS_A_WHOLE = ("-n", "2", "--dist", "loadfile")
Install = Callable[[str], None]


def say(text: str) -> None:
    """Tell what is being done, at once."""
    print(text, flush=True)


def call(*command: str, folder: Path = ROOT, **settings: str) -> bool:
    """Run a command; tells whether it ended well. What it says is shown only if not."""
    done = subprocess.run(
        command,
        cwd=folder,
        env={**os.environ, **settings},
        stdin=subprocess.DEVNULL,
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        check=False,
    )
    if done.returncode:
        say(done.stdout.decode("utf-8", "replace")[-2000:])
    return done.returncode == 0


def by_apt(*packages: str) -> bool:
    """Install Debian's packages where that needs no question answered."""
    if not shutil.which("apt-get"):
        return False
    lead: tuple[str, ...] = ()
    if os.geteuid() != 0:
        lead = ("sudo", "-n")
        if not shutil.which("sudo") or not call("sudo", "-n", "true"):
            return False
    say(f"Installing {', '.join(packages)} by apt-get")
    calm = {"DEBIAN_FRONTEND": "noninteractive"}
    install = (*lead, "apt-get", "install", "-y", "--no-install-recommends", *packages)
    call(*lead, "apt-get", "update", **calm)
    return call(*install, **calm)


def found(find: Callable[[], object]) -> str | None:
    """What the finder finds, as text; nothing where it does not."""
    try:
        return str(find())
    except tools.ToolMissing:
        return None


def chromium(_: Install) -> str | None:
    """A browser: on PATH, else Debian's, else the one that playwright brings."""
    path = found(tools.chromium)
    if path is None and by_apt("chromium", "fonts-dejavu-core"):
        path = found(tools.chromium)
    if path is None:
        say("Installing Chromium by playwright")
        call(sys.executable, "-m", "playwright", "install", "chromium")
        script = (
            "from playwright.sync_api import sync_playwright as s\n"
            "with s() as p: print(p.chromium.executable_path)"
        )
        told = subprocess.run(
            [sys.executable, "-c", script], capture_output=True, text=True, check=False
        )
        brought = told.stdout.strip()
        path = brought if brought and Path(brought).exists() else None
    return path


def node(install: Install) -> str | None:
    """Node: on PATH and new enough, else the one that pip brings."""
    path = found(tools.node)
    if path is not None:
        told = subprocess.run([path, "--version"], capture_output=True, text=True, check=False)
        major = told.stdout.strip().lstrip("v").partition(".")[0]
        if major.isdecimal() and int(major) >= OLDEST_NODE:
            return path
    install(str(HERE / "requirements-node.txt"))
    return shutil.which("node", path=str(Path(sys.executable).parent))


def js_tools(_: Install) -> str | None:
    """The page's checkers, by npm from the pinned list; nothing is done when they are there."""
    folder = tools.JS_TOOLS
    pinned = HERE / "pwa"
    mark = folder / "done"
    wanted = hashlib.sha256((pinned / "package-lock.json").read_bytes()).hexdigest()
    if mark.exists() and mark.read_text(encoding="utf-8") == wanted:
        return str(folder)
    npm = shutil.which("npm")
    if npm is None:
        return None
    say("Fetching the page's checkers by npm; this happens once")
    folder.mkdir(parents=True, exist_ok=True)
    for name in ("package.json", "package-lock.json"):
        shutil.copy(pinned / name, folder / name)
    if not call(npm, "ci", "--ignore-scripts", "--no-audit", "--no-fund", folder=folder):
        return None
    mark.write_text(wanted, encoding="utf-8")
    return str(folder)


def postgres(_: Install) -> str | None:
    """PostgreSQL's programs: where Debian puts them, else on PATH, else Debian's package."""
    path = found(tools.postgres_bin)
    if path is None and by_apt("postgresql"):
        path = found(tools.postgres_bin)
    return path


def certutil(_: Install) -> str | None:
    """What puts a certificate where Chromium on Linux looks."""
    path = found(tools.certutil)
    if path is None and by_apt("libnss3-tools"):
        path = found(tools.certutil)
    return path


@dataclass(frozen=True, slots=True)
class Need:
    """One tool: its name for a person, its variable, and how it is had."""

    name: str
    variable: str
    have: Callable[[Install], str | None]


NEEDS = (
    Need("Chromium", "WITNESSMARK_CHROMIUM", chromium),
    Need("Node", "WITNESSMARK_NODE", node),
    Need("the page's checkers", "WITNESSMARK_JS_TOOLS", js_tools),
    Need("PostgreSQL", "WITNESSMARK_POSTGRES_BIN", postgres),
    Need("certutil", "WITNESSMARK_CERTUTIL", certutil),
)


def run(install: Install, words: list[str]) -> int:
    """Provide everything, then run pytest with the words passed on."""
    missing = []
    here = str(Path(sys.executable).parent)
    os.environ["PATH"] = here + os.pathsep + os.environ["PATH"]
    for need in NEEDS:
        place = need.have(install)
        if place is None:
            missing.append(need.name)
            continue
        os.environ[need.variable] = place
        if need.have is node:  # npm and the checkers look for it by its name
            os.environ["PATH"] = str(Path(place).parent) + os.pathsep + os.environ["PATH"]
    for name in missing:
        say(f"not run: whatever needs {name}, which is neither here nor could be installed")
    command = [sys.executable, "-m", "pytest", *(words or AS_A_WHOLE)]
    ended = subprocess.call(command, cwd=ROOT)
    if missing and os.environ.get("CI") == "true":
        return ended or 1
    return ended
