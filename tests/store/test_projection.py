"""Tables are only a view: caught up in any portions, they are what a fold of the log gives."""

import json
import random
from typing import Any

import pytest
from sqlalchemy import insert, select, update
from witnessmark.log.workshop import subject
from witnessmark.store import Bearer, Store, projecting, slices, tables
from witnessmark.store.projecting import catch_up
from written import Writer, offers


def history(writer: Writer, seed: int, length: int) -> list[dict[str, Any]]:
    """Descriptions, facts and strike-outs about few things, some struck before they come."""
    chance = random.Random(seed)  # noqa: S311 - a fixed seed makes the same history
    things = [writer.id(90_000 + number) for number in range(5)]
    made: list[dict[str, Any]] = []
    for _ in range(length):
        thing = chance.choice(things)
        choice = chance.randrange(5)
        if choice == 0 or not made:
            made.append(writer.part(f"name {len(made)}", thing, quantity=chance.randrange(9)))
        elif choice == 1:
            after = [entry["id"] for entry in made if entry["heading"] == "verdict"][-1:]
            body = {"verdict": chance.choice(["use", "scrap"])}
            made.append(writer.entry("verdict", thing, body=body, after=after))
        elif choice == 2:
            made.append(writer.entry("note", thing, body={"text": "seen"}))
        elif choice == 3:
            made.append(writer.strike(chance.choice(made)["id"]))
        else:
            made.append(writer.entry("from-a-newer-phone", thing, body={"deep": [{}]}))
    chance.shuffle(made)
    return made


def folded(entries: list[dict[str, Any]]) -> dict[str, str]:
    """Each subject straight from all entries, with the strike-outs of its entries."""
    by_id = {entry["id"]: entry for entry in entries}

    def homes(entry: dict[str, Any], seen: frozenset[str] = frozenset()) -> set[str]:
        target = by_id.get(entry["about"])
        struck = entry["heading"] == "strike-out" and target and target["id"] not in seen
        further = homes(target, seen | {target["id"]}) if struck and target else set()
        return {entry["about"]} | further

    groups: dict[str, list[Any]] = {}
    for entry in entries:
        for home in homes(entry):
            groups.setdefault(home, []).append({"entry": entry, "order": entry["stamp"]})
    return {
        about: json.dumps(subject(about, group), sort_keys=True)
        for about, group in groups.items()
        if any(line["entry"]["heading"] != "strike-out" for line in group)
    }


def kept(store: Store, one: Bearer) -> dict[str, str]:
    with store.engine.connect() as connection:
        table = tables.subject.c
        rows = connection.execute(select(table.id, table.state).where(table.hidden.is_not(None)))
        return {row[0]: json.dumps(json.loads(row[1]), sort_keys=True) for row in rows}


@pytest.mark.parametrize("seed", range(8))
def test_any_portions_give_what_one_fold_gives(
    store: Store, one: Bearer, writer: Writer, seed: int, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(projecting, "_ENTRIES_AT_ONCE", 1 + seed * 3)
    monkeypatch.setattr(projecting, "_SUBJECTS_AT_ONCE", 1 + seed % 3)
    entries = history(writer, seed, 60)
    for start in range(0, 60, 13):
        store.sync(one, None, offers(*entries[start : start + 13]), 0)
        if start % 2:
            catch_up(store.engine, one.workshop)
    catch_up(store.engine, one.workshop)
    assert kept(store, one) == folded(entries)
    assert store.rebuild(one.workshop).differences == []


def test_a_rebuild_names_each_row_that_was_not_as_the_log_says(
    store: Store, one: Bearer, writer: Writer
) -> None:
    part = writer.part("rocker")
    store.sync(one, None, offers(part, writer.part("valve")), 0)
    catch_up(store.engine, one.workshop)
    with store.engine.begin() as connection:
        where = tables.part.c.id == part["about"]
        connection.execute(update(tables.part).where(where).values(name="rubbed out"))
        link = {"workshop": one.workshop, "origin": "x", "role": "marks", "target": "y"}
        connection.execute(insert(tables.link).values(link))
        connection.execute(update(tables.workshop).values(count=7))
    assert store.rebuild(one.workshop).differences == [
        "workshop: count was not what the log says",
        "link x marks y: was too many",
        f"part {part['about']}: name differed",
    ]
    assert store.rebuild(one.workshop).differences == []


def test_typed_tables_can_be_read_by_those_who_know_sql(
    store: Store, one: Bearer, writer: Writer
) -> None:
    holder, joint = writer.id(500), writer.id(501)
    part = writer.part("pushrod\0", kind="k1", quantity=12)
    inspection = writer.entry("inspection", part["about"], body={"verdict": "use", "note": "ok"})
    torque = {"value": "45", "unit": "lbf·ft"}
    pull = {"run": "r", "fastener": "f1", "pass": "p1", "wrench": None, "target": torque}
    entries = [
        part,
        writer.entry("holder", holder, body={"fields": {"name": "tray 4", "form": "tray"}}),
        writer.entry("place", part["about"], body={"in": holder}),
        writer.entry("label", "7K3MQ2RJ", body={"marks": part["about"]}),
        writer.entry("verdict", part["about"], body={"verdict": "use"}),
        inspection,
        writer.entry("joint", joint, body={"fields": {"name": "head"}}),
        writer.entry("pull", joint, body={**pull, "reading": None}),
    ]
    store.sync(one, None, offers(*entries), 0)
    catch_up(store.engine, one.workshop)
    with store.engine.connect() as connection:
        read = connection.exec_driver_sql
        row = read("SELECT name, kind, quantity, holder, verdict FROM part").one()
        assert tuple(row) == ("pushrod\ufffd", "k1", 12, holder, "use")
        assert tuple(read("SELECT name, form FROM holder").one()) == ("tray 4", "tray")
        assert tuple(read("SELECT code, marks FROM label").one()) == ("7K3MQ2RJ", part["about"])
        assert tuple(read("SELECT joint, target, unit FROM pull").one()) == (joint, "45", "lbf·ft")
        assert tuple(read("SELECT part, verdict, note FROM inspection").one()) == (
            (part["about"], "use", "ok")
        )


def test_a_slice_of_a_part_holds_what_its_page_shows(
    store: Store, one: Bearer, writer: Writer
) -> None:
    tray, shelf, kind, joint = (writer.id(600 + number) for number in range(4))
    part, other = writer.part("rocker", kind=kind), writer.part("shaft")
    fields = {"name": "rocker shaft", "parts": [part["about"], other["about"]]}
    entries = [
        part,
        other,
        writer.part("elsewhere"),
        writer.entry("kind", kind, body={"fields": {"name": "rocker"}}),
        writer.entry("holder", tray, body={"fields": {"name": "tray"}}),
        writer.entry("holder", shelf, body={"fields": {"name": "shelf"}}),
        writer.entry("place", part["about"], body={"in": tray}),
        writer.entry("place", tray, body={"in": shelf}),
        writer.entry("label", "7K3MQ2RJ", body={"marks": part["about"]}),
        writer.entry("joint", joint, body={"fields": fields}),
    ]
    store.sync(one, None, offers(*entries), 0)
    about = part["about"]
    known = store.slice(one.workshop, lambda c, w: slices.part_slice(c, w, about))
    held = {found["id"] for found in known.subjects}
    assert held == {about, other["about"], kind, tray, shelf, "7K3MQ2RJ", joint}
    of_holder = store.slice(one.workshop, lambda c, w: slices.holder_slice(c, w, tray))
    assert {about, kind, tray, shelf, "7K3MQ2RJ"} == {f["id"] for f in of_holder.subjects}


def test_holders_that_lie_in_each_other_end_the_walk(
    store: Store, one: Bearer, writer: Writer
) -> None:
    first, second = writer.id(700), writer.id(701)
    entries = [
        writer.entry("holder", first, body={"fields": {}}),
        writer.entry("holder", second, body={"fields": {}}),
        writer.entry("place", first, body={"in": second}),
        writer.entry("place", second, body={"in": first}),
    ]
    store.sync(one, None, offers(*entries), 0)
    known = store.slice(one.workshop, lambda c, w: slices.holder_slice(c, w, first))
    assert {found["id"] for found in known.subjects} == {first, second}
