"""A Workshop that holds just what one question needs, read from the projection."""

import json
from collections.abc import Iterable

from sqlalchemy import ColumnElement, Connection, select

from witnessmark.log.values import Subject
from witnessmark.log.workshop import Workshop
from witnessmark.store import tables
from witnessmark.store.among import among

_DEEPEST_HOLDER = 50
_AROUND_PART = ("of-kind", "from-donor", "for-build", "fitted-in")
_IN_JOINT = ("clamps", "holds-with")
_INSIDE = ("lies-in", "lay-in")


class Slice:
    """Subjects found so far for one question; links lead on from them."""

    def __init__(self, connection: Connection, workshop: str) -> None:
        self.connection = connection
        self.workshop = workshop
        self.subjects: dict[str, Subject] = {}

    def add(self, ids: Iterable[str]) -> set[str]:
        """Read these subjects; the ids asked for, found or not."""
        wanted = set(ids)
        missing = wanted - self.subjects.keys()
        if missing:
            self._read(among(self.connection, tables.subject.c.id, missing))
        return wanted

    def add_all(self, *headings: str) -> None:
        """Read every subject of these headings."""
        self._read(tables.subject.c.heading.in_(headings))

    def _read(self, where: ColumnElement[bool]) -> None:
        table = tables.subject.c
        query = select(table.state).where(table.workshop == self.workshop, where)
        for text in self.connection.execute(query).scalars():
            found: Subject = json.loads(text)
            self.subjects[found["id"]] = found

    def onward(self, ids: Iterable[str], *roles: str) -> set[str]:
        """Read what these point to in some of the roles (in any, when none is named)."""
        return self._follow(ids, roles, back=False)

    def back(self, ids: Iterable[str], *roles: str) -> set[str]:
        """Read what points to these in some of the roles."""
        return self._follow(ids, roles, back=True)

    def up(self, ids: Iterable[str]) -> None:
        """Read the holders these lie in, and the holders those lie in; a circle ends it."""
        level, seen = set(ids), set[str]()
        for _ in range(_DEEPEST_HOLDER):
            seen |= level
            level = self.onward(level, "lies-in") - seen
            if not level:
                return

    def _follow(self, ids: Iterable[str], roles: tuple[str, ...], *, back: bool) -> set[str]:
        table = tables.link.c
        from_, to = (table.target, table.origin) if back else (table.origin, table.target)
        near = among(self.connection, from_, ids)
        query = select(to).where(table.workshop == self.workshop, near)
        if roles:
            query = query.where(table.role.in_(roles))
        return self.add(self.connection.execute(query).scalars())

    def made(self) -> Workshop:
        """The Workshop for the views."""
        return Workshop(list(self.subjects.values()))


def part_slice(connection: Connection, workshop: str, part: str) -> Workshop:
    """A part with its labels, holders, kind, origin, and the joints it takes part in."""
    slice_ = Slice(connection, workshop)
    slice_.add([part])
    slice_.back([part], "marks")
    slice_.up([part])
    slice_.onward([part], *_AROUND_PART)
    slice_.back(slice_.onward([part], "piece"), "marks")
    _joints(slice_, slice_.back([part], *_IN_JOINT))
    return slice_.made()


def joint_slice(connection: Connection, workshop: str, joint: str) -> Workshop:
    """A joint with its parts, their kinds and labels, its build, and every wrench."""
    slice_ = Slice(connection, workshop)
    _joints(slice_, slice_.add([joint]))
    return slice_.made()


def _joints(slice_: Slice, joints: set[str]) -> None:
    parts = slice_.onward(joints, *_IN_JOINT)
    slice_.onward(joints, "uses", "for-build")
    slice_.onward(parts, "of-kind")
    slice_.back(parts, "marks")
    slice_.add_all("wrench")


def holder_slice(connection: Connection, workshop: str, holder: str) -> Workshop:
    """A holder with its labels, where it lies, and one level of what lies or lay in it."""
    slice_ = Slice(connection, workshop)
    slice_.add([holder])
    slice_.up([holder])
    content = slice_.back([holder], *_INSIDE)
    slice_.onward(content, *_AROUND_PART)
    slice_.up(content)
    slice_.back(content, "lies-in")
    slice_.back({holder, *content}, "marks")
    return slice_.made()


def code_slice(connection: Connection, workshop: str, code: str) -> Workshop:
    """A label and what it marks."""
    slice_ = Slice(connection, workshop)
    slice_.add([code])
    slice_.onward([code], "marks")
    return slice_.made()


def found_slice(connection: Connection, workshop: str) -> Workshop:
    """Everything that has a name, for a search."""
    slice_ = Slice(connection, workshop)
    slice_.add_all("part", "holder", "joint", "kind", "donor", "build")
    slice_.add_all("wrench", "instrument", "step", "label")
    return slice_.made()


def sheet_slice(connection: Connection, workshop: str, sheet: str) -> Workshop:
    """A sheet with its labels, what they mark, and where that lies."""
    slice_ = Slice(connection, workshop)
    slice_.add([sheet])
    table = tables.printed.c
    query = select(table.code).where(table.workshop == workshop, table.sheet == sheet)
    things = slice_.onward(slice_.add(connection.execute(query).scalars()), "marks")
    slice_.onward(things, "lies-in")
    return slice_.made()
