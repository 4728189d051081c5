"""`python -m witnessmark.cli`: the same command, where the environment is there already."""

import sys

from witnessmark.cli import main

sys.exit(main())
