"""Sheets of labels: fresh codes, reprints, and the grid that was asked for."""

from typing import Any

import pytest
from witnessmark.store import Store
from witnessmark.trade.label import parse
from written import Writer


def code_of(answer: Any) -> tuple[int, str]:
    return answer.status_code, answer.json["code"]


def test_a_sheet_has_codes_never_printed_before_and_is_an_entry(phone: Any, store: Store) -> None:
    first = phone.post("/sheets", {"layout": "a4-3x8", "count": 24}).json
    second = phone.post("/sheets", {"layout": "a4-3x8", "count": 24, "start": 7}).json
    codes = first["codes"] + second["codes"]
    assert len(set(codes)) == 48
    assert [parse(code) for code in codes] == codes
    logged = phone.get("/log").json["entries"]
    assert [row["entry"]["body"]["codes"] for row in logged] == [first["codes"], second["codes"]]
    answer = phone.get(f"/sheets/{first['id']}.pdf")
    assert (answer.mimetype, answer.data[:5]) == ("application/pdf", b"%PDF-")


def test_a_label_is_printed_again_with_the_name_it_has_now(phone: Any, writer: Writer) -> None:
    part = writer.part("rocker 3")
    tray = writer.entry("holder", body={"fields": {"name": "tray"}})
    label = writer.entry("label", "7K3MQ2RJ", body={"marks": part["about"]})
    place = writer.entry("place", part["about"], body={"in": tray["about"]})
    phone.sync(part, tray, label, place)
    made = phone.post("/sheets", {"layout": "62x29", "reprint": ["7k3m q2rj"]})
    assert (made.status_code, made.json["codes"]) == (201, ["7K3MQ2RJ"])
    assert phone.get(f"/sheets/{made.json['id']}.pdf").status_code == 200


def test_a_grid_may_be_given_in_millimetres_with_fractions(phone: Any) -> None:
    grid = {
        "page_width": 210,
        "page_height": 297,
        "left": 7.25,
        "top": "15,15",
        "columns": 3,
        "rows": 7,
        "width": 63.5,
        "height": 38.1,
        "pitch_x": 66,
    }
    made = phone.post("/sheets", {"layout": grid, "count": 2, "cut_marks": True})
    assert made.status_code == 201
    assert phone.get(f"/sheets/{made.json['id']}.pdf").status_code == 200
    said = "&".join(f"{name}={number}" for name, number in grid.items())
    assert phone.get(f"/sheets/test.pdf?{said}").data[:5] == b"%PDF-"
    unlike = phone.get(f"/sheets/test.pdf?{said.replace('columns=3', 'columns=5')}")
    assert code_of(unlike) == (422, "label-grid-impossible")
    wide = {**grid, "columns": 5}
    refused = phone.post("/sheets", {"layout": wide, "count": 2})
    assert code_of(refused) == (422, "label-grid-impossible")


@pytest.mark.parametrize(
    ("facts", "expected"),
    [
        ({"count": 1}, (422, "field-missing")),
        ({"layout": "a4-3x8"}, (422, "field-shape")),
        ({"layout": "a4-3x8", "count": 0}, (422, "field-shape")),
        ({"layout": "a4-3x8", "count": 5001}, (422, "field-shape")),
        ({"layout": "a4-3x8", "count": 1, "start": "2"}, (422, "field-shape")),
        ({"layout": "nothing", "count": 1}, (422, "label-grid-impossible")),
        ({"layout": {}, "count": 1}, (422, "label-grid-impossible")),
        ({"layout": 5, "count": 1}, (422, "field-shape")),
        ({"layout": "a4-3x8", "reprint": []}, (422, "field-shape")),
        ({"layout": "a4-3x8", "reprint": ["7K3MQ2RK"]}, (422, "label-check")),
        ({"layout": "a4-3x8", "reprint": [5]}, (422, "field-shape")),
    ],
)
def test_a_sheet_that_cannot_be_is_not_recorded(
    phone: Any, facts: dict[str, object], expected: tuple[int, str]
) -> None:
    assert code_of(phone.post("/sheets", facts)) == expected
    assert phone.sync()["head"] == 0


def test_ready_grids_and_a_page_to_check_the_printer(phone: Any) -> None:
    presets = phone.get("/sheets/presets").json["presets"]
    assert {"id", "name", "places", "width", "height"} <= set(presets[0])
    assert phone.get(f"/sheets/test.pdf?layout={presets[0]['id']}").data[:5] == b"%PDF-"
    assert code_of(phone.get("/sheets/test.pdf?layout=x")) == (422, "label-grid-impossible")
    assert code_of(phone.get("/sheets/nothing.pdf")) == (404, "sheet-unknown")


def test_five_thousand_labels_are_one_sheet(phone: Any) -> None:
    made = phone.post("/sheets", {"layout": "62x29", "count": 5_000})
    assert made.status_code == 201
    assert len(set(made.json["codes"])) == 5_000
