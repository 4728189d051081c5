"""What a person types: the commands, the starting of the server, the sentences in the terminal.

Nothing is computed here; each command asks the store, the labels or trust and tells the answer.
"""

from witnessmark.cli.command import main

__all__ = ["main"]
