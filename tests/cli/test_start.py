"""`python3 server` on any Python: readable by an old one, pinned and hashed, quick when done."""

import ast
import importlib.util
import re
import sys
from pathlib import Path
from types import ModuleType, SimpleNamespace

import pytest

ROOT = Path(__file__).resolve().parents[2]
START = ROOT / "server" / "__main__.py"
STARTS = (START, ROOT / "tests" / "__main__.py")
PINNED = (
    ROOT / "server" / "requirements.txt",
    ROOT / "tests" / "requirements.txt",
    ROOT / "tests" / "requirements-node.txt",
)


@pytest.fixture
def start(tmp_path: Path) -> ModuleType:
    spec = importlib.util.spec_from_file_location("server_start", START)
    assert spec is not None
    assert spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    module.ROOT = str(tmp_path)  # type: ignore[attr-defined]
    module.ENVIRONMENT = str(tmp_path / ".venv")  # type: ignore[attr-defined]
    (tmp_path / ".venv").mkdir()
    return module


@pytest.mark.parametrize("path", STARTS, ids=lambda path: path.parent.name)
def test_an_old_python_can_read_the_start(path: Path) -> None:
    source = path.read_text(encoding="ascii")
    tree = ast.parse(source, feature_version=(3, 6))
    newer = (ast.JoinedStr, ast.AnnAssign, ast.NamedExpr, ast.AsyncFunctionDef, ast.Match)
    assert not [node for node in ast.walk(tree) if isinstance(node, newer)]
    assert len(source.splitlines()) < 120


@pytest.mark.parametrize("path", STARTS, ids=lambda path: path.parent.name)
def test_the_start_needs_the_standard_library_only(path: Path) -> None:
    top = ast.parse(path.read_text(encoding="ascii")).body
    names = {alias.name for node in top if isinstance(node, ast.Import) for alias in node.names} | {
        node.module for node in top if isinstance(node, ast.ImportFrom)
    }
    assert names <= sys.stdlib_module_names


def test_an_old_python_is_told_which_one_is_needed(
    start: ModuleType, monkeypatch: pytest.MonkeyPatch
) -> None:
    old = SimpleNamespace(version_info=(3, 8, 10), exit=sys.exit, prefix=sys.prefix)
    monkeypatch.setattr(start, "sys", old)
    with pytest.raises(SystemExit) as ended:
        start.enter("server")
    assert ended.value.code == "Witnessmark needs Python 3.11 or newer; this is 3.8."


@pytest.mark.parametrize("path", PINNED, ids=lambda path: f"{path.parent.name}/{path.name}")
def test_every_part_is_pinned_and_hashed_and_no_host_is_named(path: Path) -> None:
    lines = path.read_text(encoding="ascii").replace("\\\n", " ").splitlines()
    parts = [line for line in lines if line and not line.lstrip().startswith("#")]
    assert parts
    for part in parts:
        assert re.match(r"[a-z0-9._-]+==\S+ ", part), part
        assert "--hash=sha256:" in part
    assert "://" not in path.read_text(encoding="ascii")
    assert not [line for line in lines if line.startswith("-")]


def test_tests_and_server_stand_on_the_same_versions() -> None:
    server, tests = (
        dict(re.findall(r"^([a-z0-9._-]+)==(\S+)", path.read_text(encoding="ascii"), re.MULTILINE))
        for path in PINNED[:2]
    )
    assert server.items() <= tests.items()


def test_nothing_is_installed_twice(
    start: ModuleType, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    ran: list[list[str]] = []
    monkeypatch.setattr(start, "run", ran.append)
    wanted = tmp_path / "requirements.txt"
    wanted.write_text("one==1\n", encoding="ascii")
    start.install(str(wanted))
    first = len(ran)
    start.install(str(wanted))
    assert len(ran) == first > 0
    wanted.write_text("one==2\n", encoding="ascii")
    start.install(str(wanted))
    assert len(ran) == 2 * first


def test_the_stamp_is_set_only_when_everything_is_there(
    start: ModuleType, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def broken(_: list[str]) -> None:
        sys.exit("no")

    wanted = tmp_path / "requirements.txt"
    wanted.write_text("one==1\n", encoding="ascii")
    monkeypatch.setattr(start, "run", broken)
    with pytest.raises(SystemExit):
        start.install(str(wanted))
    assert not list((tmp_path / ".venv").iterdir())


@pytest.mark.parametrize(
    ("said", "sentence"),
    [
        ("Failed to establish a new connection: NewConnectionError", "needs the internet once"),
        ("Temporary failure in name resolution", "needs the internet once"),
        ("OSError: [Errno 28] No space left on device", "The disk is full."),
        ("PermissionError: [Errno 13] Permission denied: '.venv'", "may not be written"),
        ("ERROR: THESE PACKAGES DO NOT MATCH THE HASHES", "was not used"),
        ("The virtual environment was not created: ensurepip is not", "python3-venv"),
        ("something nobody thought of", "The lines above say what was in the way."),
    ],
)
def test_what_is_in_the_way_is_said_in_a_sentence(
    start: ModuleType, said: str, sentence: str
) -> None:
    command = [sys.executable, "-c", f"import sys; print({said!r}); sys.exit(1)"]
    with pytest.raises(SystemExit) as ended:
        start.run(command)
    assert sentence in str(ended.value.code)
