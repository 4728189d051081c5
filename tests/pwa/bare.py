"""A page with nothing but the store on it, in real Chromium."""

import re
from pathlib import Path
from typing import Any

from playwright.sync_api import BrowserContext, Page, Route

PWA = Path(__file__).resolve().parents[2] / "pwa"
HOME = "http://localhost:8999"
TYPES = {".js": "text/javascript", ".wasm": "application/wasm", ".css": "text/css"}

SCRIPT = """
import { openDB } from 'idb';
import { openStore } from '/store/index.js';
import * as update from '/store/update.js';

window.begin = async (name) => { window.store = await openStore(name); };
window.tables = async (name = 'witnessmark') => {
  const db = await openDB(name);
  const found = {};
  for (const table of db.objectStoreNames)
    found[table] = Object.fromEntries(
      (await db.getAllKeys(table)).map((key, at) => [key, at]));
  for (const table of db.objectStoreNames) {
    const rows = await db.getAll(table);
    for (const key in found[table]) found[table][key] = rows[found[table][key]];
  }
  db.close();
  return found;
};
window.state = () =>
  Object.fromEntries(Object.entries(window.store.state).map(([key, one]) => [key, one.value]));
window.pull = (fastener, more = {}) => ({ heading: 'pull', about: 'joint-1', ...more, body: {
  run: 'run-1', fastener, pass: 'p1', wrench: null,
  target: { value: '45', unit: 'N·m' }, reading: null, ...more.body } });
window.part = (about, fields) => ({ heading: 'part', about, body: { fields } });
window.openDB = openDB;
window.update = update;
window.isReady = true;
"""


def shell() -> str:
    """The document, with the import map of the real page."""
    page = (PWA / "index.html").read_text(encoding="utf-8")
    found = re.search(r'<script type="importmap">(.*?)</script>', page, re.DOTALL)
    assert found
    return (
        "<!doctype html><meta charset=utf-8><title>bare</title>"
        f'<script type="importmap">{found[1]}</script><script type="module">{SCRIPT}</script>'
    )


def answer(route: Route) -> None:
    """The bare document, or a file of the page."""
    path = route.request.url.split("/", 3)[3].partition("?")[0]
    file = PWA / path
    if path == "bare":
        route.fulfill(content_type="text/html", body=shell())
    elif file.is_file():
        kind = TYPES.get(file.suffix, "application/octet-stream")
        route.fulfill(content_type=kind, body=file.read_bytes())
    else:
        route.abort()


def bare_page(context: BrowserContext, address: str = HOME, store: str | None = None) -> Page:
    """A tab whose store is open. On another address than HOME a server must answer for files."""
    if address == HOME:
        context.route(f"{HOME}/**", answer)
    else:
        context.route("**/bare", answer)
    page = context.new_page()
    page.goto(f"{address}/bare")
    page.wait_for_function("window.isReady")
    page.evaluate("name => window.begin(name)", store)
    return page


def tables(page: Page) -> dict[str, Any]:
    """Everything in the database: table, key, row."""
    found: dict[str, Any] = page.evaluate("() => window.tables()")
    return found
