"""Labels from the terminal: a sheet of blank ones as PDF."""

from argparse import Namespace
from urllib.parse import urlsplit

from witnessmark.cli.beside import beside, label_address
from witnessmark.cli.errors import SheetNotSo
from witnessmark.cli.folder import data_folder
from witnessmark.cli.say import say
from witnessmark.labels.face import LabelText
from witnessmark.labels.layout import PRESETS, layout_from
from witnessmark.labels.sheet import sheet_pdf
from witnessmark.trust.folder import write_whole

MOST = 5000


def labels(wished: Namespace) -> None:
    """Write a sheet of fresh labels and record that their codes are printed."""
    if wished.layout == "list":
        for word, layout in PRESETS.items():
            say(f"{word}: {layout.name}")
        return
    layout = layout_from(wished.layout)
    if not 1 <= wished.start <= layout.places:
        raise SheetNotSo(trouble=f"the sheet has places 1 to {layout.places}")
    count = layout.places - wished.start + 1 if wished.count is None else wished.count
    if not 1 <= count <= MOST:
        raise SheetNotSo(trouble=f"{count} is no number of labels from 1 to {MOST}")
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
        kept = {"preset": wished.layout, "start": wished.start, "cut_marks": wished.cut_marks}
        store.record_sheet(codes, kept)
    write_whole(wished.output, pdf)
    say(f"Labels made: {count}, in {wished.output}. Print it at 100 %, not fitted to the page.")
