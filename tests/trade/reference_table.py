"""The table of published values for DEVELOPERS.md, written by running them.

python tests/trade/reference_table.py            renews the table in DEVELOPERS.md
python tests/trade/reference_table.py FILE       runs another file of the same shape, prints
"""

import sys
from collections import defaultdict
from pathlib import Path

HERE = Path(__file__).resolve().parent
sys.path[:0] = [str(HERE.parents[1] / "server"), str(HERE.parent)]

from trade import reference_frame as frame  # noqa: E402

DOCUMENT = HERE.parents[1] / "DEVELOPERS.md"
BEGIN, END = "<!-- published values: begin -->", "<!-- published values: end -->"
HEAD = ["| rule | topic | source | cases | largest deviation |", "|---|---|---|---|---|"]
ORDER = ["units", "thread", "torque", "wrench", "sequence", "dimension", "fit", "geometry"]
ORDER += ["sets", "yields", "proof", "money"]


def place(stem: str) -> tuple[int, str]:
    return (ORDER.index(stem) if stem in ORDER else len(ORDER), stem)


def told(source: dict[str, str]) -> str:
    if source["kind"] == "common practice":
        return "common practice, no source"
    memory = " (from memory)" if source["checked"].startswith("from memory") else ""
    where = "" if source["where"] == "none" else f"; {source['where']}"
    return f"{source['title']}{where}{memory}".replace("|", "/")


def rows(path: Path | None = None) -> list[str]:
    lines = []
    for stem in sorted(frame.STEMS, key=place):
        found: dict[str, list[frame.Outcome]] = defaultdict(list)
        for side in frame.SIDES:
            for each in frame.outcomes(stem, side, path):
                found[each.group["topic"]].append(each)
                if not each.share <= 1:
                    print(f"WRONG {side} {stem} {each.case} came {each.came}", file=sys.stderr)
        for topic, listed in found.items():
            said = told(listed[0].group["source"])
            worst = max(each.share for each in listed)
            count = len(listed) // len(frame.SIDES)
            lines.append(f"| `{stem}` | {topic} | {said} | {count} | {worst:.2g} |")
    return lines


def main() -> int:
    if len(sys.argv) > 1:
        print("\n".join(HEAD + rows(Path(sys.argv[1]))))
        return 0
    text = DOCUMENT.read_text(encoding="utf-8")
    before, rest = text.split(BEGIN)
    _, after = rest.split(END)
    table = "\n".join(["", *HEAD, *rows(), ""])
    DOCUMENT.write_text(before + BEGIN + table + END + after, encoding="utf-8")
    return 0


if __name__ == "__main__":
    raise SystemExit(main())
