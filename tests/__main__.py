"""Run every check: `python3 tests`; what follows is passed on to pytest.

Only the standard library, and only words that an old Python reads too. The environment is the
server's own with the test parts added; then `provide` sees to browser, Node and PostgreSQL.
"""

import os
import sys

if sys.version_info < (3, 11):
    sys.exit("The tests need Python 3.11 or newer; this is %d.%d." % tuple(sys.version_info[:2]))

import runpy

HERE = os.path.dirname(os.path.abspath(__file__))
SERVER = os.path.join(os.path.dirname(HERE), "server")

if __name__ == "__main__":
    start = runpy.run_path(os.path.join(SERVER, "__main__.py"))
    start["enter"](HERE)
    start["install"](os.path.join(SERVER, "requirements.txt"))
    start["install"](os.path.join(HERE, "requirements.txt"))
    from provide import run

    sys.exit(run(start["install"], sys.argv[1:]))
