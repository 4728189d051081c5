"""POST /pair opens the door once; POST /pairing-codes makes a code for the next device."""

import unicodedata
from typing import Any

import qrcode
from flask import Response

from witnessmark.api.body import json_object
from witnessmark.api.keys import bearer, store
from witnessmark.api.pages import address
from witnessmark.api.routing import CREATED, Routes, tell
from witnessmark.api.shapes import Paired, PairingCode, PairRequest
from witnessmark.errors import RequestMissing, RequestShape
from witnessmark.store.ids import moment

LONGEST_NAME = 60

routes = Routes("pairing", "One-time codes that make a device known.")


@routes.post("/pair", wanted=PairRequest, told=Paired, number=CREATED, is_open=True)
def pair() -> Response:
    """Pair a device with its code of eight digits."""
    wanted = json_object()
    code, name = _text(wanted, "code"), device_name(wanted)
    made = store().pair(code, name)
    told = {"device": made.device, "key": made.key, "workshop": made.workshop}
    now = moment(store().now_ms(), fine=True)
    return tell({**told, "now": now}, CREATED)


@routes.post("/pairing-codes", told=PairingCode, number=CREATED)
def pairing_codes() -> Response:
    """Make a code for one more device of this workshop."""
    made = store().pairing_code(bearer().workshop)
    url = f"{address()}/pair#{made.code}"
    told = {"url": url, "code": made.code, "expires": made.expires, "qr": _symbol(url)}
    return tell(told, CREATED)


def device_name(wanted: dict[str, Any]) -> str:
    """The name a person gives a device: 1 to 60 signs, none of them for control.

    raises: RequestMissing, RequestShape
    """
    name = _text(wanted, "name").strip()
    unreadable = any(unicodedata.category(sign) in {"Cc", "Cs"} for sign in name)
    if not 0 < len(name) <= LONGEST_NAME or unreadable:
        raise RequestShape(what="name", trouble=f"has not 1 to {LONGEST_NAME} signs")
    return name


def _text(wanted: dict[str, Any], field: str) -> str:
    if field not in wanted:
        raise RequestMissing(what=field)
    found = wanted[field]
    if type(found) is not str:
        raise RequestShape(what=field, trouble="is no text")
    return found


def _symbol(url: str) -> list[str]:
    """The QR symbol of an address, row by row: 1 is dark, no margin. The page draws it itself."""
    drawing = qrcode.QRCode(border=0)
    drawing.add_data(url)
    drawing.make(fit=True)
    return ["".join("1" if dark else "0" for dark in row) for row in drawing.modules]
