"""Small facts of a workshop, or of the whole computer, kept by name as JSON."""

import json
from typing import Any

from sqlalchemy import Connection, delete, insert, select

from witnessmark.store import tables

COMPUTER = ""  # settings of no one workshop stand under an empty id


def read_setting(connection: Connection, workshop: str, name: str) -> Any:
    """The value kept under a name, or None."""
    table = tables.setting.c
    query = select(table.value).where(table.workshop == workshop, table.name == name)
    text = connection.execute(query).scalar()
    return None if text is None else json.loads(text)


def write_setting(connection: Connection, workshop: str, name: str, value: object) -> None:
    """Keep a value under a name; None forgets it."""
    table = tables.setting.c
    connection.execute(delete(tables.setting).where(table.workshop == workshop, table.name == name))
    if value is not None:
        row = {"workshop": workshop, "name": name, "value": json.dumps(value, sort_keys=True)}
        connection.execute(insert(tables.setting).values(row))
