"""A unit as people write it, found in the closed lists."""

from __future__ import annotations

import re
from typing import Any

from witnessmark.trade.unit_errors import UnitNotTaken, UnitsDiffer, UnitTwoMeanings, UnitUnknown
from witnessmark.trade.unit_spellings import AS_WRITTEN, NOT_TAKEN, SPELLINGS, TWO_MEANINGS
from witnessmark.trade.unit_words import UNIT_WORDS

SAME = str.maketrans(
    {"²": "2", "³": "3", "μ": "u", "µ": "u", "″": '"', "”": '"', "′": "'", "’": "'", "º": "°"}
)
_SQUEEZED_OUT = re.compile(r"[\s·⋅•∙*.^_()\-‐‑–−]")


def _squeezed(text: str) -> str:
    return _SQUEEZED_OUT.sub("", text.lower().translate(SAME))


def _spelled(wanted: str) -> dict[str, str]:
    """Squeezed spelling → word, for one quantity."""
    own = {_squeezed(word): word for word in UNIT_WORDS[wanted]}
    return {each: word for word, each_of in SPELLINGS[wanted].items() for each in each_of} | own


_WORDS = {wanted: _spelled(wanted) for wanted in UNIT_WORDS}


def _either(table: dict[str, dict[tuple[str, str], tuple[str, ...]]]) -> dict[str, Any]:
    return {
        wanted: {each: pair for pair, each_of in pairs.items() for each in each_of}
        for wanted, pairs in table.items()
    }


_EITHER, _EITHER_AS_WRITTEN = _either(TWO_MEANINGS), _either(AS_WRITTEN)


def unit_word(typed: str, wanted: str) -> str:
    """The word of UNIT_WORDS for a unit as people write it, where the quantity is known.

    raises: UnitTwoMeanings ("lb" as a torque, "mPa"), UnitsDiffer ("mm" as a torque),
    UnitNotTaken (kelvin as a temperature), UnitUnknown.
    source: common practice, no source
    >>> unit_word("ft-lbs", "torque"), unit_word("nm", "torque"), unit_word("cc", "volume")
    ('lbf·ft', 'N·m', 'cm³')
    """
    if not isinstance(wanted, str) or wanted not in UNIT_WORDS:
        raise UnitUnknown(unit=wanted)
    if not isinstance(typed, str):
        raise UnitUnknown(unit=typed)
    squeezed = _squeezed(typed).replace("''", '"')
    as_written = _SQUEEZED_OUT.sub("", typed)
    pair = _EITHER_AS_WRITTEN.get(wanted, {}).get(as_written) or _EITHER.get(wanted, {}).get(
        squeezed
    )
    if pair:
        raise UnitTwoMeanings(typed=typed, one=pair[0], other=pair[1])
    if squeezed in _WORDS[wanted]:
        return _WORDS[wanted][squeezed]
    if squeezed in NOT_TAKEN.get(wanted, ()):
        raise UnitNotTaken(unit=typed, words=" or ".join(UNIT_WORDS[wanted]))
    if any(squeezed in words for words in _WORDS.values()):
        raise UnitsDiffer(unit=typed, other=next(iter(UNIT_WORDS[wanted])))
    raise UnitUnknown(unit=typed)
