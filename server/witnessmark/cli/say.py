"""Sentences in the terminal."""

import json
import os
import sys


def say(text: str = "") -> None:
    """Tell a line at once, also when another program is reading along."""
    try:
        sys.stdout.write(text + "\n")
        sys.stdout.flush()
    except BrokenPipeError:
        # Who reads no longer loses nothing; Python itself would stumble over it at the end.
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())


def say_drawing(text: str) -> bool:
    """Tell lines of block signs if this terminal can show them; tells whether it could."""
    try:
        text.encode(sys.stdout.encoding or "ascii")
    except UnicodeEncodeError:
        return False
    say(text)
    return True


def say_json(value: object) -> None:
    """Tell one line for a program."""
    say(json.dumps(value, ensure_ascii=False))


def complain(text: str) -> None:
    """Tell what is in the way."""
    sys.stderr.write(text + "\n")
    sys.stderr.flush()
