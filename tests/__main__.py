"""Run every check: `python3 tests`; what follows is passed on to pytest.

Only the standard library, and only words that an old Python reads too. The environment is the
server's own with the test parts added; then `provide` sees to browser, Node and PostgreSQL.
"""

import importlib.util
import os
import sys

HERE = os.path.dirname(os.path.abspath(__file__))
SERVER = os.path.join(os.path.dirname(HERE), "server")


def start():
    """The server's own start, whose environment the tests share."""
    path = os.path.join(SERVER, "__main__.py")
    spec = importlib.util.spec_from_file_location("server_start", path)
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


if __name__ == "__main__":
    begin = start()
    begin.enter(HERE)
    begin.install(os.path.join(SERVER, "requirements.txt"))
    begin.install(os.path.join(HERE, "requirements.txt"))
    from provide import run

    sys.exit(run(begin.install, sys.argv[1:]))
