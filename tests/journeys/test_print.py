"""A record on paper: no doors, a joint in one piece, and at the foot what it is and which page."""

from collections.abc import Callable

import pypdfium2
from journeys.bench_scene import HEAD, bag, half_way
from playwright.sync_api import Page, expect

CODE = "7K3MQ2RJ"


def test_each_printed_page_has_code_name_day_and_its_number_at_the_foot(
    open_bench: Callable[..., Page],
) -> None:
    marked = {"heading": "label", "about": CODE, "body": {"marks": HEAD}}
    notes = [
        {"heading": "note", "about": HEAD, "body": {"text": f"Look {n}: nothing new"}}
        for n in range(60)
    ]
    page = open_bench([*half_way(), *bag(), marked, *notes], f"/part/{HEAD}")
    expect(page.locator(".notes li").first).to_be_visible()
    sheets = pypdfium2.PdfDocument(page.pdf(prefer_css_page_size=True))
    count = len(sheets)
    assert count > 1
    year = page.evaluate("new Date().getFullYear()")
    for number, sheet in enumerate(sheets, 1):
        words = " ".join(sheet.get_textpage().get_text_range().split())
        assert f"Page {number} of {count}" in words
        foot = words[words.index("7K3M Q2RJ ·") :]
        assert "Cylinder head" in foot
        assert str(year) in foot
        assert "Tonight" not in words
