"""Where labels lie on a page: a grid in millimetres, and the grids sold under their measures."""

import math
from dataclasses import dataclass
from typing import Any

from witnessmark.errors import WitnessmarkError

LONGEST_SIDE = 1200.0
SMALLEST = 10.0
MOST_PLACES = 500


class GridImpossible(WitnessmarkError):
    """A grid that does not lie on its page."""

    code = "label-grid-impossible"
    says = "This grid can't be printed: {why}."
    next_step = "Measure the sheet again and change the number, or choose a ready grid."


@dataclass(frozen=True, slots=True)
class Layout:
    """A grid of equal labels on one page; every length in millimetres from the top left corner.

    raises: GridImpossible when a label would lie off the page or over its neighbour.
    """

    name: str
    page_width: float
    page_height: float
    left: float
    top: float
    columns: int
    rows: int
    width: float
    height: float
    pitch_x: float
    pitch_y: float

    def __post_init__(self) -> None:
        """Refuse what no sheet can be."""
        why = self._fault()
        if why:
            raise GridImpossible(why=why)

    @property
    def places(self) -> int:
        """How many labels one page holds."""
        return self.columns * self.rows

    def corner(self, place: int) -> tuple[float, float]:
        """Left and top edge, in mm, of the label at `place` (0 first, then along the row)."""
        row, column = divmod(place, self.columns)
        return self.left + column * self.pitch_x, self.top + row * self.pitch_y

    def _fault(self) -> str | None:
        slack = 0.05
        right = self.left + (self.columns - 1) * self.pitch_x + self.width
        foot = self.top + (self.rows - 1) * self.pitch_y + self.height
        checks = (
            (self.columns < 1 or self.rows < 1, "it has no rows or no columns"),
            (self.places > MOST_PLACES, f"it has more than {MOST_PLACES} labels on a page"),
            (min(self.width, self.height) < SMALLEST, f"a label is under {SMALLEST:g} mm"),
            (max(self.page_width, self.page_height) > LONGEST_SIDE, "the page is over 1.2 m long"),
            (self.left < 0 or self.top < 0, "a margin is less than nothing"),
            (right > self.page_width + slack, "the columns are wider than the page"),
            (foot > self.page_height + slack, "the rows are longer than the page"),
            (self.columns > 1 and self.pitch_x < self.width - slack, "columns lie over each other"),
            (self.rows > 1 and self.pitch_y < self.height - slack, "rows lie over each other"),
        )
        return next((why for wrong, why in checks if wrong), None)


def _grid(  # noqa: PLR0917 - a table of grids reads best by place
    name: str,
    page: tuple[float, float],
    corner: tuple[float, float],
    counts: tuple[int, int],
    label: tuple[float, float],
    pitch: tuple[float, float] | None = None,
) -> Layout:
    step = pitch or label
    return Layout(name, *page, *corner, *counts, *label, *step)


def _roll(width: float, height: float, name: str) -> Layout:
    return _grid(name, (width, height), (0, 0), (1, 1), (width, height))


A4 = (210.0, 297.0)
LETTER = (215.9, 279.4)

PRESETS: dict[str, Layout] = {
    "a4-3x8": _grid("A4, 3 × 8, 70 × 37 mm", A4, (0, 0.5), (3, 8), (70, 37)),
    "a4-3x7": _grid(
        "A4, 3 × 7, 63.5 × 38.1 mm", A4, (7.25, 15.15), (3, 7), (63.5, 38.1), (66, 38.1)
    ),
    "a4-2x7": _grid(
        "A4, 2 × 7, 99.1 × 38.1 mm", A4, (4.65, 15.15), (2, 7), (99.1, 38.1), (101.6, 38.1)
    ),
    "a4-4x10": _grid("A4, 4 × 10, 48.5 × 25.4 mm", A4, (8, 21.5), (4, 10), (48.5, 25.4)),
    "letter-3x10": _grid(
        "Letter, 3 × 10, 66.7 × 25.4 mm",
        LETTER,
        (4.75, 12.7),
        (3, 10),
        (66.7, 25.4),
        (69.85, 25.4),
    ),
    "letter-2x5": _grid(
        "Letter, 2 × 5, 101.6 × 50.8 mm",
        LETTER,
        (4.15, 12.7),
        (2, 5),
        (101.6, 50.8),
        (106.0, 50.8),
    ),
    "50x30": _roll(50, 30, "Roll, 50 × 30 mm"),
    "62x29": _roll(62, 29, "Tape, 62 × 29 mm"),
    "62x40": _roll(62, 40, "Tape, 62 × 40 mm"),
    "100x50": _roll(100, 50, "Roll, 100 × 50 mm"),
}


def layout_from(wanted: str | dict[str, Any]) -> Layout:
    """The ready grid of that id, or the grid described by its millimetres.

    A dict has page_width, page_height, left, top, columns, rows, width, height and, when rows or
    columns have gaps, pitch_x and pitch_y.
    raises: GridImpossible.
    """
    if isinstance(wanted, str):
        if wanted not in PRESETS:
            raise GridImpossible(why=f"no ready grid is called {wanted[:40]}")
        return PRESETS[wanted]
    lengths = {
        key: _number(wanted, key)
        for key in ("page_width", "page_height", "left", "top", "width", "height")
    }
    counts = {key: int(_number(wanted, key)) for key in ("columns", "rows")}
    pitch_x = _number(wanted, "pitch_x", lengths["width"])
    pitch_y = _number(wanted, "pitch_y", lengths["height"])
    return Layout(
        name="own grid",
        **lengths,
        columns=counts["columns"],
        rows=counts["rows"],
        pitch_x=pitch_x,
        pitch_y=pitch_y,
    )


def _number(wanted: dict[str, Any], key: str, otherwise: float | None = None) -> float:
    given = wanted.get(key, otherwise)
    if isinstance(given, str):
        given = _typed(given, key)
    if isinstance(given, bool) or not isinstance(given, int | float) or math.isnan(given):
        raise GridImpossible(why=f"{key.replace('_', ' ')} is no number")
    if abs(given) > LONGEST_SIDE:
        raise GridImpossible(why=f"{key.replace('_', ' ')} is out of reason")
    return float(given)


def _typed(text: str, key: str) -> float:
    try:
        return float(text.strip().replace(",", "."))
    except ValueError:
        raise GridImpossible(why=f"{key.replace('_', ' ')} is no number") from None
