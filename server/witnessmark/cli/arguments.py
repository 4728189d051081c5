"""The command line: words, options, and what they say of themselves."""

import argparse
import sys
from collections.abc import Sequence
from pathlib import Path
from typing import NoReturn

from witnessmark.cli.errors import CommandNotRead
from witnessmark.cli.grid import add_grid

PORT = 8443
CONTACT_PORT = 8080
LAST_PORT = 65535
ABOUT = "The record of an engine built at home, on this computer and on the phones at the bench."


class Reader(argparse.ArgumentParser):
    """A parser that complains by our errors instead of ending the program."""

    def error(self, message: str) -> NoReturn:
        """Tell what was not understood."""
        raise CommandNotRead(trouble=message)


def _port(text: str) -> int:
    """A port number; 0 lets the system choose."""
    if not text.isdecimal() or int(text) > LAST_PORT:
        raise argparse.ArgumentTypeError(f"'{text}' is no port from 0 to {LAST_PORT}")
    return int(text)


def _add_data(parser: argparse.ArgumentParser, default: object) -> None:
    """Where the records lie."""
    parser.add_argument(
        "--data",
        type=Path,
        default=default,
        metavar="DIR",
        help="folder of the records (else the usual place of this system)",
    )


def _add_serving(parser: argparse.ArgumentParser, *, with_defaults: bool) -> None:
    """Options of the server; without defaults where they only refine what stood before."""

    def default(value: object) -> object:
        return value if with_defaults else argparse.SUPPRESS

    add = parser.add_argument
    _add_data(parser, default(None))
    add("--port", type=_port, default=default(PORT), metavar="N", help="port (8443; 0: any)")
    add("--contact-port", type=_port, default=default(CONTACT_PORT), metavar="N",
        help="port of the page that explains the certificate (8080; 0: any)")  # fmt: skip
    add("--localhost", action="store_true", default=default(False),
        help="plain HTTP for this computer only: a cable, a tunnel, another program")  # fmt: skip
    add("--behind-proxy", default=default(None), metavar="ADDRESS",
        help="plain HTTP on loopback for a proxy that is reached at ADDRESS")  # fmt: skip
    add("--cert", default=default(None), metavar="FILE", help="your own certificate (PEM)")
    add("--key", default=default(None), metavar="FILE", help="its key (PEM)")
    add("--name", default=default(None), metavar="NAME",
        help="this computer's name on the network: 1 to 5 letters before .local")  # fmt: skip
    add("--no-open", action="store_true", default=default(False), help="open no browser")


def _add_labels(parser: argparse.ArgumentParser) -> None:
    """Options of a sheet of labels."""
    add = parser.add_argument
    add(
        "--layout",
        default="a4-3x8",
        metavar="NAME",
        help="sheet, by its measures; 'list' shows all",
    )
    add("--count", type=int, default=None, metavar="N", help="labels to print (else one sheet)")
    add("--start", type=int, default=1, metavar="N", help="first free place of a half-used sheet")
    add("--cut-marks", action="store_true", help="print marks to cut by")
    add("--output", type=Path, default=Path("labels.pdf"), metavar="FILE", help="PDF to write")
    add_grid(parser)


def reader() -> Reader:
    """The whole command line."""
    parser = Reader(prog="python3 server", description=ABOUT, allow_abbrev=False)
    _add_serving(parser, with_defaults=True)
    parser.add_argument("--demo", action="store_true", help="serve a throw-away demo workshop")
    commands = parser.add_subparsers(dest="command", metavar="COMMAND")

    def command(word: str, says: str) -> Reader:
        return commands.add_parser(word, help=says, description=says, allow_abbrev=False)

    _add_serving(
        command("serve", "serve the workshop (what happens without a command)"), with_defaults=False
    )
    pair = command("pair", "show a one-time code that pairs a phone")
    pair.add_argument("--json", action="store_true", help="one line for a program")
    command("rebuild", "make every table anew from the log and compare")
    for word, says in (
        ("backup", "copy everything into FILE, also while serving"),
        ("restore", "bring a backup back into an empty folder"),
        ("export", "write log and photos into FILE, an open format"),
        ("import", "take entries and photos from an exported FILE"),
    ):
        command(word, says).add_argument("file", type=Path, metavar="FILE")
    command("devices", "list the paired devices").add_argument(
        "--json", action="store_true", help="one line for a program"
    )
    command("revoke", "shut a device out").add_argument(
        "device", metavar="DEVICE", help="its id or name"
    )
    _add_labels(command("labels", "make a sheet of blank labels as PDF"))
    command("work-out", "work something out without any record; alone it lists what")
    for word, sub in commands.choices.items():
        if word != "serve":
            _add_data(sub, argparse.SUPPRESS)
    return parser


def read(words: Sequence[str] | None) -> argparse.Namespace:
    """What was typed, read; raises CommandNotRead.

    What stands behind work-out is read by the working itself: each asks for something else.
    """
    typed = sys.argv[1:] if words is None else list(words)
    if typed[:1] == ["work-out"]:
        return argparse.Namespace(command="work-out", demo=False, words=typed[1:])
    return reader().parse_args(typed)
