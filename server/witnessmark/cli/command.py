"""One command from the words typed to the number the program ends with."""

import logging
import sys
from argparse import Namespace
from collections.abc import Callable, Mapping, Sequence

from witnessmark.cli import demo, labels, pairing, records, serve
from witnessmark.cli.arguments import read
from witnessmark.cli.folder import told
from witnessmark.cli.say import complain
from witnessmark.errors import WitnessmarkError

COMMANDS: Mapping[str, Callable[[Namespace], int | None]] = {
    "serve": serve.serve,
    "pair": pairing.pair,
    "rebuild": records.rebuild,
    "backup": records.backup,
    "restore": records.restore,
    "export": records.export,
    "import": records.import_,
    "devices": records.devices,
    "revoke": records.revoke,
    "labels": labels.labels,
}


def main(words: Sequence[str] | None = None) -> int:
    """Carry out what was typed: 0 when done, 1 with one sentence when something is in the way."""
    logging.basicConfig(level=logging.WARNING, stream=sys.stderr, format="%(asctime)s %(message)s")
    try:
        wished = read(words)
        command = demo.demo if wished.demo else COMMANDS[wished.command or "serve"]
        return command(wished) or 0
    except WitnessmarkError as trouble:
        complain(f"{trouble.sentence} {trouble.next}")
    except OSError as trouble:
        sentence = told(trouble)
        complain(f"{sentence.sentence} {sentence.next}")
    except KeyboardInterrupt:
        complain("Stopped.")
    return 1
