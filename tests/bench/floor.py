"""The floor: the same rows, one full-sync SQLite transaction a request, same WSGI server.

    python tests/bench/floor.py FILE      serves on a free port of the loopback, prints `ready URL`

It keeps no promise but the disk's: no check, no digest, no cursor, no key.
"""

import gzip
import json
import sqlite3
import sys
from pathlib import Path

from cheroot.wsgi import Server
from flask import Flask, Response, request


def app(file: Path) -> Flask:
    served = Flask(__name__)
    base = sqlite3.connect(file, check_same_thread=False, isolation_level=None)
    base.execute("pragma journal_mode=wal")
    base.execute("pragma synchronous=full")
    base.execute(
        "create table if not exists row (seq integer primary key, id text unique, text text)"
    )

    @served.post("/push")
    def push() -> Response:
        entries = json.loads(gzip.decompress(request.get_data()))["entries"]
        base.execute("begin immediate")
        base.executemany(
            "insert into row (id, text) values (?, ?)",
            [(e["id"], json.dumps(e, ensure_ascii=False, separators=(",", ":"))) for e in entries],
        )
        base.execute("commit")
        return packed(json.dumps({"taken": len(entries)}))

    @served.get("/pull/<int:after>")
    def pull(after: int) -> Response:
        rows = base.execute(
            "select seq, text from row where seq > ? order by seq limit 5000", (after,)
        ).fetchall()
        return packed('{"entries":[' + ",".join(text for _, text in rows) + "]}")

    return served


def packed(text: str) -> Response:
    return Response(
        gzip.compress(text.encode(), 6),
        headers={"Content-Encoding": "gzip", "Content-Type": "application/json"},
    )


if __name__ == "__main__":
    server = Server(("127.0.0.1", 0), app(Path(sys.argv[1])))
    server.prepare()
    print(f"ready http://127.0.0.1:{server.bind_addr[1]}", flush=True)
    server.serve()
