"""One command from the words typed to the number the program ends with."""

import logging
import sys
from argparse import Namespace
from collections.abc import Callable, Sequence
from importlib import import_module

from witnessmark.cli.arguments import read
from witnessmark.cli.folder import told
from witnessmark.cli.say import complain
from witnessmark.errors import WitnessmarkError

# Where each command stands. Only the one asked for is loaded: the parts of the others take
# longer to load than most commands take to run.
COMMANDS = {
    "serve": ("serve", "serve"),
    "demo": ("demo", "demo"),
    "pair": ("pairing", "pair"),
    "rebuild": ("records", "rebuild"),
    "backup": ("records", "backup"),
    "restore": ("records", "restore"),
    "export": ("records", "export"),
    "import": ("records", "import_"),
    "devices": ("records", "devices"),
    "revoke": ("records", "revoke"),
    "labels": ("labels", "labels"),
    "work-out": ("work_out", "work"),
}


def command_for(wished: Namespace) -> Callable[[Namespace], int | None]:
    """The function that carries out what was typed."""
    module, name = COMMANDS["demo" if wished.demo else wished.command or "serve"]
    found: Callable[[Namespace], int | None] = getattr(
        import_module(f"witnessmark.cli.{module}"), name
    )
    return found


def main(words: Sequence[str] | None = None) -> int:
    """Carry out what was typed: 0 when done, 1 with one sentence when something is in the way."""
    logging.basicConfig(level=logging.WARNING, stream=sys.stderr, format="%(asctime)s %(message)s")
    try:
        wished = read(words)
        return command_for(wished)(wished) or 0
    except WitnessmarkError as trouble:
        complain(f"{trouble.sentence} {trouble.next}")
    except OSError as trouble:
        sentence = told(trouble)
        complain(f"{sentence.sentence} {sentence.next}")
    except KeyboardInterrupt:
        complain("Stopped.")
    return 1
