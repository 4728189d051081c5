"""A sheet of labels as a PDF with exact millimetres."""

from collections.abc import Callable, Sequence
from pathlib import Path

from fpdf import FPDF, ViewerPreferences

from witnessmark.labels.face import EDGE, MM, LabelText, draw_face
from witnessmark.labels.layout import Layout

FONTS = Path(__file__).parent / "fonts"
CUT = 3.0


def sheet_pdf(
    layout: Layout,
    labels: Sequence[LabelText],
    *,
    host: str,
    start: int = 1,
    cut_marks: bool = False,
    progress: Callable[[int, int], None] | None = None,
) -> bytes:
    """The PDF of these labels in order, the first at place `start` (1 is the top left).

    `host` is the computer's name and port as the address has it; `progress(done, of)` is called
    after each page. Symbols are vector rectangles of 0.6 mm modules (0.8 where 40 mm high).
    """
    pdf = _new(layout)
    place = max(0, min(start - 1, layout.places - 1))
    pdf.add_page()
    for done, label in enumerate(labels):
        if place == layout.places:
            pdf.add_page()
            place = 0
            if progress:
                progress(done, len(labels))
        draw_face(pdf, layout, layout.corner(place), label, host)
        if cut_marks:
            _cut_marks(pdf, layout, place)
        place += 1
    if progress:
        progress(len(labels), len(labels))
    return bytes(pdf.output())


def test_page(layout: Layout) -> bytes:
    """One page with the outline of every label and a rule of 100 mm, to check the printer."""
    pdf = _new(layout)
    pdf.add_page()
    pdf.set_line_width(0.2)
    for place in range(layout.places):
        left, top = layout.corner(place)
        pdf.rect(left, top, layout.width, layout.height)
    length = min(100.0, layout.page_width - layout.left - 2 * EDGE)
    left, top = layout.corner(0)
    left, top = left + EDGE, top + layout.height / 2
    pdf.line(left, top, left + length, top)
    for end in (left, left + length):
        pdf.line(end, top - 2, end, top + 2)
    pdf.set_font("words", size=3 * MM)
    pdf.text(left + 1, top - 1, f"{length:g} mm. Print at 100 %, then measure.")
    return bytes(pdf.output())


def _new(layout: Layout) -> FPDF:
    pdf = FPDF(unit="mm", format=(layout.page_width, layout.page_height))
    pdf.set_auto_page_break(False)
    pdf.set_margin(0)
    pdf.add_font("figures", fname=FONTS / "figures.ttf")
    pdf.add_font("words", fname=FONTS / "words.ttf")
    # Viewers that honour it then print without scaling.
    pdf.viewer_preferences = ViewerPreferences(print_scaling="None")
    return pdf


def _cut_marks(pdf: FPDF, layout: Layout, place: int) -> None:
    left, top = layout.corner(place)
    pdf.set_line_width(0.1)
    for x, inward in ((left, 1), (left + layout.width, -1)):
        for y, down in ((top, 1), (top + layout.height, -1)):
            pdf.line(x, y, x + inward * CUT, y)
            pdf.line(x, y, x, y + down * CUT)
