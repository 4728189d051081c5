"""How long 1 000 labels take, beside an empty sheet of as many pages.

python tests/bench/labels_time.py [--count 1000]
"""

import argparse
import statistics
import sys
import time
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parents[2] / "server"))

from fpdf import FPDF
from witnessmark.labels.face import LabelText
from witnessmark.labels.layout import PRESETS
from witnessmark.labels.sheet import sheet_pdf
from witnessmark.trade import label


def codes(count: int) -> list[str]:
    made = []
    for number in range(count):
        left, signs = number * 7919 * 104729 + 12345, ""
        for _ in range(7):
            left, sign = divmod(left, 32)
            signs += label.ALPHABET[sign]
        made.append(signs + label.check(signs))
    return made


def empty(pages: int) -> None:
    pdf = FPDF(unit="mm", format=(210, 297))
    for _ in range(pages):
        pdf.add_page()
    pdf.output()


def main() -> None:
    asked = argparse.ArgumentParser(description=__doc__)
    asked.add_argument("--count", type=int, default=1000)
    count = asked.parse_args().count
    layout = PRESETS["a4-3x8"]
    labels = [LabelText(code, "Head bolts", "Tray 3") for code in codes(count)]
    full, bare = [], []
    for _ in range(5):
        begun = time.perf_counter()
        sheet_pdf(layout, labels, host="BOKAL.LOCAL:8443")
        full.append(time.perf_counter() - begun)
        begun = time.perf_counter()
        empty(-(-count // layout.places))
        bare.append(time.perf_counter() - begun)
    a, b = statistics.median(full), statistics.median(bare)
    print(f"{count} labels, twins, A4 3 × 8: {a:.2f} s; empty pages {b:.3f} s; ratio {a / b:.0f}")


if __name__ == "__main__":
    main()
