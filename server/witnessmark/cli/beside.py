"""The records of a folder, for a command that may run beside a server."""

import os
from argparse import Namespace
from collections.abc import Iterator
from contextlib import closing, contextmanager
from pathlib import Path

from witnessmark.cli.arguments import PORT
from witnessmark.cli.folder import data_folder
from witnessmark.store import Store, open_store
from witnessmark.trust.folder import trust_folder
from witnessmark.trust.names import kept_name

# The settings by which commands beside the server know where it answers and what labels carry.
ADDRESS = "address"
LABEL_ADDRESS = "label-address"


def database() -> str | None:
    """The database named from outside, if the workshop has outgrown its file."""
    return os.environ.get("WITNESSMARK_DATABASE") or None


def label_address(store: Store, data: Path) -> str:
    """The address labels carry: the server's last one, else the one it will have."""
    kept = store.setting(LABEL_ADDRESS)
    if isinstance(kept, str):
        return kept
    return f"https://{kept_name(trust_folder(data))}.local:{PORT}"


@contextmanager
def beside(wished: Namespace) -> Iterator[Store]:
    """The store of the folder that was named, let go of afterwards."""
    with closing(open_store(data_folder(wished.data), database())) as store:
        yield store
