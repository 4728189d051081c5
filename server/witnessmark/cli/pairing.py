"""Pairing a phone from the terminal."""

from argparse import Namespace

from witnessmark.cli.beside import ADDRESS, beside, label_address
from witnessmark.cli.folder import data_folder
from witnessmark.cli.say import say, say_drawing, say_json
from witnessmark.trust.qr import terminal_qr


def pair(wished: Namespace) -> None:
    """Show a one-time code, as symbol, link and digits; it lasts ten minutes."""
    with beside(wished) as store:
        store.ensure_workshop()
        code = store.pairing_code()
        address = store.setting(ADDRESS)
        if not isinstance(address, str):
            address = label_address(store, data_folder(wished.data))
    url = f"{address}/pair#{code.code}"
    if wished.json:
        say_json({"url": url, "code": code.code, "expires": code.expires})
        return
    if say_drawing(terminal_qr(url)):
        say()
    say(f"Scan it with the phone, or open {url}")
    say(f"The code is {code.code}; it pairs one phone until {code.expires}.")
