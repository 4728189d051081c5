"""The worked examples in the docstrings of trade come out as they are written."""

import doctest
import importlib
from pathlib import Path

import pytest

TRADE = Path(__file__).parents[2] / "server" / "witnessmark" / "trade"
MODULES = sorted(path.stem for path in TRADE.glob("*.py") if path.stem != "__init__")


@pytest.mark.parametrize("stem", MODULES)
def test_the_worked_examples_of_a_module_come_out(stem: str) -> None:
    module = importlib.import_module(f"witnessmark.trade.{stem}")
    result = doctest.testmod(module)
    assert result.failed == 0
