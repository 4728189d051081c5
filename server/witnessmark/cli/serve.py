"""Serving the workshop: doors, the lines in the terminal, and a calm end."""

import gc
import os
import sys
import webbrowser
from argparse import Namespace
from contextlib import ExitStack
from pathlib import Path

from witnessmark.api import Config, create_app
from witnessmark.api.packs import begin
from witnessmark.cli.beside import ADDRESS, LABEL_ADDRESS, database
from witnessmark.cli.door import Door, open_door
from witnessmark.cli.folder import data_folder
from witnessmark.cli.listening import Listening
from witnessmark.cli.ports import LOOPBACK
from witnessmark.cli.say import say, say_drawing
from witnessmark.cli.stopping import told_to_stop
from witnessmark.store import Store
from witnessmark.trust.contact import contact_app
from witnessmark.trust.qr import terminal_qr


def serve(wished: Namespace) -> None:
    """Serve the workshop of the data folder until told to stop."""
    serve_folder(wished, data_folder(wished.data), demo=False)


def serve_folder(wished: Namespace, data: Path, *, demo: bool) -> None:
    """Serve one folder; tells `ready URL` once phones may come."""
    door = open_door(wished, data)
    app = create_app(
        Config(
            data=data,
            database=None if demo else database(),
            demo=demo,
            address=door.address,
            label_address=door.label_address,
        )
    )
    store: Store = app.extensions["witnessmark"]
    store.ensure_workshop()
    store.set_setting(ADDRESS, door.address)
    store.set_setting(LABEL_ADDRESS, door.label_address)
    with told_to_stop() as stopping, ExitStack() as running:
        running.callback(store.close)
        main = Listening(door.host, door.port, app, door.tls, door.address)
        main.prepare()
        running.callback(main.stop)
        desk = _side_doors(running, door, app)
        page = _first_page(store, desk, demo=demo)
        _tell(door, data, page)
        store.rehearse()
        _spare_the_collector()
        say(f"ready {door.address}")
        begin(app)
        if not wished.no_open and has_screen():
            webbrowser.open(page)
        with stopping.at_once():
            main.serve()
    say("Stopped. " + ("The demo is gone." if demo else "Everything that was taken is kept."))


def _spare_the_collector() -> None:
    """Let the search for circles leave out what start-up made, and come more seldom.

    A push makes many thousand objects without one circle; a search through everything in the
    middle of it takes longer than the push.
    """
    gc.collect()
    gc.freeze()
    gc.set_threshold(50_000, 20, 20)


def _side_doors(running: ExitStack, door: Door, app: object) -> str:
    """First contact, and a door for this computer's own browser; gives the latter's address."""
    if door.keeper is not None:
        door.keeper.start()
        running.callback(door.keeper.stop)
    if door.contact is not None:
        _aside(running, Listening(door.host, door.contact_port, contact_app(door.contact)))
    if door.desk_port is None:
        return door.address
    _aside(running, Listening(LOOPBACK, door.desk_port, app))  # type: ignore[arg-type]
    return f"http://{LOOPBACK}:{door.desk_port}"


def _aside(running: ExitStack, listening: Listening) -> None:
    """Serve beside the main door until the block ends."""
    listening.prepare()
    listening.serve_aside()
    running.callback(listening.stop)


def _first_page(store: Store, desk: str, *, demo: bool) -> str:
    """The page to open here: paired at once while the workshop has no device yet."""
    if not demo and any(not device.own for device in store.devices()):
        return f"{desk}/"
    code = store.pairing_code().code
    return f"{desk}/pair#{code}{'&demo' if demo else ''}"


def _tell(door: Door, data: Path, page: str) -> None:
    """Say where everything is."""
    say(f"The records lie in {data}")
    if door.contact is not None:
        contact = door.contact()
        host = door.address.removeprefix("https://").rpartition(":")[0]
        first = f"http://{host}:{door.contact_port}/"
        say()
        if say_drawing(terminal_qr(first)):
            say()
        say(f"A phone's first contact: {first}  (scan the symbol with its camera)")
        for address in contact.other_addresses:
            say(f"  if it does not find that name: {_first_contact_at(address, door)}")
        say(f"Fingerprint of the certificate: {contact.authority.fingerprint}")
        say(f"Once it is trusted: {door.address}")
        say("To pair a phone, type in a second window: python3 server pair")
    say(f"On this computer: {page}")


def _first_contact_at(address: str, door: Door) -> str:
    """First contact by number instead of name."""
    return f"http://{address.removeprefix('https://').rpartition(':')[0]}:{door.contact_port}/"


def has_screen() -> bool:
    """Whether a browser could show itself; without a screen Linux would start one in the text."""
    return sys.platform in {"win32", "darwin"} or any(
        os.environ.get(name) for name in ("DISPLAY", "WAYLAND_DISPLAY")
    )
