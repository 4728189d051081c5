"""What a sync costs beside the floor, and whether its cost follows what is stored.

    python tests/bench/sync_cost.py [--sizes 1000,10000,50000] [--rounds 3]

Prints a table: time and bytes of pushing and first pulling N facts, ours over the floor's, and the
time of one sync of 50 new facts at the smallest and the largest size, one over the other. Ours and
the floor take turns, and the medians count; less than one batch is measured three times as often.
Beside the time on the clock stands the processor's (Linux), which a busy machine disturbs less.
"""

import argparse
import gzip
import http.client
import json
import statistics
import subprocess
import sys
import tempfile
import time
import uuid
from pathlib import Path
from typing import Any
from urllib.parse import urlparse

ROOT = Path(__file__).resolve().parents[2]
BATCH = 2000


class Wire:
    """One kept connection that counts bytes and seconds."""

    def __init__(self, address: str, key: str | None = None) -> None:
        self.link = http.client.HTTPConnection(urlparse(address).netloc, timeout=120)
        self.key, self.bytes, self.seconds = key, 0, 0.0

    def ask(self, method: str, path: str, body: bytes | None = None) -> bytes:
        headers = {"Content-Type": "application/json", "Accept-Encoding": "gzip"}
        if body is not None:
            headers["Content-Encoding"] = "gzip"
        if self.key:
            headers["Authorization"] = f"Bearer {self.key}"
        begun = time.perf_counter()
        self.link.request(method, path, body, headers)
        answer = self.link.getresponse()
        data = answer.read()
        self.seconds += time.perf_counter() - begun
        self.bytes += len(data) + len(body or b"")
        if answer.status >= 300:
            raise SystemExit(f"{path}: {answer.status} {data[:300]!r}")
        packed = answer.headers.get("Content-Encoding") == "gzip"
        return gzip.decompress(data) if packed else data


def start(command: list[str]) -> tuple[subprocess.Popen[str], str]:
    process = subprocess.Popen(command, cwd=ROOT, stdout=subprocess.PIPE, text=True)
    assert process.stdout
    for line in process.stdout:
        if line.startswith("ready "):
            return process, line.split()[1]
    raise SystemExit("the server did not start")


def burnt(process: subprocess.Popen[str]) -> float:
    """Seconds of processor the server has used so far; 0 where the system does not tell."""
    threads = Path(f"/proc/{process.pid}/task").glob("*/schedstat")
    return sum(int(thread.read_text().split()[0]) for thread in threads) / 1e9


def identity(ms: int, number: int) -> str:
    random = uuid.uuid4().hex[:12]
    return f"{ms >> 16:08x}-{ms & 0xFFFF:04x}-7{number % 4096:03x}-8{number % 4095:03x}-{random}"


def facts(count: int, device: str, first: int = 1) -> list[dict[str, Any]]:
    """Pulls as a phone makes them: joints, runs and fasteners repeat, ids and stamps don't."""
    joints = [str(uuid.UUID(int=0x018D00000000700080000000000000A0 + j)) for j in range(400)]
    base = 0x018D00000000 + first * 1000
    made = []
    for i in range(count):
        ms = base + i * 977
        number = first + i
        made.append(
            {
                "about": joints[number % 400],
                "body": {
                    "fastener": f"f{number % 14 + 1}",
                    "pass": f"p{number % 3 + 1}",
                    "reading": None,
                    "run": joints[(number * 7) % 400],
                    "target": {"unit": "lbf·ft", "value": "45"},
                    "wrench": joints[3],
                },
                "device": device,
                "heading": "pull",
                "id": identity(ms, number),
                "made": "2031-03-07T19:42:10+01:00",
                "n": number,
                "stamp": f"{ms:012x}-0000",
                "v": 1,
            }
        )
    return made


def batches(entries: list[dict[str, Any]], extra: dict[str, Any]) -> list[bytes]:
    texts = (
        json.dumps({**extra, "entries": entries[i : i + BATCH]}, ensure_ascii=False)
        for i in range(0, len(entries), BATCH)
    )
    return [gzip.compress(text.encode(), 6) for text in texts]


def push_and_pull_ours(count: int, folder: Path) -> dict[str, float]:
    server, address = start(
        [sys.executable, "server", "--data", str(folder), "--port", "0", "--localhost", "--no-open"]
    )
    try:
        code = json.loads(
            subprocess.run(
                [sys.executable, "server", "pair", "--json", "--data", str(folder)],
                cwd=ROOT,
                capture_output=True,
                text=True,
                check=True,
            ).stdout
        )["code"]
        pairing = Wire(address)
        paired = json.loads(
            pairing.ask(
                "POST",
                "/api/v1/pair",
                gzip.compress(json.dumps({"code": code, "name": "bench"}).encode()),
            )
        )
        pushing = Wire(address, paired["key"])
        bodies = batches(facts(count, paired["device"]), {"cursor": None, "room": 0})
        marks = [burnt(server)]
        for body in bodies:
            pushing.ask("POST", "/api/v1/sync", body)
        marks.append(burnt(server))
        pulling, cursor, got = Wire(address, paired["key"]), None, 0
        while got < count:
            body = gzip.compress(json.dumps({"cursor": cursor, "room": 5000}).encode())
            page = json.loads(pulling.ask("POST", "/api/v1/sync", body))
            cursor, got = page["cursor"], got + len(page["entries"])
        marks.append(burnt(server))
        small = []
        for turn in range(12):
            wire = Wire(address, paired["key"])
            wire.ask("GET", "/api/v1/health")
            wire.seconds = 0.0
            body = json.dumps(
                {
                    "cursor": cursor,
                    "room": 5000,
                    "entries": facts(50, paired["device"], count + 1 + turn * 50),
                }
            )
            page = json.loads(wire.ask("POST", "/api/v1/sync", gzip.compress(body.encode())))
            cursor = page["cursor"]
            small.append(wire.seconds)
        return {**told(pushing, pulling, marks), "small": statistics.median(small)}
    finally:
        server.terminate()
        server.wait()


def push_and_pull_floor(count: int, folder: Path) -> dict[str, float]:
    server, address = start(
        [sys.executable, str(ROOT / "tests/bench/floor.py"), str(folder / "floor.db")]
    )
    try:
        pushing, pulling, got = Wire(address), Wire(address), 0
        sent = batches(facts(count, str(uuid.UUID(int=1))), {})
        marks = [burnt(server)]
        for body in sent:
            pushing.ask("POST", "/push", body)
        marks.append(burnt(server))
        while got < count:
            got += len(json.loads(pulling.ask("GET", f"/pull/{got}"))["entries"])
        marks.append(burnt(server))
        return told(pushing, pulling, marks)
    finally:
        server.terminate()
        server.wait()


def told(pushing: Wire, pulling: Wire, marks: list[float]) -> dict[str, float]:
    return {
        "push": pushing.seconds,
        "push bytes": pushing.bytes,
        "push burnt": marks[1] - marks[0],
        "pull": pulling.seconds,
        "pull bytes": pulling.bytes,
        "pull burnt": marks[2] - marks[1],
    }


def over(a: float, b: float) -> str:
    return f"{a / b:.2f}" if b else "–"


def median_of(rounds: list[dict[str, float]]) -> dict[str, float]:
    return {key: statistics.median(r[key] for r in rounds) for key in rounds[0]}


def main() -> None:
    asked = argparse.ArgumentParser(description=__doc__)
    asked.add_argument("--sizes", default="1000,10000,50000")
    asked.add_argument("--rounds", type=int, default=3)
    options = asked.parse_args()
    print(
        "| facts | push s | / floor | its processor / floor | pull s | / floor "
        "| its processor / floor | push bytes / floor | pull bytes / floor |"
    )
    print("|---|---|---|---|---|---|---|---|---|")
    small = {}
    for size in (int(s) for s in options.sizes.split(",")):
        ours, floor = [], []
        for _ in range(options.rounds * (3 if size < BATCH else 1)):
            with tempfile.TemporaryDirectory() as folder:
                floor.append(push_and_pull_floor(size, Path(folder)))
                ours.append(push_and_pull_ours(size, Path(folder) / "ours"))
        a, b = median_of(ours), median_of(floor)
        small[size] = a["small"]
        shown = [str(size)]
        for way in ("push", "pull"):
            shown += [f"{a[way]:.3f}", over(a[way], b[way])]
            shown.append(over(a[f"{way} burnt"], b[f"{way} burnt"]))
        shown += [over(a[f"{way} bytes"], b[f"{way} bytes"]) for way in ("push", "pull")]
        print(f"| {' | '.join(shown)} |", flush=True)
    least, most = min(small), max(small)
    print(
        f"50 new facts: {small[least] * 1000:.1f} ms at {least}, "
        f"{small[most] * 1000:.1f} ms at {most}: ratio {small[most] / small[least]:.2f}"
    )


if __name__ == "__main__":
    main()
