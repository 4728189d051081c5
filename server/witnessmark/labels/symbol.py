"""The QR symbol of one label: its address in capitals, level H, one fixed mask."""

import qrcode
from qrcode.constants import ERROR_CORRECT_H
from qrcode.util import MODE_ALPHA_NUM, QRData

# A fixed mask saves trying all eight for each label; a test reads labels of every preset back.
MASK = 3
QUIET = 4
# source: ISO/IEC 18004, alphanumeric mode.
ALPHANUMERIC = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:"

Modules = tuple[tuple[bool, ...], ...]
Run = tuple[int, int, int]  # row, first column, length


def address_of(code: str, host: str) -> str:
    """What the symbol says: HTTPS://HOST/L/CODE, all in signs of the alphanumeric mode."""
    return f"HTTPS://{host.upper()}/L/{code}"


def symbol(text: str) -> Modules:
    """The dark modules of the smallest level-H symbol that holds `text`, row by row, no margin.

    `text` has only signs of the alphanumeric alphabet.
    source: ISO/IEC 18004 by the qrcode library; up to 35 signs make version 3, 29 × 29 modules.
    """
    drawing = qrcode.QRCode(error_correction=ERROR_CORRECT_H, border=0, mask_pattern=MASK)
    drawing.add_data(QRData(text, mode=MODE_ALPHA_NUM))
    drawing.make(fit=True)
    return tuple(tuple(bool(dark) for dark in row) for row in drawing.modules)


def runs(modules: Modules) -> list[Run]:
    """Dark stretches as (row, first column, length), so that a row is a few rectangles."""
    found = []
    for row, line in enumerate(modules):
        start = None
        for column, dark in enumerate((*line, False)):
            if dark and start is None:
                start = column
            elif not dark and start is not None:
                found.append((row, start, column - start))
                start = None
    return found
