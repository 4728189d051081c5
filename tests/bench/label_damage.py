"""Labels as a printer makes them, and what a garage does to their paper."""

from collections.abc import Callable
from dataclasses import dataclass, replace

import cv2
import numpy as np
import qrcode
from qrcode.util import MODE_ALPHA_NUM, QRData

SIGNS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ"
ADDRESS = "HTTPS://SHED1.LOCAL:8443/L/"
LEVELS = {"L": 1, "M": 0, "Q": 3, "H": 2}
MODULE = 24  # pixels of the drawing per module
QUIET = 4  # modules of empty margin
PAPER, INK = 245, 18
GREASE = (22.0, 28.0, 36.0)  # blue, green, red

Rng = np.random.Generator
Image = np.ndarray


@dataclass(frozen=True, slots=True)
class Label:
    """What is printed: the code once or twice side by side, and in large type below."""

    code: str
    address: str = ADDRESS
    level: str = "H"
    symbols: int = 1


@dataclass(frozen=True, slots=True)
class Drawing:
    """A printed label: its picture, where there is paper (0 to 1), and its symbols' places."""

    image: Image
    paper: Image
    modules: int
    lefts: tuple[int, ...]  # left edge of each symbol in pixels; all begin QUIET modules down

    @property
    def size(self) -> int:
        """Side of one symbol in pixels."""
        return self.modules * MODULE

    @property
    def span(self) -> tuple[int, int]:
        """Left and right end of all symbols together, in pixels."""
        return self.lefts[0], self.lefts[-1] + self.size


def random_code(rng: Rng) -> str:
    """Seven random signs and the check sign: the sum of sign i times alpha^i is zero."""
    signs = [int(sign) for sign in rng.integers(0, 32, 7)]
    total, weight = 0, 1
    for sign in signs:
        total, weight = total ^ product(weight, sign), product(weight, 2)
    signs.append(next(sign for sign in range(32) if product(weight, sign) == total))
    return "".join(SIGNS[sign] for sign in signs)


def product(a: int, b: int) -> int:
    """Product in GF(32) with x^5 + x^2 + 1."""
    result = 0
    while b:
        result ^= a if b & 1 else 0
        a, b = a << 1 ^ (0b100101 if a & 16 else 0), b >> 1
    return result


def matrix(label: Label) -> np.ndarray:
    """The modules of one symbol, True where dark."""
    symbol = qrcode.QRCode(error_correction=LEVELS[label.level], border=0)
    symbol.add_data(QRData(label.address + label.code, mode=MODE_ALPHA_NUM))
    symbol.make(fit=True)
    return np.array(symbol.get_matrix(), dtype=bool)


def draw(label: Label) -> Drawing:
    """The clean print."""
    dark = matrix(label)
    n = len(dark)
    width = (label.symbols * (n + QUIET) + QUIET) * MODULE
    height = (n + 2 * QUIET + 5) * MODULE
    image = np.full((height, width, 3), PAPER, np.uint8)
    ink = np.kron(dark, np.ones((MODULE, MODULE), bool))
    top = QUIET * MODULE
    lefts = tuple((QUIET + i * (n + QUIET)) * MODULE for i in range(label.symbols))
    for left in lefts:
        image[top : top + n * MODULE, left : left + n * MODULE][ink] = INK
    write(image, f"{label.code[:4]} {label.code[4:]}", (n + 2 * QUIET) * MODULE)
    return Drawing(image, np.ones((height, width), np.float32), n, lefts)


def write(image: Image, text: str, top: int) -> None:
    """The code in large type."""
    font, room = cv2.FONT_HERSHEY_DUPLEX, min(image.shape[1], 37 * MODULE)
    (wide, _), _ = cv2.getTextSize(text, font, 1.0, 6)
    scale = room * 0.82 / wide
    (wide, high), _ = cv2.getTextSize(text, font, scale, int(4 * scale))
    at = ((image.shape[1] - wide) // 2, top + high // 2)
    cv2.putText(image, text, at, font, scale, (INK, INK, INK), int(3 * scale), cv2.LINE_AA)


def blend(drawing: Drawing, mask: Image, colour: tuple[float, ...]) -> Drawing:
    """Lay a colour over the print where the mask says so."""
    cover = mask[:, :, None]
    image = drawing.image.astype(np.float32) * (1 - cover) + np.array(colour, np.float32) * cover
    return replace(drawing, image=np.clip(image, 0, 255).astype(np.uint8))


def stroke(rng: Rng, drawing: Drawing, mask: Image) -> Image:
    """The mask with one more greasy stroke somewhere on the symbols."""
    size, (left, right) = drawing.size, drawing.span
    start = np.array([rng.uniform(left, right), rng.uniform(0, size) + QUIET * MODULE])
    turn, length = rng.uniform(0, np.pi), rng.uniform(0.05, 0.25) * size
    width = int(rng.uniform(1.0, 3.5) * MODULE)
    way = np.linspace(0, 1, 8)[:, None] * np.array([np.cos(turn), np.sin(turn)]) * length
    points = start + way + rng.normal(0, MODULE * 0.4, (8, 2))
    result = mask.copy()
    cv2.polylines(result, [points.astype(np.int32)], False, 1.0, width, cv2.LINE_AA)
    return result


def covered(drawing: Drawing, mask: Image) -> float:
    """Share of the modules of all symbols with more than half their area under the mask."""
    n, top = drawing.modules, QUIET * MODULE
    shares = []
    for left in drawing.lefts:
        part = mask[top : top + drawing.size, left : left + drawing.size]
        shares.append((part.reshape(n, MODULE, n, MODULE).mean((1, 3)) > 0.5).mean())
    return float(np.mean(shares))


def strokes(rng: Rng, drawing: Drawing, share: float, clear: Image | None = None) -> Image:
    """Strokes until `share` of the modules is covered; none where `clear` forbids it."""
    mask = np.zeros(drawing.image.shape[:2], np.float32)
    for _ in range(400):
        more = stroke(rng, drawing, mask)
        if clear is not None:
            more[clear] = 0
        now = covered(drawing, more)
        if now <= share * 1.15:
            mask = more
            if now >= share:
                break
    return mask


def smear(share: float, *, spare_corners: bool = False) -> Callable[[Rng, Drawing], Drawing]:
    """Opaque dark grease on `share` of the modules, anywhere or beside the corner squares only."""

    def spoil(rng: Rng, drawing: Drawing) -> Drawing:
        clear = corners(drawing) if spare_corners else None
        mask = strokes(rng, drawing, share, clear)
        mask = cv2.GaussianBlur(mask, (0, 0), MODULE * 0.15) * rng.uniform(0.88, 0.98)
        return blend(drawing, mask, GREASE)

    return spoil


def corners(drawing: Drawing) -> Image:
    """Where the corner squares and their margins lie."""
    n = drawing.modules
    clear = np.zeros((n, n), bool)
    clear[:9, :9] = clear[:9, -8:] = clear[-8:, :9] = True
    result = np.zeros(drawing.image.shape[:2], bool)
    top = QUIET * MODULE
    for left in drawing.lefts:
        part = result[top : top + drawing.size, left : left + drawing.size]
        part |= np.kron(clear, np.ones((MODULE, MODULE), bool))
    return result


def brown_grease(rng: Rng, drawing: Drawing) -> Drawing:
    """Old grease that lets red through, on a quarter of the modules."""
    mask = cv2.GaussianBlur(strokes(rng, drawing, 0.25), (0, 0), MODULE * 0.3)[:, :, None]
    through = np.array([0.05, 0.16, 0.45], np.float32) * rng.uniform(0.8, 1.2)
    image = drawing.image * (1 - mask * (1 - through)) + 14 * mask
    return replace(drawing, image=np.clip(image, 0, 255).astype(np.uint8))


def film(rng: Rng, drawing: Drawing) -> Drawing:
    """Oil soaked into the paper: darker and blotched, the modules still there."""
    high, wide = drawing.image.shape[:2]
    spots = rng.normal(0, 1, (6, max(6, 6 * wide // high))).astype(np.float32)
    spots = cv2.resize(spots, (wide, high), interpolation=cv2.INTER_CUBIC)
    gain = np.clip(0.5 + 0.25 * spots, 0.18, 1)[:, :, None] * np.array([0.75, 0.9, 1.0], np.float32)
    return replace(drawing, image=np.clip(drawing.image * gain + 12, 0, 255).astype(np.uint8))


def light_on_dark(_: Rng, drawing: Drawing) -> Drawing:
    """A print the other way round."""
    return replace(drawing, image=255 - drawing.image)
