"""How many spoilt labels the scanner reads, by kind of damage.

    python tests/bench/scan_damage.py --seed 1 --cases 200 --damages smear5,smear10

Prints a table: the plain reader (its fast and its patient way) on one symbol and on twins, ours on
one symbol and on twins, each within ten pictures of a moving hand, and how many codes were wrong.
The plain reader's ten pictures cost most of the time and are shown for the first --plain cases.
"""

import argparse
import json
import subprocess
import sys
from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass
from pathlib import Path

import cv2

sys.path.insert(0, str(Path(__file__).resolve().parents[1]))
from bench.label_frames import DAMAGES, Case, make_case
from tools import node

PICTURES = 10
READER = Path(__file__).with_suffix(".js")


@dataclass(slots=True)
class Tally:
    """What became of the cases of one cell."""

    cases: int = 0
    plain_cases: int = 0
    plain_first: int = 0
    plain: int = 0
    ours_first: int = 0
    ours: int = 0
    wrong: int = 0
    time: float = 0.0
    pictures: int = 0


class Reader:
    """The page's own scanning code in a process of its own."""

    def __init__(self, address: str | None = None) -> None:
        command = [node(), str(READER), *([address] if address else [])]
        self.process = subprocess.Popen(command, stdin=subprocess.PIPE, stdout=subprocess.PIPE)

    def read(self, image: cv2.typing.MatLike, *, fresh: bool, deep: bool) -> dict[str, object]:
        """What the plain reader and ours find in one picture."""
        pixels = cv2.cvtColor(image, cv2.COLOR_BGR2RGBA)
        size = {"width": pixels.shape[1], "height": pixels.shape[0]}
        head = json.dumps({**size, "fresh": fresh, "deep": deep})
        assert self.process.stdin
        assert self.process.stdout
        self.process.stdin.write(head.encode() + b"\n" + pixels.tobytes())
        self.process.stdin.flush()
        answer: dict[str, object] = json.loads(self.process.stdout.readline())
        return answer

    def close(self) -> None:
        """End the process."""
        assert self.process.stdin
        assert self.process.stdout
        self.process.stdin.close()
        self.process.wait()
        self.process.stdout.close()


def read_case(reader: Reader, case: Case, tally: Tally, *, patient: bool) -> None:
    """Show a case picture by picture until ours, and the plain reader too, has all its codes."""
    wanted, plain, ours = set(case.codes), set[str](), set[str]()
    for number, image in enumerate(case.frames(PICTURES)):
        deep = not wanted <= ours
        answer = reader.read(image, fresh=number == 0, deep=deep)
        plain |= set(answer["plain"])  # type: ignore[call-overload]
        ours |= set(answer["ours"])  # type: ignore[call-overload]
        if deep:
            tally.time += float(answer["ms"])  # type: ignore[arg-type]
            tally.pictures += 1
        if number == 0:
            tally.plain_first += wanted <= plain
            tally.ours_first += wanted <= ours
        if wanted <= ours and (wanted <= plain or not patient):
            break
    tally.cases += 1
    tally.plain_cases += patient
    tally.plain += patient and wanted <= plain
    tally.ours += wanted <= ours
    tally.wrong += bool((plain | ours) - wanted)


def run_cell(reader: Reader, damage: str, symbols: int, options: argparse.Namespace) -> Tally:
    """All cases of one kind of damage."""
    tally = Tally()
    for number in range(options.cases):
        case = make_case(damage, options.seed, number, symbols, options.address)
        read_case(reader, case, tally, patient=number < options.plain)
    return tally


def rows(options: argparse.Namespace) -> Iterator[str]:
    """The table, line by line as it is done."""
    yield (
        "| damage | plain, 1 picture | plain, 10 | ours single, 1 picture | ours single, 10 "
        "| plain twin, 10 | ours twin, 1 picture | ours twin, 10 | wrong | ms a picture |"
    )
    yield "|---|---|---|---|---|---|---|---|---|---|"
    readers = (Reader(), Reader())
    for damage in options.damages.split(","):
        with ThreadPoolExecutor(2) as pool:
            one, two = pool.map(run_cell, readers, (damage,) * 2, (1, 2), (options,) * 2)
        cells = (
            *(share(one, name) for name in ("plain_first", "plain", "ours_first", "ours")),
            *(share(two, name) for name in ("plain", "ours_first", "ours")),
        )
        time = (one.time + two.time) / max(1, one.pictures + two.pictures)
        yield f"| {damage} | {' | '.join(cells)} | {one.wrong + two.wrong} | {time:.0f} |"
    for reader in readers:
        reader.close()


def share(tally: Tally, name: str) -> str:
    """A count as per cent of the cases."""
    cases = tally.plain_cases if name == "plain" else tally.cases
    return f"{100 * getattr(tally, name) / max(1, cases):.1f}"


def main() -> None:
    """Print the table."""
    asked = argparse.ArgumentParser(description=__doc__)
    asked.add_argument("--seed", type=int, default=1)
    asked.add_argument("--cases", type=int, default=200)
    asked.add_argument("--plain", type=int, default=50)
    asked.add_argument("--damages", default=",".join(DAMAGES))
    asked.add_argument("--address", default=None)
    for row in rows(asked.parse_args()):
        print(row, flush=True)


if __name__ == "__main__":
    main()
