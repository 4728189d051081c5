"""Printed labels read back, lie where they should, and say what they should."""

import itertools

import pypdfium2
import pytest
import zxingcpp
from witnessmark.labels.face import LabelText
from witnessmark.labels.layout import PRESETS, GridImpossible, Layout, layout_from
from witnessmark.labels.sheet import sheet_pdf
from witnessmark.labels.sheet import test_page as outline_page
from witnessmark.labels.symbol import address_of, runs, symbol
from witnessmark.trade import label

HOST = "BOKAL.LOCAL:8443"
DPI = 300


def codes(count: int, first: int = 0) -> list[str]:
    """Codes with right check signs, spread over the alphabet."""
    alphabet = label.ALPHABET
    made = []
    for number in range(first, first + count):
        left, signs = number * 7919 * 104729 + 12345, ""
        for _ in range(7):
            left, sign = divmod(left, 32)
            signs += alphabet[sign]
        made.append(signs + label.check(signs))
    return made


def read(pdf: bytes) -> list[list[zxingcpp.Barcode]]:
    """What an independent reader finds on each rendered page."""
    document = pypdfium2.PdfDocument(pdf)
    found = []
    for page in document:
        picture = page.render(scale=DPI / 72, grayscale=True).to_numpy()
        found.append(zxingcpp.read_barcodes(picture, formats=zxingcpp.BarcodeFormat.QRCode))
    document.close()
    return found


@pytest.mark.parametrize("name", PRESETS)
def test_every_label_of_a_ready_grid_reads_back(name: str) -> None:
    layout = PRESETS[name]
    wanted = codes(layout.places + 1)
    pages = read(
        sheet_pdf(layout, [LabelText(c, "Rocker arms", "Bin 12") for c in wanted], host=HOST)
    )
    twins = 2 if layout.width >= 66 else 1
    assert len(pages) == 2
    texts = [found.text for page in pages for found in page]
    assert sorted(texts) == sorted([address_of(code, HOST) for code in wanted] * twins)


def test_a_symbol_stands_where_the_grid_says_to_a_tenth_of_a_millimetre() -> None:
    layout = PRESETS["a4-3x8"]
    wanted = codes(layout.places)
    page = read(sheet_pdf(layout, [LabelText(c) for c in wanted], host=HOST))[0]
    by_text: dict[str, list[float]] = {}
    for found in page:
        corner = found.position.top_left
        by_text.setdefault(found.text, []).append(corner.x / DPI * 25.4)
        top = corner.y / DPI * 25.4
        place = wanted.index(found.text[-8:])
        assert top == pytest.approx(layout.corner(place)[1] + (37 - 29 * 0.6) / 2, abs=0.2)
    for place, code in enumerate(wanted):
        left = layout.corner(place)[0] + 5
        twin = left + (29 + 4) * 0.6
        assert sorted(by_text[address_of(code, HOST)]) == pytest.approx([left, twin], abs=0.2)


def test_a_half_used_sheet_starts_at_the_place_asked_for() -> None:
    layout = PRESETS["letter-3x10"]
    wanted = codes(3)
    pages = read(sheet_pdf(layout, [LabelText(c) for c in wanted], host=HOST, start=29))
    assert [len(page) for page in pages] == [4, 2]


def test_the_address_of_a_five_sign_name_makes_a_version_3_symbol() -> None:
    text = address_of("7K3MQ2RJ", HOST)
    assert len(text) == 35
    assert len(symbol(text)) == 29
    assert len(symbol(address_of("7K3MQ2RJ", "192.168.178.20:8443"))) == 33


def test_runs_cover_exactly_the_dark_modules() -> None:
    modules = symbol(address_of("WTNSMRK4", HOST))
    dark = {(r, c + i) for r, c, length in runs(modules) for i in range(length)}
    assert dark == {(r, c) for r, row in enumerate(modules) for c, on in enumerate(row) if on}


def test_the_code_name_and_holder_stand_in_words() -> None:
    layout = PRESETS["a4-3x8"]
    pdf = sheet_pdf(layout, [LabelText("7K3MQ2RJ", "Stößel Ø 22", "Полка B")], host=HOST)
    page = pypdfium2.PdfDocument(pdf)[0]
    words = page.get_textpage().get_text_range()
    for word in ("7K3M", "Q2RJ", "Stößel", "Полка"):
        assert word in words


def test_signs_the_face_lacks_do_not_stop_a_sheet() -> None:
    pdf = sheet_pdf(
        PRESETS["50x30"], [LabelText("7K3MQ2RJ", "螺栓 \U0001f529 a" * 30, "x" * 400)], host=HOST
    )
    assert [found.text[-8:] for found in read(pdf)[0]] == ["7K3MQ2RJ"]


def test_progress_counts_to_the_end() -> None:
    told: list[tuple[int, int]] = []
    labels = [LabelText(code) for code in codes(50)]
    sheet_pdf(PRESETS["a4-3x8"], labels, host=HOST, progress=lambda *at: told.append(at))
    assert told == [(24, 50), (48, 50), (50, 50)]


def test_the_test_page_and_cut_marks_render() -> None:
    for layout in PRESETS.values():
        assert len(pypdfium2.PdfDocument(outline_page(layout))) == 1
    assert sheet_pdf(PRESETS["a4-4x10"], [LabelText("7K3MQ2RJ")], host=HOST, cut_marks=True)


def test_an_own_grid_is_taken_as_typed() -> None:
    given = {
        "page_width": "210",
        "page_height": "297",
        "left": "8,5",
        "top": 10,
        "columns": 2,
        "rows": 3,
        "width": 90,
        "height": 40,
        "pitch_x": 95,
    }
    layout = layout_from(given)
    assert layout.corner(5) == (8.5 + 95, 10 + 80)


@pytest.mark.parametrize(
    "change",
    [
        {"columns": 0},
        {"columns": 9},
        {"rows": 40},
        {"width": 5},
        {"left": -1},
        {"pitch_x": 20},
        {"top": "wide"},
        {"page_height": 5000},
        {"columns": None},
        {"left": float("nan")},
        {"width": True},
    ],
)
def test_a_grid_that_cannot_lie_on_its_page_is_refused_with_the_reason(
    change: dict[str, object],
) -> None:
    good = {
        "page_width": 210,
        "page_height": 297,
        "left": 0,
        "top": 0,
        "columns": 2,
        "rows": 3,
        "width": 90,
        "height": 40,
    }
    with pytest.raises(GridImpossible):
        layout_from(good | change)


def test_no_ready_grid_has_labels_over_each_other() -> None:
    for layout in PRESETS.values():
        boxes = [layout.corner(place) for place in range(layout.places)]
        for (ax, ay), (bx, by) in itertools.combinations(boxes, 2):
            apart = abs(ax - bx) >= layout.width - 0.01 or abs(ay - by) >= layout.height - 0.01
            assert apart
        assert isinstance(layout, Layout)
