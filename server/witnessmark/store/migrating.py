"""Bring a database to the newest tables; done at every start, a moment when nothing is to do."""

from pathlib import Path

from alembic import command
from alembic.config import Config
from flask_migrate import Migrate  # type: ignore[import-untyped]
from sqlalchemy import Connection

from witnessmark.store.tables import db

FOLDER = Path(__file__).parent / "migrations"

# For developers: flask --app witnessmark.api db migrate -m "what is now true"
migrate = Migrate(db=db, directory=str(FOLDER), render_as_batch=True)


def migrated(connection: Connection) -> None:
    """Run what is missing, in the caller's transaction."""
    config = Config()
    config.set_main_option("script_location", FOLDER.as_posix().replace("%", "%%"))
    config.attributes["connection"] = connection
    command.upgrade(config, "head")
