"""The worked examples in the docstrings of trade come out as they are written."""

import ast
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


def test_every_public_rule_has_a_worked_example() -> None:
    without = [
        f"{stem}.{item.name}"
        for stem in MODULES
        for item in ast.parse((TRADE / f"{stem}.py").read_text("utf-8")).body
        if isinstance(item, ast.FunctionDef)
        and not item.name.startswith("_")
        and ">>>" not in (ast.get_docstring(item) or "")
    ]
    assert not without
