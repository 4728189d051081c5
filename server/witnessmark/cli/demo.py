"""The demo: a throw-away copy of the invented workshop, paired and ready in the browser."""

import tempfile
from argparse import Namespace
from contextlib import closing
from pathlib import Path
from shutil import copyfile
from zipfile import ZIP_STORED, ZipFile

from witnessmark.cli.arguments import PORT
from witnessmark.cli.errors import FileNotThere
from witnessmark.cli.ports import LOOPBACK, first_free_port
from witnessmark.cli.say import say
from witnessmark.cli.serve import serve_folder
from witnessmark.store import open_store

HOUSE = Path(__file__).resolve().parents[3]
DEMO_PORT = 8450
DEMO = HOUSE / "fixtures" / "demo"
DEVICES = "devices.json"  # what the demo calls the devices that nobody has paired


def demo(wished: Namespace) -> None:
    """Serve a copy on loopback: that is a secure context, so no certificate is needed."""
    with tempfile.TemporaryDirectory(prefix="witnessmark-demo-") as folder:
        data = Path(folder) / "data"
        take_demo(data, Path(folder) / "demo.zip")
        say("This is the demo workshop: an invented engine with invented values.")
        say("What you change in it is gone when it stops.")
        wished.localhost = True
        if wished.port == PORT:  # not the one of a real workshop that may be serving beside it
            wished.port = first_free_port(LOOPBACK, DEMO_PORT) or 0
        serve_folder(wished, data, demo=True)


def take_demo(data: Path, packed: Path) -> None:
    """Import the demo's entries and pictures as an export file."""
    log = DEMO / "log.jsonl"
    if not log.exists():
        raise FileNotThere(path=str(log))
    with ZipFile(packed, "w", ZIP_STORED) as file:
        file.write(log, "log.jsonl")
        for photo in sorted((DEMO / "photos").glob("*")):
            file.write(photo, f"photos/{photo.stem}")
    copyfile(DEMO / DEVICES, packed.with_name(DEVICES))
    with closing(open_store(data)) as store:
        store.import_(packed, demo=True)
