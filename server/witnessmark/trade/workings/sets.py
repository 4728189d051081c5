"""Set: the best n of typed numbers, by one measure or two, with the next best spare."""

from __future__ import annotations

from witnessmark.trade import sets, units
from witnessmark.trade.sets import Choice, Measure, Piece
from witnessmark.trade.units import Quantity
from witnessmark.trade.workings import lines
from witnessmark.trade.workings.cautions import Caution, caution
from witnessmark.trade.workings.given import Given
from witnessmark.trade.workings.working import Ask, Line, Result, Working

QUANTITIES = ("length", "mass", "force", "volume", "flow", "pressure", "spring-rate", "angle")
MOST_SPARES = 10


def work(given: Given) -> Result:
    """Which pieces, what they span, who comes next, and who was turned away."""
    names = [name for name in ("size", "second") if given.has(name)]
    measures = [_measure(given, name, alone=len(names) == 1) for name in names]
    columns = [given.amounts(name) for name in names]
    pieces = [
        Piece(str(place), sizes) for place, sizes in enumerate(zip(*columns, strict=True), start=1)
    ]
    found = sets.best(pieces, measures, given.count("choose"))
    return Result(
        (
            lines.numbers("chosen", [int(name) for name in found.chosen]),
            *_spreads(given, "spread", names, found.spreads),
            *_next(given, names, found),
        ),
        _outside(found),
    )


def _measure(given: Given, name: str, *, alone: bool) -> Measure:
    """Two measures are held against each other by what a spread of each is worth."""
    if name == "size":
        lower, upper = given.amount_or_none("least"), given.amount_or_none("most")
        return Measure(name, 1.0, None if alone else given.amount("worth"), lower, upper)
    return Measure(name, 1.0, given.amount("second-worth"))


def _spreads(
    given: Given, word: str, names: list[str], spreads: tuple[Quantity, ...]
) -> tuple[Line, ...]:
    told = []
    for name, spread in zip(names, spreads, strict=True):
        unit = given.unit(name)
        size = units.magnitude(spread, unit)
        line = word if name == "size" else f"second-{word}"
        told.append(lines.amount(line, size, unit, figures=2, decimals=given.decimals(name)))
    return tuple(told)


def _next(given: Given, names: list[str], found: Choice) -> tuple[Line, ...]:
    if not found.spares:
        return ()
    first = found.spares[0]
    ranked = [int(each.name) for each in found.spares[:MOST_SPARES]]
    return (
        *_spreads(given, "spread-with-next", names, first.spreads),
        lines.numbers("spares", ranked),
    )


def _outside(found: Choice) -> tuple[Caution, ...]:
    if not found.outside:
        return ()
    return (caution("set-outside", pieces=", ".join(each.name for each in found.outside)),)


SET = Working(
    name="set",
    says="The best so many of typed numbers, what they span, and the next best spare.",
    formula="least of: spread = largest − smallest; with two measures "
    "spread ÷ its worth + second spread ÷ its worth",
    source="Exact search, proved against trying every choice.",
    asks=(
        Ask("choose", "count"),
        Ask("quantity", "choice", choices=QUANTITIES, default="length"),
        Ask("size", "any", follows="quantity", many=True, row="piece", signed=True),
        Ask("least", "any", follows="quantity", optional=True, signed=True),
        Ask("most", "any", follows="quantity", optional=True, signed=True),
        Ask("second-quantity", "choice", choices=QUANTITIES, optional=True),
        Ask(
            "second", "any", follows="second-quantity", many=True, row="piece", optional=True,
            signed=True,
        ),
        Ask("worth", "any", follows="quantity", optional=True),
        Ask("second-worth", "any", follows="second-quantity", optional=True),
    ),
    work=work,
    blames={
        "sets-too-few": "choose",
        "sets-too-few-inside": "choose",
        "sets-limits-crossed": "most",
    },
)  # fmt: skip
