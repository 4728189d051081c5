"""The records of a folder, for a command that may run beside a server."""

import os
from argparse import Namespace

from witnessmark.cli.folder import data_folder
from witnessmark.store import Store, open_store

ADDRESS = "address"  # the setting by which commands beside the server know where it answers


def database() -> str | None:
    """The database named from outside, if the workshop has outgrown its file."""
    return os.environ.get("WITNESSMARK_DATABASE") or None


def beside(wished: Namespace) -> Store:
    """The store of the folder that was named."""
    return open_store(data_folder(wished.data), database())
