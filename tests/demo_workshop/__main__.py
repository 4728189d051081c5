"""Writes fixtures/demo: `python tests/demo_workshop`."""

import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
sys.path[:0] = [str(ROOT / "tests"), str(ROOT / "server")]

from demo_workshop.make import DEMO, build, write

write(build(), DEMO)
