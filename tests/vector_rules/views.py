"""Shared cases of views: a short story, the question, and what of the answer is looked at."""

from collections.abc import Callable
from typing import Any

from vector_rules.story import picked, workshop
from witnessmark.log.workshop import Workshop
from witnessmark.views import plain
from witnessmark.views.away import away, days, out
from witnessmark.views.chosen import chosen
from witnessmark.views.code import code
from witnessmark.views.counted import counted
from witnessmark.views.donor import donor
from witnessmark.views.find import find, folded
from witnessmark.views.find_row import row
from witnessmark.views.holder import holder
from witnessmark.views.joint import joint
from witnessmark.views.near import distance
from witnessmark.views.next_piece import next_piece
from witnessmark.views.next_place import next_places
from witnessmark.views.own_place import compared, held_back, own_place
from witnessmark.views.part import part
from witnessmark.views.pool import pool
from witnessmark.views.shelf import shelf
from witnessmark.views.tonight import tonight

Given = dict[str, Any]


VIEWS: dict[str, Callable[[Workshop, Given], Any]] = {
    "joint": lambda w, g: joint(w, g["id"], g.get("run")),
    "part": lambda w, g: part(w, g["id"]),
    "holder": lambda w, g: holder(w, g["id"]),
    "code": lambda w, g: code(w, g["code"]),
    "tonight": lambda w, g: tonight(w, g.get("today")),
    "next_piece": lambda w, g: next_piece(w, g["holder"], g.get("after"), g.get("kind")),
    "own_place": lambda w, g: own_place(w, g["id"], g.get("wanted")),
    "own_place.held_back": lambda w, g: held_back(w, g["id"], g.get("wanted")),
    "donor": lambda w, g: donor(w, g["id"]),
    "counted": lambda w, g: counted(w, g["id"]),
    "pool": lambda w, g: pool(w, g["id"], g.get("own")),
    "chosen": lambda w, g: chosen(w, g["id"]),
    "shelf": lambda w, _: shelf(w),
    "away": lambda w, g: away(w, g.get("today")),
    "away.out": lambda w, g: out(w.subject(g["id"]), g.get("today")),
    "find.row": lambda w, g: row(w, g["id"]),
}


def told(name: str) -> Callable[[Given], Any]:
    return lambda given: picked(VIEWS[name](workshop(given), given), given.get("pick"))


RULES: dict[str, Callable[[Given], Any]] = {
    **{name: told(name) for name in VIEWS},
    "find": lambda g: picked(find(g["rows"], g["query"]), g.get("pick")),
    "own_place.compared": lambda g: compared(g["own"], g["wanted"]),
    "away.days": lambda g: days(g["due"], g["today"]),
    "next_place": lambda g: next_places(g["last"], g.get("used")),
    "find.folded": lambda g: folded(g["text"]),
    "near.distance": lambda g: distance(g["one"], g["other"], g["most"]),
    "plain.natural": lambda g: sorted(g["names"], key=plain.natural),
}
