"""Small pieces that the schemas of the headings are built from.

A leaf says what is wrong with a value by one word of trouble.SAYS, so that the schema and the
compiled checker cannot differ about it.
"""

from __future__ import annotations

import re
from typing import Any, ClassVar

from marshmallow import INCLUDE, Schema, ValidationError, fields

from witnessmark.log.ids import UUID7
from witnessmark.log.stamp import STAMP

NUMBER = re.compile(r"-?(?:[0-9]+\.?[0-9]*|\.[0-9]+)")
DIGEST = re.compile(r"[0-9a-f]{64}")
CODE = re.compile(r"[0-9A-HJKMNP-TV-Z]{8}")
SHARE = re.compile(r"0\.[0-9]{4}|1\.0000")
LONGEST_NUMBER = 40
LONGEST_ID = 64
SIDES = 2


class Leaf(fields.Field[Any]):
    """A value that has no fields of its own; `good` is its test as text, for the checker."""

    good: ClassVar[str | None] = None

    def trouble(self, value: object) -> str | None:
        """The sort of trouble with a value, or None."""
        raise NotImplementedError

    def _deserialize(self, value: Any, *_args: Any, **_kwargs: Any) -> Any:
        if sort := self.trouble(value):
            raise ValidationError(sort)
        return value


class Text(Leaf):
    """Any text, also an empty one."""

    good = "type({x}) is str"

    def trouble(self, value: object) -> str | None:
        """Whether it is text."""
        return None if type(value) is str else "text"


class Words(Leaf):
    """Text that says something."""

    good = "type({x}) is str and {x}.strip(BLANKS)"

    def trouble(self, value: object) -> str | None:
        """Whether it is text with more than blanks in it."""
        if type(value) is not str:
            return "text"
        return None if value.strip(BLANKS) else "blank"


class Id(Leaf):
    """The id of a thing, an entry, a fastener or a pass; ASCII, so that all sort it alike."""

    good = "type({x}) is str and 0 < len({x}) <= LONGEST_ID and {x}.isascii() and {x}.isprintable()"

    def trouble(self, value: object) -> str | None:
        """Whether it is text of 1 to 64 ASCII signs."""
        if type(value) is str and 0 < len(value) <= LONGEST_ID and value.isascii():
            return None if value.isprintable() else "id"
        return "id"


class EntryId(Leaf):
    """A UUID of version 7 in lower case."""

    good = "type({x}) is str and UUID7.fullmatch({x})"

    def trouble(self, value: object) -> str | None:
        """Whether it is such an id."""
        return None if type(value) is str and UUID7.fullmatch(value) else "id"


class StampText(Leaf):
    """A stamp of the hybrid clock."""

    good = "type({x}) is str and STAMP.fullmatch({x})"

    def trouble(self, value: object) -> str | None:
        """Whether it is a stamp."""
        return None if type(value) is str and STAMP.fullmatch(value) else "stamp"


class Number(Leaf):
    """A decimal number as typed, kept as text so that its digits survive."""

    good = "type({x}) is str and len({x}) <= LONGEST_NUMBER and NUMBER.fullmatch({x})"

    def trouble(self, value: object) -> str | None:
        """Whether it is text that reads as a decimal number."""
        if type(value) is str and len(value) <= LONGEST_NUMBER and NUMBER.fullmatch(value):
            return None
        return "number"


class Whole(Leaf):
    """A whole number; True and False are none."""

    good = "type({x}) is int"

    def trouble(self, value: object) -> str | None:
        """Whether it is a whole number."""
        return None if type(value) is int else "whole"


class Count(Leaf):
    """A whole number from 1 on."""

    good = "type({x}) is int and {x} > 0"

    def trouble(self, value: object) -> str | None:
        """Whether it is such a number."""
        if type(value) is not int:
            return "whole"
        return None if value > 0 else "least"


class Truth(Leaf):
    """True or false."""

    good = "type({x}) is bool"

    def trouble(self, value: object) -> str | None:
        """Whether it is one of the two."""
        return None if type(value) is bool else "truth"


class Word(Leaf):
    """One of a closed list of words."""

    def __init__(self, *words: str, **kwargs: Any) -> None:
        super().__init__(**kwargs)
        self.words = frozenset(words)

    def trouble(self, value: object) -> str | None:
        """Whether it is on the list."""
        return None if type(value) is str and value in self.words else "word"


class PictureDigest(Leaf):
    """The SHA-256 of a picture in hex, which is its name."""

    good = "type({x}) is str and DIGEST.fullmatch({x})"

    def trouble(self, value: object) -> str | None:
        """Whether it is 64 lower-case hex digits."""
        return None if type(value) is str and DIGEST.fullmatch(value) else "digest"


class Spot(Leaf):
    """A place on a picture: the shares of its width and height, each as text of four digits."""

    good = (
        "type({x}) is list and len({x}) == SIDES and "
        "all(type(share) is str and SHARE.fullmatch(share) for share in {x})"
    )

    def trouble(self, value: object) -> str | None:
        """Whether it is such a place."""
        if type(value) is not list or len(value) != SIDES:
            return "spot"
        well = all(type(share) is str and SHARE.fullmatch(share) for share in value)
        return None if well else "spot"


class LabelCode(Leaf):
    """The eight signs of a label; whether the last one fits is not asked here."""

    good = "type({x}) is str and CODE.fullmatch({x})"

    def trouble(self, value: object) -> str | None:
        """Whether it is eight signs of the labels' alphabet."""
        return None if type(value) is str and CODE.fullmatch(value) else "code"


class Facts(Leaf):
    """An object whose fields are not looked at."""

    good = "type({x}) is dict"

    def trouble(self, value: object) -> str | None:
        """Whether it is an object."""
        return None if type(value) is dict else "object"


class Lines(fields.List[Any]):
    """A list, with the most lines it may have."""

    def __init__(self, of: fields.Field[Any], most: int | None = None, **kwargs: Any) -> None:
        super().__init__(of, **kwargs)
        self.most = most

    def _deserialize(self, value: Any, *args: Any, **kwargs: Any) -> list[Any]:
        if type(value) is not list:
            raise ValidationError("list")
        if self.most is not None and len(value) > self.most:
            raise ValidationError("many")
        return super()._deserialize(value, *args, **kwargs)


class Shape(Schema):
    """An object whose unknown fields are kept: a newer device may know more."""

    class Meta:
        """Nothing is thrown away that is not understood."""

        unknown = INCLUDE


class TextOr(fields.Nested):
    """An object of a shape, or text as an older page kept it."""

    def _deserialize(self, value: Any, *args: Any, **kwargs: Any) -> Any:
        return value if type(value) is str else super()._deserialize(value, *args, **kwargs)


class Measured(Shape):
    """A measured value: digits as typed, and the word of the unit they were read in."""

    value = Number(required=True)
    unit = Words(required=True)


class Photo(Shape):
    """A picture by its digest, and what it shows."""

    photo = PictureDigest(required=True)
    says = Text(allow_none=True)


BLANKS = " \t\n\r\f\v\u00a0\u2003\u2002\u2009\u200a\u3000\u2028\u2029\ufeff"
"""What counts as nothing on both sides; the two languages' own lists differ."""


def nested(
    shape: type[Schema], *, required: bool = False, null: bool = False, data_key: str | None = None
) -> fields.Nested:
    """A field that is an object of this shape."""
    return fields.Nested(
        shape, required=required, allow_none=null, unknown=INCLUDE, data_key=data_key
    )


def photos() -> Lines:
    """The field `photos` of a fact."""
    return Lines(nested(Photo), allow_none=True)
