"""JSON over HTTP and the page's own files; the only package that knows Flask.

Here belong routes, the shapes on the wire, bounds and headers. No rule of the log or the trade,
and no query: those are asked of ``store`` and ``views``.
"""

from witnessmark.api.app import create_app
from witnessmark.api.config import Config

__all__ = ["Config", "create_app"]
