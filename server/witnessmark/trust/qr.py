"""An address as a symbol to scan: in the terminal, and as a drawing in a page."""

import qrcode

QUIET = 4


def _modules(text: str) -> list[list[bool]]:
    """The symbol's squares, row by row, with the quiet margin around them."""
    symbol = qrcode.QRCode(error_correction=qrcode.constants.ERROR_CORRECT_M, border=QUIET)
    symbol.add_data(text)
    symbol.make(fit=True)
    return [[bool(square) for square in row] for row in symbol.get_matrix()]


def terminal_qr(text: str) -> str:
    """The symbol in half blocks, two rows of squares a line, light squares drawn.

    Terminals are mostly dark; drawing what is light keeps the symbol the right way round there,
    and readers that look at a light terminal take the turned one as well.
    """
    rows = _modules(text)
    if len(rows) % 2:
        rows.append([False] * len(rows[0]))
    signs = {(False, False): "█", (False, True): "▀", (True, False): "▄", (True, True): " "}
    lines = (
        "".join(signs[upper, lower] for upper, lower in zip(above, below, strict=True))
        for above, below in zip(rows[::2], rows[1::2], strict=True)
    )
    return "\n".join(lines)


def svg_qr(text: str) -> str:
    """The symbol as one SVG path, a unit a square."""
    rows = _modules(text)
    path = "".join(
        f"M{x} {y}h1v1h-1z" for y, row in enumerate(rows) for x, dark in enumerate(row) if dark
    )
    return (
        f'<svg class="qr" viewBox="0 0 {len(rows)} {len(rows)}" role="img" '
        f'shape-rendering="crispEdges" aria-label="The address as a symbol to scan">'
        f'<path d="{path}"/></svg>'
    )
