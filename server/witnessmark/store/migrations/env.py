"""Runs the migrations on a connection given by the store, or by ``flask db`` for a developer."""

from logging import getLogger

from alembic import context
from sqlalchemy import Connection

from witnessmark.store import tables

_trace = getLogger("alembic.env")


def _run(connection: Connection) -> None:
    context.configure(
        connection=connection,
        target_metadata=tables.db.metadata,
        render_as_batch=connection.dialect.name == "sqlite",
        transaction_per_migration=False,
    )
    with context.begin_transaction():
        context.run_migrations()


def _run_given() -> None:
    given = context.config.attributes.get("connection")
    if given is not None:
        _run(given)
        return
    _trace.info("no connection was given, so the app's own database is used")
    with tables.db.engine.connect() as connection:
        _run(connection)
        connection.commit()


_run_given()
