"""What happens to the paper of a label: folds, tears, water, tape, a worn print head, a thumb."""

from dataclasses import replace

import cv2
import numpy as np
from bench.label_damage import MODULE, PAPER, QUIET, Drawing, Image, Rng, blend


def half_plane(rng: Rng, drawing: Drawing, spread: float) -> Image:
    """Signed distance in pixels from a line through the middle part of the label."""
    high, wide = drawing.image.shape[:2]
    rows, columns = np.mgrid[0:high, 0:wide].astype(np.float32)
    turn = rng.uniform(0, 2 * np.pi)
    middle = np.array([np.mean(drawing.span), QUIET * MODULE + drawing.size / 2])
    x, y = middle + rng.uniform(-spread, spread, 2) * drawing.size
    return (columns - x) * np.cos(turn) + (rows - y) * np.sin(turn)


def bend(drawing: Drawing, dx: Image, dy: Image) -> Drawing:
    """Move every pixel by the given field."""
    high, wide = drawing.image.shape[:2]
    rows, columns = np.mgrid[0:high, 0:wide].astype(np.float32)
    where = (columns + dx.astype(np.float32), rows + dy.astype(np.float32))
    image = cv2.remap(drawing.image, *where, cv2.INTER_LINEAR, borderMode=cv2.BORDER_REPLICATE)
    return replace(drawing, image=image)


def crease(rng: Rng, drawing: Drawing) -> Drawing:
    """Folded once and flattened: one side stands up a little, the ink along the fold is gone."""
    beside = half_plane(rng, drawing, 0.35)
    push = np.clip(beside, 0, None) * rng.uniform(0.03, 0.12)
    grad = np.gradient(beside)
    bent = bend(drawing, push * grad[1], push * grad[0])
    shade = np.where(beside > 0, rng.uniform(0.65, 1.0), 1.0)[:, :, None]
    bent = replace(bent, image=np.clip(bent.image * shade, 0, 255).astype(np.uint8))
    rubbed = np.exp(-((beside / (rng.uniform(0.3, 0.8) * MODULE)) ** 2)).astype(np.float32)
    return blend(bent, rubbed * 0.85, (PAPER, PAPER, PAPER))


def torn(rng: Rng, drawing: Drawing) -> Drawing:
    """One corner of the label is gone, and with it up to a third of a side of the symbol."""
    wide = drawing.image.shape[1]
    reach = (QUIET + rng.uniform(0.12, 0.33) * drawing.modules) * MODULE
    across, down = reach * rng.uniform(0.8, 1.25), reach * rng.uniform(0.8, 1.25)
    ragged = np.linspace(0, 1, 12)[:, None]
    edge = np.array([across, 0]) * (1 - ragged) + np.array([0, down]) * ragged
    edge = np.clip(edge + rng.normal(0, MODULE * 0.5, edge.shape), 0, None)
    points = np.vstack([[[0, 0]], edge]).astype(np.int32)
    if rng.integers(2):
        points[:, 0] = wide - points[:, 0]
    paper = drawing.paper.copy()
    cv2.fillPoly(paper, [points], 0.0)
    return replace(drawing, paper=paper)


def wrinkled(rng: Rng, drawing: Drawing) -> Drawing:
    """Wetted and dried: the paper has waves and a brown rim."""
    high, wide = drawing.image.shape[:2]
    knots = (max(3, high // (9 * MODULE)), max(3, wide // (9 * MODULE)))
    fields = [
        cv2.resize(rng.normal(0, 1, knots).astype(np.float32), (wide, high), interpolation=3)
        for _ in range(3)
    ]
    wave = rng.uniform(0.15, 0.4) * MODULE
    bent = bend(drawing, fields[0] * wave, fields[1] * wave)
    gain = np.clip(0.85 + 0.12 * fields[2], 0.4, 1.05)[:, :, None] * np.array([0.88, 0.95, 1.0])
    return replace(bent, image=np.clip(bent.image * gain, 0, 255).astype(np.uint8))


def taped(rng: Rng, drawing: Drawing) -> Drawing:
    """A milky strip of tape over a part, its edges dirty, the print below a little shifted."""
    beside = half_plane(rng, drawing, 0.25)
    breadth = rng.uniform(0.25, 0.5) * drawing.size
    under = (np.abs(beside) < breadth / 2).astype(np.float32)
    shift = under * rng.uniform(0.15, 0.4) * MODULE
    grad = np.gradient(beside)
    bent = blend(bend(drawing, shift * grad[1], shift * grad[0]), under * 0.35, (205, 214, 220))
    gap = np.abs(np.abs(beside) - breadth / 2) / (rng.uniform(0.3, 0.7) * MODULE)
    return blend(bent, np.exp(-(gap**2)).astype(np.float32) * 0.8, (60, 70, 80))


def streaked(rng: Rng, drawing: Drawing) -> Drawing:
    """A worn print head leaves lines without ink along the whole label."""
    mask = np.zeros(drawing.image.shape[:2], np.float32)
    along_rows = bool(rng.integers(2))
    first, last = (QUIET * MODULE, QUIET * MODULE + drawing.size) if along_rows else drawing.span
    for _ in range(int(rng.integers(2, 5))):
        at, broad = int(rng.uniform(first, last)), int(rng.uniform(0.4, 1.2) * MODULE)
        if along_rows:
            mask[at : at + broad] = rng.uniform(0.85, 1)
        else:
            mask[:, at : at + broad] = rng.uniform(0.85, 1)
    return blend(drawing, mask, (PAPER, PAPER, PAPER))


def under_a_thumb(rng: Rng, drawing: Drawing) -> Drawing:
    """A thumb on one corner square."""
    left = drawing.lefts[int(rng.integers(len(drawing.lefts)))]
    top, far = QUIET * MODULE, drawing.size
    spots = [(left, top), (left + far, top), (left, top + far), (left + far, top + far)]
    x, y = spots[int(rng.integers(4))]
    axes = (int(rng.uniform(0.2, 0.3) * far), int(rng.uniform(0.15, 0.24) * far))
    mask = np.zeros(drawing.image.shape[:2], np.float32)
    cv2.ellipse(mask, (x, y), axes, float(rng.uniform(0, 180)), 0, 360, 1.0, -1, cv2.LINE_AA)
    skin = np.array([105, 130, 185]) * rng.uniform(0.6, 1.1)
    return blend(drawing, cv2.GaussianBlur(mask, (0, 0), MODULE * 0.2), tuple(skin))
