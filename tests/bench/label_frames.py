"""Pictures of spoilt labels as a phone in a moving hand takes them."""

import functools
from collections.abc import Callable, Iterator
from dataclasses import dataclass, field, replace

import cv2
import numpy as np
from bench import label_damage as print_
from bench import paper_damage as paper
from bench.label_damage import MODULE, Drawing, Image, Label, Rng

WIDE, HIGH = 1280, 720
FOCAL = 0.78 * WIDE  # a phone's main camera in a 16:9 stream

Optics = Callable[[Rng, Image, np.ndarray, "Pose"], Image]


@dataclass(frozen=True, slots=True)
class Pose:
    """How the label lies before the lens; lengths in pixels, angles in degrees."""

    module: float
    turn: float
    tilt: float
    axis: float
    x: float = WIDE / 2
    y: float = HIGH / 2


def bench_top(rng: Rng) -> Image:
    """Blotches, scratches and grain, with some room around for the hand to move."""
    wide, high = WIDE + 80, HIGH + 80
    spots = rng.normal(0, 1, (high // 40 + 2, wide // 40 + 2)).astype(np.float32)
    spots = cv2.resize(spots, (wide, high), interpolation=cv2.INTER_CUBIC) * 22
    spots += np.float32(rng.uniform(60, 150))
    image = cv2.merge([spots, spots, spots]) + rng.standard_normal((high, wide, 3), np.float32) * 6
    image = np.clip(image * rng.uniform(0.85, 1.1, 3).astype(np.float32), 0, 255).astype(np.uint8)
    for _ in range(int(rng.integers(5, 25))):
        ends = rng.integers(0, [wide, high], (2, 2)).tolist()
        grey = int(rng.integers(20, 230))
        broad = int(rng.integers(1, 5))
        cv2.line(image, ends[0], ends[1], (grey, grey, grey), broad, cv2.LINE_AA)
    return image


def corners_seen(drawing: Drawing, pose: Pose) -> np.ndarray:
    """Where the four corners of the label come to lie in the picture."""
    high, wide = drawing.image.shape[:2]
    flat = np.array([[-wide, -high, 0], [wide, -high, 0], [wide, high, 0], [-wide, high, 0]])
    a, t, axis = np.radians(pose.turn), np.radians(pose.tilt), np.radians(pose.axis)
    k = np.array([np.cos(axis), np.sin(axis), 0])
    cross = np.array([[0, -k[2], k[1]], [k[2], 0, -k[0]], [-k[1], k[0], 0]])
    tilt = np.eye(3) + np.sin(t) * cross + (1 - np.cos(t)) * cross @ cross
    turn = np.array([[np.cos(a), -np.sin(a), 0], [np.sin(a), np.cos(a), 0], [0, 0, 1]])
    space = (flat / 2 * pose.module / MODULE) @ (tilt @ turn).T
    seen = space[:, :2] * FOCAL / (FOCAL + space[:, 2:])
    return (seen + np.array([pose.x, pose.y])).astype(np.float32)


def place(frame: Image, drawing: Drawing, pose: Pose) -> tuple[Image, np.ndarray]:
    """The frame with the label in it, and the label's corners."""
    seen = corners_seen(drawing, pose)
    high, wide = drawing.image.shape[:2]
    scale = pose.module / MODULE
    # Shrunk first with area averaging, so that the warp does not alias.
    shrink = min(1.0, max(2 * scale, 0.02))
    small = cv2.resize(drawing.image, None, fx=shrink, fy=shrink, interpolation=cv2.INTER_AREA)
    there = cv2.resize(drawing.paper, small.shape[1::-1], interpolation=cv2.INTER_AREA)
    flat = np.array([[0, 0], [wide, 0], [wide, high], [0, high]], np.float32) * np.float32(shrink)
    # Only the part of the picture where the label comes to lie.
    left, top = np.clip(seen.min(0).astype(int) - 2, 0, [WIDE, HIGH]).tolist()
    right, bottom = np.clip(seen.max(0).astype(int) + 3, 0, [WIDE, HIGH]).tolist()
    shift = np.array([left, top], np.float32)
    way = cv2.getPerspectiveTransform(flat, seen - shift)
    size = (right - left, bottom - top)
    image = cv2.warpPerspective(small, way, size)
    cover = cv2.warpPerspective(there, way, size)[:, :, None]
    result = frame.copy()
    part = result[top:bottom, left:right]
    part[:] = np.clip(part * (1 - cover) + image * cover, 0, 255).astype(np.uint8)
    return result, seen


@functools.cache
def grain() -> Image:
    """The noise of a sensor, larger than a picture, so that each takes another part of it."""
    size = (HIGH + 64, WIDE + 64, 3)
    noise = np.random.default_rng(0).standard_normal(size, np.float32) * 3
    return np.rint(noise).astype(np.int16)


def glare(rng: Rng) -> Optics:
    """A clear bag over the label: haze, ripples, and streaks that burn out and wander."""
    turn, amp, wave = rng.uniform(0, np.pi), rng.uniform(0.4, 1.2), rng.uniform(50, 120)
    count = int(rng.integers(2, 5))
    at = rng.uniform(-0.5, 0.5, (count, 2))
    way = rng.uniform(0, np.pi, count)
    broad, long = rng.uniform(0.015, 0.045, count), rng.uniform(0.12, 0.4, count)
    power = rng.uniform(160, 420, count)
    rows, columns = np.mgrid[0:HIGH, 0:WIDE].astype(np.float32)

    def optics(frame_rng: Rng, image: Image, seen: np.ndarray, _: Pose) -> Image:
        along = columns * np.cos(turn) + rows * np.sin(turn)
        dx = (columns + amp * np.sin(along / wave * 6.28)).astype(np.float32)
        dy = (rows + amp * np.cos(along / wave * 5.1)).astype(np.float32)
        image = cv2.remap(image, dx, dy, cv2.INTER_LINEAR, borderMode=cv2.BORDER_REPLICATE)
        result = image.astype(np.float32) * np.float32(0.86) + 24
        size = max(np.ptp(seen[:, 0]), np.ptp(seen[:, 1]))
        wander = frame_rng.normal(0, 0.06, (count, 2))
        for i in range(count):
            x, y = seen.mean(0) + (at[i] + wander[i]) * size
            u = (columns - x) * np.cos(way[i]) + (rows - y) * np.sin(way[i])
            v = (rows - y) * np.cos(way[i]) - (columns - x) * np.sin(way[i])
            fall = (u / (broad[i] * size)) ** 2 + (v / (long[i] * size)) ** 2
            result += (power[i] * np.exp(-fall.astype(np.float32)))[:, :, None].astype(np.float32)
        return np.clip(result, 0, 255).astype(np.uint8)

    return optics


def blur(least: float, most: float) -> Callable[[Rng], Optics]:
    """Out of focus; sigma in modules."""

    def make(rng: Rng) -> Optics:
        sigma = rng.uniform(least, most)
        return lambda _, image, __, pose: cv2.GaussianBlur(image, (0, 0), sigma * pose.module)

    return make


def motion(rng: Rng) -> Optics:
    """The hand moves while the shutter is open, by one or two modules."""
    length = rng.uniform(1.0, 2.0)

    def optics(frame_rng: Rng, image: Image, _: np.ndarray, pose: Pose) -> Image:
        side = int(length * pose.module) | 1
        kernel = np.zeros((side, side), np.float32)
        turn, c = frame_rng.uniform(0, np.pi), side // 2
        dx, dy = c * np.cos(turn), c * np.sin(turn)
        cv2.line(kernel, (int(c - dx), int(c - dy)), (int(c + dx), int(c + dy)), 1.0, 1)
        return cv2.filter2D(image, -1, kernel / kernel.sum())

    return optics


def faint(rng: Rng) -> Optics:
    """A tenth to a quarter of the contrast."""
    share, shift = rng.uniform(0.10, 0.25), rng.uniform(-60, 60)

    def optics(_: Rng, image: Image, __: np.ndarray, ___: Pose) -> Image:
        return np.clip(128 + (image.astype(np.float32) - 128) * share + shift, 0, 255)

    return optics


def dark(rng: Rng) -> Optics:
    """A lamp far away, on one side."""
    share, turn = rng.uniform(0.06, 0.15), rng.uniform(0, 6.28)
    rows, columns = np.mgrid[0:HIGH, 0:WIDE].astype(np.float32)
    slope = 1 + 0.6 * (np.cos(turn) * (columns / WIDE - 0.5) + np.sin(turn) * (rows / HIGH - 0.5))

    def optics(frame_rng: Rng, image: Image, _: np.ndarray, __: Pose) -> Image:
        noise = frame_rng.standard_normal(image.shape, np.float32) * 4
        return np.clip(image * (share * slope)[:, :, None] + 6 + noise, 0, 255)

    return optics


def as_it_is(_: Rng) -> Optics:
    """A good lens in good light."""
    return lambda _, image, __, ___: image


@dataclass(frozen=True, slots=True)
class Damage:
    """One way to spoil a label; ranges of the pose as uniform limits."""

    spoil: Callable[[Rng, Drawing], Drawing] = lambda _, drawing: drawing
    optics: Callable[[Rng], Optics] = as_it_is
    module: tuple[float, float] = (4.5, 7.0)
    turn: tuple[float, float] = (-12, 12)
    tilt: tuple[float, float] = (0, 12)
    labels: int = 1


def mixed(rng: Rng, drawing: Drawing) -> Drawing:
    """A little grease."""
    return print_.smear(float(rng.uniform(0.02, 0.05)))(rng, drawing)


DAMAGES = {
    "clean": Damage(),
    "rotated": Damage(turn=(0, 360)),
    "perspective": Damage(tilt=(35, 58)),
    "lowcontrast": Damage(optics=faint),
    "dark": Damage(optics=dark),
    "small": Damage(module=(2.0, 2.8)),
    "tiny": Damage(module=(1.3, 1.8)),
    "two": Damage(module=(4.0, 5.2), labels=2),
    "smear5": Damage(print_.smear(0.05)),
    "smear10": Damage(print_.smear(0.10)),
    "smear20": Damage(print_.smear(0.20)),
    "smear5d": Damage(print_.smear(0.05, spare_corners=True)),
    "smear10d": Damage(print_.smear(0.10, spare_corners=True)),
    "smear20d": Damage(print_.smear(0.20, spare_corners=True)),
    "glare": Damage(optics=glare),
    "film": Damage(print_.film),
    "blur": Damage(optics=blur(0.25, 0.6)),
    "motion": Damage(optics=motion),
    "mixed": Damage(mixed, blur(0.3, 0.3), (3.5, 5.5), (0, 360), (10, 35)),
    "inverted_light": Damage(print_.light_on_dark),
    "brown_grease": Damage(print_.brown_grease),
    "crease": Damage(paper.crease),
    "torn": Damage(paper.torn),
    "wrinkled": Damage(paper.wrinkled),
    "taped": Damage(paper.taped),
    "streaked": Damage(paper.streaked),
    "thumb": Damage(paper.under_a_thumb),
}


@dataclass(frozen=True, slots=True)
class Case:
    """One spoilt label (or two side by side) in a moving hand."""

    codes: tuple[str, ...]
    drawings: tuple[Drawing, ...]
    poses: tuple[Pose, ...]
    optics: Optics
    ground: Image
    seed: tuple[int, ...] = field(default=())

    def frames(self, count: int) -> Iterator[Image]:
        """The pictures, blue-green-red, one after the other: same dirt, new pose, light, noise."""
        for number in range(count):
            yield self.frame(np.random.default_rng([*self.seed, 1, number]))

    def frame(self, rng: Rng) -> Image:
        """One picture."""
        dx, dy = (int(v) for v in rng.integers(0, 80, 2))
        image = self.ground[dy : dy + HIGH, dx : dx + WIDE]
        turn, tilt, zoom = rng.normal(0, [2, 2, 0.03])
        seen = np.zeros((4, 2))
        for drawing, pose in zip(self.drawings, self.poses, strict=True):
            moved = replace(
                pose,
                turn=pose.turn + turn,
                tilt=pose.tilt + tilt,
                module=pose.module * (1 + zoom),
                x=pose.x + dx - 40,
                y=pose.y + dy - 40,
            )
            image, seen = place(image, drawing, moved)
        image = self.optics(rng, image, seen, self.poses[-1])
        noisy = image.astype(np.float32) + rng.standard_normal(image.shape, np.float32) * 3
        packed = cv2.imencode(
            ".jpg", np.clip(noisy, 0, 255).astype(np.uint8), [cv2.IMWRITE_JPEG_QUALITY, 85]
        )[1]
        return cv2.imdecode(packed, cv2.IMREAD_COLOR)


def make_case(name: str, seed: int, number: int, symbols: int, address: str | None = None) -> Case:
    """The same name, seed and number give the same label, dirt and pose."""
    damage = DAMAGES[name]
    key = (seed, list(DAMAGES).index(name), number)
    rng = np.random.default_rng(key)
    address = address or print_.ADDRESS
    labels = [Label(print_.random_code(rng), address, "H", symbols) for _ in range(damage.labels)]
    drawings = tuple(damage.spoil(rng, print_.draw(label)) for label in labels)
    poses = tuple(pose_of(rng, damage, symbols, i) for i in range(damage.labels))
    codes = tuple(label.code for label in labels)
    return Case(codes, drawings, poses, damage.optics(rng), bench_top(rng), key)


def pose_of(rng: Rng, damage: Damage, symbols: int, number: int) -> Pose:
    """A pose in the damage's limits, far enough from the border for the whole label."""
    module, turn, tilt = (rng.uniform(*r) for r in (damage.module, damage.turn, damage.tilt))
    if damage.labels > 1 and symbols > 1:
        module *= 0.7
    room = WIDE * 0.12 if symbols == 1 and damage.labels == 1 else 0
    x, y = WIDE / 2 + rng.uniform(-room, room), HIGH / 2 + rng.uniform(-40, 40)
    if damage.labels > 1:
        x = WIDE * (0.27 + 0.46 * number)
    return Pose(module, turn, tilt, float(rng.uniform(0, 360)), x, y)


def draw_scene(label: Label, rng: Rng) -> tuple[Image, np.ndarray]:
    """One undamaged label on a bench top, and its corners."""
    ground = bench_top(rng)[:HIGH, :WIDE]
    return place(ground, print_.draw(label), Pose(6.0, 5.0, 5.0, 40.0))
