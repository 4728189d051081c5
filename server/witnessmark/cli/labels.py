"""Labels from the terminal: a sheet of blank ones as PDF."""

from argparse import Namespace
from urllib.parse import urlsplit

from witnessmark.cli.beside import beside, label_address
from witnessmark.cli.errors import SheetNotSo
from witnessmark.cli.folder import data_folder
from witnessmark.cli.grid import own_grid
from witnessmark.cli.say import say
from witnessmark.labels.face import LabelText
from witnessmark.labels.layout import PRESETS, Layout, layout_from
from witnessmark.labels.sheet import sheet_pdf, test_page
from witnessmark.trust.folder import write_whole

MOST = 5000


def labels(wished: Namespace) -> None:
    """Write a sheet of fresh labels and record that their codes are printed."""
    if wished.layout == "list":
        for word, layout in PRESETS.items():
            say(f"{word}: {layout.name}")
        return
    grid = own_grid(wished)
    layout = layout_from(grid or wished.layout)
    if wished.test_page:
        write_whole(wished.output, test_page(layout))
        say(f"Test page made: {wished.output}. Print it at 100 %, and lay it over a label sheet.")
        return
    count = _count(wished, layout)
    kept: dict[str, object] = {"grid": grid} if grid else {"preset": wished.layout}
    kept |= {"start": wished.start, "cut_marks": wished.cut_marks}
    with beside(wished) as store:
        host = urlsplit(label_address(store, data_folder(wished.data))).netloc
        codes = store.fresh_codes(count)
        pdf = sheet_pdf(
            layout,
            [LabelText(code) for code in codes],
            host=host.upper(),
            start=wished.start,
            cut_marks=wished.cut_marks,
        )
        # Recorded before it is written: a code may be lost to a full disk, never printed twice.
        store.record_sheet(codes, kept)
    write_whole(wished.output, pdf)
    say(f"Labels made: {count}, in {wished.output}. Print it at 100 %, not fitted to the page.")


def _count(wished: Namespace, layout: Layout) -> int:
    """How many labels, one sheet where nobody said."""
    if not 1 <= wished.start <= layout.places:
        raise SheetNotSo(trouble=f"the sheet has places 1 to {layout.places}")
    count = layout.places - wished.start + 1 if wished.count is None else wished.count
    if not 1 <= count <= MOST:
        raise SheetNotSo(trouble=f"{count} is no number of labels from 1 to {MOST}")
    return int(count)
