"""Drawn pictures of parts, written byte for byte alike on every computer.

The PNG is built here, unpacked and in sixteen shades: packing differs between libraries, and a
picture's name is the digest of its bytes.
"""

import math
import random
import struct
import zlib
from collections.abc import Callable
from typing import Any

from PIL import Image, ImageDraw

WIDTH, HEIGHT, FINE = 256, 192, 4
Draw = ImageDraw.ImageDraw
Sketch = Callable[[Draw, random.Random], None]


def picture(name: str, warm: int = 0) -> bytes:
    """One picture: `sketch` or `sketch fault`; warm tints the metal towards rust or oil."""
    sort, _, fault = name.partition(" ")
    dice = random.Random(name)  # noqa: S311 - the same picture every time
    canvas = Image.new("L", (WIDTH * FINE, HEIGHT * FINE), 58)
    draw = ImageDraw.Draw(canvas)
    _bench(draw, dice)
    SKETCHES[sort](draw, dice)
    if fault:
        FAULTS[fault.split(" ")[0]](draw, dice)
    small = canvas.resize((WIDTH, HEIGHT), Image.Resampling.BOX)
    return _png(small.tobytes(), warm)


def _png(shades: bytes, warm: int) -> bytes:
    palette = bytes(
        channel
        for shade in range(16)
        for channel in (
            min(255, shade * 17 + warm * shade // 5),
            shade * 17,
            min(255, max(0, shade * 17 + 6 - warm * shade // 3)),
        )
    )
    rows = b""
    for y in range(HEIGHT):
        row = shades[y * WIDTH : (y + 1) * WIDTH]
        rows += b"\0" + bytes((row[x] >> 4) << 4 | row[x + 1] >> 4 for x in range(0, WIDTH, 2))
    head = struct.pack(">IIBBBBB", WIDTH, HEIGHT, 4, 3, 0, 0, 0)
    parts = ((b"IHDR", head), (b"PLTE", palette), (b"IDAT", _stored(rows)), (b"IEND", b""))
    return b"\x89PNG\r\n\x1a\n" + b"".join(
        struct.pack(">I", len(data)) + kind + data + struct.pack(">I", zlib.crc32(kind + data))
        for kind, data in parts
    )


def _stored(raw: bytes) -> bytes:
    blocks = [raw[at : at + 65535] for at in range(0, len(raw), 65535)]
    packed = b"".join(
        struct.pack("<BHH", block is blocks[-1], len(block), len(block) ^ 0xFFFF) + block
        for block in blocks
    )
    return b"\x78\x01" + packed + struct.pack(">I", zlib.adler32(raw))


def _bench(draw: Draw, dice: random.Random) -> None:
    for y in range(0, HEIGHT * FINE, 8):
        draw.line((0, y, WIDTH * FINE, y), 52 + dice.randint(0, 18), 8)


def _round(draw: Draw, x: float, y: float, r: float, shade: int) -> None:
    for step in range(8):
        inner = r - step * r / 40
        light = min(250, shade + step * 5)
        draw.ellipse((x - inner, y - inner, x + inner, y + inner), 20 if step == 0 else light)


def _hole(draw: Draw, x: float, y: float, r: float) -> None:
    draw.ellipse((x - r, y - r, x + r, y + r), 18)
    draw.arc((x - r, y - r, x + r, y + r), 20, 200, 120, 6)


def _rod(draw: Draw, spots: list[tuple[float, float]], width: int) -> None:
    for shift, shade in ((0.5, 40), (0.42, 130), (0.25, 190), (0.1, 230)):
        draw.line(spots, shade, int(width * shift * 2), joint="curve")


def _head(draw: Draw, dice: random.Random) -> None:
    draw.rounded_rectangle((60, 180, 964, 590), 40, 150, 30, 10)
    for i in range(6):
        x = 135 + i * 150
        _round(draw, x, 385, 70, 95)
        _hole(draw, x - 24, 365, 30)
        _hole(draw, x + 28, 405, 24)
    for i in range(7):
        for y in (225, 545):
            _hole(draw, 80 + i * 144, y, 15)


def _seat(draw: Draw, dice: random.Random) -> None:
    _round(draw, 512, 384, 320, 120)
    _round(draw, 512, 384, 240, 205)
    _round(draw, 512, 384, 190, 60)
    _hole(draw, 512, 384, 70)


def _piston(draw: Draw, dice: random.Random) -> None:
    _round(draw, 512, 384, 330, 140)
    _round(draw, 512, 384, 300, 170)
    for x in (400, 624):
        draw.chord((x - 110, 180, x + 110, 400), 200, 340, 120, 60, 6)


def _skirt(draw: Draw, dice: random.Random) -> None:
    for i in range(40):
        shade = 70 + int(150 * math.sin(math.pi * (i + 1) / 42))
        draw.rectangle((232 + i * 14, 130, 246 + i * 14, 640), shade)
    for y in (190, 235, 290):
        draw.rectangle((232, y, 792, y + 18), 30)
    _hole(draw, 512, 430, 90)


def _pushrods(draw: Draw, dice: random.Random) -> None:
    for i in range(4):
        y = 150 + i * 160
        _rod(draw, [(90, y), (930, y + dice.randint(-6, 6))], 44)
        _round(draw, 90, y, 34, 170)
        _round(draw, 930, y, 30, 170)


def _bent(draw: Draw, dice: random.Random) -> None:
    curve = [(90 + i * 42.0, 390 + 70 * math.sin(math.pi * i / 20)) for i in range(21)]
    _rod(draw, curve, 48)
    _round(draw, 90, 390, 36, 170)
    _round(draw, 930, 390, 32, 170)
    draw.line((90, 390, 930, 390), 235, 3)


def _valve(draw: Draw, dice: random.Random) -> None:
    _rod(draw, [(120, 384), (760, 384)], 46)
    draw.polygon([(620, 360), (620, 408), (820, 560), (820, 208)], 150, 40)
    draw.rounded_rectangle((815, 190, 870, 578), 20, 200, 40, 8)


def _spring(draw: Draw, dice: random.Random) -> None:
    for x in (300, 724):
        for i in range(8):
            y = 150 + i * 66
            _rod(draw, [(x - 120, y + 40), (x + 120, y)], 40)


def _rocker(draw: Draw, dice: random.Random) -> None:
    _rod(draw, [(180, 430), (512, 350), (850, 420)], 120)
    _round(draw, 512, 360, 120, 160)
    _hole(draw, 512, 360, 62)
    _round(draw, 850, 430, 60, 200)
    _hole(draw, 190, 432, 22)


def _shaft(draw: Draw, dice: random.Random) -> None:
    _rod(draw, [(60, 384), (964, 384)], 110)
    for i in range(7):
        _hole(draw, 110 + i * 134, 384, 16)


def _shells(draw: Draw, dice: random.Random) -> None:
    for i, x in enumerate((290, 734)):
        draw.arc((x - 190, 190, x + 190, 570), 180, 360, 210 - i * 20, 60)
        draw.arc((x - 150, 230, x + 150, 530), 180, 360, 120, 10)


def _crank(draw: Draw, dice: random.Random) -> None:
    _rod(draw, [(40, 384), (984, 384)], 120)
    for i in range(4):
        x, y = 150 + i * 230, 300 if i % 2 else 470
        draw.rounded_rectangle((x - 60, 200, x - 25, 590), 16, 120, 30, 6)
        draw.rounded_rectangle((x + 25, 200, x + 60, 590), 16, 120, 30, 6)
        _round(draw, x, y, 62, 200)


def _gear(draw: Draw, dice: random.Random) -> None:
    for i in range(48):
        angle = 2 * math.pi * i / 48
        x, y = 512 + 330 * math.cos(angle), 384 + 330 * math.sin(angle)
        draw.ellipse((x - 16, y - 16, x + 16, y + 16), 150)
    _round(draw, 512, 384, 318, 150)
    for i in range(6):
        angle = math.pi * i / 3
        _hole(draw, 512 + 170 * math.cos(angle), 384 + 170 * math.sin(angle), 34)
    _hole(draw, 512, 384, 80)


def _bolts(draw: Draw, dice: random.Random) -> None:
    for i in range(5):
        y = 130 + i * 130
        _rod(draw, [(300, y), (900, y)], 42)
        for x in range(620, 900, 14):
            draw.line((x, y - 22, x + 6, y + 22), 70, 5)
        draw.polygon([(200, y - 44), (300, y - 44), (300, y + 44), (200, y + 44)], 190, 30)


def _pump(draw: Draw, dice: random.Random) -> None:
    draw.rounded_rectangle((220, 160, 804, 620), 60, 135, 30, 10)
    _round(draw, 410, 390, 120, 175)
    _round(draw, 620, 390, 120, 175)
    for x in (270, 754):
        for y in (210, 570):
            _hole(draw, x, y, 24)


def _manifold(draw: Draw, dice: random.Random) -> None:
    for i in range(6):
        x = 130 + i * 152
        _rod(draw, [(x, 590), (x, 380), (512, 220)], 80)
        draw.rounded_rectangle((x - 56, 560, x + 56, 650), 14, 140, 30, 8)
        _hole(draw, x, 604, 30)
    _round(draw, 512, 200, 90, 130)


def _block(draw: Draw, dice: random.Random) -> None:
    draw.rounded_rectangle((40, 130, 984, 640), 30, 125, 25, 10)
    for i in range(6):
        _round(draw, 124 + i * 155, 385, 72, 210)
        _hole(draw, 124 + i * 155, 385, 64)


def _pits(draw: Draw, dice: random.Random) -> None:
    for _ in range(26):
        angle, r = dice.uniform(-0.6, 0.7), dice.uniform(195, 235)
        x, y = 512 + r * math.cos(angle), 384 + r * math.sin(angle)
        size = dice.randint(3, 11)
        draw.ellipse((x - size, y - size, x + size, y + size), 25)


def _scores(draw: Draw, dice: random.Random) -> None:
    for _ in range(22):
        x, y = dice.randint(260, 760), dice.randint(160, 330)
        draw.line((x, y, x + dice.randint(-14, 14), y + dice.randint(120, 280)), 40, 3)


def _crack(draw: Draw, dice: random.Random) -> None:
    x, y = 470.0, 300.0
    for _ in range(16):
        nx, ny = x + dice.uniform(4, 18), y + dice.uniform(-16, 20)
        draw.line((x, y, nx, ny), 12, 5)
        x, y = nx, ny


def _wear(draw: Draw, dice: random.Random) -> None:
    for x in (350, 512, 674):
        draw.ellipse((x - 60, 344, x + 60, 424), 240)
        draw.ellipse((x - 44, 352, x + 44, 416), 200)


SKETCHES: dict[str, Any] = {
    "head": _head, "seat": _seat, "piston": _piston, "skirt": _skirt, "pushrods": _pushrods,
    "bent": _bent, "valve": _valve, "spring": _spring, "rocker": _rocker, "shaft": _shaft,
    "shells": _shells, "crank": _crank, "gear": _gear, "bolts": _bolts, "pump": _pump,
    "manifold": _manifold, "block": _block,
}  # fmt: skip
FAULTS: dict[str, Sketch] = {"pits": _pits, "scores": _scores, "crack": _crack, "wear": _wear}
