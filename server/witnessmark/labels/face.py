"""What one label looks like: symbol, twin where there is room, code, name, holder, a line."""

from dataclasses import dataclass
from functools import cache

from fpdf import FPDF

from witnessmark.labels.layout import Layout
from witnessmark.labels.symbol import QUIET, Run, address_of, runs, symbol

EDGE = 5.0  # printers don't print nearer to the edge of a sheet
TWIN_FROM = 66.0
MODULE, MODULE_TALL, TALL = 0.6, 0.8, 40.0
CAP = 0.7  # height of a capital of the figure face, as a share of its size
FIGURES, FIGURES_LEAST = 5.0, 3.5
NAME, HOLDER, LEADING = 3.0, 2.6, 1.2
LINE_TO_WRITE = 5.0
MM = 72 / 25.4  # points in a millimetre


@dataclass(frozen=True, slots=True)
class LabelText:
    """What one label says beside its symbol: the code, and name and holder when they are known."""

    code: str
    name: str = ""
    holder: str = ""


@dataclass(frozen=True, slots=True)
class Room:
    """The part of a label that is left for words: left and top edge, width, height, in mm."""

    left: float
    top: float
    width: float
    height: float


def draw_face(
    pdf: FPDF, layout: Layout, corner: tuple[float, float], label: LabelText, host: str
) -> None:
    """Draw one label with its top left corner at `corner`, in mm."""
    modules = symbol(address_of(label.code, host))
    left, top = corner
    module = _module(layout, len(modules))
    side = module * len(modules)
    x, y = left + EDGE, top + (layout.height - side) / 2
    dark = runs(modules)
    _draw_symbol(pdf, dark, x, y, module)
    if layout.width >= TWIN_FROM:
        x += side + QUIET * module
        _draw_symbol(pdf, dark, x, y, module)
    words = x + side + QUIET * module
    inset = min(3.0, layout.height / 12)
    _draw_words(
        pdf,
        Room(words, top + inset, left + layout.width - 3.0 - words, layout.height - 2 * inset),
        label,
    )


def _module(layout: Layout, count: int) -> float:
    """The module in mm: the ready size, smaller only where the label is too low for it."""
    wanted = MODULE_TALL if layout.height >= TALL else MODULE
    return min(wanted, layout.height / (count + 2 * QUIET))


def _draw_symbol(pdf: FPDF, dark: list[Run], left: float, top: float, module: float) -> None:
    """Fill the dark runs as one path: half a thousand labels are then written in a second."""
    scale = module * MM
    x0, y0 = left * MM, (pdf.h - top) * MM
    path = [
        f"{x0 + first * scale:.3f} {y0 - (row + 1) * scale:.3f} {length * scale:.3f} {scale:.3f} re"
        for row, first, length in dark
    ]
    # The library draws rectangles one call at a time; one operator for all is quick.
    pdf._out("q 0 g " + " ".join(path) + " f Q")


def _draw_words(pdf: FPDF, room: Room, label: LabelText) -> None:
    y = _draw_code(pdf, room, [label.code[:4], label.code[4:]])
    foot = room.top + room.height
    holder = HOLDER * LEADING if label.holder else 0.0
    name_lines = min(2, int((foot - y - holder) / (NAME * LEADING)))
    y = _draw_text(pdf, Room(room.left, y, room.width, foot - y), label.name, NAME, name_lines)
    y = _draw_text(pdf, Room(room.left, y, room.width, foot - y), label.holder, HOLDER, 1)
    if foot - y >= LINE_TO_WRITE:
        pdf.set_line_width(0.15)
        pdf.line(room.left, foot - 1.0, room.left + room.width, foot - 1.0)


def _draw_text(pdf: FPDF, room: Room, text: str, size: float, most: int) -> float:
    """Write up to `most` lines of `size` mm, the last one ending in … when more would follow."""
    lines = _lines(pdf, text, size, room.width)
    shown = lines[: max(0, min(most, int(room.height / (size * LEADING))))]
    if shown and len(shown) < len(lines):
        shown[-1] = shown[-1][:-1].rstrip(" ,") + "…"
    y = room.top
    for line in shown:
        y += size * LEADING
        pdf.text(room.left, y - size * 0.25, line)
    return y


def _draw_code(pdf: FPDF, room: Room, groups: list[str]) -> float:
    """Write the code as large as it fits, in one line or two; returns the y below it."""
    together = " ".join(groups)
    for cap in (FIGURES, 4.5, 4.0, FIGURES_LEAST):
        for lines in ([together], groups):
            pdf.set_font("figures", size=cap / CAP * MM)
            pdf.set_char_spacing(0.06 * cap / CAP * MM)
            width = max(pdf.get_string_width(line) for line in lines)
            if width <= room.width and len(lines) * (cap + 1.4) <= room.height:
                return _write_code(pdf, room, lines, cap)
    return _write_code(pdf, room, groups, FIGURES_LEAST)


def _write_code(pdf: FPDF, room: Room, lines: list[str], cap: float) -> float:
    pdf.set_font("figures", size=cap / CAP * MM)
    y = room.top
    for line in lines:
        y += cap
        pdf.text(room.left, y, line)
        y += 1.4
    pdf.set_char_spacing(0)
    return y


def _lines(pdf: FPDF, text: str, size: float, width: float) -> list[str]:
    """Break `text` into lines no wider than `width` mm; a word that is too long is cut."""
    pdf.set_font("words", size=size * MM)
    lines: list[str] = []
    for word in _known(text).split():
        grown = f"{lines[-1]} {word}" if lines else word
        if lines and pdf.get_string_width(grown) <= width:
            lines[-1] = grown
            continue
        while len(word) > 1 and pdf.get_string_width(word) > width:
            word = word[:-1]  # noqa: PLW2901
        lines.append(word)
    return lines


def _known(text: str) -> str:
    """The text with signs the printed face lacks shown as a question mark."""
    return "".join(sign if ord(sign) in _signs() else "?" if sign.strip() else " " for sign in text)


@cache
def _signs() -> frozenset[int]:
    spans = ((0x20, 0x7E), (0xA0, 0x24F), (0x370, 0x3FF), (0x400, 0x4FF), (0x1E00, 0x1EFF))
    few = "‐‑‒–—―‘’‚“”„†‡•…‰€№™←↑→↓−≠≤≥"
    return frozenset(code for a, b in spans for code in range(a, b + 1)) | {ord(s) for s in few}
