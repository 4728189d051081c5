"""What a heading is: the word, the shape of its body, and how its entries merge."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field
from typing import Any

from marshmallow import Schema

from witnessmark.log.checker import Check, compiled
from witnessmark.log.merge import Merge


@dataclass(frozen=True, slots=True)
class Heading:
    """One heading; `names` where an entry says what kind of thing its `about` is."""

    word: str
    schema: type[Schema]
    merge: Merge
    v: int = 1
    names: bool = False
    whose: Callable[[dict[str, Any]], str] | None = None
    check: Check = field(init=False)

    def __post_init__(self) -> None:
        """The checker is made once, at import."""
        object.__setattr__(self, "check", compiled(self.schema))

    def spoken(self, body: dict[str, Any]) -> str:
        """What an entry is about, as a person would call it in a refusal."""
        return self.whose(body) if self.whose else f"this {self.word.replace('-', ' ')}"


def fastener(body: dict[str, Any]) -> str:
    """The fastener of a pull or a touch, by its id in the programme."""
    named = body.get("fastener")
    return f"fastener {named}" if isinstance(named, str) and named else "this fastener"
