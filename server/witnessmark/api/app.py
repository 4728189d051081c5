"""The app: one function that puts store, routes and guards together."""

from flask import Flask, Response

from witnessmark.api import guard, keys, pages, pairing, problems, routing, sync, zipped
from witnessmark.api.config import Config
from witnessmark.api.routing import Routes, tell
from witnessmark.api.shapes import Health
from witnessmark.store import adopted, db
from witnessmark.store.engine import database_url, engine_options
from witnessmark.store.migrating import migrate
from witnessmark.store.opening import made_folder, str_url

PREFIX = "/api/v1"
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
        API_TITLE="Witnessmark",
        API_VERSION="v1",
        OPENAPI_VERSION="3.1.0",
        OPENAPI_URL_PREFIX=PREFIX,
        OPENAPI_JSON_PATH="openapi.json",
    )
    db.init_app(app)
    migrate.init_app(app, db)
    with app.app_context():
        app.extensions["witnessmark"] = adopted(db.engine, config.data, config.now_ms)
    app.extensions["witnessmark"].ensure_workshop()
    guard.install(app, config.pages)
    zipped.install(app)
    keys.install(app)
    routing.install(app, PREFIX, sync.routes, pairing.routes, health)
    pages.install(app, config)
    problems.install(app)
    return app
