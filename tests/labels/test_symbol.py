"""What a symbol holds and how large it is, beside the published table."""

import json
from pathlib import Path

import pytest
from qrcode.constants import ERROR_CORRECT_H, ERROR_CORRECT_L, ERROR_CORRECT_M, ERROR_CORRECT_Q
from qrcode.main import QRCode
from qrcode.util import ALPHA_NUM, MODE_ALPHA_NUM, QRData
from witnessmark.labels.symbol import ALPHANUMERIC, symbol

REFERENCE = Path(__file__).parents[2] / "fixtures" / "reference" / "qr.json"
GROUPS = {group["topic"]: group for group in json.loads(REFERENCE.read_text("utf-8"))}
LEVELS = {"L": ERROR_CORRECT_L, "M": ERROR_CORRECT_M, "Q": ERROR_CORRECT_Q, "H": ERROR_CORRECT_H}


def smallest(text: str, level: str) -> QRCode:
    drawing = QRCode(error_correction=LEVELS[level], border=0)
    drawing.add_data(QRData(text, mode=MODE_ALPHA_NUM))
    drawing.make(fit=True)
    return drawing


@pytest.mark.parametrize("case", GROUPS["QR capacity, alphanumeric"]["cases"], ids=str)
def test_a_symbol_holds_what_iso_iec_18004_prints(case: dict[str, dict[str, object]]) -> None:
    capacity, level = int(str(case["gives"]["capacity"])), str(case["given"]["level"])
    full, over = smallest("A" * capacity, level), smallest("A" * (capacity + 1), level)
    assert full.version == case["given"]["version"] < over.version
    assert len(full.modules) == case["gives"]["modules"]
    if level == "H":
        assert (
            len(symbol("A" * capacity))
            == case["gives"]["modules"]
            < len(symbol("A" * (capacity + 1)))
        )


@pytest.mark.parametrize("case", GROUPS["QR alphanumeric alphabet"]["cases"], ids=str)
def test_an_address_uses_only_the_alphanumeric_signs(case: dict[str, dict[str, object]]) -> None:
    if "alphabet" in case["given"]:
        assert case["gives"]["characters"] == ALPHANUMERIC == ALPHA_NUM.decode()
    else:
        fits = set(str(case["given"]["text"])) <= set(ALPHANUMERIC)
        assert fits is case["gives"]["alphanumeric"]
