"""How a shared case of the log is put to the rules in Python."""

import json
from collections.abc import Callable
from typing import Any

from witnessmark.log import clean, digest, entry, ids, links, stamp, workshop
from witnessmark.log.registry import HEADINGS


def _raw(given: dict[str, Any]) -> bytes:
    if "text" in given:
        return str(given["text"]).encode()
    facts = json.loads(json.dumps(given["entry"]))
    if "pad" in given:
        facts["body"]["text"] = "x" * given["pad"]
    if "deep" in given:
        facts["body"]["deep"] = json.loads("[" * given["deep"] + "]" * given["deep"])
    return json.dumps(facts).encode()


def _read(given: dict[str, Any]) -> dict[str, str]:
    taken = entry.read(_raw(given))
    order = given.get("order")
    if "pad" in given:
        return {"bytes": str(len(taken.text.encode()))}
    return {"text": taken.text, "digest": digest.as_hex(digest.digest(taken.text, order))}


def _refusal(given: dict[str, Any]) -> dict[str, str] | None:
    try:
        entry.read(_raw(given))
    except entry.Refusal as refusal:
        return refusal.answer()
    return None


def _set_digest(given: dict[str, Any]) -> str:
    total = 0
    for one in given["entries"]:
        total = digest.added(total, [digest.digest(one["text"], one.get("order"))])
    return digest.as_hex(total)


def _clock(given: dict[str, Any]) -> list[str]:
    clock = stamp.Clock()
    made = []
    for step in given["steps"]:
        if "seen" in step:
            clock = stamp.seen(clock, step["seen"])
        elif "server_ms" in step:
            clock = stamp.answered(clock, step["server_ms"], step["device_ms"])
        else:
            ticked = stamp.tick(clock, step["device_ms"])
            made.append(ticked.stamp)
            clock = ticked.clock
    return made


def _orders(given: dict[str, Any]) -> list[str | None]:
    orders: list[str | None] = []
    last = None
    for one in given["batch"]:
        order = stamp.order_given(one["stamp"], given["server_ms"], last, one.get("order"))
        orders.append(order)
        last = order or last
    return orders


def _id_facts(given: dict[str, Any]) -> dict[str, Any]:
    facts = ids.id_facts(given["uuid"])
    return {
        "unix_ms": facts.unix_ms,
        "version": facts.version,
        "variant": facts.variant,
        "ours": ids.is_uuid7(given["uuid"]),
    }


def _subject(given: dict[str, Any]) -> object:
    return workshop.subject(given["about"], given["entries"])


def _links(given: dict[str, Any]) -> object:
    return links.links(workshop.subject(given["about"], given["entries"]))


def _workshop(given: dict[str, Any]) -> object:
    subjects = [workshop.subject(one["about"], one["entries"]) for one in given["subjects"]]
    shop = workshop.Workshop(subjects)
    asked = given["asks"]
    return {
        "all": [found["id"] for found in shop.all(asked["all"])],
        "linked": [found["id"] for found in shop.linked(*asked["linked"])],
        "value": workshop.value(shop.subject(asked["value"][0]), asked["value"][1]),
        "standing": [
            fact["id"]
            for fact in workshop.standing(shop.subject(asked["standing"][0]), asked["standing"][1])
        ],
    }


def _headings(_given: dict[str, Any]) -> object:
    return {
        word: [heading.merge.__name__.replace("_", "-"), heading.v, heading.names]
        for word, heading in HEADINGS.items()
    }


RULES: dict[str, Callable[[dict[str, Any]], object]] = {
    "log.canonical": lambda given: clean.canonical(clean.parse(given["text"].encode())),
    "log.deepest": lambda given: clean.deepest(given["text"].encode()),
    "log.read": _read,
    "log.refusal": _refusal,
    "log.set_digest": _set_digest,
    "log.uuid7": lambda given: ids.uuid7(given["unix_ms"], bytes.fromhex(given["random"])),
    "log.id_facts": _id_facts,
    "log.next_stamp": lambda given: stamp.next_stamp(given["last"], given["unix_ms"]),
    "log.clock": _clock,
    "log.orders": _orders,
    "log.unwrapped": lambda given: entry.unwrapped(given["item"]).order,
    "log.subject": _subject,
    "log.links": _links,
    "log.workshop": _workshop,
    "log.headings": _headings,
}
