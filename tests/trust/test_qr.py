"""Addresses as symbols, read back by an independent reader."""

import re

import numpy as np
import pytest
import zxingcpp
from witnessmark.trust.qr import svg_qr, terminal_qr

TEXTS = ["https://bokal.local:8443/pair#4831-2207", "http://bokal.local:8080/", "x" * 120]
SIZE = 6


def read(light: np.ndarray) -> str:
    """The text of a picture given as squares, light or not."""
    picture = np.kron(light.astype(np.uint8) * 255, np.ones((SIZE, SIZE), np.uint8))
    found = zxingcpp.read_barcodes(picture)
    assert len(found) == 1
    return str(found[0].text)


@pytest.mark.parametrize("text", TEXTS)
def test_the_terminals_symbol_reads_back(text: str) -> None:
    halves = {"█": (1, 1), "▀": (1, 0), "▄": (0, 1), " ": (0, 0)}
    rows: list[list[int]] = []
    for line in terminal_qr(text).split("\n"):
        rows.append([halves[sign][0] for sign in line])
        rows.append([halves[sign][1] for sign in line])
    assert read(np.array(rows)) == text


@pytest.mark.parametrize("text", TEXTS)
def test_the_pages_symbol_reads_back(text: str) -> None:
    drawing = svg_qr(text)
    side = int(re.search(r'viewBox="0 0 (\d+)', drawing)[1])  # type: ignore[index]
    light = np.ones((side, side), np.uint8)
    for x, y in re.findall(r"M(\d+) (\d+)h", drawing):
        light[int(y), int(x)] = 0
    assert read(light) == text
