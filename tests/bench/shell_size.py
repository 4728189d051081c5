"""What the phone fetches once: the page without the decoder, and with it, in bytes gzipped.

python tests/bench/shell_size.py
"""

import gzip
from pathlib import Path

PWA = Path(__file__).resolve().parents[2] / "pwa"
NOT_SERVED_FOR_USE = {"LICENSE", "LICENCE", "VENDORED.json"}


def main() -> None:
    shell = decoder = 0
    for path in sorted(PWA.rglob("*")):
        if (
            not path.is_file()
            or path.name.split(".")[0] in NOT_SERVED_FOR_USE
            or "types" in path.parts
        ):
            continue
        size = len(gzip.compress(path.read_bytes(), 9))
        if "zxing-wasm" in path.parts:
            decoder += size
        else:
            shell += size
    print(f"shell {shell:,} bytes gz, decoder {decoder:,} bytes gz")


if __name__ == "__main__":
    main()
