"""Every shared case gives the same answer, or the same refusal, in Python and in JavaScript."""

import importlib
import json
import math
import shutil
import subprocess
from pathlib import Path
from typing import Any

import pytest
from tools import node
from witnessmark.api.packing import SCRIPT, tight

HERE = Path(__file__).parent
VECTORS = HERE.parent / "fixtures" / "vectors"
AREAS = sorted(path.stem for path in (HERE / "vector_rules").glob("*.py"))
FILES = sorted(VECTORS.glob("*.json"))


def rules() -> dict[str, Any]:
    found: dict[str, Any] = {}
    for area in AREAS:
        found |= importlib.import_module(f"vector_rules.{area}").RULES
    return found


RULES = rules()


def cases(path: Path) -> list[dict[str, Any]]:
    document = json.loads(path.read_text(encoding="utf-8"))
    listed = []
    for group in document["groups"]:
        assert group["source"].strip(), f"{path.name}: {group['description']} names no source"
        for test in group["tests"]:
            rule = test.get("rule", group.get("rule", document["rule"]))
            listed.append({**test, "rule": rule, "group": group["description"]})
    return listed


def same_number(expected: float, actual: float, within: dict[str, float] | None) -> bool:
    if within and "relative" in within:
        return math.isclose(expected, actual, rel_tol=within["relative"], abs_tol=0)
    return abs(expected - actual) <= (within or {}).get("absolute", 0)


def same(expected: Any, actual: Any, within: dict[str, float] | None) -> bool:
    if isinstance(expected, bool) or isinstance(actual, bool):
        return expected is actual
    if isinstance(expected, int | float) and isinstance(actual, int | float):
        return same_number(expected, actual, within)
    if isinstance(expected, dict) and isinstance(actual, dict):
        return expected.keys() == actual.keys() and all(
            same(expected[key], actual[key], within) for key in expected
        )
    if isinstance(expected, list) and isinstance(actual, list):
        pairs = zip(expected, actual, strict=False)
        return len(expected) == len(actual) and all(same(a, b, within) for a, b in pairs)
    return bool(expected == actual)


def run(case: dict[str, Any]) -> str | None:
    """Run one case; gives what is wrong, or None."""
    rule = RULES.get(case["rule"])
    if rule is None:
        return f"no Python rule runs {case['rule']}"
    try:
        actual = rule(case["given"])
    except Exception as refused:  # noqa: BLE001 - any refusal is compared by its code
        code = getattr(refused, "code", f"{type(refused).__name__}: {refused}")
        return None if case.get("refused") == code else f"refused with {code}"
    if "refused" in case:
        return f"expected {case['refused']}, gave {actual!r}"
    actual = json.loads(json.dumps(actual))
    within = case.get("within")
    within = None if within == "exact" else within
    return None if same(case["gives"], actual, within) else f"{case['gives']!r} != {actual!r}"


@pytest.mark.parametrize("path", FILES, ids=lambda path: path.stem)
def test_python_gives_what_the_shared_cases_say(path: Path) -> None:
    listed = cases(path)
    assert listed
    wrong = [f"{c['group']} / {c['description']}: {why}" for c in listed if (why := run(c))]
    assert not wrong, "\n".join(wrong[:20])


def tightened(house: Path) -> Path:
    """The page's scripts as a phone fetches them, with the cases beside them."""
    for script in sorted((HERE.parent / "pwa").rglob("*.js")):
        packed = house / script.relative_to(HERE.parent)
        packed.parent.mkdir(parents=True, exist_ok=True)
        packed.write_text(tight(script.read_text("utf-8"), SCRIPT), "utf-8")
    shutil.copytree(HERE / "pwa" / "vector_rules", house / "tests" / "pwa" / "vector_rules")
    shutil.copy(HERE / "pwa" / "vectors.test.js", house / "tests" / "pwa")
    (house / "tests" / "vector_rules").symlink_to(HERE / "vector_rules")
    (house / "fixtures").symlink_to(HERE.parent / "fixtures")
    return house / "tests"


@pytest.mark.parametrize("packed", [False, True], ids=["as-written", "as-fetched"])
def test_javascript_gives_what_the_shared_cases_say(packed: bool, tmp_path: Path) -> None:
    tests = tightened(tmp_path) if packed else HERE
    done = subprocess.run(
        [node(), "--test", "--test-reporter=spec", str(tests / "pwa" / "vectors.test.js")],
        capture_output=True,
        text=True,
        timeout=300,
        check=False,
    )
    assert done.returncode == 0, done.stdout[-6000:] + done.stderr[-2000:]
    assert f"tests {len(FILES)}" in done.stdout, done.stdout[-500:]


def test_every_rule_named_by_an_adapter_has_its_cases() -> None:
    named = {case["rule"] for path in FILES for case in cases(path)}
    assert set(RULES) == named
