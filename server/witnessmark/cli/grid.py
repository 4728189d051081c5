"""A person's own grid of labels, as it is typed in the terminal: millimetres, two at a time."""

from argparse import ArgumentParser, ArgumentTypeError, Namespace

from witnessmark.cli.errors import SheetNotSo

# Each option says two fields of a grid; margins and step may be left out.
PAIRS = {
    "page": ("page_width", "page_height"),
    "grid": ("columns", "rows"),
    "label": ("width", "height"),
    "margins": ("left", "top"),
    "step": ("pitch_x", "pitch_y"),
}
NEEDED = ("page", "grid", "label")
_TWO = 2


def pair(text: str) -> tuple[str, str]:
    """Two numbers parted by an x: "70x37", "63,5 × 38,1"."""
    found = [part.strip() for part in text.lower().replace("×", "x").split("x")]
    if len(found) != _TWO or not all(found):
        raise ArgumentTypeError(f"'{text}' is not two numbers like 70x37")
    return found[0], found[1]


def add_grid(parser: ArgumentParser) -> None:
    """The options that describe a sheet nobody named yet."""
    says = {
        "page": "own grid: width and height of the page, mm (210x297)",
        "grid": "own grid: columns and rows (3x8)",
        "label": "own grid: width and height of a label, mm (70x37)",
        "margins": "own grid: left and top margin, mm (else 0x0)",
        "step": "own grid: from one label to the next, across and down, mm (else the label)",
    }
    for word, help_ in says.items():
        parser.add_argument(f"--{word}", type=pair, default=None, metavar="AxB", help=help_)
    parser.add_argument(
        "--test-page", action="store_true", help="outlines only, to lay over a sheet; no codes"
    )


def own_grid(wished: Namespace) -> dict[str, str] | None:
    """The grid that was described, or None where none was.

    raises: SheetNotSo when a part of it is missing.
    """
    said = {word: getattr(wished, word) for word in PAIRS if getattr(wished, word)}
    if not said:
        return None
    missing = [f"--{word}" for word in NEEDED if word not in said]
    if missing:
        raise SheetNotSo(trouble=f"an own grid needs {' and '.join(missing)} too")
    said.setdefault("margins", ("0", "0"))
    return {
        field: text
        for word, both in said.items()
        for field, text in zip(PAIRS[word], both, strict=True)
    }
