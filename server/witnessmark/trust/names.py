"""The computer's name on the home network: short, sayable, chosen once and then kept."""

import re
import secrets
from collections.abc import Callable, Iterator

from witnessmark.trust.errors import NameNotFit
from witnessmark.trust.folder import TrustFolder, write_whole

# Letters that are told apart when heard or read, and give no word that anybody minds.
CONSONANTS = "bdgklmnrt"
VOWELS = "aeiou"
PATTERN = "cvcvc"
# Five letters keep the address on a label at 35 signs, so that its symbol stays small.
LONGEST = 5
FITS = re.compile(f"[a-z]{{1,{LONGEST}}}")
TRIES = 8


def names(choose: Callable[[str], str] = secrets.choice) -> Iterator[str]:
    """Sayable names without end."""
    while True:
        yield "".join(choose(CONSONANTS if sign == "c" else VOWELS) for sign in PATTERN)


def checked(name: str) -> str:
    """The name in lower case without `.local`, or a refusal that says what fits."""
    bare = name.strip().lower().removesuffix(".local")
    if not FITS.fullmatch(bare):
        raise NameNotFit(name=name, longest=LONGEST)
    return bare


def kept_name(
    folder: TrustFolder,
    wished: str | None = None,
    is_taken: Callable[[str], bool] = lambda _: False,
    offered: Iterator[str] | None = None,
) -> str:
    """The name kept in the folder; at first start the wished one, else one nobody has."""
    if wished is not None:
        write_whole(folder.name, checked(wished).encode())
    if not folder.name.exists():
        write_whole(folder.name, _free_name(is_taken, offered or names()).encode())
    return checked(folder.name.read_text(encoding="utf-8"))


def _free_name(is_taken: Callable[[str], bool], offered: Iterator[str]) -> str:
    """The first offered name nobody answers to; after some tries, simply the next one."""
    for _ in range(TRIES):
        name = next(offered)
        if not is_taken(name):
            return name
    return next(offered)
