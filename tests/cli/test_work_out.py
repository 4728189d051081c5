"""Workings in the terminal: the same words as on the phone and over the wire."""

import json

import pytest
from witnessmark.cli import main
from witnessmark.trade.workings.registry import WORKINGS, work_out


def test_alone_it_lists_what_can_be_worked_out(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["work-out"]) == 0
    told = capsys.readouterr().out
    for each in WORKINGS.values():
        assert f"{each.name} " in told
        assert each.says in told


def test_a_program_gets_the_list_in_one_line(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["work-out", "--json"]) == 0
    told = capsys.readouterr().out
    assert told.count("\n") == 1
    assert [each["name"] for each in json.loads(told)["workings"]] == list(WORKINGS)


def test_a_result_is_told_with_formula_and_source(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["work-out", "convert", "--amount", "45 ft-lb"]) == 0
    told = capsys.readouterr().out
    assert "61.0 N·m" in told
    assert WORKINGS["convert"].formula in told
    assert WORKINGS["convert"].source in told


def test_a_program_gets_what_the_wire_tells(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["work-out", "convert", "--amount", "45 lbf·ft", "--json"]) == 0
    told = json.loads(capsys.readouterr().out)
    assert told == work_out("convert", {"amount": {"value": "45", "unit": "lbf·ft"}})


@pytest.mark.parametrize(
    ("words", "told"),
    [
        (["convert", "--amount", "35 lb"], "--amount: lb can be lbf·ft or lbf·in."),
        (["convert"], "--amount: The amount is missing."),
        (["luck"], "No working is called luck."),
        (["convert", "--luck", "7"], "This is not understood: "),
    ],
)
def test_what_cannot_be_read_is_one_sentence_and_1(
    words: list[str], told: str, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["work-out", *words]) == 1
    seen = capsys.readouterr()
    assert seen.err.startswith(told)
    assert seen.err.count("\n") == 1
    assert not seen.out


@pytest.mark.parametrize("name", WORKINGS)
def test_every_working_says_what_it_asks(name: str, capsys: pytest.CaptureFixture[str]) -> None:
    with pytest.raises(SystemExit) as ended:
        main(["work-out", name, "--help"])
    assert ended.value.code == 0
    told = capsys.readouterr().out
    for ask in WORKINGS[name].asks:
        assert f"--{ask.name} " in told
