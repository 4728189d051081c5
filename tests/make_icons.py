"""Draws the icons of the page: a bolt head with the stripe of paint across its edge.

Run `python tests/make_icons.py` after changing a colour; the files lie in pwa/icons.
"""

import math
from pathlib import Path

from PIL import Image, ImageDraw

ICONS = Path(__file__).parents[1] / "pwa" / "icons"
GROUND = "#1a2228"
HEAD = "#dfe6ea"
WASHER = "#82919c"
PAINT = "#e4007c"
LEAN = math.radians(38)
SMOOTH = 4


def hexagon(middle: float, reach: float) -> list[tuple[float, float]]:
    """Corners of a bolt head, one flat on top."""
    turns = [math.radians(60 * corner) for corner in range(6)]
    return [(middle + reach * math.cos(turn), middle + reach * math.sin(turn)) for turn in turns]


def stripe(middle: float, reach: float) -> list[tuple[float, float]]:
    """A bar that leans, begins on the head and ends on the part under it: it is not centred."""
    along = (math.sin(LEAN), -math.cos(LEAN))
    aside = (math.cos(LEAN), math.sin(LEAN))
    corners = [(0.1, -0.13), (1.34, -0.13), (1.34, 0.13), (0.1, 0.13)]
    return [
        (
            middle + reach * (out * along[0] + side * aside[0]),
            middle + reach * (out * along[1] + side * aside[1]),
        )
        for out, side in corners
    ]


def icon(size: int, share: float) -> Image.Image:
    """The mark on its ground; `share` is how much of half the picture the head reaches."""
    big = size * SMOOTH
    picture = Image.new("RGB", (big, big), GROUND)
    draw = ImageDraw.Draw(picture)
    middle, reach = big / 2, big / 2 * share
    ring = reach * 1.12
    draw.ellipse((middle - ring, middle - ring, middle + ring, middle + ring), fill=WASHER)
    draw.polygon(hexagon(middle, reach), fill=HEAD)
    draw.polygon(stripe(middle, reach), fill=PAINT)
    return picture.resize((size, size), Image.Resampling.LANCZOS).quantize(64)


WANTED = {
    "any-192.png": (192, 0.70),
    "any-512.png": (512, 0.70),
    "maskable-512.png": (512, 0.54),
    "touch-180.png": (180, 0.66),
}


def main() -> None:
    """Writes all of them."""
    ICONS.mkdir(exist_ok=True)
    for name, (size, share) in WANTED.items():
        icon(size, share).save(ICONS / name, optimize=True)


if __name__ == "__main__":
    main()
