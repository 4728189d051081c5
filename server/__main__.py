"""Start the home computer's half: `python3 server`.

Only the standard library, and only words that an old Python reads too, so that it can say which
version is needed. The parts are fetched once into `.venv`; later starts change nothing.
"""

import hashlib
import os
import subprocess
import sys

HERE = os.path.dirname(os.path.abspath(__file__))
ROOT = os.path.dirname(HERE)
ENVIRONMENT = os.path.join(ROOT, ".venv")
REQUIREMENTS = os.path.join(HERE, "requirements.txt")
NEEDED = (3, 11)
LOCKED = "This folder may not be written: %s. Move it to a place of your own and start again."
OFFLINE = (
    "The first start needs the internet once, to fetch what the program is built on. "
    "Connect this computer and start again."
)
FULL = "The disk is full. Make room (about 300 MB) and start again."
DIFFERS = (
    "A fetched part is not the one this program was made with, so it was not used. "
    "Try once more on another network."
)
BARE = (
    "This Python cannot make an environment of its own. On Debian and Ubuntu: "
    "sudo apt install python3-venv. Then start again."
)
SENTENCES = (
    ("NewConnectionError", OFFLINE),
    ("ConnectionError", OFFLINE),
    ("name resolution", OFFLINE),
    ("Timeout", OFFLINE),
    ("ProxyError", OFFLINE),
    ("No space left", FULL),
    ("Permission denied", LOCKED % ROOT),
    ("Read-only file system", LOCKED % ROOT),
    ("DO NOT MATCH THE HASHES", DIFFERS),
    ("ensurepip", BARE),
)


def say(sentence):
    """Tell what is being done, at once."""
    sys.stdout.write(sentence + "\n")
    sys.stdout.flush()


def run(command):
    """Run a command quietly; when it ends badly, stop with a sentence."""
    done = subprocess.Popen(command, stdout=subprocess.PIPE, stderr=subprocess.STDOUT)
    said = done.communicate()[0].decode("utf-8", "replace")
    if done.returncode != 0:
        known = [sentence for sign, sentence in SENTENCES if sign in said]
        sys.exit(known[0] if known else said + "\nThe lines above say what was in the way.")


def interpreter():
    """Path of the Python inside the environment."""
    inside = ("Scripts", "python.exe") if os.name == "nt" else ("bin", "python")
    return os.path.join(ENVIRONMENT, *inside)


def make_environment():
    """Make the folder that holds the program's own Python."""
    if not os.access(ROOT, os.W_OK):
        sys.exit(LOCKED % ROOT)
    say("First start: making the program's own Python in .venv")
    run([sys.executable, "-m", "venv", "--clear", ENVIRONMENT])


def install(requirements):
    """Fetch the pinned parts, each checked by its hash, unless the stamp says it was done."""
    with open(requirements, "rb") as lines:
        digest = hashlib.sha256(lines.read()).hexdigest()
    wanted = "%s %d.%d\n" % ((digest,) + tuple(sys.version_info[:2]))
    name = os.path.relpath(requirements, ROOT).replace(os.sep, "-")
    stamp = os.path.join(ENVIRONMENT, name + ".done")
    if os.path.exists(stamp):
        with open(stamp) as text:
            if text.read() == wanted:
                return
    say("Fetching what is pinned in %s; this happens once" % os.path.relpath(requirements, ROOT))
    if not os.path.isdir(os.path.join(os.path.dirname(os.__file__), "ensurepip")):
        sys.exit(BARE)
    run([sys.executable, "-m", "ensurepip"])
    quiet = ["--quiet", "--no-input", "--retries", "2", "--disable-pip-version-check"]
    run([sys.executable, "-m", "pip", "install", "--require-hashes", "-r", requirements] + quiet)
    with open(stamp, "w") as text:
        text.write(wanted)


def enter(folder):
    """Go on with the same arguments inside the environment; returns if it is there already."""
    if sys.version_info < NEEDED:
        here = tuple(sys.version_info[:2])
        sys.exit("Witnessmark needs Python %d.%d or newer; this is %d.%d." % (NEEDED + here))
    if os.path.realpath(sys.prefix) == os.path.realpath(ENVIRONMENT):
        return
    if not os.path.exists(interpreter()):
        make_environment()
    command = [interpreter(), folder] + sys.argv[1:]
    if os.name != "nt":
        os.execv(command[0], command)
    try:  # Windows cannot become another program; there ctrl-C reaches the child as well.
        child = subprocess.Popen(command)
        sys.exit(child.wait())
    except KeyboardInterrupt:
        sys.exit(child.wait())


if __name__ == "__main__":
    enter(HERE)
    install(REQUIREMENTS)
    from witnessmark.cli import main

    sys.exit(main())
