"""What is typed, in any order that makes sense."""

from pathlib import Path

import pytest
from witnessmark.cli import main
from witnessmark.cli.arguments import read
from witnessmark.cli.command import COMMANDS
from witnessmark.cli.errors import CommandNotRead


def test_without_a_command_the_workshop_is_served() -> None:
    wished = read(["--data", "d", "--port", "0", "--localhost", "--no-open"])
    assert wished.command is None
    assert (wished.data, wished.port) == (Path("d"), 0)
    assert wished.localhost
    assert wished.no_open


@pytest.mark.parametrize(
    "words", [["pair", "--json", "--data", "d"], ["--data", "d", "pair", "--json"]]
)
def test_the_folder_may_stand_before_or_after_the_command(words: list[str]) -> None:
    wished = read(words)
    assert (wished.command, wished.data, wished.json) == ("pair", Path("d"), True)


def test_serve_may_be_said_aloud() -> None:
    wished = read(["--data", "d", "serve", "--port", "9000"])
    assert (wished.command, wished.data, wished.port) == ("serve", Path("d"), 9000)


@pytest.mark.parametrize(
    "words",
    [
        ["frobnicate"],
        ["--bogus"],
        ["--port", "70000"],
        ["--port", "-1"],
        ["backup"],
        ["--por", "1"],
    ],
)
def test_what_means_nothing_is_refused_in_a_sentence(
    words: list[str], capsys: pytest.CaptureFixture[str]
) -> None:
    with pytest.raises(CommandNotRead):
        read(words)
    assert main(words) == 1
    told = capsys.readouterr()
    assert told.err.startswith("This is not understood: ")
    assert told.err.count("\n") == 1
    assert not told.out


def test_every_command_of_the_help_is_carried_out_by_somebody(
    capsys: pytest.CaptureFixture[str],
) -> None:
    with pytest.raises(SystemExit) as ended:
        read(["--help"])
    assert ended.value.code == 0
    told = capsys.readouterr().out
    for word in COMMANDS.keys() - {"demo"}:
        assert f"    {word} " in told
