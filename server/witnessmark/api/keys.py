"""Who may ask: every route but the open ones wants the key of a paired device."""

from typing import cast

from flask import Flask, current_app, g, request

from witnessmark.errors import DeviceUnknown
from witnessmark.store import Bearer, Store

API = "/api/"
_OPEN = {"/api/v1/pair", "/api/v1/health", "/api/v1/openapi.json", "/api/v1/docs"}
_OPEN_FILES = {"/api/v1/docs/docs.css"}
_SCHEME = "bearer "


def install(app: Flask) -> None:
    """Ask for the key before any route under /api is looked at, known or not."""
    app.before_request(_ask)


def store() -> Store:
    """The store of the running app."""
    return cast("Store", current_app.extensions["witnessmark"])


def bearer() -> Bearer:
    """Whose key the request carries."""
    return cast("Bearer", g.bearer)


def _ask() -> None:
    path = request.path
    if not path.startswith(API) or path in _OPEN or path in _OPEN_FILES:
        return
    given = request.headers.get("Authorization", "")
    if not given.lower().startswith(_SCHEME):
        raise DeviceUnknown
    g.bearer = store().bearer(given[len(_SCHEME) :].strip())
