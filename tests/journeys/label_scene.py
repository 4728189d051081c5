"""Our own printed labels as the camera of a phone at the bench sees them."""

from pathlib import Path
from typing import Any

import numpy as np
import pypdfium2
import zxingcpp

DPI = 200
WIDE_MM, HIGH_MM, ACROSS = 70, 37, 3


def printed_labels(pdf: Path, count: int) -> list[tuple[str, Any]]:
    """The first labels of a sheet of 3 x 8: the code another reader reads, and a still of each."""
    page = pypdfium2.PdfDocument(pdf)[0].render(scale=DPI / 72).to_numpy()[:, :, :3]
    wide, high = int(WIDE_MM / 25.4 * DPI), int(HIGH_MM / 25.4 * DPI)
    labels = []
    for place in range(count):
        row, column = divmod(place, ACROSS)
        top, left = row * HIGH_MM / 25.4 * DPI, column * WIDE_MM / 25.4 * DPI
        printed = page[int(top) : int(top) + high, int(left) : int(left) + wide]
        found = zxingcpp.read_barcodes(printed, formats=zxingcpp.BarcodeFormat.QRCode)[0]
        labels.append((found.text[-8:], on_the_bench(printed)))
    return labels


def on_the_bench(printed: Any) -> Any:
    """The label in the middle of a grey bench top."""
    still = np.full((720, 1280, 3), 96, np.uint8)
    top, left = (720 - printed.shape[0]) // 2, (1280 - printed.shape[1]) // 2
    still[top : top + printed.shape[0], left : left + printed.shape[1]] = printed
    return still
