"""Commands about the records as a whole: rebuild, copies, devices."""

from argparse import Namespace
from dataclasses import asdict
from pathlib import Path

from witnessmark import store as stores
from witnessmark.cli.beside import beside, database
from witnessmark.cli.errors import FileNotThere
from witnessmark.cli.folder import data_folder
from witnessmark.cli.say import complain, say, say_json


def counted(number: int, one: str, more: str) -> str:
    """The number with its word."""
    return f"{number} {one if number == 1 else more}"


def entries(number: int) -> str:
    """So many entries."""
    return counted(number, "entry", "entries")


def photos(number: int) -> str:
    """So many photos."""
    return counted(number, "photo", "photos")


def _there(path: Path) -> Path:
    """The file, or a refusal that names it."""
    if not path.is_file():
        raise FileNotThere(path=str(path))
    return path


def rebuild(wished: Namespace) -> int:
    """Make the tables anew from the log; ends with 1 where they were not the same."""
    with beside(wished) as store:
        done = store.rebuild()
    for difference in done.differences:
        complain(difference)
    if done.differences:
        complain(f"{len(done.differences)} rows were not as the log says; now they are.")
        return 1
    say(f"The tables are what the log says: {done.rows} rows from {entries(done.entries)}.")
    return 0


def backup(wished: Namespace) -> None:
    """Copy everything, also while serving."""
    with beside(wished) as store:
        done = store.backup(wished.file)
    say(f"{entries(done.entries)} and {photos(done.photos)} are in {wished.file}.")


def restore(wished: Namespace) -> None:
    """Bring a backup back into an empty folder."""
    file = _there(wished.file)
    folder = data_folder(wished.data)
    done = stores.restore(file, folder, database())
    devices_of = counted(done.devices, "device", "devices")
    say(f"{entries(done.entries)}, {photos(done.photos)} and {devices_of} are in {folder}.")


def export(wished: Namespace) -> None:
    """Write log and photos in the open format."""
    with beside(wished) as store:
        done = store.export_(wished.file)
    say(f"{entries(done.entries)} and {photos(done.photos)} are in {wished.file}.")


def import_(wished: Namespace) -> int:
    """Take entries and photos from an exported file."""
    file = _there(wished.file)
    with beside(wished) as store:
        done = store.import_(file)
    say(f"{entries(done.taken)} taken, {done.had} here already, {photos(done.photos)}.")
    if done.invented:
        say(f"{entries(done.invented)} of the demo left out: they are invented.")
    for refused in done.refused:
        complain(f"Line {refused.line}: {refused.says} {refused.next_step}")
    return 1 if done.refused else 0


def devices(wished: Namespace) -> None:
    """List the devices."""
    with beside(wished) as store:
        found = store.devices()
    if wished.json:
        say_json([asdict(device) for device in found])
        return
    for device in found:
        state = f"shut out {device.revoked}" if device.revoked else f"paired {device.paired}"
        contact = f", last contact {device.last_contact}" if device.last_contact else ""
        own = ", this computer" if device.own else ""
        say(f"{device.id}  {device.name}: {state}{contact}{own}")
    if not found:
        say("No device is paired yet. Pair one: python3 server pair")


def revoke(wished: Namespace) -> None:
    """Shut a device out, named by its id or by a name that only it has."""
    with beside(wished) as store:
        named = [device.id for device in store.devices() if device.name == wished.device]
        done = store.revoke(named[0] if len(named) == 1 else wished.device)
    say(f"{done.name} is shut out. What it holds stays on it, and can be handed over.")
