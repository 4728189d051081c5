"""The app: one function that puts store, routes and guards together."""

from flask import Flask, Response

from witnessmark.api import (
    asking,
    devices,
    docs,
    guard,
    keys,
    log,
    packs,
    pages,
    pairing,
    photos,
    problems,
    routing,
    sheets,
    sync,
    workings,
    zipped,
)
from witnessmark.api.config import Config
from witnessmark.api.routing import Routes, tell
from witnessmark.api.shapes import Health
from witnessmark.store import adopted, db
from witnessmark.store.engine import database_url, engine_options
from witnessmark.store.migrating import migrate
from witnessmark.store.opening import made_folder, str_url

PREFIX = "/api/v1"
SUBJECTS = tuple(
    subject.routes
    for subject in (sync, pairing, photos, log, asking, devices, sheets, workings, docs)
)
health = Routes("health", "Whether the server answers.")


@health.get("/health", told=Health, is_open=True)
def ok() -> Response:
    """Say that the server is up."""
    return tell({"ok": True})


def create_app(config: Config) -> Flask:
    """A server on the data folder of ``config``, its tables up to date."""
    made_folder(config.data)
    app = Flask("witnessmark", static_folder=None)
    url = str_url(database_url(config.data, config.database))
    app.config.update(
        SQLALCHEMY_DATABASE_URI=url,
        SQLALCHEMY_ENGINE_OPTIONS=engine_options(url),
    )
    db.init_app(app)
    migrate.init_app(app, db)
    with app.app_context():
        app.extensions["witnessmark"] = adopted(db.engine, config.data, config.now_ms)
    app.extensions["witnessmark"].ensure_workshop()
    guard.install(app, config.pages)
    zipped.install(app)
    keys.install(app)
    routing.install(app, PREFIX, *SUBJECTS, health)
    packs.install(app, config)
    pages.install(app, config)
    problems.install(app)
    return app
