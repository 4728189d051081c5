"""Ten thousand plausibility checks, each from text to verdict; the aim is a second.

python tests/bench/plausibility.py
"""

import sys
import time
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parents[2] / "server"))

from witnessmark.trade.plausibility import plausibility
from witnessmark.trade.thread_text import parse
from witnessmark.trade.units import Measured

CHECKS = 10_000
AIM_SECONDS = 1.0
CASES = [
    ("60", "N·m", "M10", "10.9", "oiled"),
    ("600", "N·m", "M10x1.25", "10.9", "dry"),
    ("45", "lbf·ft", "7/16-20 UNF", "grade 8", "moly"),
    ("80", "lbf·in", "1/4-20", "5", "oiled"),
]


def main() -> int:
    plausibility(Measured("60", "N·m"), parse("M10"), "10.9")
    began = time.perf_counter()
    for turn in range(CHECKS):
        value, unit, designation, name, state = CASES[turn % len(CASES)]
        plausibility(Measured(value, unit), parse(designation), name, state=state, value_for="dry")
    seconds = time.perf_counter() - began
    print(f"{CHECKS} plausibility checks with their threads read: {seconds:.2f} s")
    print(f"aim {AIM_SECONDS:.0f} s: {'kept' if seconds <= AIM_SECONDS else 'missed'}")
    return 0


if __name__ == "__main__":
    raise SystemExit(main())
