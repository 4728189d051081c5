"""All headings, found in the folder headings; a heading needs no line anywhere else."""

from __future__ import annotations

from collections.abc import Iterable
from importlib import import_module
from pkgutil import iter_modules

from witnessmark.errors import WitnessmarkError
from witnessmark.log import headings
from witnessmark.log.heading import Heading


class HeadingDoubled(WitnessmarkError):
    """Two modules claim one heading."""

    code = "heading-doubled"
    says = "Two modules record under the heading {word}."
    next_step = "Rename one of them."


def collected(found: Iterable[Heading]) -> dict[str, Heading]:
    """Headings by their word.

    raises: HeadingDoubled when two have the same.
    """
    by_word: dict[str, Heading] = {}
    for heading in found:
        if heading.word in by_word:
            raise HeadingDoubled(word=heading.word)
        by_word[heading.word] = heading
    return by_word


HEADINGS = collected(
    import_module(f"{headings.__name__}.{module.name}").HEADING
    for module in iter_modules(headings.__path__)
)
