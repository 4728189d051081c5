"""A test whose outside tool is missing is told as not run; where CI is true, it fails."""

import os
from collections.abc import Generator

import pytest
from tools import ToolMissing


@pytest.hookimpl(wrapper=True)
def pytest_runtest_makereport(
    item: pytest.Item, call: pytest.CallInfo[None]
) -> Generator[None, pytest.TestReport, pytest.TestReport]:
    """Turn a missing tool into *not run*, with the tool's name in the summary."""
    report = yield
    missing = call.excinfo is not None and call.excinfo.errisinstance(ToolMissing)
    if missing and os.environ.get("CI") != "true":
        report.outcome = "skipped"
        report.longrepr = (str(item.path), 0, f"not run: {call.excinfo.value}")
    return report
