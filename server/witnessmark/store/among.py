"""One condition for "is one of these", however many there are: the values travel as one text."""

import json
from collections.abc import Iterable
from typing import Any

from sqlalchemy import ARRAY, Column, ColumnElement, Connection, Text, any_, func, literal, select


def among(
    connection: Connection, column: Column[Any], values: Iterable[str]
) -> ColumnElement[bool]:
    """Whether a text column holds one of the values; an index on it is used."""
    wanted = sorted(set(values))
    if connection.dialect.name == "sqlite":
        each = func.json_each(json.dumps(wanted)).table_valued("value")
        return column.in_(select(each.c.value))
    return column == any_(literal(wanted, ARRAY(Text)))
