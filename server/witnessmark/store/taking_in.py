"""Taking in a file of entries, batch by batch, by the same rules as a sync."""

import json
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from itertools import islice
from pathlib import Path

from sqlalchemy import Engine

from witnessmark.errors import WitnessmarkError
from witnessmark.store.devices import name_device, own_device
from witnessmark.store.engine import writing
from witnessmark.store.importing import (
    Imported,
    Line,
    confirm_log,
    read_lines,
    read_photos,
    refused_line,
)
from witnessmark.store.invented import belongs_to, invented_things
from witnessmark.store.log_append import Taken, append, read_head
from witnessmark.store.offering import Offered
from witnessmark.store.photos import keep_file, note_photo
from witnessmark.store.settings import read_setting, write_setting

ENTRIES_AT_ONCE = 2_000
_DEMO = "demo"


@dataclass(frozen=True, slots=True)
class Into:
    """Where a file's entries go."""

    engine: Engine
    data: Path
    workshop: str
    now_ms: Callable[[], int]


def take_in(into: Into, file: Path, *, demo: bool) -> Imported:
    """Append what a file holds; invented entries only where the workshop is the demo.

    raises: FileUnreadable, NoRoom, StoreBusy
    """
    confirm_log(file)
    done = Imported()
    known = _is_demo(into, demo, _names_beside(file))
    things = set() if known else invented_things(line.facts for line in read_lines(file))
    lines = _real(read_lines(file), things, done)
    while some := list(islice(lines, ENTRIES_AT_ONCE)):
        _append(into, some, done)
    _keep_photos(into, file, done)
    return done


def _is_demo(into: Into, demo: bool, names: dict[str, str]) -> bool:
    """A workshop is the demo from its first import as such, and stays it."""
    with writing(into.engine) as connection:
        if demo:
            write_setting(connection, into.workshop, _DEMO, True)
            for device, name in names.items():
                name_device(connection, into.workshop, device, name, now_ms=into.now_ms())
        return read_setting(connection, into.workshop, _DEMO) is True


def _names_beside(file: Path) -> dict[str, str]:
    """What the demo calls its devices, which nobody has paired: {"id": name} beside the file."""
    beside = file.with_name("devices.json")
    found = json.loads(beside.read_bytes()) if beside.is_file() else {}
    return found if isinstance(found, dict) else {}


def _real(lines: Iterator[Line], things: set[str], done: Imported) -> Iterator[Line]:
    """The lines without those of invented things, and without what strikes out one of these."""
    left_out = set(things)
    for line in lines:
        if line.facts and belongs_to(line.facts, left_out):
            left_out.add(line.facts["id"])
            done.invented += 1
        else:
            yield line


def _append(into: Into, lines: list[Line], done: Imported) -> None:
    offers: list[Offered] = []
    numbers: list[int] = []
    for line in lines:
        if isinstance(line.offer, WitnessmarkError):
            done.refused.append(refused_line(line.number, line.offer))
        else:
            offers.append(line.offer)
            numbers.append(line.number)
    now = into.now_ms()
    with writing(into.engine) as connection:
        before = read_head(connection, into.workshop, locked=True).head
        carrier = own_device(connection, into.workshop, now)
        head, answers = append(connection, into.workshop, carrier, offers, now)
    taken = head.head - before
    done.taken += taken
    done.had += sum(isinstance(answer, Taken) for answer in answers) - taken
    for number, answer in zip(numbers, answers, strict=True):
        if not isinstance(answer, Taken):
            done.refused.append(refused_line(number, answer))


def _keep_photos(into: Into, file: Path, done: Imported) -> None:
    for sha, raw in read_photos(file):
        try:
            mime = keep_file(into.data, sha, raw)
        except WitnessmarkError as why:
            done.refused.append(refused_line(0, why))
            continue
        with writing(into.engine) as connection:
            facts = {"size": len(raw), "now_ms": into.now_ms()}
            done.photos += note_photo(connection, into.workshop, sha, mime, **facts)
