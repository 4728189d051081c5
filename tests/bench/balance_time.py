"""How long equal weights for eight places of piston, pin and rod take; the aim is two seconds.

python tests/bench/balance_time.py

Twenty drawn pools of each resolution. "CPU" is what the reckoning itself took, whatever else the
machine had to do.
"""

import random
import sys
import time
from pathlib import Path
from statistics import median

sys.path.insert(0, str(Path(__file__).resolve().parents[2] / "server"))

from witnessmark.trade import assemblies, units

POOLS = 20
PLACES = 8
AIM_SECONDS = 2.0
RESOLUTIONS = (1.0, 0.5, 0.1, 0.05, 0.01, 0.001)
MEANS_AND_REACHES = ((412.0, 3.0), (104.0, 1.5), (579.0, 3.0))


def pool(chance: random.Random, resolution: float) -> list[list[units.Quantity]]:
    return [
        [
            units.quantity(
                round(chance.uniform(mean - reach, mean + reach) / resolution) * resolution, "g"
            )
            for _ in range(PLACES)
        ]
        for mean, reach in MEANS_AND_REACHES
    ]


def main() -> int:
    chance = random.Random(20260)  # noqa: S311 - weights, no secrets
    slowest = 0.0
    for resolution in RESOLUTIONS:
        cpu, wall = [], []
        for _ in range(POOLS):
            columns = pool(chance, resolution)
            began, clock = time.process_time(), time.perf_counter()
            found = assemblies.balance(columns)
            cpu.append(time.process_time() - began)
            wall.append(time.perf_counter() - clock)
            assert found.proved
        slowest = max(slowest, *wall)
        print(
            f"{resolution:g} g, {POOLS} pools: median {median(wall) * 1000:.0f} ms, "
            f"worst {max(wall) * 1000:.0f} ms (CPU {median(cpu) * 1000:.0f}, {max(cpu) * 1000:.0f})"
        )
    print(f"aim {AIM_SECONDS:.0f} s: {'kept' if slowest <= AIM_SECONDS else 'missed'}, all proved")
    return 0


if __name__ == "__main__":
    raise SystemExit(main())
