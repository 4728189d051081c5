"""Fasteners that are used once: torque-to-yield bolts, lock tabs, crush washers."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from witnessmark.trade import amounts


@dataclass(frozen=True, slots=True)
class UseCaution:
    """Why a fastener should not be used now, with the signal word of ISO 3864."""

    word: Literal["warning"]
    code: Literal["used-already"]
    uses: int


def use_caution(single_use: bool, uses_before: int) -> UseCaution | None:
    """A caution where a fastener that is used once was used before; None where it may be used.

    uses_before: how often it was tightened to its value in an earlier run. Loosening makes it no
    newer.
    raises: NotACount.
    source: common practice, no source: torque-to-yield fasteners are not used again
    >>> use_caution(single_use=True, uses_before=1).code
    'used-already'
    """
    uses = amounts.count(uses_before, "number of uses")
    return UseCaution("warning", "used-already", uses) if single_use and uses else None
