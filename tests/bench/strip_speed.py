"""How long a part takes when a donor is stripped: photo, blank label, kind, place, keep.

    python tests/bench/strip_speed.py [--parts 10] [--slow 4] [--thumb 1]

Real server, real Chromium, phone-sized, CPU throttled, offline, its camera playing our own printed
labels, one a part. Taps are real contacts. Machine time runs from the release of a tap (or a photo
taken) until the answer is painted; from the keep it runs over the camera that opens by itself and
the reading of the next label until its form stands. The readers' workers are not throttled. What
a person adds is an assumption: --thumb seconds for each tap, those in the phone's own camera
too, and as long for holding a label before it. Of ten parts the worst is the 95th percentile.
"""

import argparse
import sys
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from pathlib import Path
from statistics import mean, median
from typing import Any

sys.path.insert(0, str(Path(__file__).resolve().parents[1]))
sys.path.insert(0, str(Path(__file__).resolve().parents[2] / "server"))

from bench.phone_speed import in_page
from garage import Garage, camera_flags, film, garage, phone
from journeys.bench_scene import keep
from journeys.label_scene import printed_labels
from journeys.test_strip import Taps, scene
from PIL import Image
from playwright.sync_api import Page, sync_playwright

GOAL = 8.0
# In the phone's own camera: the release, and "use this photo".
CAMERA_TAPS = 2
# A label is held before the lens.
HOLDS = 1
PLACES = [
    *(("Lifter", f"cylinder {n} intake") for n in range(1, 6)),
    *(("Main cap", f"main cap {n}") for n in range(1, 6)),
]
SCRIPT = in_page(Path(__file__).with_suffix(".js"))


@dataclass
class Part:
    """What one part took: taps on the page, and seconds of machine by step."""

    taps: int = 0
    seconds: dict[str, float] = field(default_factory=dict)


class Run:
    """One donor taken apart: a thumb, a clock, and the film the camera plays."""

    def __init__(self, page: Page, seen: Path, labels: list[tuple[str, Any]]) -> None:
        self.page, self.seen, self.labels = page, seen, labels
        self.taps, self.parts, self.kind = Taps(page), [Part()], ""

    @contextmanager
    def clock(self, word: str, **steps: str) -> Iterator[None]:
        """Seconds from what is done meanwhile until each step's answer is painted."""
        ask = {"shows": list(steps.values()), "word": word, "rest": 0}
        self.page.evaluate(f"ask => {{ window.told = ({SCRIPT})(ask); }}", ask)
        yield
        before = 0.0
        for step, told in zip(steps, self.page.evaluate("window.told"), strict=True):
            self.parts[-1].seconds[step] = (told - before) / 1000
            before = told

    @contextmanager
    def label(self) -> Iterator[None]:
        """The camera opens and sees the next label."""
        code, still = self.labels.pop(0)
        film([still], self.seen.with_suffix(".next")).replace(self.seen)
        with self.clock(f"{code[:4]} {code[4:]}", keep="scene", read="said"):
            yield

    def begin(self) -> None:
        self.taps.press("Donor 2")
        self.taps.keep()
        with self.label():
            self.taps.press("Scan the label")

    def part(self, kind: str, place: str, picture: Path) -> None:
        """Photo, kind where it is another one, place, keep, and the next label."""
        self.parts.append(Part())
        self.taps.count = 0
        with self.page.expect_file_chooser() as chooser:
            self.taps.press("Photo")
        with self.clock("1 photo taken.", photo="said"):
            chooser.value.set_files(picture)
        if kind != self.kind:
            with self.clock(kind, kind="chosen"):
                self.taps.press(kind)
        with self.clock(place, place="chosen"):
            self.taps.press(place)
        with self.label():
            self.taps.keep()
        self.kind, self.parts[-1].taps = kind, self.taps.count


def spread(times: list[float]) -> str:
    return f"median {median(times):.2f} s, worst {max(times):.2f} s"


def tell(parts: list[Part], thumb: float) -> None:
    """Taps, machine seconds and the estimate, beside the goal."""
    for step in ("photo", "kind", "place", "keep", "read"):
        print(f"  {step}: {spread([p.seconds[step] for p in parts if step in p.seconds])}")
    for name, without in (("with a photo", 0), ("without one", 1)):
        machine = [sum(p.seconds.values()) - without * p.seconds["photo"] for p in parts]
        acts = [p.taps + HOLDS + (-1 if without else CAMERA_TAPS) for p in parts]
        whole = [one + thumb * count for one, count in zip(machine, acts, strict=True)]
        print(
            f"{name}: taps on the page {mean(p.taps - without for p in parts):.1f}; machine "
            f"{spread(machine)}, {median(machine) / GOAL:.2f} and {max(machine) / GOAL:.2f} of the "
            f"goal of {GOAL:.0f} s; estimate with {thumb:g} s assumed for each of "
            f"{mean(acts):.1f} acts: {spread(whole)}, {median(whole) / GOAL:.2f} and "
            f"{max(whole) / GOAL:.2f} of it"
        )


def taken(to: Path) -> Path:
    """A photo as a phone's camera hands it over: twelve million grains."""
    Image.effect_noise((4000, 3000), 24).convert("RGB").save(to, quality=85)
    return to


def ready(server: Garage, page: Page) -> None:
    """Paired, with a donor and two kinds; everything loaded; then the network is gone."""
    page.goto(server.pairing()["url"])
    page.wait_for_selector("text=To the bench", timeout=60_000)
    keep(page, scene())
    page.goto(f"{server.address}/sync")
    page.wait_for_selector("text=Ready for the garage", timeout=60_000)
    page.goto(f"{server.address}/strip")
    page.wait_for_load_state("networkidle")
    page.context.set_offline(True)


def main() -> None:
    asked = argparse.ArgumentParser(description=__doc__)
    asked.add_argument("--parts", type=int, default=len(PLACES))
    asked.add_argument("--slow", type=float, default=4)
    asked.add_argument("--thumb", type=float, default=1)
    options = asked.parse_args()
    with tempfile.TemporaryDirectory() as name, garage(Path(name) / "data") as server:
        folder, seen = Path(name), Path(name) / "camera.mjpeg"
        server.command("labels", "--output", str(folder / "labels.pdf"))
        labels = printed_labels(folder / "labels.pdf", options.parts + 1)
        picture = taken(folder / "part.jpg")
        film([labels[0][1]], seen)
        with sync_playwright() as player:
            flags = camera_flags(seen)
            context = phone(player, folder / "phone", *flags, permissions=["camera"])
            page = context.pages[0]
            ready(server, page)
            link = context.new_cdp_session(page)
            link.send("Emulation.setCPUThrottlingRate", {"rate": options.slow})
            run = Run(page, seen, labels)
            run.begin()
            for kind, place in PLACES[: options.parts]:
                run.part(kind, place, picture)
            print(f"first label: {run.parts[0].seconds['read']:.2f} s after its camera opened")
            tell(run.parts[1:], options.thumb)
            context.close()


if __name__ == "__main__":
    main()
