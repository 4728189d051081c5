"""Short facts of a shared case made into whole entries, and a workshop of them.

A fact has heading, about, body; id, device ("a" if not said), after, by, order if they matter.
`at` counts seconds since the first one; without it facts come a minute apart.
`odd` puts values into the folded subjects: [about, path, value].
{"pull": [fastener, pass], "with": {…}} is a pull at the target of the base's programme.
"""

import json
from pathlib import Path
from typing import Any

from witnessmark.log.workshop import Workshop, subject

BASES = json.loads(Path(__file__).with_name("workshops.json").read_text(encoding="utf-8"))
START = 0x01C185370000
RULES: dict[str, Any] = {}


def workshop(given: dict[str, Any]) -> Workshop:
    base = BASES.get(given.get("base"), {})
    facts = [*base.get("facts", []), *(whole(each, base) for each in given.get("facts", []))]
    about: dict[str, str] = {}
    kept: dict[str, list[Any]] = {}
    counts: dict[str, int] = {}
    for place, fact in enumerate(facts):
        entry = entry_of(fact, place, counts)
        about[entry["id"]] = entry["about"]
        struck = entry["heading"] == "strike-out"
        of = about.get(entry["about"], entry["about"]) if struck else entry["about"]
        line = {"entry": entry, "order": fact.get("order", entry["stamp"])}
        kept.setdefault(of, []).append(line)
    subjects = {of: subject(of, lines) for of, lines in kept.items()}
    for of, path, value in given.get("odd", []):
        put(subjects[of], path, value)
    return Workshop(list(subjects.values()))


def put(at: Any, path: list[Any], value: Any) -> None:
    """Put an odd value where the fold would never have let it through."""
    for step in path[:-1]:
        at = at[step]
    at[path[-1]] = value


def whole(fact: dict[str, Any], base: dict[str, Any]) -> dict[str, Any]:
    if "pull" not in fact:
        return fact
    fastener, pass_ = fact["pull"]
    body = {"run": base["run"], "fastener": fastener, "pass": pass_, "wrench": None}
    body |= {"target": base["targets"].get(pass_), "reading": None, **fact.get("with", {})}
    return {**fact, "heading": "pull", "about": base["joint"], "body": body}


def entry_of(fact: dict[str, Any], place: int, counts: dict[str, int]) -> dict[str, Any]:
    device = fact.get("device", "a")
    counts[device] = counts.get(device, 0) + 1
    ms = round(fact.get("at", place * 60) * 1000)
    seconds, thousandths = divmod(ms, 1000)
    hour, minute, second = seconds // 3600, seconds // 60 % 60, seconds % 60
    return {
        "id": fact.get("id", f"e{place}"),
        "heading": fact["heading"],
        "about": fact["about"],
        "device": device,
        "n": counts[device],
        "stamp": fact.get("stamp", f"{START + ms:012x}-0000"),
        "made": fact.get("made", f"2031-03-07T{hour:02}:{minute:02}:{second:02}.{thousandths:03}Z"),
        "by": fact.get("by"),
        "v": 1,
        "after": fact.get("after", []),
        "body": fact["body"],
    }


def picked(result: Any, paths: list[str] | None) -> Any:
    if paths is None:
        return result
    return {path: follow(result, path.split(".")) for path in paths}


def follow(value: Any, steps: list[str]) -> Any:
    """A path into JSON; "*" goes through a list."""
    for place, step in enumerate(steps):
        if step == "*":
            return [follow(each, steps[place + 1 :]) for each in value]
        if value is None:
            return None
        value = value[int(step)] if isinstance(value, list) else value[step]
    return value
