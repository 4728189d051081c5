"""Cautions of the workings: a signal word, what may happen, and how to avoid it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

SAYS: Mapping[str, tuple[str, str]] = {
    "adapter-starts-at": (
        "caution",
        "The wrench starts at {least}, so it cannot be set to {setting}. Take a smaller wrench.",
    ),
    "adapter-ends-at": (
        "caution",
        "The wrench ends at {most}, so it cannot be set to {setting}. Take a larger wrench.",
    ),
    "adapter-grip": (
        "notice",
        "Pull at the middle of the grip, where the length was measured, and keep the angle. "
        "Otherwise something else arrives at the bolt.",
    ),
    "clearance-outside": (
        "caution",
        "{value} lies outside the window {window}.",
    ),
    "clearance-close": (
        "caution",
        "Too close to call: these readings are sure to ±{sure} only. Measure again, or "
        "with a finer instrument.",
    ),
    "clearance-narrow": (
        "caution",
        "The window {window} is narrower than these readings can prove. Use a finer instrument.",
    ),
    "clearance-digits": (
        "notice",
        "Only the last digit typed is doubted here. Hand, warmth and instrument add more: "
        "type what each reading is sure to.",
    ),
    "ring-gap-small": (
        "caution",
        "The gap is smaller than usual. A ring whose ends meet when hot breaks or scores the bore.",
    ),
    "ring-gap-large": (
        "notice",
        "The gap is larger than usual. Look at ring, bore and place again.",
    ),
    "ring-gap-manual": (
        "notice",
        "The manual says how wide the gap must be, and often more for the second ring.",
    ),
    "fit-unusual": (
        "notice",
        "{value} is not what such a fit usually has ({usual}, rule of thumb). Measure "
        "again; the manual decides.",
    ),
}
"""Code → signal word of ISO 3864 and sentence, filled in with facts."""


@dataclass(frozen=True, slots=True)
class Caution:
    """One caution about a result."""

    word: str
    code: str
    facts: Mapping[str, str]

    @property
    def says(self) -> str:
        """The sentence with its facts filled in."""
        return SAYS[self.code][1].format(**self.facts)

    def told(self) -> dict[str, object]:
        """The caution as plain facts for the wire."""
        return {
            "word": self.word,
            "code": self.code,
            "facts": dict(self.facts),
            "says": self.says,
        }


def caution(code: str, **facts: str) -> Caution:
    """A caution by its code."""
    return Caution(SAYS[code][0], code, facts)
